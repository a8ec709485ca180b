import { type PipeSize, readPipe } from '../measure/pipe.ts';
import type { Spot } from './text/desk.ts';
import { textOf } from './text/fields.ts';
import { misread } from './text/values.ts';

/** A pipe by the name of its size. */
export function pipeAt(spot: Spot | undefined): PipeSize | undefined {
  const text = spot && textOf(spot, spot.desk.words.tubes.pipeName);
  if (spot === undefined || text === undefined) return undefined;
  const reading = readPipe(text, spot.desk.bareUnit);
  return reading.ok ? reading.value : misread(spot, 'pipe', reading.fault);
}
