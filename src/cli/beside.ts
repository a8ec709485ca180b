import { basename, dirname, join } from 'node:path';

/** A name in the same folder for a file until it is whole; no other run's. Not by `node:crypto`, which takes long to load. */
export function besideOf(target: string): string {
  return join(dirname(target), `.${basename(target)}.${process.pid}-${process.hrtime.bigint()}`);
}
