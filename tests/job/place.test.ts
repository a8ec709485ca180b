import { describe, expect, test } from 'vitest';
import { PAPERS, readPaper } from '../../src/job/paper/paper.ts';
import { readJob } from '../../src/job/read-job.ts';
import { complainAt, locate } from '../../src/job/text/origin.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { asWritten } from '../../src/words/said.ts';
import { A4, complaintsAbout, readSample, refusalOf, SAMPLE } from './sample.ts';

describe('a value of a job is found where it was written', () => {
  const job = readSample(SAMPLE);

  test.each([
    ['paper', 13, 1],
    ['tubes[0]', 3, 1],
    ['tubes[0].between', 7, 3],
    ['tubes[0].ends.B.offset', 11, 61],
    ['tubes[0].ends.A.offset', 10, 5],
    ['margin.left', 1, 1],
  ])('%s', (path, line, column) => {
    expect(locate(job, path)).toEqual({ line, column });
  });

  test('and in a list of tubes', () => {
    const tube = '{ od: 30, ends: { A: { onto: { od: 50 }, angle: 60 } } }';
    expect(locate(readSample(`copeleaf: 1\ntubes:\n  - ${tube}\n  - ${tube}\n`), 'tubes[1].wall')).toEqual({
      line: 4,
      column: 5,
    });
  });

  test('so that a later stage can complain of it', () => {
    const words = {
      read: asWritten('between: 24-3/8in'),
      why: asWritten('too short'),
      instead: asWritten('more'),
    };
    expect(complainAt(job, 'tubes[0].between', 'short', words)).toEqual({
      code: 'short',
      file: 'trailer.yaml',
      line: 7,
      column: 3,
      key: 'between',
      ...words,
    });
  });
});

describe('a mistake names the key it is about, and whether anything is written there', () => {
  const withEnd = (end: string) =>
    `copeleaf: 1\ntube: { od: 30, ends: { A: { onto: { od: 50 }, ${end} } } }\n`;

  test.each([
    ['angle: x', 'angle', false],
    ['angle:', 'angle', true],
    ["angle: ''", 'angle', true],
    ['clock: 0', 'angle', true],
    ['angle: [60, y]', 'angle', false],
    ['angle: 60, from: inside', 'from', false],
  ])('%s', (end, key, lacking) => {
    const [complaint, ...others] = complaintsAbout(withEnd(end));
    expect(others).toEqual([]);
    expect([complaint?.key, complaint?.missing ?? false]).toEqual([key, lacking]);
  });
});

describe('paper is read by its name or size', () => {
  test.each([
    ['a4', 'A4', 210, 297],
    ['Letter', 'letter', 215.9, 279.4],
    ['ARCH D', 'arch-d', 609.6, 914.4],
    ['300x400mm', '300x400mm', 300, 400],
    ['400 x 300', '400 x 300', 300, 400],
    ['11x17in', '11x17in', 279.4, 431.8],
    ['11" × 17"', '11" × 17"', 279.4, 431.8],
  ])('%s', (text, name, width, height) => {
    expect(readPaper(text, 'mm')).toEqual({ ok: true, value: { name, width, height } });
  });

  test.each(['', 'A44', 'x', '0x400', '-3x400', '300x400x500', '6mx1m', 'NaNxNaN'])(
    '%s is refused',
    (text) => {
      expect(readPaper(text, 'mm').ok).toBe(false);
    },
  );

  // ISO 216: each size halves the one before it, and A0 is a square metre in the ratio of one to root two.
  test('the ISO sizes have their ratio', () => {
    for (const { width, height } of PAPERS.filter(({ name }) => name.startsWith('A'))) {
      expect(Math.abs(width * Math.SQRT2 - height)).toBeLessThan(1);
    }
  });

  test('paper insisted on goes before what the file names, and has to hold its margins', () => {
    const defaults = { words: ENGLISH, paper: A4, insistOnPaper: { name: 'slip', width: 90, height: 300 } };
    expect(refusalOf(() => readJob(SAMPLE, 'x', defaults))).toMatchObject([
      { code: 'paper-small', line: 13 },
    ]);
    expect(readJob(SAMPLE, 'x', { ...defaults, insistOnPaper: A4 }).sheet.paper).toEqual(A4);
  });
});
