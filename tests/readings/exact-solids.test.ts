import { describe, expect, test } from 'vitest';
import { readJob } from '../../src/job/read-job.ts';
import { solveHands, type TubeSolution } from '../../src/saddle/solve.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { howMany } from '../count.ts';
import { A4 } from '../job/sample.ts';
import {
  type AskedPart,
  headerAt,
  landedOn,
  type Onto,
  outsideAt,
  turnOf,
} from '../outside/asked-in-degrees.ts';
import { between, type Random, randomFrom, SEED } from '../outside/random-joints.ts';
import { dot, type EndName, type Point, scaled } from '../outside/solids/implicit-solids.ts';
import { bodyOf, directionOf, type Frame, heelOf, longPoint, rayTo, straightedge, walked } from './tape.ts';

// Each frame is measured on exact solids, as a person would; the readings go into a job, and what it comes to is held
// against the same solids.

const FRAMES = howMany({ short: 6, deep: 40 });
const CLOSE = 1e-6;
const END_NAMES = ['A', 'B'] as const;

function randomFrame(random: Random): Frame {
  const half = between(random, 8, 30);
  const tube =
    random() < 0.75
      ? { od: 2 * half }
      : { wide: 2 * half, deep: half * between(random, 0.8, 1.8), corner: half * between(random, 0.1, 0.35) };
  const part = (): AskedPart => randomPart(random, half);
  return { tube, between: between(random, 700, 1500), A: part(), B: part() };
}

/** Headers wider than any tube here, so that no ordinate lies where a hair of a reading makes much odds. */
function randomPart(random: Random, half: number): AskedPart {
  const onto = randomOnto(random, half);
  return {
    onto,
    angle: random() < 0.15 ? 90 : between(random, 35, 145),
    clock: between(random, -175, 175),
    offset: onto.kind === 'plate' ? 0 : between(random, -0.3, 0.3) * half,
    shift: 0,
  };
}

function randomOnto(random: Random, half: number): Onto {
  const size = between(random, 3.6, 6) * half;
  const kind = random();
  if (kind < 0.5) return { kind: 'round', od: size };
  if (kind < 0.7) return { kind: 'plate' };
  return { kind: 'box', wide: size, deep: size * 0.8, corner: size * 0.1, roll: 0 };
}

/** One end of the job: how its angle and its clock are written. */
interface Words {
  readonly angle: string;
  readonly clock: string;
}

function jobOf(frame: Frame, length: string, words: (end: EndName) => Words, od?: string): string {
  const { tube } = frame;
  const size = 'od' in tube ? `od: ${od ?? exact(tube.od)}` : `section: ${mapOf(tube)}`;
  const end = (name: EndName): string => {
    const { onto, offset } = frame[name];
    const beside = onto.kind === 'plate' ? '' : `, offset: ${exact(offset)}`;
    const { angle, clock } = words(name);
    return `    ${name}: { onto: ${ontoOf(onto)}, angle: ${angle}, clock: ${clock}${beside} }`;
  };
  return `copeleaf: 1\ntube:\n  ${size}\n  between: ${length}\n  ends:\n${end('A')}\n${end('B')}\n`;
}

function ontoOf(onto: Onto): string {
  if (onto.kind === 'round') return `{ od: ${exact(onto.od)} }`;
  if (onto.kind !== 'box') return '{ plate: {} }';
  return `{ box: ${mapOf({ wide: onto.wide, deep: onto.deep, corner: onto.corner })} }`;
}

function mapOf(values: Readonly<Record<string, number>>): string {
  return `{ ${Object.entries(values)
    .map(([key, value]) => `${key}: ${exact(value)}`)
    .join(', ')} }`;
}

/** Digits enough for a double, and never an exponent. */
function exact(value: number): string {
  return value.toFixed(14);
}

