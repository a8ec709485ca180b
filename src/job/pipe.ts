import { type PipeSize, readPipe } from '../measure/pipe.ts';
import type { Desk, Spot } from './text/desk.ts';
import { textOf } from './text/fields.ts';
import { misread } from './text/values.ts';

/** A pipe by the name of its size. */
export function pipeAt(desk: Desk, spot: Spot | undefined): PipeSize | undefined {
  const text = spot && textOf(desk, spot, desk.words.tubes.pipeName);
  if (spot === undefined || text === undefined) return undefined;
  const reading = readPipe(text, desk.bareUnit);
  return reading.ok ? reading.value : misread(desk, spot, 'pipe', reading.fault);
}
