import { beforeAll, describe, expect, test } from 'vitest';
import { howMany } from '../count.ts';
import type { AskedEnd } from './asked-end.ts';
import { endUnderTest } from './end-under-test.ts';
import { type EndKind, randomEnd, spellEnd } from './random-ends.ts';
import { type JointKind, type RandomJoint, randomFrom, randomJoint, SEED } from './random-joints.ts';
import { distanceTo, type Sampled } from './section-curves.ts';
import { type BRepKernel, loadBRepKernel } from './solids/b-rep-kernel.ts';
import { outsideRectangle, partAt, wallOf } from './solids/implicit-headers.ts';
import { type EndName, less, type Point } from './solids/implicit-solids.ts';
import { narrowed, sectionOf } from './solids/section-of-end.ts';

// OpenCascade (LGPL, a development dependency) as an oracle: the section of the tube's surface with a bar, a plate, a bar
// with sharp or filleted edges, half a ring and two bars for a bend, and with the headers of a union fused into one body.
// Its own points mostly lie within 1e-7 mm of both surfaces; now and then its approximation does not hold that (4e-6 mm was
// seen beside a graze). Such a section is passed over, counted, and another is drawn.

const AGREE = 1e-6;
const SOUND = 2e-7;
/** In mm, an edge between two headers of a union. */
const PLACED = 1e-3;

let kernel: BRepKernel;
beforeAll(async () => {
  kernel = await loadBRepKernel();
});

interface Tally {
  compared: number;
  worst: number;
  edges: number;
  passedOver: number;
}

/** Holds one end against the kernel's section; false where that is unsound. */
function compare(ask: AskedEnd, end: EndName, depth: number, stations: number, tally: Tally): boolean {
  const curves = sectionOf(kernel, ask, end, depth);
  const sound = offBothSurfaces(curves, ask, end, depth) <= SOUND;
  if (sound) {
    for (const point of contactPoints(ask, end, depth, stations)) {
      const apart = distanceTo(curves, point);
      if (!(apart <= AGREE))
        expect.fail(`${apart} mm off the section: depth ${depth}, ${end}, ${spellEnd(ask)}`);
      tally.worst = Math.max(tally.worst, apart);
      tally.compared++;
    }
    for (const point of meetingPoints(ask, end, depth)) {
      const off = awayFromEnds(curves, point);
      if (!(off <= PLACED)) expect.fail(`an edge ${off} mm off: depth ${depth}, ${end}, ${spellEnd(ask)}`);
      tally.edges++;
    }
  } else tally.passedOver++;
  for (const { curve } of curves) curve.free();
  return sound;
}

function tell(what: string, { compared, worst, edges, passedOver }: Tally): void {
  console.info(
    `${what}: ${compared} points, worst ${worst.toExponential(2)} mm; ${edges} edges; ${passedOver} sections passed over`,
  );
}

describe(`points of our line lie on the kernel's section (JOINT_SEED=${SEED})`, () => {
  const JOINTS = howMany({ short: 4, deep: 204 });
  // Tangent surfaces (equal tubes without an offset) have no clean section: those are for the brute force.
  const SORTS: readonly JointKind[] = ['plain', 'offset', 'wider', 'thick'];

  test(`of ${JOINTS} random joints of round tubes`, () => {
    const random = randomFrom(SEED);
    const tally: Tally = { compared: 0, worst: 0, edges: 0, passedOver: 0 };
    for (let joints = 0; joints < JOINTS; ) {
      const draw = joints + tally.passedOver;
      const ask = endOf(randomJoint(random, SORTS[draw % SORTS.length] ?? 'plain'));
      const depth = draw % 3 === 0 ? ask.wall : 0;
      if (compare(ask, draw % 8 < 4 ? 'A' : 'B', depth, 24, tally)) joints++;
    }
    tell(`${JOINTS} joints`, tally);
    expect(tally.compared).toBeGreaterThan(JOINTS * 24 * 0.5);
    expect(tally.passedOver).toBeLessThan(JOINTS * 0.05);
  });

  const ENDS_A_KIND = howMany({ short: 2, deep: 8 });
  const KINDS: readonly EndKind[] = ['plate', 'mitre', 'round', 'box', 'sharp', 'rolled', 'bend', 'union'];
  const cases = KINDS.flatMap((kind) => [
    { kind, tube: 'round' as const },
    { kind, tube: 'rectangular' as const },
  ]);

  test.each(cases)('$tube tube on $kind', ({ kind, tube }) => {
    const random = randomFrom(SEED + 200 + KINDS.indexOf(kind) * 2 + (tube === 'round' ? 0 : 1));
    const tally: Tally = { compared: 0, worst: 0, edges: 0, passedOver: 0 };
    for (let ends = 0; ends < ENDS_A_KIND; ) {
      const ask = drawn(randomEnd(random, kind, tube));
      if (kind === 'union' && ask.parts.some(({ header }) => header.kind === 'bend')) continue;
      const depth = ends % 3 === 0 && hasInside(ask) ? ask.wall : 0;
      if (compare(ask, ends % 2 === 0 ? 'A' : 'B', depth, 16, tally)) ends++;
    }
    tell(`${tube} on ${kind}`, tally);
    expect(tally.compared).toBeGreaterThan(ENDS_A_KIND * 16 * 0.4);
    expect(tally.passedOver).toBeLessThanOrEqual(2 * ENDS_A_KIND);
    if (kind === 'union') expect(tally.edges).toBeGreaterThan(0);
  });
});

