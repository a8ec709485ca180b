import type { EndFlags } from '../job/end-flags.ts';
import type { Job } from '../job/job.ts';
import { tubeFactsOf } from '../job/sections.ts';
import { readAngle } from '../measure/angle.ts';
import { readLength } from '../measure/length.ts';
import { degrees } from '../measure/units.ts';
import { inOrder, type Spacing } from '../saddle/ordinates.ts';
import { solvePieces } from '../together/pieces.ts';
import { readAsk } from './ask.ts';
import { refuseOwnInput, writeResult } from './files.ts';
import { type Only, onlyAsked } from './only.ts';
import { ordinatesAsCsv, ordinatesAsJson } from './ordinates-as-data.ts';
import { ordinatesAsText } from './ordinates-as-text.ts';
import type { Shell } from './shell.ts';
import { refuseArgument } from './trouble.ts';

export interface OrdinatesOptions extends EndFlags, Only {
  readonly every?: string;
  readonly as: 'text' | 'json' | 'csv';
  readonly out: string;
}

/** `copeleaf ordinates`: the setbacks at equal stations, for laying out with tape and marker. */
export async function ordinates(
  path: string | undefined,
  options: OrdinatesOptions,
  shell: Shell,
): Promise<void> {
  const { every, as, only, out, ...flags } = options;
  const { job } = await readAsk(path, flags, shell);
  await refuseOwnInput(path, out, shell);
  const tables = inOrder(onlyAsked(job, solvePieces(job), only), spacingOf(every, job));
  const result = {
    text: () => ordinatesAsText(tables, job.units, shell.words),
    json: () => ordinatesAsJson(tables),
    csv: () => ordinatesAsCsv(tables),
  }[as]();
  await writeResult(out, result, shell);
}

const USUAL: Spacing = { perTurn: 24, apart: 10 };

/** Every hundredth of a degree. */
const MOST_STATIONS = 36_000;

/** An angle that goes into a turn without rest, or for tubes round which stations are mm a length. */
function spacingOf(every: string | undefined, { units, tubes, words }: Job): Spacing {
  if (every === undefined) return USUAL;
  const inMm = tubes
    .map(({ section }) => tubeFactsOf(section))
    .find((tube) => tube.outline().stations === 'mm');
  const angle = readAngle(every);
  const count = angle.ok ? 360 / degrees(angle.value.rad) : Number.NaN;
  if (count > MOST_STATIONS + 0.5)
    throw refuseArgument(
      'every',
      `--every ${every}`,
      words.commandFaults.tooManyStations(MOST_STATIONS),
      words,
    );
  if (count >= 1 && Math.abs(count - Math.round(count)) < 1e-9) {
    return { ...USUAL, perTurn: Math.round(count) };
  }
  const length = readLength(every, units);
  if (inMm && length.ok && length.value.mm >= 0.01) return { ...USUAL, apart: length.value.mm };
  const { unevenStep, step, stepInMm } = words.commandFaults;
  const why = angle.ok ? unevenStep : words.faults.said(angle.fault).why;
  const instead = inMm ? stepInMm(inMm.said(words).name) : step;
  throw refuseArgument('every', `--every ${every}`, { why, instead }, words);
}
