import { describe, expect, test } from 'vitest';
import { emptyJob, withValue } from '../../src/page/job/edit.ts';
import { countAt, docOf, docWordsAt } from '../../src/page/job/job-doc.ts';
import { workOut } from '../../src/page/job/outcome.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { SAMPLE } from '../job/sample.ts';

describe('a value that is written into a job', () => {
  test('leaves every other line as it was, comments too', () => {
    const edited = withValue(SAMPLE, ['tube', 'between'], '25in');
    const lines = SAMPLE.split('\n');
    expect(edited.split('\n').map((line, i) => line === lines[i])).toEqual(
      lines.map((line) => !line.includes('between')),
    );
    expect(edited).toContain('between: 25in # work point to work point');
  });

  test.each(['1-1/2"', '38,1', "60°30'", '# 7', ' 3 ', 'a: b', 'null', "it's", '38.10'])(
    'is read again as it was written: %s',
    (words) => {
      for (const path of [
        ['tube', 'od'],
        ['tube', 'ends', 'A', 'onto', 'od'],
      ])
        expect(docWordsAt(docOf(withValue(SAMPLE, path, words)), path)).toBe(words);
    },
  );

  test('fills in what was left empty', () => {
    const empty = withValue(SAMPLE, ['tube', 'between'], { faces: '' });
    const filled = withValue(empty, ['tube', 'between', 'faces'], '22in');
    expect(docWordsAt(docOf(filled), ['tube', 'between', 'faces'])).toBe('22in');
  });

  test('may be a list of empty ones, in brackets or not, to be filled in later', () => {
    const inBrackets = emptyJob('mm', 'A4').replace('A: {}', 'A: { onto: { od: 44.5 } }');
    for (const text of [inBrackets, SAMPLE]) {
      const at = ['tube', 'ends', 'A', 'angle'];
      const empty = withValue(text, at, { triangle: ['', '', ''] });
      const filled = withValue(empty, [...at, 'triangle', 2], '208');
      expect([0, 1, 2].map((i) => docWordsAt(docOf(filled), [...at, 'triangle', i]))).toEqual([
        '',
        '',
        '208',
      ]);
    }
    const oneMore = withValue(`${inBrackets}stock: [6m]\n`, ['stock', 1], '');
    expect(countAt(docOf(oneMore), ['stock'])).toBe(2);
  });

  test('is found and written under its former name too, which stays', () => {
    const older = SAMPLE.replace('edge: bevel', 'blunt: 1mm # of the edge');
    expect(docWordsAt(docOf(older), ['tube', 'land'])).toBe('1mm');
    expect(withValue(older, ['tube', 'land'], '0.8mm')).toBe(older.replace('1mm', '0.8mm'));
    const wrong = older.replace('1mm', 'x');
    const outcome = workOut(wrong, ENGLISH);
    expect(outcome.kind === 'refused' && outcome.problems.map(({ path }) => path)).toEqual([
      ['tube', 'land'],
    ]);
  });

  test('takes its usual place among the keys, whatever was filled in first', () => {
    const angle = withValue(emptyJob('mm', 'A4'), ['tube', 'ends', 'A', 'angle'], '60');
    const header = withValue(angle, ['tube', 'ends', 'A', 'onto', 'od'], '44.5');
    const tube = withValue(header, ['tube', 'od'], '38.1');
    expect(tube).toBe(`copeleaf: 1
units: mm
tube:
  od: 38.1
  ends:
    A: { onto: { od: 44.5 }, angle: 60 }
paper: A4
`);
    expect(workOut(tube, ENGLISH).kind).toBe('read');
  });
});

describe('a mistake', () => {
  const problemsIn = (text: string) => {
    const outcome = workOut(text, ENGLISH);
    return outcome.kind === 'refused' ? outcome.problems : [];
  };

  test('is found at the field that it is about', () => {
    const wrong = withValue(SAMPLE, ['tube', 'ends', 'B', 'angle'], '480deg');
    expect(problemsIn(wrong).map(({ path, missing }) => ({ path, missing }))).toEqual([
      { path: ['tube', 'ends', 'B', 'angle'], missing: false },
    ]);
  });

  test('is told at the length where only the solved ends show it', () => {
    const wrong = withValue(SAMPLE, ['tube', 'between'], '1in');
    expect(problemsIn(wrong).map(({ path }) => path)).toEqual([['tube', 'between']]);
  });

  test('is none where nothing was written yet: the fields that the joint waits for', () => {
    expect(problemsIn(emptyJob('mm', 'A4'))).toMatchObject([
      { path: ['tube', 'od'], missing: true },
      { path: ['tube', 'ends', 'A', 'onto', 'od'], missing: true },
      { path: ['tube', 'ends', 'A', 'angle'], missing: true },
    ]);
  });
});
