import { type EndName, otherEnd } from '../job/job.ts';
import { tapeRound, unitsOfTube } from '../job/sections.ts';
import type { Mm } from '../measure/units.ts';
import { type Cope, curveOf } from '../saddle/cope.ts';
import type { TubeSolution } from '../saddle/solve.ts';
import type { Language } from '../words/language.ts';
import { drawCard } from './card/card.ts';
import { type Fact, factOf } from './card/fact.ts';
import { cardFactsOf } from './card/facts.ts';
import { drawingKey } from './key.ts';
import type { CardedLeaf } from './leaf.ts';
import { namesOf, subjectOf } from './names.ts';
import { leafNumbers, markOf, servesBothHands } from './numbers.ts';
import { baseEdgeOf } from './wrap/base-edge.ts';
import { flatOf } from './wrap/flat.ts';
import { foldStations } from './wrap/folds.ts';
import { keepWholeOf } from './wrap/keep-whole.ts';
import { namedPlaces } from './wrap/named-places.ts';
import { changesOf } from './wrap/part-changes.ts';
import { seamOf } from './wrap/seam.ts';
import { quarters } from './wrap/stations.ts';
import { drawWrap } from './wrap/wrap.ts';

/** What a leaf needs to know besides its tube. */
export interface LeafContext {
  /** The job's title. */
  readonly job?: string;
  readonly paperThickness: Mm;
  readonly words: Language;
  /** Whether tickets are printed in the same file: what they say stands on no card. */
  readonly ticketed?: boolean;
  /** Of a frame: where the cross of a footprint goes on its header. */
  readonly placeOf?: (solution: TubeSolution, end: EndName, part: number) => readonly Fact[];
}

/**
 * One coped end as a leaf. Lengths are written in the unit in which the tube's size was, and in the other. Throws a
 * RangeError where the end is plain or not asked for: it has no leaf.
 */
export function drawLeaf(solution: TubeSolution, endName: EndName, context: LeafContext): CardedLeaf {
  const cope = solution.ends[endName];
  if (cope?.kind !== 'coped') throw new RangeError(`End ${endName} of ${solution.tube.name} is not coped.`);
  const { words } = context;
  const units = unitsOfTube(solution.tube);
  const { section } = solution;
  const { girth, turn } = section;
  const names = namesOf(solution, endName, words, isShared(solution, endName, context));
  const places = namedPlaces(cope, words).map((place) => place.station);
  const named = [...places, ...quarters(turn)];
  const seam = seamOf(
    cope,
    named,
    [...changes(cope), ...foldStations(section)],
    solution.hand === 'opposite' ? -1 : 1,
  );
  const flat = flatOf(endName, section, seam, context.paperThickness);
  const edge = baseEdgeOf(solution, endName);
  const base = edge.setback;
  const facts = cardFactsOf(solution, cope, context.job, units, words);
  const title = words.leaf.title(names.tube, endName, names.hand === 'opposite');
  const key = drawingKey(title, [base, seam, cope.throat.setback, cope.longPoint.setback], facts);
  const distances = words.leaf.fromBase({ ...edge, other: otherEnd(endName) }, units);
  const numbers = leafNumbers(solution, endName, context.paperThickness);
  const wrap = drawWrap(`wrap:${key}`, flat, cope, base, {
    names,
    distances,
    mark: words.leaf.mark(markOf(numbers)),
    seam: words.leaf.seam(girth + tapeRound(solution.tube.section), units),
    language: words,
  });
  const ticks = wrap.ticked ? [factOf('beside', words.card.labels.ticks, words.card.ticks)] : [];
  const { ticketed = false } = context;
  const told = ticketed ? [] : [...facts, ...ticks];
  const card = drawCard(`card:${key}`, names, told, wrap.beside, cope, words, ticketed);
  const of = subjectOf(solution, endName);
  return {
    title,
    numbers,
    wrap: { ...wrap.drawing, of: { ...of, place: 'leaf' } },
    card: { ...card, of: { ...of, place: 'card' } },
    beside: wrap.beside.length > 0,
    joint: flat.bodyWay === 1 ? 'down' : 'up',
    keepWhole: keepWholeOf(flat, cope, base, wrap.cut),
  };
}

/** Whether one leaf of an end is printed for both hands: on a card some numbers of its tube would be one hand's. */
export function isShared(solution: TubeSolution, end: EndName, { ticketed = false }: LeafContext): boolean {
  return ticketed && servesBothHands(solution, end);
}

/** Where a union's cut goes over from one header to another. */
function changes(cope: Cope): number[] {
  if (cope.end.parts.length === 1) return [];
  const { turn, girth } = cope.joint.section;
  return changesOf(cope.cut, curveOf(cope, cope.cut, 0, girth / turn)).map(({ station }) => station);
}
