import { describe, expect, test } from 'vitest';
import { solveHands } from '../../src/saddle/solve.ts';
import { bendJobOf } from '../../src/shop/bend-pieces.ts';
import { cutList, cutListAsCsv } from '../../src/shop/lists/cut-list.ts';
import { firstEnds, orderOfWork } from '../../src/shop/lists/order.ts';
import { stockPlan } from '../../src/shop/lists/stock.ts';
import { ticketsOf } from '../../src/shop/ticket/ticket.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { readSample } from '../job/sample.ts';

interface Bend {
  readonly od: number;
  readonly turn: number;
  readonly pieces: number;
  readonly radius: number;
}

const GUARD: Bend = { od: 48.3, turn: 90, pieces: 5, radius: 150 };

function jobOf({ od, turn, pieces, radius }: Bend, more = '') {
  const text = `copeleaf: 1\nstock: [1m]\nkerf: 2\ntube: { name: elbow, od: ${od}, wall: 2.6, ${more}ends: { A: { onto: { mitre: { turn: ${turn}, pieces: ${pieces}, radius: ${radius} } } } } }\n`;
  return readSample(text);
}

function solved(bend: Bend, more = '') {
  const solutions = solveHands(jobOf(bend, more));
  const [first] = solutions;
  const job = first && bendJobOf(first);
  if (!job) throw new Error('no bend');
  return { solutions, job, tickets: ticketsOf(solutions, firstEnds(orderOfWork(solutions)), false, ENGLISH) };
}

/*
 * By plain geometry in the plane of the bend: the joints lie on rays from its centre, half a step, one and a half and so
 * on from where it begins; a piece's outside and inside run square to the bisector of its rays at R + r and R - r from
 * the centre, so between two rays a step apart they are 2 (R +- r) tan(step / 2) long.
 */
function lengthsOf({ od, turn, pieces, radius }: Bend) {
  const step = (turn * Math.PI) / 180 / (pieces - 1);
  const chord = (far: number) => {
    const ray = (angle: number) => ({
      x: (far * Math.cos(angle)) / Math.cos(step / 2),
      y: (far * Math.sin(angle)) / Math.cos(step / 2),
    });
    const [a, b] = [ray(-step / 2), ray(step / 2)];
    return Math.hypot(a.x - b.x, a.y - b.y);
  };
  return { outside: chord(radius + od / 2), inside: chord(radius - od / 2), middle: chord(radius) };
}

describe('the pieces of a bend', () => {
  test.each([
    GUARD,
    { od: 30, turn: 60, pieces: 3, radius: 90 },
    { od: 60.3, turn: 45, pieces: 2, radius: 200 },
  ])('are as long as their sides lie between the joints: $pieces that turn $turn°', (bend) => {
    const { outside, inside, middle } = lengthsOf(bend);
    const { job } = solved(bend);
    const [end] = job.pieces.filter(({ kind }) => kind === 'end');
    expect(end?.count).toBe(2);
    expect(end?.long).toBeCloseTo(outside / 2, 6);
    expect(end?.short).toBeCloseTo(inside / 2, 6);
    const [between] = job.pieces.filter(({ kind }) => kind === 'middle');
    if (bend.pieces === 2) {
      expect(between).toBeUndefined();
      return;
    }
    expect(between?.count).toBe(bend.pieces - 2);
    expect(between?.long).toBeCloseTo(outside, 6);
    expect(between?.short).toBeCloseTo(inside, 6);
    expect(between?.centre).toBeCloseTo(middle, 6);
  });

  test('have blanks that are never shorter than the piece and its allowance, nor than the leaf round it', () => {
    for (const radius of [30, 60, 150]) {
      const { job } = solved({ ...GUARD, radius });
      const leaf = job.base.setback - job.cope.longPoint.setback;
      for (const { blank, long } of job.pieces) {
        expect(blank).toBeGreaterThanOrEqual(long + 10 - 1e-9);
        expect(blank).toBeGreaterThanOrEqual(leaf - 1e-9);
      }
    }
  });

  test('stand in the cut list with their counts and lengths, and are nested into the stock', () => {
    const { solutions } = solved(GUARD, 'copies: 2, ');
    const rows = cutList(solutions, ENGLISH);
    expect(rows.map(({ piece, copies }) => [piece, copies])).toEqual([
      ['middle', 6],
      ['end', 4],
    ]);
    expect(cutListAsCsv(rows, 'mm')).toMatch(/^"elbow, middle piece",as-drawn,6,.*,78\.75,78\.75,0$/m);
    expect(cutListAsCsv(rows, 'mm')).toMatch(/^"elbow, end piece",as-drawn,4,.*,78\.75,square,$/m);
    const plan = stockPlan(jobOf(GUARD, 'copies: 2, '), solutions);
    expect(plan?.sizes.flatMap(({ bars }) => bars.flatMap(({ blanks }) => blanks)).length).toBe(10);
    expect(plan?.unknown).toEqual([]);
  });
});

