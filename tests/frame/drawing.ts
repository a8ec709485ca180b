import type { Place } from './lines.ts';

/** A drawing as a program writes one, from what stands in its sections. */
export function drawing(entities: readonly string[], header = '9\n$INSUNITS\n70\n4\n'): string {
  return `0\nSECTION\n2\nHEADER\n${header}0\nENDSEC\n0\nSECTION\n2\nENTITIES\n${entities.join('')}0\nENDSEC\n0\nEOF\n`;
}

export function lineIn(layer: string, from: Place, to: Place): string {
  return `0\nLINE\n5\n2F\n8\n${layer}\n${at(10, from)}${at(11, to)}`;
}

export function at(code: number, [x, y, z]: Place): string {
  return `${code}\n${x}\n${code + 10}\n${y}\n${code + 20}\n${z}\n`;
}

/** In a plane that is square to its extrusion, at an elevation; each corner with what stands behind it. */
export function flatIn(
  corners: readonly (readonly [number, number])[],
  { closed = false, elevation = 0, up = [0, 0, 1] as Place, behind = '' } = {},
): string {
  const places = corners.map(([x, y]) => `10\n${x}\n20\n${y}\n${behind}`).join('');
  return `0\nLWPOLYLINE\n5\n30\n8\nrails\n90\n${corners.length}\n70\n${closed ? 1 : 0}\n38\n${elevation}\n${places}${at(210, up)}`;
}

export function polylineIn(corners: readonly Place[], flags: number): string {
  const vertices = corners.map((corner) => `0\nVERTEX\n8\n0\n${at(10, corner)}70\n${flags & 8 ? 32 : 0}\n`);
  return `0\nPOLYLINE\n8\nrails\n66\n1\n70\n${flags}\n${vertices.join('')}0\nSEQEND\n8\n0\n`;
}
