import { expect, test } from 'vitest';
import { howMany } from '../count.ts';
import { jobFileOf, linesOf as linesThrough, randomEnd } from '../outside/asked-as-job.ts';
import { type AskedEnd, type AskedPart, turnOf } from '../outside/asked-in-degrees.ts';
import { between, type Random, randomFrom, SEED } from '../outside/random-joints.ts';

const NAMES = ['outside', 'inside', 'square'] as const;
const JOINTS = howMany({ short: 3, deep: 30 });
const STATIONS = 6;

/** What rounding leaves: a bend's entry is searched for, the rest is closed-form. */
const ROUNDING = 1e-8;

/** Beside a header the setback runs off as a square root: a hair to the side is not nothing there. */
const STEEP = 1e4;

type Lines = ReturnType<typeof linesThrough>;

/** Lines already asked for: an end is solved once for all its stations. */
const solved = new Map<string, Lines>();

function linesOf(ask: AskedEnd, text = jobFileOf(ask)): Lines {
  const lines = solved.get(text) ?? linesThrough(ask, text);
  solved.set(text, lines);
  return lines;
}

type Check = (ask: AskedEnd, station: number, random: Random) => void;

function eachUnion(check: Check): void {
  const random = randomFrom(SEED);
  for (let i = 0; i < JOINTS; i++) {
    const ask = randomEnd(random, 'union');
    for (let s = 0; s < STATIONS; s++) check(ask, between(random, 0, turnOf(ask.tube)), random);
  }
}

/** Each part on its own: a list of one, which may be shifted. */
function alone(ask: AskedEnd): AskedEnd[] {
  return ask.parts.map((part) => ({ ...ask, parts: [part, { ...part }] }));
}

test(`a union cuts no less than any part touched there; a missed part never cuts deeper (JOINT_SEED=${SEED})`, () => {
  let touchedTwice = 0;
  let missedDeeper = 0;
  eachUnion((ask, station) => {
    for (const name of ['outside', 'inside'] as const) {
      const whole = linesOf(ask)[name](station);
      const parts = alone(ask).map((part) => linesOf(part)[name](station));
      const touched = parts.filter(({ contact }) => contact).map(({ setback }) => setback);
      const missed = parts.filter(({ contact }) => !contact).map(({ setback }) => setback);
      expect(whole.contact, jobFileOf(ask)).toBe(touched.length > 0);
      const due = Math.max(...(touched.length > 0 ? touched : missed));
      expect(whole.setback, jobFileOf(ask)).toBe(due);
      expect(parts[whole.part]?.setback).toBe(due);
      if (touched.length > 1) touchedTwice++;
      if (touched.length > 0 && Math.max(...missed) > due) missedDeeper++;
    }
  });
  // Both are really drawn, else the test shows nothing.
  expect(touchedTwice).toBeGreaterThan(JOINTS);
  expect(missedDeeper).toBeGreaterThan(JOINTS / 10);
});

test('the square line of a union clears every part that is touched anywhere in the wall', () => {
  eachUnion((ask, station) => {
    const { outside, inside, square } = linesOf(ask);
    const deepest = square(station).setback;
    expect(deepest).toBeGreaterThanOrEqual(Math.max(outside(station).setback, inside(station).setback));
    for (const part of alone(ask)) {
      const lines = linesOf(part);
      const met = NAMES.map((name) => lines[name](station)).filter(({ contact }) => contact);
      for (const { setback } of met)
        expect(deepest, jobFileOf(ask)).toBeGreaterThanOrEqual(setback - ROUNDING);
    }
  });
});

test('the order of the list does not matter', () => {
  eachUnion((ask, station) => {
    const [first, ...others] = [...ask.parts].reverse();
    if (first) expectSame(ask, station, { ...ask, parts: [first, ...others] }, station);
  });
});

test('a list of one header, and a list of the same header twice, are that header', () => {
  const random = randomFrom(SEED);
  for (const kind of ['plate', 'sharp box', 'round box', 'bend'] as const) {
    for (let i = 0; i < 10; i++) {
      const ask = randomEnd(random, kind);
      const station = between(random, 0, turnOf(ask.tube));
      expectSame(ask, station, { ...ask, parts: [ask.parts[0], ask.parts[0]] }, station);
      expectSame(ask, station, ask, station, jobFileOf(ask).replace(/([AB]: )(\{.*\})$/m, '$1[$2]'));
    }
  }
});

test('shifting every part alike shifts the lines as much', () => {
  eachUnion((ask, station, random) => {
    const by = Number(between(random, -20, 20).toFixed(6));
    const moved = eachPart(ask, (part) => ({ ...part, shift: Number((part.shift + by).toFixed(6)) }));
    for (const name of NAMES) {
      const [here, there] = [linesOf(ask)[name](station), linesOf(moved)[name](station)];
      expect(there.setback - by).toBeCloseTo(here.setback, 9);
    }
  });
});

test('each part with its angle taken from the other side is the same: clock + 180; offset, roll, centre reversed', () => {
  eachUnion((ask, station) => {
    const twin = eachPart(ask, (part) => ({
      ...reversed(part),
      angle: 180 - part.angle,
      clock: part.clock + 180,
    }));
    expectSame(ask, station, twin, station);
  });
});

test('the opposite hand has clock, offset, roll and centre of every part reversed, and its stations', () => {
  eachUnion((ask, station) => {
    const twin = eachPart(ask, (part) => ({ ...reversed(part), clock: -part.clock }));
    expectSame(ask, station, twin, turnOf(ask.tube) - station);
  });
});

test('the ends named the other way round have clock, offset, roll and centre of every part reversed', () => {
  eachUnion((ask, station) => {
    const end = ask.end === 'A' ? 'B' : 'A';
    const twin = eachPart({ ...ask, end }, (part) => ({ ...reversed(part), clock: -part.clock }));
    expectSame(ask, station, twin, turnOf(ask.tube) - station);
  });
});

function eachPart(ask: AskedEnd, change: (part: AskedPart) => AskedPart): AskedEnd {
  const [first, ...others] = ask.parts;
  return { ...ask, parts: [change(first), ...others.map(change)] };
}

function reversed(part: AskedPart): AskedPart {
  const { onto, offset } = part;
  if (onto.kind === 'box') return { ...part, offset: -offset, onto: { ...onto, roll: -onto.roll } };
  if (onto.kind === 'bend') return { ...part, offset: -offset, onto: { ...onto, centre: -onto.centre } };
  return { ...part, offset: -offset };
}

function expectSame(a: AskedEnd, atA: number, b: AskedEnd, atB: number, text?: string): void {
  const [linesA, linesB] = [linesOf(a), linesOf(b, text)];
  for (const name of NAMES) {
    const [left, right] = [linesA[name](atA), linesB[name](atB)];
    const apart = Math.abs(left.setback - right.setback);
    const steep = Math.abs(left.slope) > STEEP;
    expect(right.contact, jobFileOf(a)).toBe(left.contact);
    if (!steep && !(apart <= ROUNDING)) {
      expect.fail(`${name}: ${apart} apart at ${atA}\n${jobFileOf(a)}\n${jobFileOf(b)}`);
    }
  }
}
