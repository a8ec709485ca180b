import { describe, expect, test } from 'vitest';
import type { Measure } from '../../src/page/form/measure.ts';
import { ANGLE, BETWEEN, CLOCK_AT_B, TUBE_SIZE } from '../../src/page/form/measures.ts';
import {
  type Edits,
  readingAdded,
  readingRemoved,
  readingTurned,
  SEVERAL,
  turnedReading,
} from '../../src/page/form/readings.ts';
import { readingsTold } from '../../src/page/form/readings-told.ts';
import { withValues } from '../../src/page/job/edit.ts';
import { type DocPath, docOf } from '../../src/page/job/job-doc.ts';
import { workOut } from '../../src/page/job/outcome.ts';
import { ENGLISH } from '../../src/words/english.ts';

const TUBE: DocPath = ['tube'];
const END_B: DocPath = ['tube', 'ends', 'B'];

function jobWith(tube: string, endB = 'angle: 60'): string {
  return `copeleaf: 1
tube:
  ${tube}
  ends:
    A: { onto: { od: 44.5 }, angle: 60 }
    B: { onto: { od: 44.5 }, ${endB} }
`;
}

const BASIS = jobWith('od: 38.1\n  between: 600');

/** The value under the key after these edits, as the file has it. */
function edited(text: string, edits: Edits, path: DocPath): unknown {
  return docOf(withValues(text, edits)).toJS()?.[path[0] ?? '']?.[path[1] ?? ''];
}

const turn = (text: string, measure: Measure, name: string): string =>
  withValues(text, turnedReading(docOf(text), TUBE, measure, name));

describe('a value that is turned to several readings', () => {
  test('keeps what was written as the first of them', () => {
    const text = turn(BASIS, BETWEEN, SEVERAL);
    expect(edited(text, [], ['tube', 'between'])).toEqual(['600', '']);
    const measured = jobWith('od: 38.1\n  between: { straightedge: 583, at: 90 }');
    expect(edited(turn(measured, BETWEEN, SEVERAL), [], ['tube', 'between'])).toEqual([
      { straightedge: '583', at: '90' },
      '',
    ]);
  });

  test('begins with none where a mark or the name of a pipe stood, which can’t be compared', () => {
    const marked = jobWith('od: 38.1\n  between: mark');
    expect(edited(turn(marked, BETWEEN, SEVERAL), [], ['tube', 'between'])).toEqual(['', '']);
    const pipe = docOf(turn(jobWith('pipe: NPS 1-1/2 sch 40'), TUBE_SIZE, SEVERAL)).toJS().tube;
    expect(pipe).toMatchObject({ od: ['', ''] });
    expect(pipe).not.toHaveProperty('pipe');
  });

  test('goes back to one way with the reading that was taken in that way', () => {
    const text = jobWith('od: 38.1\n  between: [600, { faces: 560 }]');
    expect(edited(turn(text, BETWEEN, 'faces'), [], ['tube', 'between'])).toEqual({
      faces: '560',
    });
    expect(edited(turn(text, BETWEEN, 'workPoints'), [], ['tube', 'between'])).toBe('600');
    expect(edited(turn(text, BETWEEN, 'overall'), [], ['tube', 'between'])).toEqual({ overall: '' });
    expect(edited(turn(text, BETWEEN, 'marked'), [], ['tube', 'between'])).toBe('mark');
  });

  test('gets and loses readings; the last that is left stands by itself', () => {
    const text = jobWith('od: 38.1\n  between: [600, { faces: 560 }]');
    const doc = docOf(text);
    expect(edited(text, readingAdded(doc, TUBE, BETWEEN), ['tube', 'between'])).toEqual([
      '600',
      { faces: '560' },
      '',
    ]);
    expect(edited(text, readingRemoved(doc, TUBE, BETWEEN, 0), ['tube', 'between'])).toEqual({
      faces: '560',
    });
    const three = jobWith('od: 38.1\n  between: [600, { faces: 560 }, 601]');
    expect(edited(three, readingRemoved(docOf(three), TUBE, BETWEEN, 1), ['tube', 'between'])).toEqual([
      '600',
      '601',
    ]);
  });

  test('turns each reading by itself, and is read by the job file’s own code once it is filled in', () => {
    const begun = withValues(BASIS, turnedReading(docOf(BASIS), END_B, ANGLE, SEVERAL));
    const text = withValues(begun, readingTurned(END_B, ANGLE, 1, 'tapeLengths'));
    expect(workOut(text, ENGLISH).kind).toBe('refused');
    const sides: readonly string[] = ['200', '200', '200'];
    const filled = withValues(
      text,
      sides.map((side, i) => [[...END_B, 'angle', 1, 'triangle', i], side] as const),
    );
    // Three equal sides make 60 degrees, as Euclid has it.
    const outcome = workOut(filled, ENGLISH);
    expect(readingsTold(outcome, [...END_B, 'angle'])).toEqual([
      '60°; this one is taken',
      expect.stringMatching(/^triangle 200 mm, 200 mm, 200 mm, that is 60°; the same$/),
    ]);
  });
});

test('what readings came to is told of each value that can have several, once all of the job can be read', () => {
  const text = jobWith('od: [38.1, { girth: 119.7 }]\n  between: [600, 601]', 'angle: 60, clock: [35, 35.5]');
  const outcome = workOut(text, ENGLISH);
  // 119.7 / pi = 38.102.
  expect(readingsTold(outcome, ['tube', 'od'])[1]).toMatch(/that is 38\.1 mm/);
  expect(readingsTold(outcome, ['tube', 'between'])[1]).toMatch(/1 mm more/);
  expect(readingsTold(outcome, [...END_B, CLOCK_AT_B.keys[0]])[1]).toMatch(/0\.5° more/);
  expect(readingsTold(outcome, [...END_B, 'onto', 'od'])).toEqual([]);
  expect(readingsTold(workOut(text.replace('601', '602'), ENGLISH), ['tube', 'od'])).toEqual([]);
});
