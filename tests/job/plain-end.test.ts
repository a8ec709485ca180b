import { expect, test } from 'vitest';
import { complaintsAbout } from './sample.ts';

test('a plain end that is written as a map is told how it is written, and nothing else', () => {
  const complaints = complaintsAbout(
    'copeleaf: 1\ntube: { od: 30, wall: 2, between: 300, ends: { A: { onto: { od: 40 }, angle: 60 }, B: { plain: true } } }\n',
  );
  expect(complaints.map(({ code, instead }) => [code, instead])).toEqual([['plain', '`B: plain`']]);
});
