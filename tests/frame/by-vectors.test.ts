import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Job, Part } from '../../src/job/job.ts';
import { solveTube } from '../../src/saddle/solve.ts';
import { howMany } from '../count.ts';
import {
  fileOfStrung,
  mirroredInX,
  moved,
  type Strung,
  shiftedBy,
  strungFrames,
  turnedBy,
} from './rails-and-stays.ts';
import { spineBy } from './random-frames.ts';
import { along, crossOf, dotOf, minus, type Place, unitAlong } from './ray-march.ts';
import { copedOf, readText } from './read-lines.ts';

const RUNS = { numRuns: howMany({ short: 2, deep: 200, asked: 'FRAMES' }), seed: 815 };
const NEAR = 1e-7;

interface ByVectors {
  readonly angle: number;
  readonly clock: number;
  readonly offset: number;
  /** The foot of the common perpendicular on the tube's axis. */
  readonly foot: Place;
}

const axisOf = ({ from, to }: Strung): Place => unitAlong(minus(to, from));

function squareTo(axis: Place, way: Place): Place {
  return unitAlong(along(way, -dotOf(way, axis), axis));
}

/** How an end of a stay lies to the axis of a rail, from the points of both alone. */
function byVectors(stay: Strung, end: 'A' | 'B', rail: Strung): ByVectors {
  const axis = axisOf(stay);
  const [point, body] = end === 'A' ? [stay.from, axis] : [stay.to, minus([0, 0, 0], axis)];
  const way = axisOf(rail);
  const h = dotOf(way, body) < 0 ? minus([0, 0, 0], way) : way;
  const spine = stay.face ? squareTo(axis, stay.face) : spineBy(stay.from, stay.to);
  const u = squareTo(axis, h);
  const clock = Math.atan2(dotOf(u, crossOf(axis, spine)), dotOf(u, spine));
  // The plane through the rail that holds the common perpendicular cuts the stay's axis in the foot.
  const normal = crossOf(way, crossOf(way, axis));
  const reach = dotOf(minus(rail.from, point), normal) / dotOf(axis, normal);
  const foot = along(point, reach, axis);
  const onRail = along(rail.from, dotOf(minus(foot, rail.from), way), way);
  const w = crossOf(axis, u);
  return {
    angle: Math.acos(dotOf(h, body)),
    clock,
    offset: dotOf(minus(onRail, foot), w),
    foot,
  };
}

/** The turn between two angles, without whole turns. */
function turnBetween(a: number, b: number): number {
  return Math.abs(Math.atan2(Math.sin(a - b), Math.cos(a - b)));
}

const partAt = (job: Job, name: string, end: 'A' | 'B'): Part => copedOf(job, name, end).first;

test('angle, clock, offset, length and twist of random frames follow from their points by vectors', () => {
  let stays = 0;
  fc.assert(
    fc.property(fc.noBias(strungFrames), fc.boolean(), fc.nat(), (tubes, mirrored, pick) => {
      const job = readText(fileOfStrung(tubes, mirrored ? ['mirror: { y: -700 }'] : []));
      expect(job.tubes).toHaveLength(mirrored ? 2 * tubes.length : tubes.length);
      const across = ([x, y, z]: Place): Place => [x, -1400 - y, z];
      const twins = mirrored
        ? moved(tubes, { place: across, way: ([x, y, z]) => [x, -y, z] }).map((twin) => ({
            ...twin,
            name: `${twin.name}'`,
          }))
        : [];
      for (const half of [tubes, twins]) {
        for (const [i, stay] of half.entries()) {
          const { onto } = stay;
          if (!onto) continue;
          stays++;
          const ends = (['A', 'B'] as const).map((end, k) => {
            const rail = half[onto[k] ?? 0] ?? stay;
            const worked = byVectors(stay, end, rail);
            const { angle, clock, offset } = partAt(job, stay.name, end);
            const said = `${stay.name} ${end}`;
            const isSquare = Math.abs(worked.angle - Math.PI / 2) < 2e-5;
            expect(Math.abs(angle.rad - worked.angle), said).toBeLessThan(isSquare ? 2e-5 : NEAR);
            // A hundredth of a millimetre is no offset, and a thousandth of a degree from square is square.
            if (Math.abs(worked.angle - Math.PI / 2) > 2e-5) {
              expect(turnBetween(clock.rad, worked.clock), said).toBeLessThan(NEAR);
              if (Math.abs(worked.offset) > 0.0101)
                expect(Math.abs(offset.mm - worked.offset), said).toBeLessThan(NEAR * 100);
            }
            return worked;
          });
          const [a, b] = ends;
          const place = job.tubes.findIndex(({ name }) => name === stay.name);
          const made = job.tubes[place];
          if (!a || !b || !made?.between || !('mm' in made.between)) throw new Error('no stay');
          // A shift under a hundredth of a millimetre is none.
          expect(Math.abs(made.between.mm - Math.hypot(...minus(b.foot, a.foot)))).toBeLessThan(0.021);
          if (i !== pick % half.length) continue;
          expect(turnBetween(solveTube(made).twist ?? 9, b.clock - a.clock)).toBeLessThan(NEAR);
        }
      }
    }),
    RUNS,
  );
  expect(stays).toBeGreaterThan(3 * RUNS.numRuns);
}, 600_000);

