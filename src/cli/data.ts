/** What a program reads, and no person: CSV, SVG, DXF, an address. */
export function dataOf(text: string): Uint8Array {
  return new TextEncoder().encode(text);
}

/** Such data as JSON, ended as a line. */
export function jsonOf(data: object): Uint8Array {
  return dataOf(`${JSON.stringify(data, null, 2)}\n`);
}
