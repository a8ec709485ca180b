import type { Said } from '../../measure/said.ts';

/** Where the values of a job were written, by paths such as `tubes[0].ends.A.angle`. */
export interface Origin {
  readonly file: string;
  readonly places: ReadonlyMap<string, TextPlace>;
}

/** A place in a job file, counted from 1, or the flag that gave the value. */
export type TextPlace = { readonly line: number; readonly column: number } | { readonly flag: Said };
