import type { Header, Tube } from '../job/job.ts';
import { headerFactsOf } from '../job/kinds.ts';
import { tubeFactsOf } from '../job/sections.ts';
import type { Radians } from '../measure/units.ts';
import type { TubeSolution } from '../saddle/solve.ts';
import type { Language } from '../words/language.ts';
import { type Doubt, partsAt } from './size-as-meant.ts';

/** How the two sides are called in names; German is the other language of many a shop. */
const SIDES = /(?<![\p{L}\p{N}])(?:(left|links|port|lh?)|(right|rechts|starboard|rh?))(?![\p{L}\p{N}])/iu;

/**
 * Two tubes whose names differ by the side alone, and which are mirror images of one another but for some signs that were not turned.
 * Told of the later one.
 */
export function unlikePairs(
  solutions: readonly TubeSolution[],
  { warnings }: Language,
): readonly (readonly [TubeSolution, NonNullable<Doubt>])[] {
  const others = new Map<string, TubeSolution>();
  return solutions.flatMap((solution) => {
    const { tube, hand } = solution;
    const side = SIDES.exec(tube.name);
    if (!side || tube.pair || hand === 'opposite') return [];
    const key = tube.name.replace(SIDES, '').toLowerCase();
    const other = others.get(key);
    others.set(key, solution);
    if (!other || !isHalfMirrored(other.tube, tube)) return [];
    return [[solution, warnings.asMeant.unlikePair(other.tube.name)] as const];
  });
}

/** Whether two tubes agree in size, and of what has a sign in both some is turned and some is not. */
function isHalfMirrored(one: Tube, other: Tube): boolean {
  if (sizesOf(one) !== sizesOf(other)) return false;
  const [first, second] = [turnedOf(one), turnedOf(other)];
  const same = first.map((value, i) => Math.abs(value - (second[i] ?? 0)) < 1e-9);
  const turned = first.map((value, i) => Math.abs(value + (second[i] ?? 0)) < 1e-9);
  const isEither = same.every((each, i) => each || turned[i]);
  return isEither && !same.every((each) => each) && !turned.every((each) => each);
}

/** All that a mirror leaves as it is. */
function sizesOf({ section, wall, between, ends }: Tube): string {
  const lengths = Object.values(tubeFactsOf(section).lengths).map(({ mm }) => mm);
  const whole = [...lengths, wall?.mm ?? 0, between && 'mm' in between ? between.mm : 0];
  const ofEnds = partsAt(ends).map(({ onto, angle, clock, shift }) => [
    headerFactsOf(onto).setting,
    ...[angle.rad, shift.mm, Math.cos(clock.rad), Math.cos(ownTurn(onto))].map((each) => each.toFixed(6)),
  ]);
  return [whole.map((mm) => mm.toFixed(6)), ...ofEnds].join();
}

/** All that a mirror turns; half a turn is its own mirror image, as its sine is nought. */
function turnedOf({ ends }: Tube): readonly number[] {
  return partsAt(ends).flatMap(({ onto, clock, offset }) => [
    Math.sin(clock.rad),
    offset.mm,
    Math.sin(ownTurn(onto)),
  ]);
}

/** How far a header is turned about its own axis. */
function ownTurn(onto: Header): Radians {
  if (onto.kind === 'box') return onto.roll.rad;
  return onto.kind === 'bend' ? onto.centre.rad : 0;
}
