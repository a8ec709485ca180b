import { describe, expect, test } from 'vitest';
import { howMany } from '../count.ts';
import { linesUnderTest, tableJoint } from './joint-under-test.ts';
import {
  between,
  JOINT_KINDS,
  type RandomJoint,
  randomFrom,
  randomJoint,
  SEED,
  spell,
} from './random-joints.ts';
import {
  deepestAcrossWall,
  dot,
  type EndName,
  headerFrame,
  type Landing,
  landingAt,
  type Point,
  roundBar,
  roundHeaderAt,
} from './solids/implicit-solids.ts';

// The second way of computing: solids as inequalities, each line of the wall followed until it is inside
// (implicit-solids.ts). It shares no code and no formula with the program.

const ENDS: readonly EndName[] = ['A', 'B'];
const AGREE = 1e-6;
const ON_SURFACE = 1e-9;
const GRAZE = 1e-6;

describe('worked values of the geometry, computed by brute force on solids before the program was written', () => {
  // Printed to 1e-4 mm: half a last digit.
  test.each([
    {
      od: 38.1,
      wall: 2.4,
      onto: 44.5,
      angle: 60,
      e: 0,
      clock: 0,
      phi: 0,
      outside: 36.6906,
      inside: 35.305,
      square: 36.6906,
    },
    {
      od: 38.1,
      wall: 2.4,
      onto: 44.5,
      angle: 60,
      e: 0,
      clock: 0,
      phi: 45,
      outside: 28.2258,
      inside: 28.598,
      square: 28.598,
    },
    {
      od: 38.1,
      wall: 2.4,
      onto: 44.5,
      angle: 60,
      e: 0,
      clock: 0,
      phi: 90,
      outside: 13.2745,
      inside: 17.0427,
      square: 17.0427,
    },
    {
      od: 38.1,
      wall: 2.4,
      onto: 44.5,
      angle: 60,
      e: 0,
      clock: 0,
      phi: 180,
      outside: 14.6936,
      inside: 16.0792,
      square: 16.0792,
    },
    {
      od: 31.75,
      wall: 2.4,
      onto: 38.1,
      angle: 48,
      e: 3,
      clock: 35,
      phi: 0,
      outside: 31.502,
      inside: 31.1209,
      square: 31.502,
    },
    {
      od: 31.75,
      wall: 2.4,
      onto: 38.1,
      angle: 48,
      e: 3,
      clock: 35,
      phi: 90,
      outside: 30.0137,
      inside: 30.1998,
      square: 30.1999,
    },
    {
      od: 31.75,
      wall: 2.4,
      onto: 38.1,
      angle: 48,
      e: 3,
      clock: 35,
      phi: 270,
      outside: 5.7059,
      inside: 10.3695,
      square: 10.3695,
    },
    {
      od: 31.75,
      wall: 2.4,
      onto: 38.1,
      angle: 132,
      e: -3,
      clock: -20,
      phi: 45,
      outside: 4.432,
      inside: 10.3022,
      square: 10.3022,
    },
    {
      od: 31.75,
      wall: 2.4,
      onto: 38.1,
      angle: 132,
      e: -3,
      clock: -20,
      phi: 180,
      outside: 38.8569,
      inside: 36.944,
      square: 38.8569,
    },
  ])('$od x $wall on $onto at $angle, offset $e, clock $clock: station $phi', (row) => {
    const ask = tableJoint(row.onto / 2, row.od / 2, row.angle, row.e, row.clock, row.wall);
    const lines = linesUnderTest(ask);
    const station = (row.phi * Math.PI) / 180;
    for (const name of ['outside', 'inside', 'square'] as const) {
      expect(Math.abs(lines[name](station).setback - row[name]), name).toBeLessThanOrEqual(0.5e-4 + 1e-9);
    }
    for (const end of ENDS) {
      const header = roundHeaderAt({ end, ...ask }, ask.header);
      const inner = ask.tube - ask.wall;
      const outside = landingAt(header, ask.tube, station).setback;
      const square = deepestAcrossWall(header, inner, ask.tube, station);
      expect(Math.abs(outside - row.outside), `outside by brute force at ${end}`).toBeLessThanOrEqual(
        0.5e-4 + 1e-9,
      );
      expect(Math.abs(square - row.square), `square by brute force at ${end}`).toBeLessThanOrEqual(
        0.5e-4 + 1e-9,
      );
    }
  });
});

interface Tally {
  compared: number;
  crestInWall: number;
  oneWallMisses: number;
  grazes: number;
  worst: number;
  worstOnSurface: number;
}

const JOINTS_A_KIND = howMany({ short: 6, deep: 25 });

