import type { Said } from '../../measure/said.ts';
import type { Angle, Length } from '../../measure/units.ts';
import { say } from '../said.ts';
import { quantities } from './quantities.ts';

/** The joint as it is seen, and the words at it. */
export const picture = {
  heel: say`heel`,
  toe: say`toe`,
  /** Of a mitre's corner. */
  inside: say`inside`,
  outside: say`outside`,
  seenFrom: (station: Said): Said => say`seen from station ${station}`,
  alongHeader: (station: Said): Said => say`along the header, from station ${station}`,
  offset: (offset: Length): Said => say`offset ${quantities.unsigned(offset)}`,
  /** An end, or one of its headers. */
  letter: (end: 'A' | 'B', header: number | undefined): Said =>
    header === undefined ? say`${end}` : say`${end}${header}`,
  /** The marks of a fit-up. */
  rotationMark: say`rotation mark`,
  lengthMark: say`length mark`,
  number: (number: number): Said => say`${number}`,
  towardsEnd: (end: 'A' | 'B'): Said => say`to ${end}`,
  turns: (turn: Angle): Said => say`turns ${quantities.writtenAngle(turn)}`,
  nextPiece: say`to the next piece`,
  otherPiece: say`to the other piece`,
};
