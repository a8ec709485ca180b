import { describe, expect, test } from 'vitest';
import { slowPatterns } from '../../src/build/patterns.ts';

describe('a pattern of the code', () => {
  test.each([
    // These were in the code, and took seconds for a text of 50,000 signs.
    String.raw`/^(.*\d.*?)\s*[x×]\s*(.*\d.*)$/iu`,
    String.raw`/^(.*?)(?:\s*[x×*]\s*([^x×*]*))?$/isu`,
    String.raw`/^roll\b\s*(.*)$/iu`,
    '/=+$/',
    '/^(a+)+$/',
    // Either of two for each letter.
    '/^(a|a)*$/',
    '/^(?:ab|a|b)*c/',
    String.raw`/\s*,?\s*$/`,
    'new RegExp(`^$' + '{text}$`)',
    "RegExp('a')",
    "new globalThis.RegExp('a')",
    "text.match('a+')",
    'text.search(wanted)',
  ])('%s is found to run longer than in proportion, or not to be open to view', (pattern) => {
    expect(slowPatterns('of.ts', `const a = 1;\nconst pattern = ${pattern};\n`)).toEqual([
      expect.stringMatching(/^of\.ts:2 /),
    ]);
  });

  test.each([
    String.raw`/^\d+$/`,
    String.raw`/\d[^\dx×]*[x×]/giu`,
    '/^(?:ab|cd|e)*$/',
    'text.search(WANTED)',
    String.raw`/^[^\P{Cc}\n]{1,9}$/u`,
  ])('%s runs in proportion', (pattern) => {
    expect(slowPatterns('of.ts', `const pattern: RegExp = ${pattern};\n`)).toEqual([]);
  });
});
