import { describe, expect, test } from 'vitest';
import { checkReport } from '../../src/fit/check-report.ts';
import { wrapped } from '../../src/fit/wrapped.ts';
import { reportJob } from '../../src/together/report-job.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { asWritten } from '../../src/words/said.ts';
import { readSample, refusalOf } from '../job/sample.ts';

/** What `check` prints of a tube, by its headings, a line each; of its opposite hand the lines alone. */
function checked(tube: string, pair = false): { drawn: Record<string, string[]>; opposite: string } {
  const [drawn, opposite] = reportJob(readSample(`copeleaf: 1\npair: ${pair}\ntube: ${tube}\n`));
  if (!drawn) throw new Error('no report');
  const parts = checkReport(drawn, ENGLISH).split('\n\n').slice(1);
  return {
    drawn: Object.fromEntries(
      parts.map((part) => {
        const [heading = '', ...lines] = part.split('\n');
        return [heading, lines];
      }),
    ),
    opposite: opposite ? checkReport(opposite, ENGLISH) : '',
  };
}

describe('two ends', () => {
  // At 90 degrees the short point is the header's radius, 25; what is left square to the outside line lies at the sides
  // where its inside lands: sqrt(25^2 - 18^2) = 17.35; its outer edge stays sqrt(20^2 + 17.35^2) - 25 = 1.48 off.
  const LIKE = '{ onto: { od: 50 }, angle: 90 }';

  test('that come out alike are told once, with the gap that stays', () => {
    const { drawn } = checked(
      `{ od: 40, wall: 2, edge: square, between: 500, ends: { A: ${LIKE}, B: ${LIKE} } }`,
    );
    const follows = drawn['What follows'] ?? [];
    expect(follows.filter((line) => line.includes('short point'))).toEqual([
      expect.stringMatching(/^ {2}both {3}short point 25 mm .* at 0°; long point 17\.3 mm .* at 90°$/),
    ]);
    expect(follows.filter((line) => line.includes('gap of'))).toEqual([
      expect.stringContaining('a gap of 1.5 mm'),
    ]);
    expect(follows.join()).not.toContain('no gap');
  });

  test('that do not are told one by one', () => {
    const other = '{ onto: { od: 60 }, angle: 90 }';
    const { drawn } = checked(`{ od: 40, wall: 2, between: 500, ends: { A: ${LIKE}, B: ${other} } }`);
    const follows = drawn['What follows'] ?? [];
    expect(follows.filter((line) => line.includes('short point'))).toEqual([
      expect.stringMatching(/^ {2}end A {2}short point 25 mm/),
      expect.stringMatching(/^ {2}end B {2}short point 30 mm/),
    ]);
    expect(follows.filter((line) => line.includes('no gap stays'))).toHaveLength(2);
  });
});

// Cut inside to a header larger by 2: sqrt(27^2 - 15^2) = 22.45 at the sides, whose outer edge is hypot(20, 22.45) - 25 = 5.06
// off the header, 3.06 more than the root.
test('a root gap says by how much it is wider where the edge stands off more, and else that it is even', () => {
  const end = '{ onto: { od: 50 }, angle: 90 }';
  const follows = (edge: string): string =>
    checked(`{ od: 40, wall: 5, edge: ${edge}, root: 2mm, ends: { A: ${end} } }`).drawn[
      'What follows'
    ]?.join() ?? '';
  expect(follows('square, from: inside')).toMatch(/root gap of 2mm .*is wider by 3\.1 mm .* at 90°/);
  expect(follows('bevel')).toMatch(/root gap of 2mm .*is the same all round/);
});

test('what follows begins with the blank, and names each of the four slips once', () => {
  const end = '{ onto: { od: 50 }, angle: 90, offset: 3 }';
  const { drawn } = checked(`{ od: 40, wall: 2, between: 500, ends: { A: ${end}, B: plain } }`);
  const [first = '', ...follows] = drawn['What follows'] ?? [];
  expect(first).toMatch(/^ {2}Cut the blank /);
  const slips = follows.map((line) => line.trim()).join(' ');
  for (const slip of ['1 mm in offset', '1° in angle', '1° in rotation', '1 % in print scale'])
    expect(slips.split(slip)).toHaveLength(2);
});