describe('the ticket of a bend', () => {
  const { tickets } = solved(GUARD);
  const steps = tickets[0]?.steps.map(({ text }) => text) ?? [];

  test('tells of all pieces and mitred ends', () => {
    expect(tickets[0]?.make).toBe('make 1: 3 middle pieces and 2 end pieces, 8 mitred ends');
  });

  test('has both cuts of a middle piece on one line, the second by a figure that sets its joint a piece away', () => {
    const second = steps.find((text) => text.startsWith('Then the other end')) ?? '';
    expect(second).toContain('on the same scribed line');
    expect(second).toContain('turn the leaf end for end');
    // The joints are 2 x 150 x tan 11.25° = 59.67 mm apart, and each base edge takes half of what makes a whole number of mm.
    const { base } = solved(GUARD).job;
    expect(2 * 150 * Math.tan((11.25 * Math.PI) / 180) - 2 * base.setback).toBeCloseTo(base.distance, 9);
    expect(Number.isInteger(base.distance)).toBe(true);
    expect(second).toContain('past the one marked, towards the first cut, by what the leaf says');
  });

  test('seats nothing on a piece that is not cut yet, and squares an end piece after its mitre', () => {
    const at = (words: string) => steps.findIndex((text) => text.includes(words));
    expect(at("rod won't enter")).toBeGreaterThan(at('Cut the other end of each end piece square'));
    expect(at('Cut the other end of each end piece square')).toBeGreaterThan(
      at('For each of the 5 pieces lay the leaf'),
    );
    expect(steps.join()).toContain('Scribe a line along the stock');
  });

  test('keeps the stock long where a piece is too short to hold, and cuts blanks where none is', () => {
    expect(steps.join()).toContain('Keep the stock long');
    expect(steps.join()).not.toContain('Cut the blanks');
    // A middle piece is 2 x 900 x tan 11.25° = 358 mm long, an end piece half of that: each over 150 mm and three diameters.
    const long = (solved({ ...GUARD, radius: 900 }).tickets[0]?.steps ?? []).map(({ text }) => text).join();
    expect(long).toContain('Cut the blanks');
    expect(long).toContain('Scribe a line along each blank');
    expect(long).not.toContain('Keep the stock long');
  });

  test('has in large type the blanks that are sawn, and not what pieces take of long stock', () => {
    const told = (radius: number) => solved({ ...GUARD, radius }).tickets[0];
    // The outside of a middle piece is 2 x (150 + 24.15) x tan 11.25° = 69.28 mm, and 10 mm are over; an end piece takes as much as its leaf.
    expect(told(150)?.saw.map(({ fact }) => fact)).toEqual(['mitre']);
    expect(told(150)?.tube.find(({ fact }) => fact === 'pieces')?.text).toMatch(
      /^one length, 338\.5 mm and what .*: 3 x 79\.5 mm for the middle pieces, 2 x 50 mm for the end pieces$/,
    );
    // 2 x (900 + 24.15) x tan 11.25° = 367.65 mm, and half of that, each with its 10 mm.
    expect(
      told(900)
        ?.saw.slice(0, 2)
        .map(({ label, text }) => `${label} ${text}`),
    ).toEqual(['blanks for middle pieces 3 x 378 mm', 'blanks for end pieces 2 x 194 mm']);
    expect(told(900)?.tube.map(({ fact }) => fact)).not.toContain('pieces');
  });

  test('is cut straight through, with no bevel to tilt the cut for', () => {
    expect(steps.join()).toContain('Cut each on the solid line: straight through, for the face is flat.');
    expect(steps.join()).not.toContain('tilt the cut');
  });

  test('of two pieces speaks of no middle one', () => {
    const [ticket] = solved({ ...GUARD, pieces: 2 }).tickets;
    expect(ticket?.steps.map(({ text }) => text).join()).not.toContain('middle');
  });

  test('with a leaf longer than a piece measures from the first cut', () => {
    const { tickets, job } = solved({ ...GUARD, radius: 60 });
    const [ticket] = tickets;
    const second = ticket?.steps.find(({ text }) => text.startsWith('Then the other end'))?.text ?? '';
    // 2 x (60 - 24.15) x tan 11.25° between the insides of the two cuts.
    const inside = 2 * (60 - 24.15) * Math.tan((11.25 * Math.PI) / 180);
    expect(
      job.base.setback + job.cope.throat.setback - 2 * 60 * Math.tan((11.25 * Math.PI) / 180),
    ).toBeCloseTo(job.base.distance, 9);
    expect(Number.isInteger(job.base.distance)).toBe(true);
    expect(second).toContain('past the first cut by what the leaf says');
    expect(second).toContain(`${(Math.round(inside * 2) / 2).toFixed(1)} mm on the inside`);
  });
});

