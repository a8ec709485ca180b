import { written } from './number.ts';

/** A group of a DXF file: its code and its value, each on a line of its own. */
export type Group = string;

/** A group. Numbers are written to a tenth of a micrometre. Throws on a number that is none. */
export function group(code: number, value: string | number): Group {
  return `${String(code).padStart(3)}\r\n${typeof value === 'number' ? written(value) : value}`;
}
