import { traceCurve } from '../../src/saddle/curve.ts';
import { dihedralAt } from '../../src/saddle/dihedral.ts';
import type { Line } from '../../src/saddle/line.ts';
import { jointUnderTest, linesUnderTest } from '../outside/joint-under-test.ts';
import {
  between,
  JOINT_KINDS,
  type Random,
  type RandomJoint,
  randomFrom,
  randomJoint,
  SEED,
  spell,
} from '../outside/random-joints.ts';
import { headerFrame, type Point, roundBar } from '../outside/solids/implicit-solids.ts';
import type { Bench } from './row.ts';

const JOINTS = 1_000_000;
/** Curves are drawn for one joint in this many. */
const DRAWN = 50;
const ON_SURFACE = 1e-9;

interface Findings {
  threw: number;
  notANumber: number;
  curves: number;
  contacts: number;
  worst: number;
  offSurface: number;
  first: string;
}

/** A million random joints, each at two stations and both ends: no throw, no NaN, every contact on both surfaces. */
export const bench: Bench = async () => {
  const random = randomFrom(SEED);
  const found: Findings = {
    threw: 0,
    notANumber: 0,
    curves: 0,
    contacts: 0,
    worst: 0,
    offSurface: 0,
    first: '',
  };
  for (let i = 0; i < JOINTS; i++) {
    const ask = randomJoint(random, JOINT_KINDS[i % JOINT_KINDS.length] ?? 'plain');
    try {
      examine(ask, random, found);
      if (i % DRAWN === 0) drawAll(ask, random, found);
    } catch (error) {
      found.threw++;
      found.first ||= `${error}: ${spell(ask)}`;
    }
  }
  const { threw, notANumber, curves, offSurface, contacts, worst, first } = found;
  return [
    {
      what: `${JOINTS.toLocaleString('en')} random joints, seed ${SEED}`,
      measured:
        `${threw} threw, ${notANumber} gave no number (${curves.toLocaleString('en')} curves drawn too), ${offSurface} of ${contacts.toLocaleString('en')} contacts ` +
        `off a surface; worst ${worst.toExponential(2)} mm${first ? `; first: ${first}` : ''}`,
      bar: `none, none, none over ${ON_SURFACE} mm`,
      holds: threw + notANumber + offSurface === 0 && contacts > JOINTS,
    },
  ];
};

function examine(ask: RandomJoint, random: Random, found: Findings): void {
  const lines = linesUnderTest(ask);
  const joint = jointUnderTest(ask);
  const onA = roundBar(headerFrame({ end: 'A', ...ask }), ask.header);
  const onB = roundBar(headerFrame({ end: 'B', ...ask }), ask.header);
  for (const station of [between(random, 0, 2 * Math.PI), grazeStation(ask, random)]) {
    if (!Number.isFinite(dihedralAt(joint, station))) note(found, 'notANumber', ask, station);
    for (const [name, line] of Object.entries(lines)) {
      const { setback, contact } = line(station);
      if (!Number.isFinite(setback)) note(found, 'notANumber', ask, station);
      if (!contact) continue;
      found.contacts++;
      const depths = name === 'square' ? [0, ask.wall] : name === 'inside' ? [ask.wall, ask.wall] : [0, 0];
      const off = Math.max(
        offThrough(onA, ask, station, setback, depths),
        offThrough(onB, ask, station, -setback, depths),
      );
      found.worst = Math.max(found.worst, off);
      if (!(off <= ON_SURFACE)) note(found, 'offSurface', ask, station);
    }
  }
}

/**
 * How far the header stands off, or into, a radial cut through the wall between two depths, at one setback. Along a
 * straight way the square of the distance to a round bar's axis is a parabola, which three of its points tell.
 */
function offThrough(
  bar: (point: Point) => number,
  { tube, header }: RandomJoint,
  station: number,
  z: number,
  [from = 0, to = 0]: readonly number[],
): number {
  const offAt = (depth: number): number =>
    bar([(tube - depth) * Math.cos(station), (tube - depth) * Math.sin(station), z]);
  const [first, middle, last] = [from, (from + to) / 2, to].map((depth) => (offAt(depth) + header) ** 2);
  const bend = (first ?? 0) - 2 * (middle ?? 0) + (last ?? 0);
  const nearest =
    bend > 0 ? (from + to) / 2 + ((to - from) * ((first ?? 0) - (last ?? 0))) / (4 * bend) : from;
  const within = [from, to, Math.min(to, Math.max(from, nearest))];
  return Math.abs(Math.min(...within.map(offAt)));
}

function drawAll(ask: RandomJoint, random: Random, found: Findings): void {
  const turn = 2 * Math.PI;
  const nodes = [0, 1, 2, 3].map((quarter) => ask.clock + (quarter * turn) / 4);
  const drawn: readonly Line[] = Object.values(linesUnderTest(ask));
  for (const line of drawn) {
    const from = between(random, 0, turn);
    const curve = traceCurve(line, { from, turn, nodes, scale: ask.tube });
    found.curves++;
    const sound = curve.every(({ stations, setbacks }) => [...stations, ...setbacks].every(Number.isFinite));
    if (!sound) note(found, 'notANumber', ask, from);
  }
}

function note(found: Findings, kind: 'notANumber' | 'offSurface', ask: RandomJoint, station: number): void {
  found[kind]++;
  found.first ||= `station ${station}, ${spell(ask)}`;
}

/** A station at which the outside comes near the header's side, if it does anywhere. */
function grazeStation({ tube, header, clock, offset }: RandomJoint, random: Random): number {
  const side = random() < 0.5 ? 1 : -1;
  const y = offset + side * header * (1 - 10 ** between(random, -16, -3));
  return clock + Math.asin(Math.min(1, Math.max(-1, y / tube)));
}
