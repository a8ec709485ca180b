import { describe, expect, test } from 'vitest';
import { headerSign } from '../../src/leaf/picture/header-sign.ts';
import { solveHands } from '../../src/saddle/solve.ts';
import {
  cutList,
  cutListAsCsv,
  cutListAsData,
  cutListAsText,
  listNote,
} from '../../src/shop/lists/cut-list.ts';
import { stockPlan } from '../../src/shop/lists/stock.ts';
import { stockAsData, stockAsText } from '../../src/shop/lists/stock-in-words.ts';
import { shopPack } from '../../src/shop/pack.ts';
import { layFront } from '../../src/tiler/front.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { readSample } from '../job/sample.ts';
import { textsOf } from '../leaf/collisions.ts';

// Square onto round headers: each end's heel line is the header's radius deep, so overall lengths follow by hand.
const JOB = `copeleaf: 1
stock: [2m, 1m x 2]
kerf: 4
tubes:
  - name: rung, low
    od: 25
    wall: 2
    between: 500
    copies: 3
    ends: { A: { onto: { plate: {} }, angle: 90 }, B: plain }
  - name: brace
    od: 30
    between: 700
    pair: true
    ends: { A: { onto: { od: 42.4 }, angle: 60 }, B: { onto: { od: 42.4 }, angle: 50, clock: 35 } }
  - name: stay
    od: 30
    between: mark
    ends: { A: { onto: { od: 42.4 }, angle: 60 }, B: { onto: { od: 42.4 }, angle: 50, clock: mark } }
`;

describe('the cut list', () => {
  const solutions = solveHands(readSample(JOB));
  const rows = cutList(solutions, ENGLISH);

  test('has a row for each tube and hand, with its numbers', () => {
    expect(rows.map(({ tube, hand, copies, blank }) => [tube, hand, copies, blank])).toEqual([
      ['rung, low', 'as-drawn', 3, 510],
      ['brace', 'as-drawn', 1, 710],
      ['brace', 'opposite', 1, 710],
      ['stay', 'as-drawn', 1, undefined],
    ]);
  });

  test('as CSV quotes what holds a comma, and says what is cut square and what is not known', () => {
    const [head, rung, brace, opposite, stay] = cutListAsCsv(rows, 'mm').trimEnd().split('\n');
    expect(head).toBe(
      'tube,hand,copies,size,wall (mm),blank (mm),blank exact (mm),overall (mm),overall exact (mm),between (mm),between exact (mm),angleA,angleB,twist',
    );
    expect(rung).toBe(
      '"rung, low",as-drawn,3,"25 mm (~31/32 in, 0.984)",2,510,510,500,500,500,500,90,square,',
    );
    expect(brace).toMatch(/^brace,as-drawn,1,"30 mm [^"]*",,[\d.]+,[\d.]+,[\d.]+,[\d.]+,700,700,60,50,35$/);
    expect(opposite).toMatch(/^brace,opposite,.*,700,700,60,50,-35$/);
    expect(stay).toMatch(/^stay,as-drawn,1,"30 mm [^"]*",,,,,,,,60,50,$/);
  });

  test("as CSV and data have the lengths that paper has, on a mark of the job's tape, and them exactly beside these", () => {
    const inches = readSample(
      'copeleaf: 1\nunits: in\ntube: { name: rail, od: 1-1/2, wall: 0.095, between: 20.01, ends: { A: plain, B: plain } }\n',
    );
    const [rail] = cutList(solveHands(inches), ENGLISH);
    if (!rail) throw new Error('no row');
    const [head, row] = cutListAsCsv([rail], 'in').trimEnd().split('\n');
    expect(head).toContain('wall (in),blank (in),blank exact (in),overall (in),overall exact (in)');
    // 10 mm of allowance, 0.393701 in; up to the next 32nd: 20-13/32. 20.01 is nearest to the mark of 20.
    expect(row).toMatch(/,0\.095,20\.40625,20\.403700787,20,20\.01,20,20\.01,square,square,/);
    expect(cutListAsData([rail], 'in')).toMatchObject([
      {
        ...{ blank: 20.40625 * 25.4, blankExact: 20.01 * 25.4 + 10 },
        ...{ overall: 20 * 25.4, overallExact: 20.01 * 25.4 },
        ...{ between: 20 * 25.4, betweenExact: 20.01 * 25.4 },
      },
    ]);
  });

  test('as data leaves out what is not known', () => {
    const [rung, brace, , stay] = JSON.parse(JSON.stringify(cutListAsData(rows, 'mm')));
    expect(rung).toMatchObject({ name: 'rung, low', copies: 3, blank: 510, ends: { B: { angles: [] } } });
    expect(brace).toMatchObject({ twist: 35, ends: { A: { angles: [60] }, B: { angles: [50] } } });
    for (const key of ['blank', 'overall', 'between', 'twist']) expect(stay).not.toHaveProperty(key);
  });

  test('tells of hands only where there is a pair', () => {
    expect(listNote(rows, 'mm', ENGLISH)).toContain('of each hand');
    expect(
      listNote(
        rows.filter(({ pair }) => !pair),
        'mm',
        ENGLISH,
      ),
    ).not.toContain('hand');
  });

  test('as text keeps its columns, in the unit of the job', () => {
    const lines = cutListAsText(rows, 'mm', ENGLISH).split('\n');
    expect(lines[0]).toContain('mm');
    const blank = lines[2]?.indexOf('blank') ?? -1;
    expect(lines[3]?.slice(blank, blank + 5)).toBe('510.0');
    expect(cutListAsText(rows, 'in', ENGLISH).split('\n')[0]).toContain('inches');
  });
});

