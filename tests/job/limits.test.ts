import { describe, expect, test } from 'vitest';
import { howMany } from '../count.ts';
import { complaintsAbout, SAMPLE } from './sample.ts';

const many = (count: number, each: (i: number) => string): string =>
  Array.from({ length: count }, (_, i) => each(i)).join('');

/** What is wrong, the text after the head of a job, and the code that it is refused with. */
const FAR_FROM_A_JOB: readonly [string, string, string][] = [
  ['aliases', `b: [${many(howMany({ short: 1000, deep: 1_000_000 }), () => '*a,')}]\n`, 'alias'],
  ['one alias', 'tube: *a\n', 'alias'],
  ['dashes', `b:\n${many(howMany({ short: 510_000, deep: 2_500_000 }), () => '-\n')}`, 'too-large'],
  ['brackets', `b: ${'['.repeat(125_000)}${']'.repeat(125_000)}\n`, 'too-deep'],
  ['commas', `b: [${','.repeat(2_000_000)}]\n`, 'too-large'],
  ['keys without names', `tube: {${':,'.repeat(1_000_000)}}\n`, 'too-large'],
  ['tags', `b: [${many(400_000, () => '!!a 1,')}]\n`, 'too-large'],
  ['names to refer to', `b: [${many(400_000, () => '&a 1,')}]\n`, 'too-large'],
  ['directives', `...\n${many(800_000, () => '%a\n')}`, 'too-large'],
  [
    'empty lines',
    `${SAMPLE}${'\n'.repeat(howMany({ short: 510_000, deep: 4_000_000 }))}`.replace('copeleaf: 1\n', ''),
    'too-large',
  ],
  ['comments', many(howMany({ short: 510_000, deep: 1_500_000 }), () => '# a\n'), 'too-large'],
  ['unknown keys', `tube:\n${many(140_000, (i) => `  k${i}: 1\n`)}`, 'too-large'],
  ['a key said again and again', `tube:\n${many(140_000, () => '  od: 1\n')}`, 'too-large'],
  ['the same on one line', `tube: { ${many(140_000, () => 'od: 1, ')}}\n`, 'too-large'],
  ['a long paper', `paper: ${'1'.repeat(50_000)}\n`, 'too-long'],
  ['a long stock', `stock: ["${'x '.repeat(25_000)}"]\n`, 'too-long'],
  ['a long block', `job: |\n${many(60, () => '  a line\n')}`, 'too-long'],
];

describe('a text far from any job is refused before it is made into values', () => {
  test.each(FAR_FROM_A_JOB)('%s', (_, text, code) => {
    const complaints = complaintsAbout(`copeleaf: 1\n${text}`);
    expect(complaints.map((each) => each.code)).toEqual([code]);
  });
});

test('a list of more than any job has is refused as one mistake', () => {
  const complaints = complaintsAbout(
    SAMPLE.replace('copeleaf: 1\n', `copeleaf: 1\nstock: [${many(2001, () => '6m,')}]\n`),
  );
  expect(complaints.map(({ code }) => code)).toEqual(['too-many']);
});