describe('an elbow at one end of a tube that has another', () => {
  const ends = {
    plain: 'plain',
    coped: '{ onto: { od: 60.3 }, angle: 60 }',
    'another elbow': '{ onto: { mitre: { turn: 60, pieces: 2, radius: 200 } } }',
  };

  test.each(Object.entries(ends))(
    'is counted where the other end is %s: list, stock, order and ticket',
    (_, B) => {
      const elbow = '{ onto: { mitre: { turn: 90, pieces: 5, radius: 150 } } }';
      const job = readSample(
        `copeleaf: 1\nstock: [6m]\ntube: { name: leg, od: 48.3, wall: 2.6, between: 500, copies: 2, ends: { A: ${elbow}, B: ${B} } }\n`,
      );
      const solutions = solveHands(job);
      const rows = cutList(solutions, ENGLISH).map(({ piece, copies }) => [piece, copies]);
      const others = B === ends['another elbow'] ? [['end', 2]] : [];
      // The leg is the first of five pieces: three middle ones and the last are left, twice.
      expect(rows).toEqual([[undefined, 2], ['middle', 6], ['end', 2], ...others]);
      const blanks = stockPlan(job, solutions)?.sizes.flatMap(({ bars }) =>
        bars.flatMap((bar) => bar.blanks),
      );
      expect(blanks).toHaveLength(2 + 6 + 2 + 2 * others.length);
      const whole = cutList(solveHands(jobOf(GUARD)), ENGLISH);
      for (const kind of ['middle', 'end'] as const) {
        const of = (list: typeof whole) => list.find(({ piece }) => piece === kind)?.overall;
        expect(of(cutList(solutions, ENGLISH))).toBeCloseTo(of(whole) ?? Number.NaN, 9);
      }
      const [ticket] = ticketsOf(solutions, firstEnds(orderOfWork(solutions)), false, ENGLISH);
      expect(ticket?.make).toContain('3 middle pieces and 1 end piece');
      const steps = ticket?.steps.map(({ text }) => text).join('\n');
      expect(steps).toContain('For the elbow at end A cut also 3 middle pieces and 1 end piece with leaf A.');
    },
  );
});

test('how many pieces a bend has is told by what to make, and not with how far it turns', () => {
  const [ticket] = solved(GUARD).tickets;
  expect(ticket?.make).toContain('3 middle pieces and 2 end pieces');
  expect(ticket?.ends.flatMap(({ facts }) => facts.map(({ text }) => text))).toEqual([
    'a mitre that turns 90°, centre line radius 150 mm',
  ]);
});
