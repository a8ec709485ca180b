import { beforeAll, expect, test } from 'vitest';
import type { Job } from '../../src/job/job.ts';
import { solveHands } from '../../src/saddle/solve.ts';
import { copeleaf, folderWith } from '../cli/run-command.ts';
import { copedOf, fileOf, readText } from './read-lines.ts';

// A stay that stands askew between a sill and a rail above it, worked by hand from the points alone.

const SILL = 'name: sill, along: [[0,0,0], [1200,0,0]], od: 48.3';
const TOP = 'name: top, along: [[100,500,600], [1100,650,800]]';
const STAY =
  'name: stay, along: [foot, head], od: 33.7, wall: 2.6, edge: bevel, ends: { A: { onto: [sill] }, B: { onto: [top] } }';
const POINTS = { foot: '[300, 3, 0]', head: '[700, 588, 721]' };
const FILE = fileOf(POINTS, [SILL, `${TOP}, od: 42.4`, STAY]);

interface EndWorked {
  readonly angle: number;
  readonly clock: number;
  readonly offset: number;
  readonly foot: readonly [number, number, number];
  readonly shift: number;
  readonly outside: readonly number[];
  readonly inside: readonly number[];
  readonly long: readonly [setback: number, station: number];
}

const WORKED: Readonly<Record<'A' | 'B', EndWorked>> = {
  A: {
    angle: 66.6929,
    clock: 115.9957,
    offset: -2.3296,
    foot: [299.1857, 1.8091, -1.4678],
    shift: -2.0581,
    outside: [19.106, 32.238, 21.332, 17.549],
    inside: [21.001, 31.466, 23.179, 19.064],
    long: [14.844, 224.87],
  },
  B: {
    angle: 52.6684,
    clock: 295.3294,
    offset: -2.1808,
    foot: [700.2411, 588.3526, 721.4346],
    shift: -0.6094,
    outside: [20.71, 12.289, 15.515, 37.517],
    inside: [23.414, 14.723, 18.368, 36.026],
    long: [9.657, 46.34],
  },
};

let job: Job;
beforeAll(() => {
  job = readText(FILE);
});

/** Half of the last digit that is given. */
function near(measured: number | undefined, worked: number, digits: number): void {
  expect(Math.abs((measured ?? Number.NaN) - worked), `${measured} for ${worked}`).toBeLessThanOrEqual(
    0.5 * 10 ** -digits + 1e-12,
  );
}

test.each(['A', 'B'] as const)('end %s of the skew stay comes to its worked values', (name) => {
  const worked = WORKED[name];
  const { first } = copedOf(job, 'stay', name);
  near((first.angle.rad * 180) / Math.PI, worked.angle, 4);
  near((first.clock.rad * 180) / Math.PI, worked.clock, 4);
  near(first.offset.mm, worked.offset, 4);
  expect(first.shift.mm).toBe(0);
  const seat = job.frame?.seats[2];
  if (!seat) throw new Error('the stay has no seat');
  const along = seat.ends[name].workPoint;
  worked.foot.forEach((mm, i) => {
    near((seat.from[i] ?? 0) + along * (seat.axis[i] ?? 0), mm, 4);
  });
  near(name === 'A' ? along : seat.length - along, worked.shift, 4);
  const cope = solveHands(job)[2]?.ends[name];
  if (cope?.kind !== 'coped') throw new Error('the stay is not coped');
  [0, 1, 2, 3].forEach((quarter) => {
    const station = (quarter * Math.PI) / 2;
    near(cope.outside(station).setback, worked.outside[quarter] ?? 0, 3);
    near(cope.inside?.(station).setback, worked.inside[quarter] ?? 0, 3);
  });
  near(cope.longPoint.setback, worked.long[0], 3);
  near((cope.longPoint.station * 180) / Math.PI, worked.long[1], 2);
});

test('the skew stay is as long and turned as it was worked out, and lands where it was', async () => {
  const { code, out } = await copeleaf(folderWith({ 'skew.yaml': FILE }), [
    'check',
    'skew.yaml',
    '--as',
    'json',
  ]);
  expect(code).toBe(0);
  const said = JSON.parse(out);
  const stay = said.tubes.find((tube: { name: string }) => tube.name === 'stay');
  near(stay.between, 1013.6404, 4);
  near(stay.overall, 989.1393, 4);
  near(stay.twist, 179.334, 3);
  near(job.frame?.seats[2]?.length, 1010.973, 3);
  expect(stay.places).toEqual([{ name: 'stay', along: ['foot', 'head'], swap: false, turn: 0 }]);
  expect(said.frame.points).toEqual({ foot: [300, 3, 0], head: [700, 588, 721] });
  const [onSill, onTop] = said.frame.landings;
  expect(onSill).toMatchObject({ on: 'sill', tube: 'stay', end: 'A' });
  expect(onTop).toMatchObject({ on: 'top', tube: 'stay', end: 'B' });
  const LANDED = [
    { at: 299.19, from: 291.18, to: 327.9, mark: 309.54, station: 315.41, lean: 66.69 },
    { at: 618.74, from: 581.44, to: 623.93, mark: 602.66, station: 133.86, lean: 180 - 52.67 },
  ];
  LANDED.forEach((worked, i) => {
    for (const [key, value] of Object.entries(worked)) near(said.frame.landings[i][key], value, 2);
  });
  expect(said.frame.warnings).toEqual([]);
});

test('a box for the rail above, its wide face up, is rolled as it was worked out', () => {
  const box = readText(fileOf(POINTS, [SILL, `${TOP}, section: { wide: 60, deep: 40, corner: 4 }`, STAY]));
  const { onto } = copedOf(box, 'stay', 'B').first;
  if (onto.kind !== 'box') throw new Error('the rail is no box');
  near((onto.roll.rad * 180) / Math.PI, -40.231, 3);
});
