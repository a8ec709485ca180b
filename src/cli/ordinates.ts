import type { EndFlags } from '../job/flags.ts';
import { readAngle } from '../measure/angle.ts';
import { degrees } from '../measure/units.ts';
import { inOrder } from '../saddle/ordinates.ts';
import { solveJob } from '../saddle/solve.ts';
import { readAsk } from './ask.ts';
import { writeResult } from './files.ts';
import { ordinatesAsCsv, ordinatesAsJson, ordinatesAsText } from './ordinates-as.ts';
import type { Shell } from './shell.ts';
import { refuse } from './trouble.ts';

export interface OrdinatesOptions extends EndFlags {
  readonly every: string;
  readonly as: 'text' | 'json' | 'csv';
  readonly out: string;
}

/** `copeleaf ordinates`: the setbacks at equal stations, for laying out with tape and marker. */
export async function ordinates(
  path: string | undefined,
  options: OrdinatesOptions,
  shell: Shell,
): Promise<void> {
  const { every, as, out, ...flags } = options;
  const step = stepOf(every);
  const { job } = await readAsk(path, flags, shell);
  const tables = inOrder(solveJob(job), step);
  const write = { text: ordinatesAsText, json: ordinatesAsJson, csv: ordinatesAsCsv }[as];
  await writeResult(out, write(tables, job.units), shell);
}

/** Whole degrees or parts of them that go into a turn without rest, as a count of stations. */
function stepOf(every: string): number {
  const reading = readAngle(every);
  const why = reading.ok ? 'it does not go into 360 degrees without rest' : reading.why;
  if (reading.ok) {
    const count = 360 / degrees(reading.value.rad);
    if (count >= 1 && count <= 36000 && Math.abs(count - Math.round(count)) < 1e-9) return Math.round(count);
  }
  throw refuse('every', 'command line', `--every ${every}`, why, 'a step such as 15deg, 22.5deg or 10deg');
}
