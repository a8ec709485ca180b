import type { Line } from '../../src/saddle/line.ts';
import { linesUnderTest } from '../outside/joint-under-test.ts';
import { JOINT_KINDS, type RandomJoint, randomFrom, randomJoint, SEED } from '../outside/random-joints.ts';
import { type Bench, median, timeEach } from './row.ts';

const ROUNDS = 41;
const JOINTS = 64;
const STATIONS = 720;
/** Any more, and asking a solid where a line enters costs more than the mathematics it hides. */
const BAR = 4;

type Straight = (station: number) => { readonly setback: number; readonly slope: number };

/**
 * The outside line of round headers through the joint, which serves every kind of header, against the same mathematics
 * written straight: setback and slope of one closed form. They take turns.
 */
export const bench: Bench = async () => {
  const random = randomFrom(SEED);
  const joints = Array.from({ length: JOINTS }, (_, i) =>
    randomJoint(random, JOINT_KINDS[i % JOINT_KINDS.length] ?? 'plain'),
  );
  const lines = joints.map((ask) => linesUnderTest(ask).outside);
  const straights = joints.map(straightLine);
  const ratios: number[] = [];
  for (let round = -5; round < ROUNDS; round++) {
    const through = timeEach(1, () => walk(lines));
    const straight = timeEach(1, () => walk(straights));
    if (round >= 0) ratios.push(through / straight);
  }
  const apart = Math.abs(walk(lines) - walk(straights)) / (JOINTS * STATIONS);
  const ratio = median(ratios);
  return [
    {
      what: `the outside line of round headers, against its closed form written straight, ${ROUNDS} rounds in turn`,
      measured:
        `${ratio.toFixed(2)} times the time at the median, ${Math.min(...ratios).toFixed(2)} to ` +
        `${Math.max(...ratios).toFixed(2)}; ${apart.toExponential(1)} mm apart on average`,
      bar: `${BAR} times, 1e-9 mm`,
      holds: ratio <= BAR && apart <= 1e-9,
    },
  ];
};

/** The setbacks of all lines all round, added up, so that none is left out as unused. */
function walk(lines: readonly (Line | Straight)[]): number {
  let sum = 0;
  for (const line of lines) {
    for (let i = 0; i < STATIONS; i++) {
      const { setback, slope } = line((i * 2 * Math.PI) / STATIONS);
      sum += setback + (Number.isFinite(slope) ? 1e-15 * slope : 0);
    }
  }
  return sum;
}

/** Setback and its rate: (x cos + sqrt(R^2 - (y - e)^2)) / sin, beside the header the plane through its axis. */
function straightLine({ tube, header, angle, clock, offset }: RandomJoint): Straight {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return (station) => {
    const x = tube * Math.cos(station - clock);
    const y = tube * Math.sin(station - clock);
    const d = y - offset;
    if (Math.abs(d) > header) return { setback: (x * cos) / sin, slope: (-y * cos) / sin };
    const half = Math.sqrt(header * header - d * d);
    return { setback: (x * cos + half) / sin, slope: (-y * cos - (d * x) / half) / sin };
  };
}
