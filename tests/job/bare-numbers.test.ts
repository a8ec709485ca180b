import { describe, expect, test } from 'vitest';
import { complaintsAbout, readSample } from './sample.ts';

const job = (units: string, tube: string, onto: string, more = ''): string =>
  `copeleaf: 1\nunits: ${units}\ntube: { ${tube}, ends: { A: { onto: { ${onto} }, angle: 60 } } }\n${more}`;

describe('a number without a unit that makes a size nobody has is asked about, with both readings', () => {
  test.each([
    [
      'a metric tube in inches',
      job('in', 'od: 38.1, wall: 2.4', 'od: 44.5'),
      ['od: 38.1', 'wall: 2.4'],
      '38.1mm or 38.1in (967.74 mm)',
    ],
    [
      'inches in a metric job',
      job('mm', 'od: 1.5, wall: .095', 'od: 1.75'),
      ['od: 1.5', 'wall: .095', 'od: 1.75'],
      '1.5in (38.1 mm) or 1.5mm',
    ],
    [
      'a wall that fills most of the tube',
      job('mm', 'od: 30, wall: 12', 'od: 40'),
      ['wall: 12'],
      '12 BWG (2.77 mm), 1.2mm or 12mm',
    ],
    [
      'a stock length in metres',
      job('mm', 'od: 30', 'od: 40', 'stock: [6]\n'),
      ['stock: 6'],
      '6m (6000 mm), 6ft (1828.8 mm) or 6mm',
    ],
    ['a girth', job('mm', 'od: { girth: 4.7 }', 'od: 40'), ['girth: 4.7'], '4.7in (119.38 mm) or 4.7mm'],
    [
      'a rectangular tube',
      job('mm', 'section: { wide: 2, deep: 1, corner: 0 }', 'od: 40'),
      ['wide: 2', 'deep: 1'],
      '2in (50.8 mm) or 2mm',
    ],
    [
      'a box',
      job('in', 'od: 1.5', 'box: { wide: 60, deep: 60, corner: 0 }'),
      ['wide: 60', 'deep: 60'],
      '60mm or 60in (1524 mm)',
    ],
  ])('%s', (_, text, read, instead) => {
    const complaints = complaintsAbout(text);
    expect(complaints.map((each) => each.read)).toEqual(read);
    expect(new Set(complaints.map(({ code }) => code))).toEqual(new Set(['which-unit']));
    expect(complaints[0]?.instead).toBe(`${instead}: write the unit, whichever you mean`);
  });

  test.each([
    ['metres between', 'between: 1.2', '1.2m (1200 mm), 1.2in (30.48 mm), 1.2ft (365.76 mm) or 1.2mm'],
    [
      'a thousand set off by a point',
      'between: 1.420',
      '1.420m (1420 mm), 1.420in (36.07 mm), 1.420ft (432.82 mm) or 1.420mm',
    ],
    ['feet between', 'between: 19', '19in (482.6 mm), 19ft (5791.2 mm) or 19mm'],
  ])('%s', (_, between, instead) => {
    const text = `copeleaf: 1\ntube: { od: 30, ${between}, ends: { A: { onto: { od: 40 }, angle: 60 }, B: plain } }\n`;
    expect(complaintsAbout(text).map((each) => each.instead)).toEqual([
      `${instead}: write the unit, whichever you mean`,
    ]);
  });

  test.each([
    [
      'the point of a kerf',
      'od: 30',
      'od: 40',
      'kerf: 25\nstock: 6m\n',
      '2.5mm or 25mm: write the unit, whichever you mean',
    ],
    [
      "a header that only the file's unit can make",
      'od: 30',
      'od: 166000',
      '',
      '166000mm, if you mean it: write the unit',
    ],
  ])('%s, where no other unit makes a size of it', (_, tube, onto, more, instead) => {
    expect(complaintsAbout(job('mm', tube, onto, more)).map((each) => each.instead)).toEqual([instead]);
  });

  test('a length between, whatever way it was measured', () => {
    for (const between of ['8', '{ faces: 8 }', '{ overall: 8 }', '[8, 600]']) {
      const text = `copeleaf: 1\ntube: { od: 30, between: ${between}, ends: { A: { onto: { od: 40 }, angle: 60 }, B: plain } }\n`;
      expect(complaintsAbout(text).map(({ code }) => code)).toContain('which-unit');
    }
  });
});

test('a number with its unit is never asked about', () => {
  const { tubes } = readSample(job('in', 'od: 968mm, wall: 61mm', 'od: 44.5in', 'stock: [6in]\n'));
  expect(tubes[0]?.section).toMatchObject({ od: { mm: 968 } });
  readSample(job('mm', 'od: 1mm, wall: 0.4mm', 'od: 3mm'));
});

test('a wall of exactly half the tube is a bar', () => {
  expect(readSample(job('mm', 'od: 20, wall: 10', 'od: 40')).tubes).toHaveLength(1);
});
