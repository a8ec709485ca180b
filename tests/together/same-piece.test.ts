import { expect, test } from 'vitest';
import { checkReport } from '../../src/fit/check-report.ts';
import * as face from '../../src/index.ts';
import { solveHands, type TubeSolution } from '../../src/saddle/solve.ts';
import { solvePieces } from '../../src/together/pieces.ts';
import { sameAs } from '../../src/together/same-piece.ts';
import { howMany } from '../count.ts';
import { readText } from '../frame/read-lines.ts';
import { readSample } from '../job/sample.ts';

/** So many to the full circle. */
const TURNS = howMany({ short: 60, deep: 360 });

const ROUND = 'onto: { od: 44.5 }';

const MITRE = '{ onto: { mitre: { turn: 90 } } }';

function jobOf(A: string, B: string, tube = 'od: 38.1'): ReturnType<typeof readSample> {
  return readSample(`copeleaf: 1
tube:
  ${tube}
  wall: 2.4
  between: 600
  pair: true
  copies: 3
  ends: { A: ${A}, B: ${B} }
`);
}

function end(angle: number, more = '', onto = ROUND): string {
  return `{ ${onto}, angle: ${angle}${more} }`;
}

function casesOf(rows: ReadonlyArray<readonly [what: string, A: string, B: string, tube?: string]>) {
  return rows.map(([what, A, B, tube]) => ({ what, A, B, tube }));
}

const SAME = casesOf([
  ['both ends square', end(90), end(90)],
  ['a plane of its own', end(60), end(48, ', clock: 180')],
  ['a turn: at a right angle an offset is the same from the other side', end(90, ', offset: 5'), 'plain'],
  ['a change of ends, offset alike', end(60, ', offset: 4'), end(60, ', offset: 4')],
  ['a change of ends, half a turn round', end(60, ', offset: 4'), end(60, ', offset: 4, clock: 180')],
  ['read the obtuse way', end(60, ', offset: 3'), end(120, ', clock: 180, offset: -3')],
  ['two mitres', MITRE, '{ onto: { mitre: { turn: 90 } }, clock: 180 }'],
  ['a square tube', end(90), end(60), 'section: { wide: 40, deep: 40, corner: 4 }'],
  ['a difference that nobody sees', end(60, ', offset: 0.005'), end(48)],
]);

// A rotation from end to end is a screw: turned end for end it is as right-handed as before, even where both ends are alike.
const APART = casesOf([
  ['twisted, with two angles', end(62), end(48, ', clock: 35')],
  ['twisted, both ends alike', end(60), end(60, ', clock: 35')],
  ['twisted by its offsets', end(90, ', offset: 4'), end(90, ', clock: 90, offset: 4')],
  ['twisted mitres', MITRE, '{ onto: { mitre: { turn: 90 } }, clock: 70 }'],
  ['one offset', end(60, ', offset: 4'), end(60)],
  ['a rectangular tube', end(60), end(90, ', clock: 20'), 'section: { wide: 50, deep: 30, corner: 4 }'],
  ['a difference that a rod feels', end(60, ', offset: 0.3'), end(48)],
]);

test.each(SAME)('one piece for both hands: $what', ({ A, B, tube }) => {
  const pieces = solvePieces(jobOf(A, B, tube));
  expect(pieces).toHaveLength(1);
  expect(pieces[0]?.tube).toMatchObject({ copies: 6, pair: false });
  const [drawn, opposite] = both(jobOf(A, B, tube));
  const laid = sameAs(drawn, opposite);
  if (!laid) throw new Error('they were the same');
  expect(apartInSpace(drawn, opposite, laid.turn / drawn.section.turn, laid.swapped, 240)).toBeLessThan(0.06);
});

test('check, the report of a program and its solving answer alike: one piece, and for whom it is', () => {
  const job = jobOf(end(90), end(90));
  expect(face.solveJob(job)).toHaveLength(1);
  const [report, ...others] = face.reportJob(job);
  expect(others).toEqual([]);
  expect(report?.solution.tube.copies).toBe(6);
  expect(report && checkReport(report, job.words).split('\n')[0]).toBe('TUBE 1, 6 for both hands');
});

test.each(APART)('a piece for each hand: $what', ({ A, B, tube }) => {
  expect(solvePieces(jobOf(A, B, tube)).map(({ hand, tube: { copies } }) => [hand, copies])).toEqual([
    ['as-drawn', 3],
    ['opposite', 3],
  ]);
  // And no way of laying the one on the other, at any of so many turns, brings them so near.
  const [drawn, opposite] = both(jobOf(A, B, tube));
  const turns = drawn.section.stations === 'mm' ? 2 : TURNS;
  for (let i = 0; i < turns; i++) {
    for (const swapped of [false, true]) {
      expect(apartInSpace(drawn, opposite, i / turns, swapped, 60), `${i} ${swapped}`).toBeGreaterThan(0.05);
    }
  }
});