test('an inch job speaks inches: of an error of 1/32 in, computed at that step, in warnings and in errors', () => {
  const job = readSample(
    'copeleaf: 1\nunits: in\ntube: { od: 1.5, wall: .095, ends: { A: { onto: { od: 1.25 }, angle: 60, offset: 1/8 } } }\n',
  );
  const [report] = reportJob(job);
  if (!report?.ends.A || report.ends.A === 'plain') throw new Error('end A is coped');
  const told = checkReport(report, ENGLISH).replace(/\s+/g, ' ');
  expect(told).not.toContain('1 mm in offset');
  // Not the 1 mm step's figure scaled: the response is not linear.
  const opens = report.ends.A.offsetOpens(25.4 / 32);
  const inches = Number((opens / 25.4).toFixed(3));
  expect(told).toMatch(new RegExp(`(of 1/32 in in offset opens|of 1/32 in in offset,) ${inches} in`));
  const metric = report.warnings.filter(({ text }) => /\d mm/.test(text.replaceAll(/[\d.]+ mm \(/g, '')));
  expect(metric).toEqual([]);
  expect(report.warnings.map(({ code }) => code)).toContain('misses');
  const missed = refusalOf(() =>
    readSample(
      'copeleaf: 1\nunits: in\ntube: { od: 1.5, ends: { A: { onto: { od: 1.75 }, angle: 60, offset: 2 } } }\n',
    ),
  );
  // (1.5 + 1.75) / 2 in.
  expect(missed.map(({ instead }) => instead)).toEqual(['an offset under 1-5/8 in to either side']);
});

describe('what was understood', () => {
  const ends = '{ A: { onto: { od: 50 }, angle: 60, offset: 3mm }, B: { onto: { od: 60 }, angle: 90 } }';

  test('has the length as it was written, and an offset where there is one, on its other side in the opposite hand', () => {
    const { drawn, opposite } = checked(`{ od: 40, wall: 2, between: 1-1/2ft, ends: ${ends} }`, true);
    const understood = drawn.Understood ?? [];
    // 18 in of 25.4 mm.
    expect(understood.join('\n')).toContain('1-1/2ft (457.2 mm) from work point to work point');
    expect(understood.filter((line) => line.includes('offset'))).toEqual([
      expect.stringMatching(/^ {2}end A .*, offset 3mm/),
    ]);
    expect(opposite.split('\n').filter((line) => line.includes('offset'))).toEqual([
      expect.stringMatching(/^ {2}end A {2}offset -3mm/),
    ]);
  });

  test('tells of readings only where something was measured: pi goes into 188.5 mm 60.0 times', () => {
    expect(checked(`{ od: 40, between: 500, ends: ${ends} }`).drawn.Understood?.join()).not.toContain(
      '  read ',
    );
    const girth = '{ A: plain, B: { onto: { od: { girth: 188.5mm } }, angle: 90 } }';
    const { drawn } = checked(`{ od: 40, between: 500, ends: ${girth} }`);
    expect(drawn.Understood).toContain('  read   end B onto: girth 188.5mm, that is 60 mm');
  });
});

test('a line is filled as far as it goes, and broken before a word that is too long for it', () => {
  const text = asWritten('one two three');
  expect(wrapped(text, 7)).toEqual(['one two', 'three']);
  expect(wrapped(text, 6)).toEqual(['one', 'two', 'three']);
});

test('copies of a pair are counted in all, but where none are of one hand alone', () => {
  const tube = (end: string, copies: number): string =>
    `{ od: 40, wall: 2, copies: ${copies}, ends: { A: { onto: { od: 60 }, angle: 60${end} } } }`;
  const total = /tubes in all/;
  const { drawn, opposite } = checked(tube(', offset: 3', 2), true);
  expect(drawn.Understood).toContain('         4 tubes in all: 2 of this hand and 2 of the other');
  expect(opposite).not.toMatch(total);
  expect(checked(tube(', offset: 3', 1), true).drawn.Understood?.join()).not.toMatch(total);
  expect(checked(tube(', offset: 3', 2)).drawn.Understood?.join()).not.toMatch(total);
  expect(checked(tube('', 2), true).drawn.Understood?.join()).not.toMatch(total);
});

// The angles of a triangle make 180 degrees; parallels cross a line at one angle.
test.each([
  [60, 30, 180, 'The two headers stand 30° apart.'],
  [60, 60, 180, 'The two headers are parallel.'],
  [62, 62, 0, 'The two headers stand 56° apart.'],
  [90, 90, 0, 'The two headers are parallel.'],
  [118, 62, 0, 'The two headers are parallel.'],
  [60, 30, 40, undefined],
])('how the headers stand at %d and %d degrees, clocked %d apart', (a, b, clock, told) => {
  const at = (angle: number): string => `onto: { od: 60 }, angle: ${angle}`;
  const ends = `{ A: { ${at(a)} }, B: { ${at(b)}, clock: ${clock} } }`;
  const { drawn } = checked(`{ od: 40, wall: 2, between: 700, ends: ${ends} }`);
  const lines = drawn['What follows']?.filter((line) => line.includes('two headers')) ?? [];
  expect(lines).toEqual(told === undefined ? [] : [`  ${told}`]);
});

test('a length with no effect, one that reaches to an elbow, and a wall that is not given are told', () => {
  const elbow = '{ onto: { mitre: { turn: 90, pieces: 5, radius: 150 } } }';
  const understood = (ends: string): string =>
    checked(`{ od: 40, wall: 2, between: 500, ends: ${ends} }`).drawn.Understood?.join(' ') ?? '';
  expect(understood(`{ A: ${elbow} }`)).toMatch(/500 mm .* has no effect: .* the tube stands for the elbow/);
  expect(understood('{ A: { onto: { od: 60 }, angle: 60 } }')).toMatch(
    /500 mm .* has no effect: with one end/,
  );
  expect(understood(`{ A: plain, B: ${elbow} }`)).toMatch(
    /at end B to where its axis meets the elbow's first joint/,
  );
  const follows = (wall: string): string =>
    checked(`{ od: 40, ${wall}ends: { A: { onto: { od: 60 }, angle: 60 } } }`).drawn['What follows']?.join(
      ' ',
    ) ?? '';
  expect(follows('')).toContain('Without the wall it is not looked at');
  expect(follows('wall: 2, ')).not.toContain('Without the wall');
});

test('a tape of its own thickness reads again what it read', () => {
  const { drawn } = checked(
    '{ od: { girth: 120, tape: 0.5 }, ends: { A: { onto: { od: 60 }, angle: 60 } } }',
  );
  expect(drawn['What follows']?.join(' ')).toContain('A tape round the tube should read 120 mm');
});

test('on a plate and at a mitre, which have no axis, no error of the offset is told of', () => {
  const follows = (end: string): string =>
    checked(`{ od: 40, wall: 2, ends: { A: { ${end} } } }`).drawn['What follows']?.join(' ') ?? '';
  for (const end of ['onto: { plate: {} }, angle: 60', 'onto: { mitre: { turn: 90 } }']) {
    expect(follows(end)).toContain('in angle opens');
    expect(follows(end)).not.toContain('in offset');
  }
  expect(follows('onto: { od: 60 }, angle: 60')).toContain('in offset');
});

test('without a wall no word denies what another says of the gap', () => {
  const { drawn } = checked('{ od: 40, ends: { A: { onto: { od: 60 }, angle: 60 } } }');
  const told = drawn['What follows']?.join(' ') ?? '';
  expect(told).toContain('full contact with this edge: no gap stays');
  expect(told.match(/Without the wall[^.]*/)?.[0]).not.toContain('gap');
});
