import { beforeAll, expect, test } from 'vitest';
import { howMany } from '../count.ts';
import { between, type Random, type RandomJoint, randomFrom, SEED, spell } from './random-joints.ts';
import { headerFrame } from './solids/implicit-solids.ts';
import { loadMeshKernel, type MeshKernel } from './solids/mesh-kernel.ts';
import { volumeUnder } from './volume-under.ts';

// manifold (Apache-2.0) as an oracle of volumes. Bars of n inscribed flats are too small: the common volume of two by
// pi^2 / n^2 of itself, a bar alone by 2 pi^2 / (3 n^2).

let kernel: MeshKernel;
beforeAll(async () => {
  kernel = await loadMeshKernel();
});

const FLATS = 64;
const JOINTS = howMany({ short: 3, deep: 16 });

test(`the volume under our line is half the meshes' common volume, less their stated bias (JOINT_SEED=${SEED})`, () => {
  const random = randomFrom(SEED);
  let worst = 0;
  for (let i = 0; i < JOINTS; i++) {
    const ask = wholeLanding(random);
    const common = (flats: number): number => commonVolume(ask, flats) / 2;
    const ours = volumeUnder(ask);
    const [coarse, fine] = [common(FLATS), common(2 * FLATS)];
    const short = (ours - coarse) / ours;
    expect(short, spell(ask)).toBeGreaterThan(0);
    expect(short, spell(ask)).toBeLessThan((1.5 * Math.PI ** 2) / FLATS ** 2);
    const extrapolated = fine + (fine - coarse) / 3;
    worst = Math.max(worst, Math.abs(extrapolated / ours - 1));
  }
  console.info(
    `common volume, extrapolated from ${FLATS} and ${2 * FLATS} flats: worst ${worst.toExponential(2)}`,
  );
  expect(worst).toBeLessThan((Math.PI / FLATS) ** 4 * 2);
});

test(`a coped tube weighs what our lines leave of it, at both ends (JOINT_SEED=${SEED})`, () => {
  const random = randomFrom(SEED + 1);
  let worst = 0;
  for (let i = 0; i < JOINTS; i++) {
    const ask = wholeLanding(random);
    const end = i % 2 === 0 ? 'A' : 'B';
    const length = 2 * reachOf(ask);
    const bore = { ...ask, tube: ask.tube - ask.wall };
    const area = Math.PI * (ask.tube ** 2 - bore.tube ** 2);
    const ours = area * length - (volumeUnder(ask) - volumeUnder(bore));
    const [coarse, fine] = [copedVolume(ask, end, length, FLATS), copedVolume(ask, end, length, 2 * FLATS)];
    const extrapolated = fine + (fine - coarse) / 3;
    worst = Math.max(worst, Math.abs(extrapolated / ours - 1));
    expect(Math.abs(coarse / ours - 1), spell(ask)).toBeLessThan((1.5 * Math.PI ** 2) / FLATS ** 2);
  }
  console.info(
    `coped tubes, extrapolated from ${FLATS} and ${2 * FLATS} flats: worst ${worst.toExponential(2)}`,
  );
  expect(worst).toBeLessThan((Math.PI / FLATS) ** 4 * 2);
});

/** A tube that lands wholly on its header, so that the header cuts it in two. */
function wholeLanding(random: Random): RandomJoint {
  const header = between(random, 15, 60);
  const tube = header * between(random, 0.2, 0.85);
  const room = 0.95 * header - tube;
  return {
    header,
    tube,
    wall: tube * between(random, 0.05, 0.4),
    angle: (between(random, 30, 150) * Math.PI) / 180,
    clock: between(random, 0, 2 * Math.PI),
    offset: between(random, -room, room),
  };
}

function reachOf({ header, tube, angle }: RandomJoint): number {
  return 1.5 * ((header + tube) / Math.sin(angle) + tube);
}

function commonVolume(ask: RandomJoint, flats: number): number {
  const reach = reachOf(ask);
  const tube = kernel.uprightBar(ask.tube, -reach, reach, flats);
  const header = kernel.headerBar(headerFrame({ end: 'A', ...ask }), ask.header, 4 * reach, flats);
  return tube.intersect(header).volume();
}

/** The tube from the work point out to this length, what the header takes cut off, and what lies beyond thrown away. */
function copedVolume(ask: RandomJoint, end: 'A' | 'B', length: number, flats: number): number {
  const [low, high] = [-length, length];
  const outer = kernel.uprightBar(ask.tube, low, high, flats);
  const bore = kernel.uprightBar(ask.tube - ask.wall, low - 1, high + 1, flats);
  const header = kernel.headerBar(headerFrame({ end, ...ask }), ask.header, 4 * length, flats);
  const parts = outer.subtract(bore).subtract(header).decompose();
  const body = parts.filter((part) => {
    const { min, max } = part.boundingBox();
    return end === 'A' ? max[2] > length - 1e-6 : min[2] < -length + 1e-6;
  });
  return body.reduce((sum, part) => sum + part.volume(), 0);
}
