import { describe, expect, test } from 'vitest';
import type { Cope } from '../../src/saddle/cope.ts';
import { footprintLength } from '../../src/saddle/footprint.ts';
import { stretchesOf } from '../../src/saddle/stretches.ts';
import { howMany } from '../count.ts';
import { copeUnderTest } from '../outside/end-under-test.ts';
import { type EndKind, randomEnd, spellEnd } from '../outside/random-ends.ts';
import { randomFrom, SEED } from '../outside/random-joints.ts';
import { touchesAllRound } from '../outside/solids/implicit-headers.ts';

// The program's own line on the tube against its own outline on the header: two ways round to one length, neither from outside.

const KINDS: readonly EndKind[] = ['round', 'plate', 'box', 'sharp', 'rolled', 'union'];
const ENDS_A_KIND = howMany({ short: 4, deep: 12 });

/**
 * Where a union's line leaves a header beside it, the last bit of the station is worth sqrt(2 R 1e-14), some 1e-6 mm of
 * the line's length, and there are several such places; elsewhere 1e-6 holds.
 */
const GRAZES = 1e-5;

describe(`the footprint's length on every header that unrolls (JOINT_SEED=${SEED})`, () => {
  const cases = KINDS.flatMap((kind) => [
    { kind, tube: 'round' as const },
    { kind, tube: 'rectangular' as const },
  ]);

  test.each(cases)('$tube tube on $kind: as long as the outside line where it touches', ({ kind, tube }) => {
    let [compared, worst] = [0, 0];
    const random = randomFrom(SEED + 300 + KINDS.indexOf(kind) * 2 + (tube === 'round' ? 0 : 1));
    for (let i = 0; i < ENDS_A_KIND; i++) {
      const ask = randomEnd(random, kind, tube);
      if (!touchesAllRound(ask) || ask.parts.some(({ header }) => header.kind === 'bend')) continue;
      const cope = copeUnderTest(ask);
      const parts = ask.parts.map((_, place) => footprintLength(cope, 0, place));
      const off = Math.abs(parts.reduce((sum, length) => sum + length, 0) - lengthOnTube(cope));
      worst = Math.max(worst, off);
      compared++;
      if (!(off <= (kind === 'union' ? GRAZES : 1e-6)))
        expect.fail(`${off} mm longer or shorter: ${spellEnd(ask)}`);
    }
    console.info(`${tube} on ${kind}: ${compared} closed footprints, worst ${worst.toExponential(1)} mm`);
    expect(compared).toBeGreaterThan(0);
  });
});

const SCAN = 1440;
const CHORDS = 1000;

/**
 * The outside line on the unrolled tube as chords, between the stations where it has an edge, the rest taken off
 * (Richardson). A step is no part of it. More breaks do no harm, so the program's own are taken too: where a line passes
 * beside a header by less than counts as a miss, its kink is none that a scan finds.
 */
function lengthOnTube(cope: Cope): number {
  const { turn, cornersAt } = cope.joint.section;
  const beside = 1e-12 * turn;
  const breaks: readonly (readonly [number, number])[] = [
    [0, 0],
    ...edgesOf(cope),
    ...stretchesOf(cope.joint, 0).map(({ to }, i, all) => [to, all[i + 1]?.from ?? turn] as const),
    ...cornersAt(0).map((corner) => [corner - beside, corner + beside] as const),
    [turn, turn],
  ];
  const inOrder = breaks.toSorted((a, b) => a[0] - b[0]);
  return inOrder.reduce((sum, [to], i) => {
    const from = inOrder[i - 1]?.[1] ?? 0;
    if (to - from < beside) return sum;
    const [coarse, fine] = [chords(cope, from, to, CHORDS), chords(cope, from, to, 2 * CHORDS)];
    return sum + fine + (fine - coarse) / 3;
  }, 0);
}

/** The stations to both sides of where the line passes from one face or header to another: a scan, and bisection. */
function edgesOf(cope: Cope): [number, number][] {
  const step = cope.joint.section.turn / SCAN;
  const regionAt = (station: number): number => cope.outside(station).region;
  return Array.from({ length: SCAN }, (_, i) => i * step).flatMap((from) => {
    let [low, high] = [from, from + step];
    const region = regionAt(low);
    if (regionAt(high) === region) return [];
    for (let middle = (low + high) / 2; low < middle && middle < high; middle = (low + high) / 2) {
      if (regionAt(middle) === region) low = middle;
      else high = middle;
    }
    return [[low, high]];
  });
}

/** The stations stand ever closer towards both ends: beside a header the line falls off as a square root. */
function chords(cope: Cope, from: number, to: number, parts: number): number {
  const { turn, girth } = cope.joint.section;
  const at = (i: number): number => (i === parts ? to : from + (to - from) * eased(i / parts));
  let [length, before] = [0, cope.outside(from).setback];
  for (let i = 1; i <= parts; i++) {
    const here = cope.outside(at(i)).setback;
    length += Math.hypot((at(i) - at(i - 1)) * (girth / turn), here - before);
    before = here;
  }
  return length;
}

function eased(t: number): number {
  return t * t * (3 - 2 * t);
}
