import { describe, expect, test } from 'vitest';
import type { Cope } from '../../src/saddle/cope.ts';
import { footprintLength, footprintOf, type OutlinePiece } from '../../src/saddle/footprint.ts';
import { stretchesOf } from '../../src/saddle/stretches.ts';
import { howMany } from '../count.ts';
import type { AskedEnd, AskedTube } from './asked-end.ts';
import { copeUnderTest } from './end-under-test.ts';
import { type EndKind, randomEnd, spellEnd } from './random-ends.ts';
import { randomFrom, SEED } from './random-joints.ts';
import { landingOnAll, outsideRectangle, partAt, wallOf } from './solids/implicit-headers.ts';
import type { Point } from './solids/implicit-solids.ts';
import { type Flat, wrapOn } from './wrapped-header.ts';

const KINDS: readonly EndKind[] = ['round', 'plate', 'box', 'sharp', 'rolled', 'union'];
const ENDS_A_KIND = howMany({ short: 6, deep: 12 });
const DRAWN = 0.002;
/** A line that passes within 1e-9 mm counts as touching, and its point then lies as far off. */
const EXACT = 2e-9;

/**
 * Where a union's line leaves a header beside it, the last bit of the station is worth sqrt(2 R 1e-14), some 1e-6 mm of
 * the line's length, and there are several such places; elsewhere 1e-6 holds.
 */
const GRAZES = 1e-5;

describe(`the footprint on every header that unrolls (JOINT_SEED=${SEED})`, () => {
  const cases = KINDS.flatMap((kind) => [
    { kind, tube: 'round' as const },
    { kind, tube: 'rectangular' as const },
  ]);

  test.each(cases)(
    '$tube tube on $kind: rolled up on the header, it lies on the tube too',
    ({ kind, tube }) => {
      let [exact, drawn] = [0, 0];
      eachEnd(kind, tube, (ask, cope) => {
        ask.parts.forEach((part, place) => {
          if (part.header.kind === 'bend') return;
          const wrap = wrapOn(part);
          const { solid } = partAt('A', part);
          for (const piece of footprintOf(cope, 0, place).runs.flat()) {
            for (const end of [piece[0], piece[3]]) {
              const point = wrap(end);
              const off = Math.max(Math.abs(offTube(ask.tube, point)), Math.abs(solid(point)));
              exact = Math.max(exact, off);
              if (!(off <= EXACT)) expect.fail(`${off} mm off tube or header: ${spellEnd(ask)}`);
            }
            for (const t of [0.15, 0.3, 0.5, 0.7, 0.85]) {
              const off = Math.abs(offTube(ask.tube, wrap(pointOf(piece, t))));
              drawn = Math.max(drawn, off);
              if (!(off <= DRAWN))
                expect.fail(`the drawn outline is ${off} mm off the tube: ${spellEnd(ask)}`);
            }
          }
        });
      });
      console.info(
        `${tube} on ${kind}: ends of pieces ${exact.toExponential(1)} mm off, drawn ${drawn.toExponential(1)}`,
      );
    },
  );

  test.each(cases)(
    '$tube tube on $kind: closed where all round touches, open where some misses',
    ({ kind, tube }) => {
      let [closed, open] = [0, 0];
      eachEnd(kind, tube, (ask, cope) => {
        if (ask.parts.length > 1) return;
        const outline = footprintOf(cope, 0, 0);
        const whole = touchesAllRound(ask);
        if (outline.closed !== whole) expect.fail(`closed ${outline.closed}: ${spellEnd(ask)}`);
        if (whole) closed++;
        else open++;
      });
      if (kind !== 'union') expect(closed).toBeGreaterThan(0);
      if (kind !== 'union' && kind !== 'plate') expect(open).toBeGreaterThan(0);
    },
  );

  test.each(cases)('$tube tube on $kind: as long as the outside line where it touches', ({ kind, tube }) => {
    let [compared, worst] = [0, 0];
    eachEnd(kind, tube, (ask, cope) => {
      if (!touchesAllRound(ask) || ask.parts.some(({ header }) => header.kind === 'bend')) return;
      const parts = ask.parts.map((_, place) => footprintLength(cope, 0, place));
      const off = Math.abs(parts.reduce((sum, length) => sum + length, 0) - lengthOnTube(cope));
      worst = Math.max(worst, off);
      compared++;
      if (!(off <= (kind === 'union' ? GRAZES : 1e-6)))
        expect.fail(`${off} mm longer or shorter: ${spellEnd(ask)}`);
    });
    console.info(`${tube} on ${kind}: ${compared} closed footprints, worst ${worst.toExponential(1)} mm`);
    expect(compared).toBeGreaterThan(0);
  });
});

function eachEnd(kind: EndKind, tube: AskedTube['kind'], check: (ask: AskedEnd, cope: Cope) => void): void {
  const random = randomFrom(SEED + 300 + KINDS.indexOf(kind) * 2 + (tube === 'round' ? 0 : 1));
  for (let i = 0; i < ENDS_A_KIND; i++) {
    const ask = randomEnd(random, kind, tube);
    check(ask, copeUnderTest(ask));
  }
}

function offTube(tube: AskedTube, [x, y]: Point): number {
  return tube.kind === 'round' ? Math.hypot(x, y) - tube.radius : outsideRectangle(tube, x, y);
}

function pointOf(piece: OutlinePiece, t: number): Flat {
  const weights = [(1 - t) ** 3, 3 * (1 - t) ** 2 * t, 3 * (1 - t) * t * t, t ** 3];
  return piece.reduce<Flat>(
    (sum, { round, along }, i) => ({
      round: sum.round + (weights[i] ?? 0) * round,
      along: sum.along + (weights[i] ?? 0) * along,
    }),
    { round: 0, along: 0 },
  );
}

function touchesAllRound(ask: AskedEnd): boolean {
  const headers = ask.parts.map((part) => partAt('A', part));
  const { turn, at } = wallOf(ask);
  return Array.from({ length: 360 }, (_, i) => (i * turn) / 360).every(
    (station) => landingOnAll(headers, ...at(station, 0)).contact,
  );
}

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
