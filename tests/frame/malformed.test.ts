import fc from 'fast-check';
import { expect, test } from 'vitest';
import { Refusal } from '../../src/job/text/complaint.ts';
import { standingFrame } from '../../src/together/frame-notes.ts';
import { howMany } from '../count.ts';
import { complaintsOf, readText } from './read-lines.ts';

const GOOD = `copeleaf: 1
units: mm
job: rack
frame:
  snap: 0.5
  mirror: { x: 900 }
  points:
    left: [0, 0, 0]
    right: [700, 0, 0]
    apex: [300, 40, 600]
    half: { middle: [left, right], share: 0.4 }
    foot: { on: rail, at: 250 }
    head: { from: foot, by: [60, 300, 500] }
  tubes:
    - { name: rail, along: [left, right], od: 48.3, wall: 2.6 }
    - { name: post, along: [half, apex], od: 31.75, wall: 2, after: [rail] }
    - { name: stay, along: [foot, head], od: 26.9, wall: 2, ends: { A: { onto: [rail] } } }
    - { name: box, along: [[0, 900, 0], [700, 900, 0]], section: { wide: 50, deep: 30, corner: 4 }, wall: 2, face: front }
`;

/** What is written wrong, what follows of it, and the words that have to be among the reasons. */
type Wrong = readonly [from: string, to: string, code: string, words?: readonly string[]];

// In each, # is a number or a name that is drawn.
const WRONG: readonly Wrong[] = [
  ['right: [700, 0, 0]', 'right: [70#, 0, 0, 1]', 'point', ['comma']],
  ['right: [700, 0, 0]', 'right: [70#, 0]', 'point'],
  ['right: [700, 0, 0]', 'right: [70#, 0, wide]', 'length'],
  ['right: [700, 0, 0]', 'right: 70#', 'shape'],
  ['share: 0.4', 'share: a#', 'share'],
  ['share: 0.4', 'shore: 0.#', 'unknown-key'],
  ['middle: [left, right]', 'middle: [left, rigt]', 'unknown-name', ['`right`']],
  ['middle: [left, right]', 'middle: [left]', 'point'],
  ['middle: [left, right]', 'middle: [left, half]', 'circle', ['half -> half']],
  ['right: [700, 0, 0]', 'right: { from: half, by: [1#, 0, 0] }', 'circle', ['half', 'right']],
  ['left: [0, 0, 0]', 'left: { from: head, by: [#, 0, 1] }', 'circle', ['left', 'head', 'foot', 'rail']],
  ['on: rail, at: 250', 'on: raill, at: 250', 'unknown-name', ['`rail`']],
  ['on: rail, at: 250', 'on: rail, at: 7#00', 'beyond', ['rail']],
  ['on: rail, at: 250', 'on: rail, at: -#', 'negative'],
  ['on: rail, at: 250', 'on: rail', 'missing'],
  ['on: rail, at: 250', 'on: stay, at: 250', 'circle', ['foot', 'stay']],
  ['on: rail, at: 250', 'on: rail, at: 250, out: right', 'out', ['rail']],
  ['on: rail, at: 250', 'on: rail, at: 250, from: left', 'point'],
  ['from: foot, by: [60, 300, 500]', 'from: foot', 'missing'],
  ['from: foot, by: [60, 300, 500]', 'tapes: { left: 8#, right: 640 }', 'not-yet'],
  ['snap: 0.5', 'snap: -#', 'negative'],
  ['snap: 0.5', 'tapes: [{ from: left, to: right, is: 7# }]', 'not-yet'],
  ['mirror: { x: 900 }', 'mirror: { x: 900, y: # }', 'mirror'],
  ['mirror: { x: 900 }', 'mirror: 90#', 'shape'],
  ['name: rail,', 'name: post,', 'same-name'],
  ['name: stay,', 'name: "a, #",', 'name'],
  ['along: [left, right]', 'along: [left, left]', 'no-length'],
  ['along: [left, right]', 'along: [left, right, apex]', 'along'],
  ['along: [half, apex]', 'along: [half, apx]', 'unknown-name', ['`apex`']],
  ['along: [half, apex], ', '', 'missing'],
  ['after: [rail]', 'after: [rial]', 'unknown-name', ['`rail`']],
  ['after: [rail]', 'between: 40#', 'frame-key'],
  ['after: [rail]', 'pair: true', 'frame-key'],
  ['after: [rail]', 'copies: #', 'frame-key'],
  ['after: [rail]', 'throgh: true', 'unknown-key'],
  ['onto: [rail]', 'onto: [box]', 'misses', ['box']],
  ['onto: [rail]', 'onto: [stay]', 'onto'],
  ['onto: [rail]', 'onto: [rail], plain: true', 'cut-twice'],
  ['onto: [rail]', 'onto: [rail], past: #', 'past'],
  ['onto: [rail]', 'past: 1#', 'past'],
  ['onto: [rail]', 'mitre: true', 'mitre'],
  ['onto: [rail]', 'flat: sideways', 'way'],
  ['onto: [rail]', 'flat: [0, 0, 0]', 'way'],
  ['onto: [rail]', 'onto: []', 'shape'],
  ['along: [[0, 900, 0], [700, 900, 0]]', 'along: [[0, 900, 0], [95#, 900, 0]]', 'mirror', ['box']],
  ['face: front', 'face: right', 'face'],
  ['job: rack', 'tubes: []', 'frame-key'],
  ['job: rack', 'pair: true', 'frame-key'],
  ['od: 48.3', 'od: -#', 'not-positive'],
];