test(`random joints at both ends agree with the brute force: outside, inside, square (JOINT_SEED=${SEED})`, () => {
  const random = randomFrom(SEED);
  const tally: Tally = {
    compared: 0,
    crestInWall: 0,
    oneWallMisses: 0,
    grazes: 0,
    worst: 0,
    worstOnSurface: 0,
  };
  for (let i = 0; i < JOINTS_A_KIND * JOINT_KINDS.length; i++) {
    const ask = randomJoint(random, JOINT_KINDS[i % JOINT_KINDS.length] ?? 'plain');
    const stations = [...spread(random, 15), ...nearGrazes(random, ask)];
    for (const end of ENDS) for (const station of stations) compare(ask, end, station, tally);
  }
  console.info(
    `seed ${SEED}: ${tally.compared} setbacks compared, worst ${tally.worst.toExponential(2)} mm apart; ` +
      `${tally.crestInWall} crests inside the wall; ${tally.oneWallMisses} with one wall missing; ` +
      `${tally.grazes} grazes; worst off a surface ${tally.worstOnSurface.toExponential(2)} mm`,
  );
  // The draw held what is hard.
  expect(tally.crestInWall).toBeGreaterThan(4 * JOINTS_A_KIND);
  expect(tally.oneWallMisses).toBeGreaterThan(4 * JOINTS_A_KIND);
  expect(tally.grazes).toBeGreaterThan(4 * JOINTS_A_KIND);
});

function spread(random: () => number, count: number): number[] {
  return Array.from({ length: count }, () => between(random, 0, 2 * Math.PI));
}

/** Stations at which the outside or the inside comes within 1e-3 to 1e-12 of passing beside the header, on either side. */
function nearGrazes(random: () => number, { tube, wall, header, clock, offset }: RandomJoint): number[] {
  const stations: number[] = [];
  for (const radius of [tube, tube - wall]) {
    for (const side of [1, -1]) {
      const share = side * 10 ** between(random, -12, -3) * (random() < 0.5 ? 1 : -1);
      const y = offset + side * header * (1 + share);
      if (Math.abs(y) >= radius) continue;
      const swing = Math.asin(y / radius);
      stations.push(clock + (random() < 0.5 ? swing : Math.PI - swing));
    }
  }
  return stations;
}

function compare(ask: RandomJoint, end: EndName, station: number, tally: Tally): void {
  const header = roundHeaderAt({ end, ...ask }, ask.header);
  const lines = linesUnderTest(ask);
  const inner = ask.tube - ask.wall;
  const what = `end ${end}, station ${station}, ${spell(ask)}`;
  const walls = [
    { line: lines.outside, radius: ask.tube },
    { line: lines.inside, radius: inner },
  ];
  const met: Landing[] = [];
  for (const { line, radius } of walls) {
    const ours = line(station);
    if (ours.contact) checkOnBoth(ask, end, station, radius, ours.setback, what, tally);
    if (grazing(ask, station, radius)) {
      tally.grazes++;
      continue;
    }
    const brute = landingAt(header, radius, station);
    met.push(brute);
    expect(ours.contact, what).toBe(brute.contact);
    agree(ours.setback, brute.setback, what, tally);
  }
  const [outer, within] = met;
  if (!outer || !within) return;
  const square = lines.square(station);
  const brute = deepestAcrossWall(header, inner, ask.tube, station);
  agree(square.setback, brute, `square, ${what}`, tally);
  if (brute > Math.max(outer.setback, within.setback) + 10 * AGREE) tally.crestInWall++;
  if (outer.contact !== within.contact) tally.oneWallMisses++;
}

function agree(ours: number, brute: number, what: string, tally: Tally): void {
  const apart = Math.abs(ours - brute);
  if (!(apart <= AGREE)) expect.fail(`${ours} is not ${brute}, ${apart} apart: ${what}`);
  tally.worst = Math.max(tally.worst, apart);
  tally.compared++;
}

/** Does this line of the wall pass the header's side nearer than R (1 - 1e-6), or as little outside it? */
function grazing({ header, clock, offset }: RandomJoint, station: number, radius: number): boolean {
  const beside = Math.abs(radius * Math.sin(station - clock) - offset);
  return Math.abs(beside - header) < header * GRAZE;
}

/** The point of a contact lies on the tube by its making; here it is held against the header's surface. */
function checkOnBoth(
  ask: RandomJoint,
  end: EndName,
  station: number,
  radius: number,
  setback: number,
  what: string,
  tally: Tally,
): void {
  const frame = headerFrame({ end, ...ask });
  const toBody = end === 'A' ? 1 : -1;
  const point: Point = [radius * Math.cos(station), radius * Math.sin(station), setback * toBody];
  const off = Math.abs(roundBar(frame, ask.header)(point));
  if (!(off <= ON_SURFACE)) expect.fail(`${off} off the header: ${what}`);
  expect(dot(point, frame.up)).toBeGreaterThanOrEqual(dot(frame.origin, frame.up) - 1e-6);
  tally.worstOnSurface = Math.max(tally.worstOnSurface, off);
}
