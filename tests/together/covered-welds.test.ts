import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { CoveredWeld } from '../../src/together/covered-welds.ts';
import { standingFrame } from '../../src/together/frame-notes.ts';
import { howMany } from '../count.ts';
import { drawnFrames } from '../frame/random-frames.ts';
import { along, crossOf, dotOf, firstMet, minus, type RayScene, unitAlong } from '../frame/ray-march.ts';
import { rayTubes } from '../frame/ray-tubes.ts';
import { readLines, readText } from '../frame/read-lines.ts';

const ROUND = 'od: 42.4, wall: 2.6';

function coveredOf(...file: Parameters<typeof readLines>): readonly CoveredWeld[] {
  return standingFrame(readLines(...file))?.covered ?? [];
}

test('a brace from the foot of a post lies over the weld of the post on the sill', () => {
  const points = { a: '[-500, 0, 0]', b: '[500, 0, 0]', o: '[0, 0, 0]', up: '[0, 0, 800]' };
  const tubes = [
    `name: sill, along: [a, b], ${ROUND}`,
    `name: post, along: [o, up], ${ROUND}`,
    `name: brace, along: [o, [400, 0, 400]], ${ROUND}`,
  ];
  expect(coveredOf(points, tubes)).toEqual([{ tube: 1, end: 'A', on: 0, under: [2] }]);
});

test('a brace that lands clear of the post does not', () => {
  // At 45 degrees it covers 21.2 + 30 on both sides of where its centre line comes out, 21.2 from its point: from 70 on.
  const points = { a: '[-500, 0, 0]', b: '[500, 0, 0]', o: '[0, 0, 0]', up: '[0, 0, 800]' };
  const tubes = [
    `name: sill, along: [a, b], ${ROUND}`,
    `name: post, along: [o, up], ${ROUND}`,
    `name: brace, along: [[100, 0, 0], [500, 0, 400]], ${ROUND}`,
  ];
  expect(coveredOf(points, tubes)).toEqual([]);
});

test('a leg under a mitre lies over its weld, on both tubes; so does one under a splice', () => {
  const corner = { a: '[0, 0, 0]', b: '[800, 0, 0]', c: '[0, 800, 0]' };
  const legs = (other: string) => [
    `name: one, along: [b, a], ${ROUND}`,
    `name: other, along: [a, ${other}], ${ROUND}`,
    `name: leg, along: [a, [0, 0, -700]], ${ROUND}`,
  ];
  const both = [
    { tube: 1, end: 'A', on: 0, under: [2] },
    { tube: 0, end: 'B', on: 1, under: [2] },
  ];
  expect(coveredOf(corner, legs('c'))).toEqual(both);
  expect(coveredOf({ ...corner, c: '[-800, 0, 0]' }, legs('c'))).toEqual(both);
});

/** A weld of a tube's first end on a header, and another tube that lands on both, by their places. */
interface Crossing {
  readonly tube: number;
  readonly on: number;
  readonly over: number;
}

/** How deep, at most, the weld lies under that tube, by rays alone at so many looks round it; undefined of tubes that are not round. */
function deepestUnder(scene: RayScene, { tube, on, over }: Crossing, looks: number): number | undefined {
  const [own, later] = [scene.tubes[tube], scene.tubes[over]];
  if (own?.ends.A.kind !== 'onto' || later?.ends.A.kind !== 'onto' || !('radius' in own.size))
    return undefined;
  if (!('radius' in later.size)) return undefined;
  const { headers } = own.ends.A;
  const [body, its] = [unitAlong(minus(own.to, own.from)), unitAlong(minus(later.to, later.from))];
  const side = unitAlong(crossOf(body, Math.abs(body[0]) < 0.7 ? [1, 0, 0] : [0, 1, 0]));
  const aside = crossOf(body, side);
  let deepest = Number.NEGATIVE_INFINITY;
  for (let look = 0; look < looks; look++) {
    const turn = (2 * Math.PI * look) / looks;
    const { radius } = own.size;
    const base = along(along(own.from, radius * Math.cos(turn), side), radius * Math.sin(turn), aside);
    const met = firstMet(scene, headers, base, body);
    const onIt = firstMet(
      scene,
      headers.filter((each) => each.tube === on),
      base,
      body,
    );
    if (met === undefined || met !== onIt) continue;
    const place = along(base, met, body);
    const height = dotOf(minus(place, later.from), its);
    const foot = along(place, -height, its);
    const depth = later.size.radius - Math.hypot(...minus(foot, later.from));
    if (depth <= deepest) continue;
    const first = firstMet(scene, later.ends.A.headers, foot, its);
    if (first !== undefined && height > first - 0.1) deepest = depth;
  }
  return deepest;
}

/** Where a few looks do not find what is told, or tell of more, as many as tell a short stretch of weld. */
const [FEW, MANY] = [36, 720];
/** It is told from 1 mm on, and the looks of both lie a little apart. */
const [SURELY_CLEAR, SURELY_UNDER] = [0.7, 1.3];
const FRAMES = howMany({ short: 1, deep: 40, asked: 'FRAMES' });

test('of random nodes just the welds that rays find under a later tube are told', () => {
  let [told, clear] = [0, 0];
  fc.assert(
    fc.property(fc.noBias(drawnFrames), (frame) => {
      const job = readText(frame.text);
      const covered = standingFrame(job)?.covered ?? [];
      const scene = { tubes: rayTubes(frame, job), fine: 2 };
      const headersOf = (tube: number): readonly number[] => {
        const end = scene.tubes[tube]?.ends.A;
        return end?.kind === 'onto' ? end.headers.map((header) => header.tube) : [];
      };
      for (const [tube] of scene.tubes.entries()) {
        for (const on of headersOf(tube)) {
          for (const [over] of scene.tubes.entries()) {
            const headers = headersOf(over);
            if (!headers.includes(on) || !headers.includes(tube)) continue;
            const crossing = { tube, on, over };
            const isTold = covered.some(
              (each) => each.tube === tube && each.on === on && each.under.includes(over),
            );
            const isSo = (depth: number | undefined): boolean =>
              depth === undefined || (isTold ? depth > SURELY_CLEAR : depth < SURELY_UNDER);
            const few = deepestUnder(scene, crossing, FEW);
            if (!isSo(few)) expect(isSo(deepestUnder(scene, crossing, MANY)), frame.text).toBe(true);
            if (few !== undefined && isTold) told++;
            if (few !== undefined && !isTold) clear++;
          }
        }
      }
    }),
    { numRuns: FRAMES, seed: 12, endOnFailure: true },
  );
  console.info(`${FRAMES} frames: ${told} welds under a later tube, ${clear} clear of it`);
  expect(told).toBeGreaterThan(FRAMES / 2);
}, 1_800_000);
