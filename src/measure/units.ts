/** Lengths are millimetres inside the program. */
export type Mm = number;

/** Angles are radians inside the program. */
export type Radians = number;

/** The inch is 25.4 mm exactly (international yard and pound agreement, 1959). */
export const MM_PER_INCH = 25.4;

export type LengthUnit = 'mm' | 'cm' | 'm' | 'in' | 'ft';
export type AngleUnit = 'deg' | 'rad';

/** A length as a person wrote it, and what it came to. */
export interface Length {
  readonly mm: Mm;
  readonly wrote: string;
  readonly unit: LengthUnit;
  /** The words name a size of a standard and measure nothing: `16 BWG`, `NPS 2`. */
  readonly byName?: true;
}

/** An angle as a person wrote it, and what it came to. */
export interface Angle {
  readonly rad: Radians;
  readonly wrote: string;
  readonly unit: AngleUnit;
}

export function radians(degrees: number): Radians {
  return (degrees * Math.PI) / 180;
}

export function degrees(angle: Radians): number {
  return (angle * 180) / Math.PI;
}
