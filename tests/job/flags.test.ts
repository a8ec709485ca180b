import { describe, expect, test } from 'vitest';
import type { EndFlags } from '../../src/job/end-flags.ts';
import { jobFromFlags } from '../../src/job/flags.ts';
import { complainAt, locate } from '../../src/job/text/origin.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { asWritten } from '../../src/words/said.ts';
import { A4, readSample, refusalOf } from './sample.ts';

const RUNG: EndFlags = { od: '38,1', wall: '2.4', onto: '1-3/4"', angle: '60°', clock: '-5', edge: 'square' };

describe('flags are read as a job file of one end', () => {
  const job = jobFromFlags(RUNG, { words: ENGLISH, paper: A4 });

  test('with the same meaning', () => {
    expect(job.tubes).toMatchObject([
      { section: { od: { mm: 38.1, wrote: '38,1' } }, ends: { A: { preparation: { edge: 'square' } } } },
    ]);
  });

  test('whose text, to be kept, reads the same', () => {
    expect(readSample(job.source).tubes).toEqual(job.tubes);
  });

  test('the end may be B', () => {
    expect(
      Object.keys(jobFromFlags({ ...RUNG, end: 'b' }, { words: ENGLISH, paper: A4 }).tubes[0]?.ends ?? {}),
    ).toEqual(['B']);
  });

  test('and a later complaint names the flag', () => {
    expect(locate(job, 'tubes[0].ends.A.clock')).toEqual({ flag: '--clock -5' });
    const words = { read: asWritten('-5'), why: asWritten('it can not be'), instead: asWritten('another') };
    expect(complainAt(job, 'tubes[0].ends.A.clock', 'test', words)).toEqual({
      code: 'test',
      file: 'flags',
      key: 'clock',
      ...words,
      read: '--clock -5',
    });
  });
});

test('the land is given by its former flag too, and by one of the two', () => {
  const asked = (flags: EndFlags) =>
    jobFromFlags({ ...RUNG, edge: 'bevel', ...flags }, { words: ENGLISH, paper: A4 });
  expect(asked({ blunt: '1' }).tubes).toEqual(asked({ land: '1' }).tubes);
  expect(asked({ blunt: '1' }).source).toContain('land: 1');
  expect(refusalOf(() => asked({ land: '1', blunt: '1' }))).toMatchObject([
    { code: 'duplicate-key', read: '--blunt 1', why: '`--blunt` and `--land` are the same thing' },
  ]);
});

describe('a mistake names its flag and no line', () => {
  test.each<[EndFlags, string, string]>([
    [{ ...RUNG, angle: '0' }, 'angle-range', '--angle 0'],
    [{ ...RUNG, od: '1,500' }, 'length', '--od 1,500'],
    [{ ...RUNG, wall: '20' }, 'wall', '--wall 20'],
    [{ ...RUNG, offset: '9in' }, 'misses', '--offset 9in'],
    [{ ...RUNG, end: 'C' }, 'end', '--end C'],
    [{ ...RUNG, paper: 'A44' }, 'paper', '--paper A44'],
    [{ ...RUNG, margin: '80' }, 'paper-small', '--margin 80'],
    [{ ...RUNG, onto: ': [' }, 'length', '--onto : ['],
    [{ od: '38.1', onto: '44.5' }, 'missing', 'no `--angle`'],
    [{ od: '38.1', onto: '44.5', angle: '60', edge: 'square' }, 'no-wall', '--edge square'],
  ])('%o', (flags, code, read) => {
    const complaints = refusalOf(() => jobFromFlags(flags, { words: ENGLISH, paper: A4 }));
    expect(complaints).toMatchObject([{ code, read, file: 'flags' }]);
    expect(complaints[0]).not.toHaveProperty('line');
  });
});