function solved(job: string): TubeSolution {
  const [solution] = solveHands(readJob(job, 'frame.yaml', { words: ENGLISH, paper: A4 }));
  if (!solution) throw new Error('a job has a tube');
  return solution;
}

/** The widest way from the program's outside lines to where rays along the tube meet the solids. */
function strayOf(frame: Frame, solution: TubeSolution): number {
  const strays = END_NAMES.flatMap((end) => {
    const cope = solution.ends[end];
    if (cope?.kind !== 'coped') throw new Error('both ends are coped');
    const header = headerAt(frame[end], end);
    return Array.from({ length: 24 }, (_, i) => {
      const station = (i * turnOf(frame.tube)) / 24;
      return Math.abs(cope.outside(station).setback - landedOn(frame.tube, header, station).setback);
    });
  });
  return Math.max(...strays);
}

function plain({ angle, clock }: AskedPart): Words {
  return { angle: exact(angle), clock: exact(clock) };
}

function inDegrees(angle: number): string {
  return exact((angle * 180) / Math.PI);
}

/** How far along an axis a point lies, and how far from it. */
function alongAndAside(point: Point, axis: Point): { along: number; aside: number } {
  const along = dot(point, axis);
  const foot = scaled(axis, along);
  return { along, aside: Math.hypot(point[0] - foot[0], point[1] - foot[1], point[2] - foot[2]) };
}

/** Each way of measuring the angle of an end. */
const ANGLES: Readonly<Record<string, (frame: Frame, end: EndName) => string>> = {
  'off square': (frame, end) =>
    `{ off-square: ${inDegrees(Math.asin(dot(bodyOf(end), directionOf(frame, end))))} }`,
  'rise and run': (frame, end) => {
    const mark = scaled(bodyOf(end), 311);
    const { along, aside } = alongAndAside(mark, directionOf(frame, end));
    return `{ rise: ${exact(aside)}, run: ${exact(along)} }`;
  },
  'a triangle': (frame, end) => {
    const [tube, header] = [scaled(bodyOf(end), 217), scaled(directionOf(frame, end), 189)];
    const across = Math.hypot(tube[0] - header[0], tube[1] - header[1], tube[2] - header[2]);
    return `{ triangle: [217, 189, ${exact(across)}] }`;
  },
  'the acute angle': (frame, end) => {
    const lean = dot(bodyOf(end), directionOf(frame, end));
    return `{ acute: ${inDegrees(Math.acos(Math.abs(lean)))}, read-at: ${lean >= 0 ? 'heel' : 'toe'} }`;
  },
};

/** The way round the tube's outside from its spine to the header's station. */
function arcTo(frame: Frame, end: EndName): number {
  const [x, y] = directionOf(frame, end);
  const clock = Math.atan2(y, x);
  const { tube } = frame;
  if ('od' in tube) return Math.sign(clock) * walked((share) => circle(tube.od / 2, share * clock));
  let [low, high] = clock < 0 ? [turnOf(tube) / 2, turnOf(tube)] : [0, turnOf(tube) / 2];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    const point = outsideAt(tube, middle);
    if (Math.atan2(point.y, point.x) < clock) low = middle;
    else high = middle;
  }
  return clock < 0 ? low - turnOf(tube) : low;
}

function circle(radius: number, angle: number): readonly [number, number] {
  return [radius * Math.cos(angle), radius * Math.sin(angle)];
}

/** Each way of measuring the length; undefined where this frame can't be measured so. */
const LENGTHS: Readonly<Record<string, (frame: Frame) => string | undefined>> = {
  'between the faces': (frame) => lengthWords('faces', straightedge(frame, 0, 0)),
  'along a straight edge': (frame) => {
    const station = 0.31 * turnOf(frame.tube);
    const { x, y } = outsideAt(frame.tube, station);
    const at = 'od' in frame.tube ? inDegrees(station) : exact(station);
    return lengthWords('straightedge', straightedge(frame, x, y), `, at: ${at}`);
  },
  'between the long points': (frame) => lengthWords('overall', longPoint(frame, 'B') - longPoint(frame, 'A')),
  'from the seated end to the mark': (frame) => {
    const heel = heelOf(frame, 'B');
    const spine = outsideAt(frame.tube, 0);
    const [edge, mark] = [rayTo(frame, 'A', spine.x, spine.y), onLine(frame, heel)];
    return edge === undefined || mark === undefined ? undefined : lengthWords('seated', mark - edge);
  },
};

