import { expect, test } from 'vitest';
import { curveOf } from '../../src/saddle/cope.ts';
import { howMany } from '../count.ts';
import type { AskedEnd } from './asked-end.ts';
import { copeUnderTest } from './end-under-test.ts';
import { type EndKind, randomEnd, spellEnd } from './random-ends.ts';
import { randomFrom, SEED } from './random-joints.ts';
import { faceOf, landingOnAll, partAt, wallOf } from './solids/implicit-headers.ts';
import { landingOfLine } from './solids/implicit-solids.ts';

// Where the outside line passes from one face of a header to the next, from one header to another, or beside them, is
// found by brute force on the solids: a scan of stations, and bisection of what was met there. Where the line has a
// kink or a step at such a place, the drawn curve has to break there.

const KINDS: readonly EndKind[] = ['round', 'box', 'sharp', 'rolled', 'bend', 'union'];
const ENDS_A_KIND = howMany({ short: 5, deep: 14 });
const SCAN = 180;
/** In mm round the tube. */
const PLACED = 1e-3;

test.each(
  KINDS.flatMap((kind) => [
    { kind, tube: 'round' as const },
    { kind, tube: 'rectangular' as const },
  ]),
)(`$tube tube on $kind: the curve breaks where the solids do, JOINT_SEED=${SEED}`, ({ kind, tube }) => {
  const random = randomFrom(SEED + 100 + KINDS.indexOf(kind) * 2 + (tube === 'round' ? 0 : 1));
  let [edges, sharp, worst] = [0, 0, 0];
  for (let i = 0; i < ENDS_A_KIND; i++) {
    const ask = randomEnd(random, kind, tube);
    const cope = copeUnderTest(ask);
    const { turn, girth } = cope.joint.section;
    const broken = curveOf(cope, cope.outside, 0, girth / turn).map(({ stations }) => stations[0]);
    for (const edge of edgesOf(ask)) {
      edges++;
      if (!isSharp(ask, edge, turn / girth)) continue;
      sharp++;
      const off = Math.min(...broken.map((station) => apart(station, edge, turn) * (girth / turn)));
      if (!(off <= PLACED)) expect.fail(`no break within ${off} mm of station ${edge}: ${spellEnd(ask)}`);
      worst = Math.max(worst, off);
    }
  }
  console.info(
    `${tube} on ${kind}, seed ${SEED}: ${edges} edges, ${sharp} sharp, a break within ${worst.toExponential(2)} mm of each`,
  );
  expect(sharp).toBeGreaterThan(3);
});

function apart(a: number, b: number, turn: number): number {
  const way = (a - b) / turn;
  return turn * Math.abs(way - Math.round(way));
}

/** The stations at which something else is met. */
function edgesOf(ask: AskedEnd): number[] {
  const { turn } = wallOf(ask);
  const met = metAt(ask);
  const step = turn / SCAN;
  const scan = Array.from({ length: SCAN + 1 }, (_, i) => met(i * step));
  return scan.flatMap((here, i) => {
    const before = scan[i - 1];
    if (before === undefined || before === here) return [];
    let [low, high] = [(i - 1) * step, i * step];
    while (high - low > 1e-12 * turn) {
      const middle = (low + high) / 2;
      if (met(middle) === before) low = middle;
      else high = middle;
    }
    return [(low + high) / 2];
  });
}

/** What the outside meets at a station, in words. */
function metAt(ask: AskedEnd): (station: number) => string {
  const { at } = wallOf(ask);
  const headers = ask.parts.map((part) => partAt('A', part));
  return (station) => {
    const [x, y] = at(station, 0);
    const { setback, contact } = landingOnAll(headers, x, y);
    const each = headers.map((header) => landingOfLine(header, x, y));
    const place = each.findIndex((one) => one.contact === contact && Math.abs(one.setback - setback) < 1e-9);
    const part = ask.parts[place];
    if (!part) throw new Error('the line met one of the parts');
    return contact ? `${place} ${faceOf('A', part, [x, y, setback])}` : `${place} beside`;
  };
}

/** Has the line a step here, or a kink of more than a tenth? */
function isSharp(ask: AskedEnd, station: number, perMm: number): boolean {
  const { at } = wallOf(ask);
  const headers = ask.parts.map((part) => partAt('A', part));
  const height = (mm: number): number => landingOnAll(headers, ...at(station + mm * perMm, 0)).setback;
  const [before, after] = [height(-1e-6), height(1e-6)];
  const kink = (height(1e-3) - after - (before - height(-1e-3))) / 1e-3;
  return Math.abs(after - before) > 0.05 || Math.abs(kink) > 0.1;
}
