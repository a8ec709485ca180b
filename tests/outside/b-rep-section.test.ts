import { beforeAll, expect, test } from 'vitest';
import { type BRepKernel, headerBody, loadBRepKernel, type SectionCurve } from './b-rep-kernel.ts';
import { type EndName, headerFrame, less, type Point } from './implicit-solids.ts';
import { linesUnderTest } from './joint-under-test.ts';
import { type JointKind, type RandomJoint, randomFrom, randomJoint, SEED, spell } from './random-joints.ts';

// OpenCascade (LGPL, a development dependency) as an oracle: the section of tube and header. Its own points lie within
// 6e-8 mm of both surfaces.

const AGREE = 1e-6;
const JOINTS = 208;
const STATIONS = 24;

/** Tangent surfaces (equal tubes without an offset) have no clean section: those are for the brute force. */
const KINDS: readonly JointKind[] = ['plain', 'offset', 'wider', 'thick'];

let kernel: BRepKernel;
beforeAll(async () => {
  kernel = await loadBRepKernel();
});

test(`points of our line lie on the kernel's section of ${JOINTS} random joints (JOINT_SEED=${SEED})`, () => {
  const random = randomFrom(SEED);
  let worst = 0;
  let compared = 0;
  for (let i = 0; i < JOINTS; i++) {
    const ask = randomJoint(random, KINDS[i % KINDS.length] ?? 'plain');
    const end: EndName = i % 8 < 4 ? 'A' : 'B';
    const face = i % 3 === 0 ? 'inside' : 'outside';
    const points = contactPoints(ask, end, face);
    const curves = sectionOf(ask, end, face);
    for (const point of points) {
      const apart = distanceTo(curves, point);
      if (!(apart <= AGREE)) expect.fail(`${apart} mm off the section: ${face}, end ${end}, ${spell(ask)}`);
      worst = Math.max(worst, apart);
      compared++;
    }
    for (const { curve } of curves) curve.free();
  }
  console.info(`${compared} points on ${JOINTS} sections, worst ${worst.toExponential(2)} mm`);
  expect(compared).toBeGreaterThan(JOINTS * STATIONS * 0.5);
});

function radiusOf(ask: RandomJoint, face: 'outside' | 'inside'): number {
  return face === 'outside' ? ask.tube : ask.tube - ask.wall;
}

function contactPoints(ask: RandomJoint, end: EndName, face: 'outside' | 'inside'): Point[] {
  const line = linesUnderTest(ask)[face];
  const radius = radiusOf(ask, face);
  const points: Point[] = [];
  for (let i = 0; i < STATIONS; i++) {
    const station = ((i + 0.37) * 2 * Math.PI) / STATIONS;
    const { setback, contact } = line(station);
    const z = end === 'A' ? setback : -setback;
    if (contact) points.push([radius * Math.cos(station), radius * Math.sin(station), z]);
  }
  return points;
}

interface Sampled {
  readonly curve: SectionCurve;
  readonly points: readonly Point[];
}

function sectionOf(ask: RandomJoint, end: EndName, face: 'outside' | 'inside'): readonly Sampled[] {
  const radius = radiusOf(ask, face);
  const reach = 3 * ((ask.header + radius) / Math.sin(ask.angle) + radius);
  const tube = kernel.cylinder([0, 0, -reach], [0, 0, 1], radius, 2 * reach);
  const header = headerBody(kernel, headerFrame({ end, ...ask }), ask.header, 2 * reach);
  const curves = kernel.section(tube, header);
  tube.free();
  header.free();
  return curves.map((curve) => ({ curve, points: samplesOf(curve) }));
}

const SAMPLES = 240;

function samplesOf(curve: SectionCurve): Point[] {
  return Array.from({ length: SAMPLES + 1 }, (_, i) => curve.at(parameterAt(curve, i)));
}

function parameterAt({ first, last }: SectionCurve, sample: number): number {
  return first + ((last - first) * sample) / SAMPLES;
}

/** Distance from a point to the curves: from the nearest samples of each, closed in on by thirds. */
function distanceTo(curves: readonly Sampled[], point: Point): number {
  let least = Number.POSITIVE_INFINITY;
  for (const { curve, points } of curves) {
    const away = points.map((sample) => distance(sample, point));
    for (let i = 0; i <= SAMPLES; i++) {
      const here = away[i] ?? 0;
      if (here > (away[i - 1] ?? Infinity) || here > (away[i + 1] ?? Infinity)) continue;
      if (here > chordAbout(points, i)) continue;
      least = Math.min(least, closeIn(curve, point, i));
    }
  }
  return least;
}

/** A curve that comes to the point near this sample has it within its neighbours' reach. */
function chordAbout(points: readonly Point[], sample: number): number {
  const here = points[sample];
  let reach = 0;
  for (const next of [points[sample - 1], points[sample + 1]]) {
    if (here && next) reach = Math.max(reach, distance(here, next));
  }
  return reach;
}

function closeIn(curve: SectionCurve, point: Point, sample: number): number {
  const away = (parameter: number): number => distance(curve.at(parameter), point);
  let low = parameterAt(curve, Math.max(0, sample - 1));
  let high = parameterAt(curve, Math.min(SAMPLES, sample + 1));
  for (let i = 0; i < 60; i++) {
    const left = low + (high - low) / 3;
    const right = high - (high - low) / 3;
    if (away(left) < away(right)) high = right;
    else low = left;
  }
  return away((low + high) / 2);
}

function distance(a: Point, b: Point): number {
  return Math.hypot(...less(a, b));
}
