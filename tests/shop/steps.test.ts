import { describe, expect, test } from 'vitest';
import { solveJob } from '../../src/saddle/solve.ts';
import { firstEnds, orderOfWork } from '../../src/shop/order.ts';
import { ticketsOf } from '../../src/shop/ticket.ts';
import { readSample } from '../job/sample.ts';

function ticketsFor(job: string) {
  const solutions = solveJob(readSample(`copeleaf: 1\n${job}`));
  return ticketsOf(solutions, firstEnds(orderOfWork(solutions)));
}

function stepsFor(tube: string): string {
  return (
    ticketsFor(`tube:\n  name: stay\n  od: 30\n  wall: 2\n${tube}`)[0]
      ?.steps.map(({ text }) => text)
      .join('\n') ?? ''
  );
}

const ROUND = 'onto: { od: 42.4 }';
const BY_NUMBERS = `  between: 600\n  ends: { A: { ${ROUND}, angle: 60 }, B: { ${ROUND}, angle: 50, clock: 35 } }\n`;
const FITTED = `  between: mark\n  ends: { A: { ${ROUND}, angle: 60 }, B: { ${ROUND}, angle: 50, clock: mark } }\n`;
const ONE_END = `  ends: { A: { ${ROUND}, angle: 60 } }\n`;
const SQUARE_B = `  between: 600\n  ends: { A: { ${ROUND}, angle: 60 }, B: plain }\n`;
const MITRED =
  '  between: 600\n  ends: { A: { onto: { mitre: { turn: 90 } } }, B: { onto: { mitre: { turn: 90 } } } }\n';
const KNIFE = `  ends: { A: { onto: { od: 30 }, angle: 90 } }\n`;

/** Words of a step, and which tubes need it. */
const NEEDED: readonly (readonly [string, readonly string[]])[] = [
  ['Scribe the spine', [BY_NUMBERS, FITTED, MITRED]],
  ['scribe the rotation mark', [FITTED]],
  ['mark the length', [FITTED]],
  ['Check which way end', [BY_NUMBERS, FITTED, MITRED]],
  ['off square', [SQUARE_B]],
  ['knife edge', [KNIFE]],
  ['landing', [BY_NUMBERS, FITTED, ONE_END, SQUARE_B, KNIFE]],
  ['Drill a vent', [BY_NUMBERS, FITTED]],
  ['do not spring the frame', [BY_NUMBERS, FITTED]],
  ['on a scrap', [BY_NUMBERS, FITTED, ONE_END, SQUARE_B, MITRED, KNIFE]],
  ['Deburr', [BY_NUMBERS, FITTED, ONE_END, SQUARE_B, MITRED, KNIFE]],
  ['Clean bright', [BY_NUMBERS, FITTED, ONE_END, SQUARE_B, MITRED, KNIFE]],
];

describe('a ticket has the steps that its tube needs, and no others', () => {
  test.each(NEEDED)('%s', (words, tubes) => {
    for (const tube of [BY_NUMBERS, FITTED, ONE_END, SQUARE_B, MITRED, KNIFE]) {
      expect(stepsFor(tube).includes(words), tube).toBe(tubes.includes(tube));
    }
  });
});

