import { expect, it } from 'vitest';
import { broken } from '../../src/draw/breaking.ts';
import { widthOf } from '../../src/draw/letters.ts';
import { asWritten } from '../../src/words/said.ts';

const SIZE = 2.2;
const TEXT = asWritten('along the spine to the base edge of end B.');

it("an end's letter is never alone on a line, whatever the line's length", () => {
  for (let width = 12; width < 70; width += 0.25) {
    const lines = broken(TEXT, SIZE, width);
    expect(lines.join(' ')).toBe(TEXT);
    expect(lines.at(-1)).not.toBe('B.');
    for (const line of lines) expect(widthOf(line, SIZE)).toBeLessThanOrEqual(width);
  }
});

it('what can not stay together on one line is parted before a word is cut', () => {
  const width = widthOf('mmmm', SIZE);
  expect(broken(asWritten('mmmm B'), SIZE, width)).toEqual(['mmmm', 'B']);
  expect(broken(asWritten('mmmmmm B'), SIZE, width)).toEqual(['mmmm', 'mm B']);
});

it('a word that is wider than its line is cut behind its hyphen', () => {
  const width = widthOf('cross-ru', SIZE);
  expect(broken(asWritten('bunk cross-rung'), SIZE, width)).toEqual(['bunk', 'cross-', 'rung']);
  expect(broken(asWritten('crossrungs'), SIZE, width)).toEqual(['crossru', 'ngs']);
});
