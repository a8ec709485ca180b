import { describe, expect, test } from 'vitest';
import type { Complaint } from '../../src/job/text/complaint.ts';
import { complaintsAbout, readSample, SAMPLE } from './sample.ts';

describe('a job file is read with every default filled in', () => {
  test('lengths and angles keep their words', () => {
    const [tube] = readSample(SAMPLE).tubes;
    expect(tube).toMatchObject({
      name: 'bunk stay',
      section: { kind: 'round', od: { mm: 31.75, wrote: '1-1/4in' } },
      wall: { mm: 2.413, wrote: '0.095in' },
      between: { mm: 619.125 },
      allowance: { mm: 10 },
      pair: true,
      copies: 1,
    });
    const B = tube?.ends.B;
    expect(B?.kind === 'coped' && B.parts[0]).toMatchObject({
      onto: { kind: 'round', od: { mm: 38.1 } },
      angle: { wrote: '48deg', unit: 'deg' },
      clock: { wrote: '35deg' },
      offset: { mm: 2.38125, wrote: '3/32in' },
    });
  });

  test('the seam is an angle on round tube, and so far round from the spine on rectangular tube', () => {
    const end = '{ onto: { plate: {} }, angle: 60, seam: -22.5 }';
    const seamOn = (sort: string): unknown => {
      const file = `copeleaf: 1\ntube:\n  ${sort}\n  wall: 2\n  ends: { A: ${end} }\n`;
      const coped = readSample(file).tubes[0]?.ends.A;
      return coped?.kind === 'coped' && coped.seam;
    };
    expect(seamOn('od: 38.1')).toMatchObject({ rad: (-22.5 * Math.PI) / 180 });
    expect(seamOn('section: { wide: 40, deep: 20, corner: 4 }')).toMatchObject({ mm: -22.5 });
  });

  test('one end alone needs no length', () => {
    const job = readSample(oneTube('{ A: { onto: { od: 44.5 }, angle: 60 } }'));
    expect(job).toMatchObject({
      units: 'mm',
      sheet: { paper: { name: 'A4' }, margins: { left: { mm: 10 }, bottom: { mm: 17 } } },
    });
    expect(job.sheet.paperThickness.mm).toBe(0.1);
    expect(job.tubes[0]).toMatchObject({ name: 'tube 1', pair: false, copies: 1 });
    expect(job.tubes[0]?.ends.A).toMatchObject({
      preparation: { edge: 'bevel' },
      parts: [{ clock: { rad: 0 }, offset: { mm: 0 } }],
    });
    expect(job.tubes[0]?.ends.B).toBeUndefined();
  });

  test('bare numbers take the unit of the file, wherever it stands', () => {
    const text = 'copeleaf: 1\nunits: in\ntube: { od: 1-1/2, ends: { A: { onto: { od: 2 }, angle: 60 } } }';
    expect(readSample(text).tubes[0]?.section).toMatchObject({ od: { mm: 38.1 } });
    const unitsLast =
      'copeleaf: 1\ntube: { od: 1-1/2, ends: { A: { onto: { od: 2 }, angle: 60 } } }\nunits: in';
    expect(readSample(unitsLast).tubes[0]?.section).toMatchObject({ od: { mm: 38.1 } });
  });

  test('edge and land on a tube, pair and copies on the file, hold for what is below', () => {
    const ends =
      '{ A: { onto: { od: 44.5 }, angle: 60 }, B: { onto: { od: 44.5 }, angle: 60, edge: square, from: inside } }';
    const [tube] = readSample(
      oneTube(ends, 'pair: yes\ncopies: 3', 'wall: 2\n  between: 500\n  land: 1'),
    ).tubes;
    expect(tube).toMatchObject({ pair: true, copies: 3 });
    expect(tube?.ends.A).toMatchObject({ preparation: { edge: 'bevel', land: { mm: 1 } } });
    expect(tube?.ends.B).toMatchObject({ preparation: { edge: 'square', from: 'inside' } });
  });

  test('the land is read by its former name too, on a tube and on an end', () => {
    const end = (key: string) => `{ A: { onto: { od: 44.5 }, angle: 60, ${key} } }`;
    for (const [land, blunt] of [
      [oneTube(end('land: 0.5'), 'job: a', 'wall: 2'), oneTube(end('blunt: 0.5'), 'job: a', 'wall: 2')],
      [oneTube(ONE, 'job: a', 'wall: 2\n  land: 0.5'), oneTube(ONE, 'job: a', 'wall: 2\n  blunt: 0.5')],
    ]) {
      const [asNow, asBefore] = [readSample(land ?? ''), readSample(blunt ?? '')];
      expect(asNow.tubes[0]?.ends.A).toMatchObject({ preparation: { edge: 'bevel', land: { mm: 0.5 } } });
      expect(asBefore.tubes).toEqual(asNow.tubes);
      expect([...(asBefore.origin?.places.keys() ?? [])]).toEqual([...(asNow.origin?.places.keys() ?? [])]);
    }
  });

  test('names may be in any script, and papers in any case', () => {
    const ends = '{ A: { onto: { od: 44.5 }, angle: 60 }, B: Plain }';
    const job = readSample(
      oneTube(ends, 'job: Прицеп для каяков\npaper: LETTER', 'name: στύλος\n  between: 300'),
    );
    expect(job).toMatchObject({
      title: 'Прицеп для каяков',
      sheet: { paper: { name: 'letter' } },
      tubes: [{ name: 'στύλος' }],
    });
    expect(job.tubes[0]?.ends.B).toEqual({ kind: 'plain' });
  });

  test('a mark at the start of the file is no part of it', () => {
    expect(readSample(`\uFEFF${SAMPLE.replaceAll('\n', '\r\n')}`).tubes[0]?.name).toBe('bunk stay');
    expect(readSample(SAMPLE.replaceAll('\n', '\r')).tubes).toEqual(readSample(SAMPLE).tubes);
    expect(complaintsAbout(SAMPLE.replace('wall', 'wal').replaceAll('\n', '\r'))[0]?.line).toBe(6);
  });
});