const wrong = fc.tuple(fc.constantFrom(...WRONG), fc.integer({ min: 1, max: 9 }));

test('the frame that is spoilt below is good', () => {
  expect(complaintsOf(GOOD)).toEqual([]);
  for (const [from] of WRONG) expect(GOOD.split(from), from).toHaveLength(2);
});

/** The line, from 1, of the first difference. */
function lineOf(from: string): number {
  return GOOD.slice(0, GOOD.indexOf(from)).split('\n').length;
}

function oneClearError([[from, to, code, words = []], digit]: readonly [Wrong, number]): void {
  const text = GOOD.replace(from, to.replace('#', String(digit)));
  const found = complaintsOf(text);
  const [first] = found;
  const said = `${to}: ${found.map((each) => `${each.line} ${each.code} ${each.read}: ${each.why}`).join(' | ')}`;
  if (found.length !== 1 || first?.code !== code) throw new Error(said);
  // A circle, and a name that is given twice, may be told at any of its members.
  if (code !== 'circle' && code !== 'same-name' && first.line !== lineOf(from)) throw new Error(said);
  if (!words.every((word) => `${first.why} ${first.instead}`.includes(word))) throw new Error(said);
}

test.each(WRONG.map((each) => [each[1], each] as const))('%s', (_, each) => {
  oneClearError([each, 7]);
});

const signs = fc.constantFrom(
  ...`:,-{}[]"'#&*\n 0123456789.`,
  'left',
  'rail',
  "rail'",
  'on: ',
  'at: ',
  'plain',
  'true',
  'mitre: true',
  'through: true, ',
  'ends: { B: { onto: [rail] } }',
  'after: [stay], ',
  '-0',
  '1e9',
  '\n    - ',
  ', out: up',
  'snap: 600',
);

const spoilt = fc
  .array(fc.record({ at: fc.nat(), drop: fc.nat({ max: 8 }), put: fc.oneof(fc.constant(''), signs) }), {
    minLength: 1,
    maxLength: 3,
  })
  .map((slips) =>
    slips.reduce((text, { at, drop, put }) => {
      const place = at % (text.length + 1);
      return text.slice(0, place) + put + text.slice(place + drop);
    }, GOOD),
  );

/** Whether it is refused with its reasons, each in words and at a line of the file; what is not refused is solved to its clashes. */
function isRefused(text: string): boolean {
  const found = complaintsOf(text);
  const lines = text.split('\n').length;
  for (const { code, read, why, instead, line = 0, column = 0 } of found) {
    const inWords = [code, read, why, instead].every((words) => words !== '' && !/\p{Cc}/u.test(words));
    if (!inWords || line < 1 || line > lines || column < 1)
      throw new Error(`${line}: ${code} ${why}\n${text}`);
  }
  if (found.length > 0) return true;
  try {
    standingFrame(readText(text));
    return false;
  } catch (error) {
    if (error instanceof Refusal) return true;
    throw error;
  }
}

test('frames with a mistake drawn at random say one thing, at its place', () => {
  fc.assert(fc.property(wrong, oneClearError), {
    numRuns: howMany({ short: 40, deep: 1500, asked: 'MALFORMED' }),
    seed: 23,
  });
}, 600_000);

test('frames with slips of the keys are refused in words and at a place, or read, and never crash', () => {
  let refused = 0;
  const runs = howMany({ short: 40, deep: 1500, asked: 'MALFORMED' });
  fc.assert(
    fc.property(spoilt, (text) => {
      if (isRefused(text)) refused++;
    }),
    { numRuns: runs, seed: 42 },
  );
  expect(refused).toBeGreaterThan(runs / 4);
}, 600_000);
