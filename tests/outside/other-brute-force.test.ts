import { expect, test } from 'vitest';
import { ASK_KINDS, jobFileOf, linesOf, randomEnd } from './other-joints.ts';
import {
  type AskedEnd,
  type Landed,
  landedAt,
  outsideAt,
  type PartSolid,
  solidOf,
  turnOf,
} from './other-solids.ts';
import { between, type Random, randomFrom, SEED } from './random-joints.ts';

// A second way of computing every kind of header: solids as inequalities, each line of the wall followed from the body
// until it is inside. It shares no code and no formula with the program, which is asked through the job file.

const AGREE = 1e-6;

/** How far an edge may lie from where it is: stations that another joint this near would land otherwise are passed. */
const EDGE = 1e-6;

const ROUNDS = 30;
const STATIONS = 5;

interface Tally {
  compared: number;
  missed: number;
  edges: number;
  /** Stations that pass beside a bend at the joint, to meet it elsewhere. */
  far: number;
  worst: number;
}

test.each(ASK_KINDS)(`random ends agree with the brute force: %s (JOINT_SEED=${SEED})`, (kind) => {
  const random = randomFrom(SEED + kind.length);
  const tally: Tally = { compared: 0, missed: 0, edges: 0, far: 0, worst: 0 };
  for (let i = 0; i < ROUNDS; i++) compareEnd(randomEnd(random, kind), random, tally);
  console.info(
    `${kind}: ${tally.compared} compared, ${tally.missed} of them trimmed, ${tally.edges} at an edge, ${tally.far} stations meet a bend elsewhere, worst ${tally.worst.toExponential(2)}`,
  );
  expect(tally.compared).toBeGreaterThan(ROUNDS * STATIONS * 2.4);
  expect(tally.far).toBeLessThan(ROUNDS * STATIONS * 0.1);
  expect(tally.edges).toBeLessThan(ROUNDS * STATIONS * 0.01);
});

function compareEnd(ask: AskedEnd, random: Random, tally: Tally): void {
  const lines = linesOf(ask);
  const parts = ask.parts.map((part) => solidOf(part, ask.end));
  for (let s = 0; s < STATIONS; s++) {
    const station = between(random, 0, turnOf(ask.tube));
    let far = false;
    const land = (depth: number): Landed => {
      const landed = landedInWall(ask, parts, station, depth);
      far ||= landed.far;
      return landed;
    };
    const deepest = deepestOf(land, ask.wall);
    if (far) {
      tally.far++;
      continue;
    }
    for (const [name, depth] of [
      ['outside', 0],
      ['inside', ask.wall],
    ] as const) {
      if (atEdge(ask, parts, station, depth)) {
        tally.edges++;
        continue;
      }
      const [ours, brute] = [lines[name](station), land(depth)];
      if (ours.contact !== brute.contact)
        expect.fail(`${name} at ${station}: contact is ${brute.contact}\n${jobFileOf(ask)}`);
      agree(ours.setback, brute.setback, `${name} at ${station}\n${jobFileOf(ask)}`, tally);
      if (!brute.contact) tally.missed++;
    }
    agree(lines.square(station).setback, deepest, `square at ${station}\n${jobFileOf(ask)}`, tally);
  }
}

function agree(ours: number, brute: number, what: string, tally: Tally): void {
  const apart = Math.abs(ours - brute);
  if (!(apart <= AGREE)) expect.fail(`${ours} is not ${brute}, ${apart} apart: ${what}`);
  tally.worst = Math.max(tally.worst, apart);
  tally.compared++;
}

function landedInWall(ask: AskedEnd, parts: readonly PartSolid[], station: number, depth: number): Landed {
  const { x, y, nx, ny } = outsideAt(ask.tube, station);
  return landedAt(parts, ask.end, x - depth * nx, y - depth * ny);
}

/** Does a line moved by a hair land on something else? */
function atEdge(ask: AskedEnd, parts: readonly PartSolid[], station: number, depth: number): boolean {
  const { x, y, nx, ny } = outsideAt(ask.tube, station);
  const [px, py] = [x - depth * nx, y - depth * ny];
  const here = landedAt(parts, ask.end, px, py);
  return [
    [EDGE, 0],
    [-EDGE, 0],
    [0, EDGE],
    [0, -EDGE],
  ].some(([dx = 0, dy = 0]) => {
    const beside = landedAt(parts, ask.end, px + dx, py + dy);
    return beside.contact !== here.contact || Math.abs(beside.setback - here.setback) > 1000 * EDGE;
  });
}

const ACROSS = 20;

/** The greatest over the wall's thickness: samples, both sides of every brink, and a climb about each hill of these. */
function deepestOf(land: (depth: number) => Landed, wall: number): number {
  const depths = Array.from({ length: ACROSS + 1 }, (_, i) => (i * wall) / ACROSS);
  const brinks = depths.slice(1).flatMap((depth, i) => brinkBetween(land, depths[i] ?? 0, depth));
  const nodes = [...depths, ...brinks].sort((a, b) => a - b).map((depth) => ({ depth, ...land(depth) }));
  const most = Math.max(...nodes.map(({ setback }) => setback));
  const steepest = Math.max(
    ...nodes.map((node, i) => Math.abs(node.setback - (nodes[i + 1] ?? node).setback)),
  );
  let deepest = most;
  nodes.forEach((node, i) => {
    const [before, after] = [nodes[i - 1], nodes[i + 1]].map((next) =>
      next?.contact === node.contact ? next : node,
    );
    if (!before || !after || node.setback < Math.max(before.setback, after.setback, most - steepest)) return;
    deepest = Math.max(
      deepest,
      climbed((depth) => land(depth).setback, before.depth, after.depth),
    );
  });
  return deepest;
}

/** The last place that meets and the first that misses, where there are such. */
function brinkBetween(land: (depth: number) => Landed, from: number, to: number): number[] {
  let [near, far] = [from, to];
  const { contact } = land(from);
  if (land(to).contact === contact) return [];
  for (let i = 0; i < 40; i++) {
    const middle = (near + far) / 2;
    if (land(middle).contact === contact) near = middle;
    else far = middle;
  }
  return [near, far];
}

function climbed(setback: (depth: number) => number, from: number, to: number): number {
  let [low, high] = [from, to];
  let best = -Infinity;
  while (high - low > 1e-10) {
    const left = low + (high - low) / 3;
    const right = high - (high - low) / 3;
    const [atLeft, atRight] = [setback(left), setback(right)];
    best = Math.max(best, atLeft, atRight);
    if (atLeft < atRight) low = left;
    else high = right;
  }
  return best;
}
