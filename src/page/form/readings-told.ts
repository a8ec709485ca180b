import type { Header, Part } from '../../job/job.ts';
import { tubeFactsOf } from '../../job/sections.ts';
import type { Said } from '../../measure/said.ts';
import { lengthsInWords } from '../../saddle/readings-told.ts';
import type { DocPath } from '../job/job-doc.ts';
import type { Outcome } from '../job/outcome.ts';

/** What each of several readings came to and how it differs from the first; none where the value or the job can't be read. */
export function readingsTold(outcome: Outcome, path: DocPath): readonly Said[] {
  if (outcome.kind !== 'read') return [];
  const [kind, place] = path;
  const at = kind === 'tubes' && typeof place === 'number' ? place : 0;
  const tube = outcome.job.tubes[at];
  const key = path.at(-1);
  if (!tube) return [];
  if (key === 'between') {
    const solution = outcome.solutions.find((each) => each.tube === tube);
    return solution ? lengthsInWords(solution.readings, outcome.job.units, outcome.job.words) : [];
  }
  const name = path.find((step) => step === 'A' || step === 'B');
  if (name === undefined) return tubeFactsOf(tube.section).across.readings ?? [];
  const end = tube.ends[name];
  const which = path[path.indexOf(name) + 1];
  const part = end?.kind === 'coped' ? end.parts[typeof which === 'number' ? which : 0] : undefined;
  return part ? ofPart(part, key) : [];
}

/** What the lengths to a cut edge gave, each value by its key. */
export function notchTold(
  outcome: Outcome,
  end: DocPath,
  told: (key: 'onto' | 'angle' | 'clock' | 'offset', reading: Said) => Said,
): readonly Said[] {
  return (['onto', 'angle', 'clock', 'offset'] as const).flatMap((key) =>
    readingsTold(outcome, [...end, key]).map((reading) => told(key, reading)),
  );
}

function ofPart({ onto, angle, clock, offset }: Part, key: DocPath[number] | undefined): readonly Said[] {
  if (key === 'angle') return angle.readings ?? [];
  if (key === 'clock') return clock.readings ?? [];
  if (key === 'offset') return offset.readings ?? [];
  return diameterOf(onto)?.readings ?? [];
}

function diameterOf(header: Header): { readonly readings?: readonly Said[] } | undefined {
  return 'od' in header ? header.od : undefined;
}