describe('the stock plan', () => {
  const job = readSample(JOB);
  const plan = stockPlan(job, solveHands(job));

  test('nests each size by itself, names bars and offcuts, and tells what has no length yet', () => {
    expect(plan?.sizes.map(({ bars }) => bars.map(({ name, blanks }) => [name, blanks.length]))).toEqual([
      // 3 x 510 and two cuts are 1538: one of 2 m, less than both of 1 m hold.
      [['2m no. 1', 3]],
      // 2 x 710 and a cut are 1424.
      [['2m no. 1', 2]],
    ]);
    const offcuts = plan?.sizes.flatMap(({ bars }) =>
      bars.map(({ offcutName, offcut }) => [offcutName, offcut]),
    );
    // Each piece takes its kerf with it: 2000 - 3 x 514, 2000 - 2 x 714.
    expect(offcuts).toEqual([
      ['offcut 1', 458],
      ['offcut 2', 572],
    ]);
    expect(plan?.unknown.map(({ tube }) => tube.name)).toEqual(['stay']);
  });

  test('tells what lies in the rack, and that each size of tube has it all', () => {
    expect(plan && stockAsText(plan, 'mm', ENGLISH)).toContain(
      'In stock: 2m, 1m x 2, all of these for each size of tube.',
    );
  });

  test('says in words how near the bound it is', () => {
    expect(plan && stockAsText(plan, 'mm', ENGLISH)).toContain(
      "1 length, 2000 mm in all: it can't be done with less.",
    );
  });

  test('says what finds no stock', () => {
    const short = readSample(JOB.replace('[2m, 1m x 2]', '[1m, 0.6m]'));
    const poor = stockPlan(short, solveHands(short));
    const text = poor ? stockAsText(poor, 'mm', ENGLISH) : '';
    expect(text).toContain('not every blank has found stock');
    expect(text).toContain('No stock for: rung, low 510 mm');
    expect(JSON.parse(JSON.stringify(poor && stockAsData(poor))).sizes[0]).not.toHaveProperty('least');
  });

  test('is none where the job tells no stock', () => {
    const without = readSample(JOB.replace('stock: [2m, 1m x 2]\n', ''));
    expect(stockPlan(without, solveHands(without))).toBeUndefined();
  });
});

test('how many lengths a size takes stands under its bars, never at the head of the next page', () => {
  const tubes = [20, 25, 30, 35, 40, 45, 50].map(
    (od) => `  - { name: rail ${od}, od: ${od}, wall: 2, between: 700, ends: { A: plain, B: plain } }\n`,
  );
  const job = readSample(`copeleaf: 1\nstock: [1m]\ntubes:\n${tubes.join('')}`);
  const pack = shopPack(job, solveHands(job), false);
  const heads = Array.from({ length: 40 }, (_, i) => {
    const room = { left: 0, bottom: 0, right: 180, top: 150 + 2 * i };
    return layFront(pack(room), room).flatMap(
      (draw) => textsOf({ name: '', box: room, marks: draw(() => []) })[0] ?? [],
    );
  }).flat();
  // Wherever the pages end, some begin within the stock.
  expect(heads.some((text) => /^1m no\. 1$/.test(text) || /wall 2 mm$/.test(text))).toBe(true);
  expect(heads.filter((text) => /in all/.test(text))).toEqual([]);
});

test('the sign of a setting shows headers that are alike once', () => {
  const { tubes } = readSample(
    'copeleaf: 1\ntube: { od: 25, between: 900, ends: { A: [{ onto: { od: 42.4 }, angle: 60 }, { onto: { od: 42.4 }, angle: 60, clock: 90 }], B: [{ onto: { od: 42.4 }, angle: 60 }, { onto: { od: 48.3 }, angle: 60, clock: 90 }] } }\n',
  );
  const box = { left: 0, right: 6, bottom: 0, top: 6 };
  expect(
    tubes.flatMap(({ ends: { A, B } }) => [A, B].map((end) => end && headerSign(end, box).length)),
  ).toEqual([1, 2]);
});
