import type { Printer } from '../../job/paper/printer.ts';

/** How many tubes are drawn so far, of how many. */
export type TubesDrawn = (drawn: number, of: number) => void;

/** How the job is to be printed, which is no part of the job. */
export interface Printing {
  readonly footprints: boolean;
  readonly printer?: Printer;
}