describe('the steps carry this tube’s numbers', () => {
  test('its blank, how much longer that is, and why', () => {
    expect(stepsFor(BY_NUMBERS)).toContain('Cut the blank 610 mm (~24-1/32 in) long, 10 mm');
    const slant = stepsFor(
      '  between: 600\n  ends: { A: { onto: { plate: {} }, angle: 35 }, B: { onto: { plate: {} }, angle: 35 } }\n',
    );
    // Each toe reaches 15 / tan 35 = 21.42 mm beyond.
    expect(slant).toContain('long, 52.84 mm');
    expect(slant).toContain('its long points reach 42.84 mm');
  });

  test('the way round by tape, and which end is first and why', () => {
    expect(stepsFor(BY_NUMBERS)).toContain(`a tape reads ${(30 * Math.PI).toFixed(2)} mm`);
    expect(stepsFor(BY_NUMBERS)).toContain('Cut end A first: it matters less');
    expect(stepsFor(FITTED)).toContain('Cut end A first: the other is marked with this one seated');
  });

  test('on which side the second end turns, the other way round for the opposite hand', () => {
    const [drawn, opposite] = ticketsFor(`pair: true\ntube:\n  od: 30\n${BY_NUMBERS}`);
    const wordsOf = (ticket: typeof drawn) => ticket?.steps.map(({ text }) => text).join();
    expect(wordsOf(drawn)).toContain('35° to the right');
    expect(wordsOf(opposite)).toContain('35° to the left');
    expect(wordsOf(opposite)).toContain('This tube is the opposite hand');
  });

  test('its edge', () => {
    expect(stepsFor(BY_NUMBERS)).toContain('bevel the inner edge back to the dashed one');
    expect(stepsFor(`  edge: square\n${BY_NUMBERS}`)).toContain('leave the face square');
    expect(stepsFor(`  blunt: 1\n${BY_NUMBERS}`)).toContain('a land of 1 mm');
  });
});

describe('the numbers for the saw', () => {
  const sawFor = (tube: string) => ticketsFor(`tube:\n  od: 30\n  wall: 2\n${tube}`)[0]?.saw;

  test('are the blank, what the leaves lie apart, and the twist', () => {
    expect(sawFor(BY_NUMBERS)?.map(({ label }) => label)).toEqual([
      'blank',
      'base edge to base edge',
      'twist, heel A to heel B',
    ]);
    expect(sawFor(BY_NUMBERS)?.map(({ text }) => text)).toContain('35° right');
    expect(sawFor(`  copies: 3\n${BY_NUMBERS}`)?.[0]?.text).toMatch(/^3 x 610 mm/);
  });

  test('say of what the leaves lie apart the same as the step that lays the second one', () => {
    for (const tube of [BY_NUMBERS, SQUARE_B]) {
      const apart = sawFor(tube)?.find(({ label }) => label.startsWith('base edge'))?.text ?? 'none';
      expect(stepsFor(tube)).toContain(apart);
    }
  });

  test('are none where the length is marked on the tube', () => {
    expect(sawFor(FITTED)).toEqual([]);
  });
});

test('a leaf is tried on scrap once, however many tubes are made of it', () => {
  const steps = ticketsFor(`tube:\n  od: 30\n  wall: 2\n  copies: 4\n${BY_NUMBERS}`)[0]?.steps ?? [];
  expect(steps.filter(({ once }) => once).map(({ text }) => text.slice(0, 12))).toEqual(['Try the leaf']);
});

test('a bend of many pieces has its other mitred ends cut likewise, two to a joint', () => {
  const bend = (pieces: number) =>
    stepsFor(`  ends: { A: { onto: { mitre: { turn: 90, pieces: ${pieces}, radius: 150 } } } }\n`);
  expect(bend(5)).toContain('8 in all: 3 middle pieces and 2 end pieces');
  expect(bend(3)).toContain('4 in all: 1 middle piece and 2 end pieces');
  expect(stepsFor(ONE_END)).not.toContain('likewise');
});

describe('twins are never taken for one another', () => {
  const [drawn, opposite, other] = ticketsFor(
    `tubes:\n  - { name: stay, od: 30, pair: true, between: 600, ends: { A: { ${ROUND}, angle: 60 }, B: { ${ROUND}, angle: 50, clock: 35 } } }\n` +
      `  - { name: rung, od: 30, between: 600, ends: { A: { ${ROUND}, angle: 90 }, B: { ${ROUND}, angle: 90 } } }\n`,
  );

  test('each is named by its hand and tells its twin’s ticket; a tube without one tells neither', () => {
    expect(drawn?.hand).toEqual({ words: 'as drawn', twin: 2 });
    expect(opposite?.hand).toEqual({ words: 'opposite hand', twin: 1 });
    expect(other).not.toHaveProperty('hand');
    expect([drawn, opposite, other].map((ticket) => [ticket?.number, ticket?.of])).toEqual([
      [1, 3],
      [2, 3],
      [3, 3],
    ]);
  });
});
