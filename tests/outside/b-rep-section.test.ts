import { beforeAll, expect, test } from 'vitest';
import { linesUnderTest } from './joint-under-test.ts';
import { type JointKind, type RandomJoint, randomFrom, randomJoint, SEED, spell } from './random-joints.ts';
import { distanceTo, type Sampled, sampled } from './section-curves.ts';
import { type BRepKernel, headerBody, loadBRepKernel } from './solids/b-rep-kernel.ts';
import { type EndName, headerFrame, type Point, roundBar } from './solids/implicit-solids.ts';

// OpenCascade (LGPL, a development dependency) as an oracle: the section of tube and header. Its own points mostly lie
// within 1e-7 mm of both surfaces; now and then its approximation does not hold that (4e-6 mm was seen beside a graze).
// Such a section is passed over, counted, and another joint is drawn.

const AGREE = 1e-6;
const SOUND = 2e-7;
const JOINTS = 204;
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
  let passedOver = 0;
  for (let joints = 0; joints < JOINTS; ) {
    const draw = joints + passedOver;
    const ask = randomJoint(random, KINDS[draw % KINDS.length] ?? 'plain');
    const end: EndName = draw % 8 < 4 ? 'A' : 'B';
    const face = draw % 3 === 0 ? 'inside' : 'outside';
    const curves = sectionOf(ask, end, face);
    if (offBothSurfaces(curves, ask, end, radiusOf(ask, face)) <= SOUND) {
      joints++;
      for (const point of contactPoints(ask, end, face)) {
        const apart = distanceTo(curves, point);
        if (!(apart <= AGREE)) expect.fail(`${apart} mm off the section: ${face}, end ${end}, ${spell(ask)}`);
        worst = Math.max(worst, apart);
        compared++;
      }
    } else passedOver++;
    for (const { curve } of curves) curve.free();
  }
  console.info(
    `${compared} points on ${JOINTS} sections, worst ${worst.toExponential(2)} mm; ${passedOver} passed over`,
  );
  expect(compared).toBeGreaterThan(JOINTS * STATIONS * 0.5);
  expect(passedOver).toBeLessThan(JOINTS * 0.05);
});

/** How far the kernel's own points lie off tube or header, at worst. */
function offBothSurfaces(curves: readonly Sampled[], ask: RandomJoint, end: EndName, radius: number): number {
  const header = roundBar(headerFrame({ end, ...ask }), ask.header);
  let worst = 0;
  for (const point of curves.flatMap(({ points }) => points)) {
    worst = Math.max(worst, Math.abs(Math.hypot(point[0], point[1]) - radius), Math.abs(header(point)));
  }
  return worst;
}

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

function sectionOf(ask: RandomJoint, end: EndName, face: 'outside' | 'inside'): readonly Sampled[] {
  const radius = radiusOf(ask, face);
  const reach = 3 * ((ask.header + radius) / Math.sin(ask.angle) + radius);
  const tube = kernel.cylinder([0, 0, -reach], [0, 0, 1], radius, 2 * reach);
  const header = headerBody(kernel, headerFrame({ end, ...ask }), ask.header, 2 * reach);
  const curves = kernel.section(tube, header);
  tube.free();
  header.free();
  return sampled(curves);
}
