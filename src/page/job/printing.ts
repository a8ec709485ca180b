import type { Printer } from '../../job/paper/printer.ts';

/** How the job is to be printed, which is no part of the job. */
export interface Printing {
  readonly footprints: boolean;
  readonly printer?: Printer;
}