function oneTube(ends: string, head = 'job: kayak trailer', tube = 'pair: false'): string {
  return `copeleaf: 1\n${head}\ntube:\n  od: 38.1\n  ${tube}\n  ends: ${ends}\n`;
}

const JOINT = '{ onto: { od: 50 }, angle: 60 }';
const ONE = `{ A: ${JOINT} }`;

/** What is wrong, the text, then the code, line and column of the one complaint that it gives. */
const MISTAKES: readonly [string, string, string, number, number][] = [
  ['nothing', '', 'empty', 1, 1],
  ['only a comment', '# a rung\n', 'empty', 1, 1],
  ['a PDF', '%PDF-1.7\n1 0 obj', 'not-text', 1, 1],
  ['control characters', 'copeleaf: 1\njob: a\u0000b\n', 'not-text', 2, 7],
  ['bytes that are not UTF-8', 'copeleaf: 1\njob: \uFFFD\n', 'not-text', 2, 6],
  ['a list', '- copeleaf: 1\n', 'not-a-map', 1, 1],
  ['plain words', 'a rung, please\n', 'not-a-map', 1, 1],
  ['a tab', 'copeleaf: 1\ntube:\n\tod: 38.1\n', 'not-yaml', 3, 1],
  ['an open bracket', 'copeleaf: 1\ntube: { od: 38.1\n', 'not-yaml', 3, 1],
  ['an open quote', 'copeleaf: 1\njob: "mast\n', 'not-yaml', 3, 1],
  ['two colons', 'copeleaf: 1\njob: mast: foot\n', 'not-yaml', 2, 6],
  ['two documents', `${SAMPLE}---\n${SAMPLE}`, 'not-yaml', 14, 1],
  ['a tag', 'copeleaf: 1\njob: !mine x\n', 'not-yaml', 2, 6],
  ['brackets without end', '['.repeat(20_000), 'too-deep', 1, 41],
  ['dashes without end', '- '.repeat(20_000), 'too-deep', 1, 1],
  ['no version', 'tube: { od: 30, ends: { A: { onto: { od: 50 }, angle: 60 } } }', 'missing', 1, 1],
  ['a version of another day', 'copeleaf: 2\nnews: yes\n', 'version', 1, 1],
  ['a version that comes late', `job: x\n${SAMPLE}`, 'version-first', 2, 1],
  ['no tube', 'copeleaf: 1\n', 'missing', 1, 1],
  ['a list of no tubes', 'copeleaf: 1\ntubes: []\n', 'no-tube', 2, 1],
  ['tubes that are no list', 'copeleaf: 1\ntubes: { od: 38.1 }\n', 'shape', 2, 1],
  ['tube and tubes', `${SAMPLE}tubes: []\n`, 'tube-twice', 14, 1],
  ['a doubled key', oneTube(ONE, 'job: a', 'od: 40'), 'duplicate-key', 5, 3],
  ['a misspelt key', oneTube(ONE, 'job: a', 'wal: 2'), 'unknown-key', 5, 3],
  ['a key of another place', oneTube(ONE, 'wall: 2'), 'unknown-key', 2, 1],
  ['a key that is a list', oneTube(ONE, '? [a]\n: b'), 'key', 2, 3],
  ['a decimal comma in { }', oneTube('{ A: { onto: { od: 38,1 }, angle: 60 } }'), 'decimal-comma', 6, 28],
  [
    'a decimal comma in an angle',
    oneTube('{ A: { onto: { od: 50 }, angle: 60,5deg } }'),
    'decimal-comma',
    6,
    41,
  ],
  ['a length that may be two', oneTube(ONE, 'job: a', 'wall: 1,500'), 'length', 5, 3],
  ['a length of zero', oneTube(ONE, 'job: a', 'wall: 0'), 'not-positive', 5, 3],
  ['a negative length', oneTube(ONE, 'job: a', 'wall: -2mm'), 'not-positive', 5, 3],
  ['a length that is no number', oneTube(ONE, 'job: a', 'wall: .nan'), 'length', 5, 3],
  ['a length in hexadecimal', oneTube(ONE, 'job: a', 'wall: 0x2'), 'length', 5, 3],
  ['a negative allowance', oneTube(ONE, 'job: a', 'allowance: -1'), 'negative', 5, 3],
  ['a wall that fills the tube', oneTube(ONE, 'job: a', 'wall: 19.06'), 'wall', 5, 3],
  ['a wall that is a list', oneTube(ONE, 'job: a', 'wall: [2]'), 'shape', 5, 3],
  ['a name that became a comment', oneTube(ONE, 'job: a', 'name: #5'), 'shape', 5, 3],
  ['a name of two lines', oneTube(ONE, 'job: a', 'name: "a\\nb"'), 'words', 5, 3],
  ['an angle of 0', oneTube('{ A: { onto: { od: 50 }, angle: 0 } }'), 'angle-range', 6, 34],
  ['an angle of 180', oneTube('{ A: { onto: { od: 50 }, angle: 180° } }'), 'angle-range', 6, 34],
  ['a negative angle', oneTube('{ A: { onto: { od: 50 }, angle: -5 } }'), 'angle-range', 6, 34],
  ['no angle', oneTube('{ A: { onto: { od: 50 } } }'), 'missing', 6, 11],
  ['nothing to land on', oneTube('{ A: { angle: 60 } }'), 'missing', 6, 11],
  ['a header without a size', oneTube('{ A: { onto: {}, angle: 60 } }'), 'missing', 6, 16],
  [
    'a header that is missed',
    oneTube('{ A: { onto: { od: 50 }, angle: 60, offset: -44.05 } }'),
    'misses',
    6,
    45,
  ],
  ['a square edge without a wall', oneTube(ONE, 'job: a', 'edge: square'), 'no-wall', 5, 3],
  [
    'a land under both its names',
    oneTube(ONE, 'job: a', 'wall: 2\n  land: 1\n  blunt: 1'),
    'duplicate-key',
    7,
    3,
  ],
  ['a land without a wall', oneTube(ONE, 'job: a', 'land: 1'), 'no-wall', 5, 3],
  ['a land on a square edge', oneTube(ONE, 'job: a', 'wall: 2\n  edge: square\n  land: 1'), 'land', 7, 3],
  ['a land thicker than the wall', oneTube(ONE, 'job: a', 'wall: 2\n  land: 2.1'), 'land', 6, 3],
  ['the inside line with a bevel', oneTube(ONE, 'job: a', 'wall: 2\n  from: inside'), 'from', 6, 3],
  ['an edge of no kind', oneTube(ONE, 'job: a', 'edge: round'), 'choice', 5, 3],
  ['half a copy', oneTube(ONE, 'job: a', 'copies: 1.5'), 'copies', 5, 3],
  ['no copies', oneTube(ONE, 'copies: 0'), 'copies', 2, 1],
  ['perhaps a pair', oneTube(ONE, 'pair: perhaps'), 'choice', 2, 1],
  ['units of no kind', oneTube(ONE, 'units: cubits'), 'choice', 2, 1],
  ['no ends', 'copeleaf: 1\ntube:\n  od: 38.1\n', 'missing', 2, 1],
  ['ends that name none', oneTube('{}'), 'no-end', 6, 3],
  ['one end, cut square off', oneTube('{ A: plain }'), 'no-end', 6, 3],
  ['two square ends and no length', oneTube('{ A: plain, B: plain }'), 'missing', 3, 1],
  ['a third end', oneTube(`{ A: ${JOINT}, C: ${JOINT} }`), 'unknown-key', 6, 47],
  ['an end that is a word', oneTube('{ A: flat }'), 'shape', 6, 11],
  ['an end that lands on an empty list', oneTube('{ A: [] }'), 'no-header', 6, 11],
  ['two ends and no length', oneTube(`{ A: ${JOINT}, B: plain }`), 'missing', 3, 1],
  ['a paper that nobody sells', oneTube(ONE, 'paper: A44'), 'paper', 2, 1],
  ['a paper too small for its margins', oneTube(ONE, 'margin: 60'), 'paper-small', 2, 1],
  ['a small paper', oneTube(ONE, 'paper: 100x400mm'), 'paper-small', 2, 1],
  ['paper as thick as board', oneTube(ONE, 'paper-thickness: 0.1in'), 'too-large', 2, 1],
  [
    'an alias',
    'copeleaf: 1\ntubes:\n  - &a { od: 30, ends: { A: { onto: { od: 50 }, angle: 60 } } }\n  - *a\n',
    'alias',
    4,
    5,
  ],
  ['a merge', oneTube(ONE, 'job: a', '<<: { wall: 2 }'), 'unknown-key', 5, 3],
];

