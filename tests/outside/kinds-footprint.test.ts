import { describe, expect, test } from 'vitest';
import type { Cope } from '../../src/saddle/cope.ts';
import { footprintOf, type OutlinePiece } from '../../src/saddle/footprint.ts';
import { howMany } from '../count.ts';
import type { AskedEnd, AskedTube } from './asked-end.ts';
import { copeUnderTest } from './end-under-test.ts';
import { type EndKind, randomEnd, spellEnd } from './random-ends.ts';
import { randomFrom, SEED } from './random-joints.ts';
import { outsideRectangle, partAt, touchesAllRound } from './solids/implicit-headers.ts';
import type { Point } from './solids/implicit-solids.ts';
import { type Flat, wrapOn } from './wrapped-header.ts';

const KINDS: readonly EndKind[] = ['round', 'plate', 'box', 'sharp', 'rolled', 'union'];
const ENDS_A_KIND = howMany({ short: 3, deep: 12 });
const DRAWN = 0.002;
/** A line that passes within 1e-9 mm counts as touching, and its point then lies as far off. */
const EXACT = 2e-9;

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
