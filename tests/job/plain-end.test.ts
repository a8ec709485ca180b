import { expect, test } from 'vitest';
import { complaintsAbout } from './sample.ts';

test('a plain end that is written as a map is told how it is written, and nothing else', () => {
  const complaints = complaintsAbout(
    'copeleaf: 1\ntube: { od: 30, wall: 2, between: 300, ends: { A: { onto: { od: 40 }, angle: 60 }, B: { plain: true } } }\n',
  );
  expect(complaints.map(({ code, instead }) => [code, instead])).toEqual([['plain', '`B: plain`']]);
});

test('an offset of 0 is fine where there is nothing to be beside of', () => {
  for (const onto of ['plate: {}', 'mitre: { turn: 60 }']) {
    const angle = onto.startsWith('plate') ? 'angle: 60, ' : '';
    const job = (offset: string): string =>
      `copeleaf: 1\ntube: { od: 30, wall: 2, ends: { A: { onto: { ${onto} }, ${angle}offset: ${offset} } } }\n`;
    expect(complaintsAbout(job('0'))).toEqual([]);
    expect(complaintsAbout(job('2')).map(({ code }) => code)).toEqual(['no-offset']);
  }
});