/** The largest change of what does not rest on stations, and by tube what its stations turned by. */
function compared(before: Job, after: Job, tubes: readonly Strung[], sign: 1 | -1): Map<string, number> {
  const turns = new Map<string, number>();
  for (const { name, onto } of tubes) {
    if (!onto) continue;
    const turned = (['A', 'B'] as const).map((end) => {
      const [one, other] = [partAt(before, name, end), partAt(after, name, end)];
      const said = `${name} ${end}`;
      expect(Math.abs(other.angle.rad - one.angle.rad), said).toBeLessThan(NEAR);
      if (Math.abs(one.angle.rad - Math.PI / 2) < 2e-5) return 0;
      expect(Math.abs(other.offset.mm - sign * one.offset.mm), said).toBeLessThan(0.0101);
      if (one.onto.kind === 'box' && other.onto.kind === 'box') {
        const roll = 2 * (other.onto.roll.rad - sign * one.onto.roll.rad);
        expect(Math.abs(Math.sin(roll / 2)), said).toBeLessThan(NEAR);
      }
      return other.clock.rad - sign * one.clock.rad;
    });
    const [a = 0, b = 0] = turned;
    expect(turnBetween(a, b), name).toBeLessThan(NEAR);
    const lengths = [before, after].map((job) => job.tubes.find((tube) => tube.name === name)?.between);
    const [long, longer] = lengths.map((each) => (each && 'mm' in each ? each.mm : Number.NaN));
    expect(Math.abs((long ?? 0) - (longer ?? 0)), name).toBeLessThan(0.021);
    turns.set(name, turnBetween(a, 0));
  }
  return turns;
}

test('a frame that is shifted, turned or mirrored changes by what that says and no more', () => {
  const turn = fc.integer({ min: 1, max: 6282 }).map((n) => n / 1000);
  fc.assert(
    fc.property(fc.noBias(strungFrames), turn, turn, turn, (tubes, angle, lean, about) => {
      const plain = readText(fileOfStrung(tubes));
      const read = (move: Parameters<typeof moved>[1]): Job => readText(fileOfStrung(moved(tubes, move)));
      const still = (turns: Map<string, number>): void => {
        for (const [name, by] of turns) expect(by, name).toBeLessThan(NEAR);
      };
      still(compared(plain, read(shiftedBy([1000 * lean, -700 * about, 300])), tubes, 1));
      still(compared(plain, read(turnedBy([0, 0, 1], angle)), tubes, 1));
      const axis = unitAlong([Math.cos(about), Math.sin(about), Math.sin(lean)]);
      const turns = compared(plain, read(turnedBy(axis, angle)), tubes, 1);
      for (const { name, face } of tubes) if (face) expect(turns.get(name) ?? 0, name).toBeLessThan(NEAR);
      still(compared(plain, read(mirroredInX), tubes, -1));
    }),
    RUNS,
  );
}, 600_000);

test('turning about z turns the stations of a plumb tube, all alike, and of no other', () => {
  const tubes = (angle: number): readonly Strung[] =>
    moved(
      [
        { name: 'rail 0', from: [-500, -20, -30], to: [500, 20, 30], od: 42.4 },
        { name: 'rail 1', from: [-500, -90, 700], to: [500, 160, 780], od: 48.3 },
        { name: 'plumb', from: [0, 0, 0], to: [0, 0, 740], od: 30, onto: [0, 1] },
        { name: 'other', from: [100, 0, 0], to: [300, 110, 764], od: 30, onto: [0, 1] },
      ],
      turnedBy([0, 0, 1], angle),
    );
  const [before, after] = [tubes(0), tubes(0.7)].map((each) => readText(fileOfStrung(each)));
  if (!before || !after) throw new Error('nothing was read');
  const turns = compared(before, after, tubes(0), 1);
  expect(turns.get('other')).toBeLessThan(NEAR);
  const [one, other] = [before, after].map((job) => partAt(job, 'plumb', 'B').clock.rad);
  expect(turnBetween((other ?? 0) - (one ?? 0), 0.7)).toBeLessThan(NEAR);
});