test('what is marked at the frame stays a piece for each hand', () => {
  const job = readSample(`copeleaf: 1
tube:
  od: 38.1
  wall: 2.4
  between: mark
  pair: true
  ends: { A: ${end(60)}, B: ${end(60, ', clock: mark')} }
`);
  expect(solvePieces(job)).toHaveLength(2);
});

function both(job: ReturnType<typeof readSample>): readonly [TubeSolution, TubeSolution] {
  const [drawn, opposite] = solveHands(job);
  if (!drawn || !opposite) throw new Error('a pair has two hands');
  return [drawn, opposite];
}

type Point = readonly [number, number, number];

/** The edges of both ends in space, the tube's axis along z from end A's work point. */
function edgesOf({ ends, section, lengths }: TubeSolution, looks: number): readonly Point[][] {
  const between = lengths?.between ?? 0;
  return (['A', 'B'] as const).map((name) => {
    const solved = ends[name];
    return Array.from({ length: looks }, (_, i): Point => {
      const station = ((i + 0.5) * section.turn) / looks;
      const { x, y } = section.at(station);
      const setback = solved?.kind === 'coped' ? solved.cut(station).setback : 0;
      return [x, y, name === 'A' ? setback : between - setback];
    });
  });
}

/** How far the nearest points of the edges lie apart at most, with the other tube turned back by a share of a turn, or upside down. */
function apartInSpace(
  piece: TubeSolution,
  other: TubeSolution,
  share: number,
  swapped: boolean,
  looks: number,
): number {
  const between = other.lengths?.between ?? 0;
  const turn = share * 2 * Math.PI * (swapped ? 1 : -1);
  const laid = edgesOf(other, looks).map((edge) =>
    edge.map(([x, y, z]): Point => {
      // Upside down about x, then turned; or only turned.
      const [a, b, c] = swapped ? [x, -y, between - z] : [x, y, z];
      return [a * Math.cos(turn) - b * Math.sin(turn), a * Math.sin(turn) + b * Math.cos(turn), c];
    }),
  );
  const theirs = swapped ? [laid[1] ?? [], laid[0] ?? []] : laid;
  return Math.max(
    ...edgesOf(piece, looks).map((edge, i) => Math.max(...edge.map((at) => nearest(at, theirs[i] ?? [])))),
  );
}

/** To the nearest stretch of a closed line through points. */
function nearest(at: Point, line: readonly Point[]): number {
  let least = Number.POSITIVE_INFINITY;
  let from = line.at(-1) ?? at;
  for (const to of line) {
    least = Math.min(least, toStretch(at, from, to));
    from = to;
  }
  return least;
}

function toStretch([x, y, z]: Point, [ax, ay, az]: Point, [bx, by, bz]: Point): number {
  const [dx, dy, dz] = [bx - ax, by - ay, bz - az];
  const long = dx * dx + dy * dy + dz * dz;
  const t = Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy + (z - az) * dz) / (long || 1)));
  return Math.hypot(x - ax - t * dx, y - ay - t * dy, z - az - t * dz);
}

test.each([
  ['a land that takes nothing off', 'land: 0.5', ''],
  ['another land', 'land: 0.5', 'land: 0.4'],
  ['a hair wider a gap for the weld', 'root: 1', 'root: 1.03'],
  ['another edge', 'edge: square', 'edge: bevel'],
])('two tubes of one shape are made apart: %s', (_, one, other) => {
  const frame = (finish: readonly string[]): string => `copeleaf: 1
units: mm
frame:
  points: { a: [0, 0, 0], b: [1000, 0, 0], c: [0, 0, 500], d: [1000, 0, 500], e: [300, 0, 0], f: [300, 0, 500], g: [600, 0, 0], h: [600, 0, 500] }
  tubes:
    - { name: low, along: [a, b], od: 60.3, wall: 3, ends: { A: plain, B: plain } }
    - { name: high, along: [c, d], od: 60.3, wall: 3, ends: { A: plain, B: plain } }
${finish.map((each, i) => `    - { name: t${i}, along: [${i ? 'g, h' : 'e, f'}], od: 20, wall: 2${each && `, ${each}`} }`).join('\n')}
`;
  const rows = (finish: readonly string[]): number => solvePieces(readText(frame(finish))).length;
  expect(rows([one, one])).toBe(2);
  expect(rows([one, other])).toBe(3);
});