function endOf({ tube, wall, header, ...place }: RandomJoint): AskedEnd {
  return {
    tube: { kind: 'round', radius: tube },
    wall,
    parts: [{ header: { kind: 'round', radius: header }, shift: 0, ...place }],
  };
}

/** Where a rounded edge meets half a ring the kernel's section is unsound as often as not: those edges are sharp here. */
function drawn(ask: AskedEnd): AskedEnd {
  const { tube, parts } = ask;
  if (tube.kind === 'round' || parts[0].header.kind !== 'bend') return ask;
  return { ...ask, tube: { ...tube, corner: 0 } };
}

/** The inside of a rectangular tube follows the outside's normals: only a corner wider than the wall has one. */
function hasInside({ tube, wall }: AskedEnd): boolean {
  return tube.kind === 'round' || tube.corner > wall;
}

function contactPoints(ask: AskedEnd, end: EndName, depth: number, stations: number): Point[] {
  const { outside, inside } = endUnderTest(ask);
  const line = depth === 0 ? outside : inside;
  const { turn, at } = wallOf(ask);
  return Array.from({ length: stations }, (_, i) => ((i + 0.37) * turn) / stations).flatMap((station) => {
    const { setback, contact } = line(station);
    const [x, y] = at(station, depth);
    const point: Point = [x, y, end === 'A' ? setback : -setback];
    return contact ? [point] : [];
  });
}

/** How far the kernel's own points lie off tube or header, at worst. */
function offBothSurfaces(curves: readonly Sampled[], ask: AskedEnd, end: EndName, depth: number): number {
  const headers = ask.parts.map((part) => partAt(end, part).solid);
  const header = (point: Point): number => Math.min(...headers.map((solid) => solid(point)));
  const { tube } = ask;
  const offTube = ([x, y]: Point): number =>
    tube.kind === 'round'
      ? Math.hypot(x, y) - tube.radius + depth
      : outsideRectangle(narrowed(tube, depth), x, y);
  const points = curves.flatMap((curve) => curve.points);
  return points.reduce((most, point) => Math.max(most, Math.abs(offTube(point)), Math.abs(header(point))), 0);
}

/** Where the line passes from one header to another that it touches too, without a step. */
function meetingPoints(ask: AskedEnd, end: EndName, depth: number): Point[] {
  const { outside, inside } = endUnderTest(ask);
  const line = depth === 0 ? outside : inside;
  const { turn, at } = wallOf(ask);
  const step = turn / 720;
  return Array.from({ length: 720 }, (_, i) => i * step).flatMap((from) => {
    let [low, high] = [from, from + step];
    const { part } = line(low);
    if (line(high).part === part) return [];
    for (let middle = (low + high) / 2; low < middle && middle < high; middle = (low + high) / 2) {
      if (line(middle).part === part) low = middle;
      else high = middle;
    }
    const [before, after] = [line(low), line(high)];
    const meets = before.contact && after.contact && Math.abs(before.setback - after.setback) < PLACED / 10;
    const [x, y] = at(low, depth);
    return meets ? [[x, y, end === 'A' ? before.setback : -before.setback]] : [];
  });
}

/** How far a point lies from the nearest end of the kernel's curves. */
function awayFromEnds(curves: readonly Sampled[], point: Point): number {
  const ends = curves.flatMap(({ points }) => [points[0], points.at(-1)]);
  return Math.min(...ends.map((at) => (at ? Math.hypot(...less(at, point)) : Number.POSITIVE_INFINITY)));
}
