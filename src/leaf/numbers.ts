import type { EndName } from '../job/job.ts';
import { plainNumbers } from '../job/plain-numbers.ts';
import { tubeFactsOf } from '../job/sections.ts';
import type { Said } from '../measure/said.ts';
import type { Mm } from '../measure/units.ts';
import type { Cope } from '../saddle/cope.ts';
import type { Line } from '../saddle/line.ts';
import type { TubeSolution } from '../saddle/solve.ts';
import { asWritten } from '../words/said.ts';
import type { Fact } from './card/fact.ts';
import { baseEdgeOf } from './wrap/base-edge.ts';

/**
 * What an end's leaf is drawn from, to 0.01 mm, as a text that is the same where all of it is: the tube's sizes, the lines all round,
 * where the base edge lies and how far from what. No names, no dates, and not where it lies on a sheet. Throws a RangeError where
 * the end is not coped.
 */
export function leafNumbers(solution: TubeSolution, end: EndName, paperThickness: Mm): string {
  const cope = copeOf(solution, end);
  const { setback, distance, to } = baseEdgeOf(solution, end);
  const base = `${to} ${hundredths([setback, distance])}`;
  return ['leaf', linesOf(solution, end, cope, paperThickness), base].join(' / ');
}

/** The same of what the end leaves on one of its headers, and where `place` says that this goes on it. */
export function footprintNumbers(
  solution: TubeSolution,
  end: EndName,
  part: number,
  paperThickness: Mm,
  place: readonly Fact[],
): string {
  const cope = copeOf(solution, end);
  const lines = linesOf(solution, end, cope, paperThickness);
  return [
    'footprint',
    part,
    askedNumbers(cope.end.parts[part]),
    lines,
    place.map(({ label, text }) => `${label} ${text}`).join('; '),
  ].join(' / ');
}

/** Whether an end of a pair is its own mirror image about the spine: its leaf is the same for both hands. */
export function servesBothHands(solution: TubeSolution, end: EndName): boolean {
  if (!solution.tube.pair) return false;
  const cope = copeOf(solution, end);
  return [cope.cut, cope.other].every(
    (line) => roundLine(solution, line, 1) === roundLine(solution, line, -1),
  );
}

/** Lengths that lie on no step themselves, so that the last bits of a round one turn nothing. */
export function hundredths(lengths: readonly Mm[]): string {
  return lengths.map((mm) => Math.round(mm / 0.01 + BESIDE) + 0).join(' ');
}

const BESIDE = 0.2361;

/** The numbers of what was asked for; how a header ends is seen by the line alone. */
export function askedNumbers(asked: unknown): string {
  return plainNumbers(asked, 5, 'stops');
}

/** Signs that a worn print and a gloved hand take for no other. */
const SIGNS = '34679ACDEFHJKMNPRTWXY';
const LENGTH = 4;

/** Four signs that stand for such numbers: Fowler, Noll and Vo's hash, 32 bits. */
export function markOf(numbers: string): Said {
  let hash = 0x811c9dc5;
  for (let i = 0; i < numbers.length; i++) hash = Math.imul(hash ^ numbers.charCodeAt(i), 0x01000193) >>> 0;
  const signs = Array.from({ length: LENGTH }, () => {
    const sign = SIGNS.charAt(hash % SIGNS.length);
    hash = Math.floor(hash / SIGNS.length);
    return sign;
  });
  return asWritten(signs.join(''));
}

function copeOf({ ends, tube }: TubeSolution, end: EndName): Cope {
  const cope = ends[end];
  if (cope?.kind !== 'coped') throw new RangeError(`End ${end} of ${tube.name} is not coped.`);
  return cope;
}

const LOOKS = 90;
/** Beside round stations, where a line may step. */
const ASIDE = 0.382;

function linesOf(solution: TubeSolution, end: EndName, cope: Cope, paperThickness: Mm): string {
  const { tube } = solution;
  const sizes = Object.values(tubeFactsOf(tube.section).lengths).map(({ mm }) => mm);
  const { clock, between, lengthSetback } = {
    clock: false,
    between: false,
    ...cope.end.fitUp,
    ...cope.fitUp,
  };
  return [
    end,
    tube.section.kind,
    hundredths([...sizes, tube.wall?.mm ?? 0, paperThickness]),
    [clock, between, hundredths([lengthSetback ?? 0])].join(' '),
    roundLine(solution, cope.cut, 1),
    roundLine(solution, cope.other, 1),
  ].join(' / ');
}

/** A line from the spine to the right, or to the left. */
function roundLine({ section }: TubeSolution, line: Line | undefined, way: 1 | -1): string {
  if (!line) return '';
  return hundredths(
    Array.from({ length: LOOKS }, (_, i) => line((way * (i + ASIDE) * section.turn) / LOOKS).setback),
  );
}
