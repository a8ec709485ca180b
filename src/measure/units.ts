import type { Said } from './said.ts';

/** Lengths are millimetres inside the program. */
export type Mm = number;

/** Angles are radians inside the program. */
export type Radians = number;

/** The inch is 25.4 mm exactly (international yard and pound agreement, 1959). */
export const MM_PER_INCH = 25.4;

/** The units in which lengths are told: those of a job's bare numbers. */
export type Units = 'mm' | 'in';

export type LengthUnit = 'mm' | 'cm' | 'm' | 'in' | 'ft';
export type AngleUnit = 'deg' | 'rad';

/** A length as a person wrote it, and what it came to. */
export interface Length {
  readonly mm: Mm;
  readonly wrote: string;
  readonly unit: LengthUnit;
  /** No unit was written: it is the file's. */
  readonly bare?: true;
  /** The words are not the length itself: they name a size, `16 BWG`, or what was measured, `girth 120mm`. */
  readonly byName?: true;
  /** Where it was measured in another way, or in several: what was read and what it came to, for the person. */
  readonly readings?: readonly Said[];
  /** Where it was found from other lengths: how far off it may be, with 95 % confidence. */
  readonly within?: Mm;
  /** Of a diameter from the way round it: how thick the tape was. */
  readonly tape?: Mm;
}

/** An angle as a person wrote it, and what it came to. */
export interface Angle {
  readonly rad: Radians;
  readonly wrote: string;
  readonly unit: AngleUnit;
  /** The words are not the angle itself but what was measured: `rise 7in, run 12in`. */
  readonly byName?: true;
  /** Its words on the opposite hand, where they are not the same with the other sign: `arc -9.7mm`. */
  readonly opposite?: string;
  /** As of a length. */
  readonly readings?: readonly Said[];
  readonly within?: Radians;
}

export function radians(degrees: number): Radians {
  return (degrees * Math.PI) / 180;
}

export function degrees(angle: Radians): number {
  return (angle * 180) / Math.PI;
}