/** Where the line of the tube in this direction meets the header of end B. Round tubes only. */
function onLine(frame: Frame, direction: number): number | undefined {
  if (!('od' in frame.tube)) return undefined;
  return rayTo(frame, 'B', ...circle(frame.tube.od / 2, direction));
}

function lengthWords(key: string, length: number | undefined, more = ''): string | undefined {
  return length === undefined ? undefined : `{ ${key}: ${exact(length)}${more} }`;
}

function frames(kind: number): readonly Frame[] {
  const random = randomFrom(SEED + kind);
  return Array.from({ length: FRAMES }, () => randomFrame(random));
}

describe(`what is measured on exact solids is read back (JOINT_SEED=${SEED})`, () => {
  test.each(Object.entries(ANGLES))('the angle by %s gives the ordinates', (_, measure) => {
    for (const frame of frames(1)) {
      const words = (end: EndName) => ({ angle: measure(frame, end), clock: exact(frame[end].clock) });
      const job = jobOf(frame, exact(frame.between), words);
      expect(strayOf(frame, solved(job)), job).toBeLessThan(CLOSE);
    }
  });

  test('the rotation by the arc from the spine gives the ordinates', () => {
    for (const frame of frames(2)) {
      const words = (end: EndName) => ({
        ...plain(frame[end]),
        clock: `{ arc: ${exact(arcTo(frame, end))} }`,
      });
      const job = jobOf(frame, exact(frame.between), words);
      expect(strayOf(frame, solved(job)), job).toBeLessThan(CLOSE);
    }
  });

  test.each([0, 0.13])('the diameter by the girth, tape %s mm thick, gives the ordinates', (tape) => {
    for (const frame of frames(3)) {
      if (!('od' in frame.tube)) continue;
      const radius = (frame.tube.od + tape) / 2;
      const girth = walked((share) => circle(radius, 2 * Math.PI * share));
      const od = `{ girth: ${exact(girth)}, tape: ${tape} }`;
      const job = jobOf(frame, exact(frame.between), (end) => plain(frame[end]), od);
      expect(strayOf(frame, solved(job)), job).toBeLessThan(CLOSE);
    }
  });

  test.each(Object.entries(LENGTHS))('the length %s gives the length between work points', (_, measure) => {
    let measured = 0;
    for (const frame of frames(4)) {
      const length = measure(frame);
      if (length === undefined) continue;
      measured++;
      const job = jobOf(frame, length, (end) => plain(frame[end]));
      const { lengths } = solved(job);
      expect(Math.abs((lengths?.between ?? Number.NaN) - frame.between), job).toBeLessThan(CLOSE);
    }
    expect(measured).toBeGreaterThan(FRAMES / 2);
  });

  test('all ways at once agree', () => {
    for (const frame of frames(5)) {
      const list = (ways: readonly (string | undefined)[]) =>
        `[${ways.filter((way) => way !== undefined).join(', ')}]`;
      const words = (end: EndName) => ({
        angle: list([
          exact(frame[end].angle),
          ...Object.values(ANGLES).map((measure) => measure(frame, end)),
        ]),
        clock: list([exact(frame[end].clock), `{ arc: ${exact(arcTo(frame, end))} }`]),
      });
      const length = list([exact(frame.between), ...Object.values(LENGTHS).map((measure) => measure(frame))]);
      expect(strayOf(frame, solved(jobOf(frame, length, words)))).toBeLessThan(CLOSE);
    }
  });
});