describe('a mistake is told once, at its place', () => {
  test.each(MISTAKES)('%s', (_, text, code, line, column) => {
    const places = complaintsAbout(text).map((each) => [each.code, each.line, each.column]);
    expect(places).toEqual([[code, line, column]]);
  });

  test.each([
    ['wal', '`wall`'],
    ['Wall', '`wall`'],
    ['betwen', '`between`'],
    ['allowence', '`allowance`'],
    ['angle', 'on an end'],
    ['paper', 'at the head of the file'],
    ['xyzzy', 'one of name, od, pipe, section, wall'],
  ])('%s on a tube leads to %s', (key, words) => {
    expect(
      only(complaintsAbout(oneTube(ONE, 'job: a', `${key}: ${key.startsWith('bet') ? 200 : 2}`))).instead,
    ).toContain(words);
  });

  test('a decimal comma in { } shows both ways out', () => {
    const { instead } = only(complaintsAbout(oneTube('{ A: { onto: { od: 38,1 }, angle: 60 } }')));
    expect(instead).toContain('od: "38,1"');
    expect(instead).toContain('od: 38.1');
  });
});

test('all mistakes are told at once, in the order of the file', () => {
  const text =
    'copeleaf: 1\npaper: A44\ntube:\n  od: 0\n  wal: -2\n  ends: { a: { onto: { od: x }, anlge: 180 } }\n';
  const found = complaintsAbout(text).map((each) => [each.line, each.code]);
  expect(found).toEqual([
    [2, 'paper'],
    [4, 'not-positive'],
    [5, 'unknown-key'],
    [5, 'not-positive'],
    [6, 'unknown-key'],
    [6, 'length'],
    [6, 'unknown-key'],
    [6, 'angle-range'],
  ]);
});

test('two tubes of one name are refused, also where one has it by its position', () => {
  const tube = (name: string) => `  - { ${name}od: 30, ends: { A: ${JOINT} } }\n`;
  expect(complaintsAbout(`copeleaf: 1\ntubes:\n${tube('')}${tube('name: tube 1, ')}`)).toMatchObject([
    { code: 'same-name', line: 4, column: 7 },
  ]);
  expect(readSample(`copeleaf: 1\ntubes:\n${tube('')}${tube('')}`).tubes.map(({ name }) => name)).toEqual([
    'tube 1',
    'tube 2',
  ]);
});

function only(complaints: readonly Complaint[]): Complaint {
  const [first, ...rest] = complaints;
  expect(rest).toEqual([]);
  if (first === undefined) throw new Error('no complaint');
  return first;
}
