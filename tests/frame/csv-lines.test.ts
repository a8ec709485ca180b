import { expect, test } from 'vitest';
import { excessOf } from '../../src/job/text/limits.ts';
import { axesOf, framed, readBack, refusalOf } from './lines.ts';

const HEAD = 'name,x1,y1,z1,x2,y2,z2,od,wall';

function tubesOf(text: string): readonly string[] {
  return text.split('\n').filter((line) => line.startsWith('    - '));
}

test('a table becomes points and tubes that a person can read and edit', () => {
  const { text, told } = framed(`${HEAD}
rail,0,0,0,1200,0,0,44.5,2
post,300,0.2,0,300,0,500,38.1,2
brace,300,0,500.2,600,400,500,33.7,2.6
`);
  expect(text.split('\n').filter((line) => !line.startsWith('#'))).toEqual([
    'copeleaf: 1',
    'units: mm',
    'frame:',
    '  points:',
    '    rail A: [0, 0, 0]',
    '    rail B: [1200, 0, 0]',
    '    post on rail: { on: rail, at: 300 }',
    '    post B: [300, 0, 500]  # brace A',
    '    brace B: [600, 400, 500]',
    '  tubes:',
    '    - { name: rail, along: [rail A, rail B], od: 44.5, wall: 2 }',
    '    - { name: post, along: [post on rail, post B], od: 38.1, wall: 2 }',
    '    - { name: brace, along: [post B, brace B], od: 33.7, wall: 2.6 }',
    '',
  ]);
  expect(told).toEqual([]);
});

test('a spreadsheet of another country reads the same', () => {
  const plain = framed(`${HEAD}\nrail,0.5,0,0,1200,0,1e3,44.5,2\n`).text;
  const semicolons = `\uFEFF${HEAD.replaceAll(',', ';')}\r\nrail;0,5;0;0;1200;0;1000,0;44,5;2\r\n\r\n`;
  expect(framed(semicolons).text).toBe(plain);
  expect(framed(`${HEAD.replaceAll(',', '\t')}\nrail\t0,5\t0\t0\t1200\t0\t1000\t44,5\t2`).text).toBe(plain);
  const turned = 'Z2, Y2 ,X2,name,z1,y1,x1,wall,od,colour\n1000,0,1200,rail,0,0,.5,2,44.5,red';
  expect(framed(turned).text).toBe(plain);
  expect(framed(turned).told.join()).toContain('colour');
});

test('names are made safe, numbered where they repeat, given where they lack, and read back as they are', () => {
  const names = [
    '"a, b"',
    '"say ""x"""',
    '',
    '',
    'a b',
    'é: #1',
    '007',
    '- x',
    "it's",
    '[y]',
    '"two\nlines"',
  ];
  const rows = names.map((name, i) => `${name},${i * 100},0,0,${i * 100},0,500,30,2`);
  const { text } = framed([HEAD, ...rows].join('\n'));
  const read = [...axesOf(readBack(text)).keys()];
  const plain = [
    'a b',
    'say "x"',
    'tube 3',
    'tube 4',
    'a b 2',
    'é: #1',
    '007',
    '- x',
    "it's",
    '[y]',
    'two lines',
  ];
  expect(read).toEqual(plain);
});

test('sizes: of the table, of a flag, by names, of rectangular tube; or told that there are none', () => {
  const rows = [
    `${HEAD}`,
    'a,0,0,0,0,0,500,,',
    'b,100,0,0,100,0,500,1-1/2in,',
    'c,200,0,0,200,0,500,60x40x3,',
  ];
  const more = ['d,300,0,0,300,0,500,NPS 1 sch 40,', 'e,400,0,0,400,0,500,38.1 x 2.4,'];
  const { text, told } = framed([...rows, ...more].join('\n'));
  expect(tubesOf(text).map((line) => /\], ?(.*) \}|\] \}/.exec(line)?.[1])).toEqual([
    undefined,
    'od: 1-1/2in',
    'section: { wide: 60, deep: 40 }, wall: 3',
    'pipe: NPS 1 sch 40',
    'od: 38.1, wall: 2.4',
  ]);
  expect(told.join()).toContain('1 of 5 tubes have no size');
  const flagged = framed(rows.join('\n'), { od: '30', wall: '2' }).text;
  expect(tubesOf(flagged)[0]).toContain('od: 30, wall: 2 }');
  expect(tubesOf(flagged)[1]).toContain('od: 1-1/2in, wall: 2 }');
});

test('units and the axis that is up are as they are told to be', () => {
  const axes = axesOf(readBack(framed(`${HEAD}\na,0,0,0,1,2,3,1.5,.095`, { units: 'in', isUp: 'y' }).text));
  expect(axes.get('a')?.to).toEqual([25.4, -76.2, 50.8].map((mm) => expect.closeTo(mm, 9)));
  const metres = axesOf(readBack(framed(`${HEAD}\na,0,0,0,1,2ft,30mm,38,2`, { units: 'm' }).text));
  expect(metres.get('a')?.to).toEqual([1000, 609.6, 30].map((mm) => expect.closeTo(mm, 9)));
});

test.each([
  ['', 1, 'nothing'],
  ['x1,y1,z1,x2,y2\n0,0,0,1,1', 1, 'x1,y1,z1,x2,y2'],
  ['0,0,0,1000,0,0', 1, '0,0,0,1000,0,0'],
  [`${HEAD},od\na,0,0,0,9,0,0,30,2,3`, 1, `${HEAD},od`],
  [HEAD, 1, HEAD],
  [`${HEAD}\na,0,0,0,900,0,0,30,2\nb,0,0,x,1,1,1,30,2`, 3, 'z1: x'],
  [`${HEAD}\n"a\nb",0,0,0,900,0,0,30,2\nc,0,0,,1,1,1,30,2`, 4, 'z1:'],
  [`${HEAD}\na,0,0,0,1,5,0,0,30,2`, 2, 'a,0,0,0,1,5,0,0,30,2'],
  [`${HEAD}\na,0,0,0,900,0,0,30,2\n"b,0,0,0,900,0,9,30,2\n`, 3, 'b,0,0,0,900,0,9,30,2'],
  [`${HEAD}\na,0,0,0,2e9,0,0,30,2`, 2, 'x2: 2e9'],
  [`${HEAD}\na,0,0,0,900,0,0,30,20`, 2, 'a,0,0,0,900,0,0,30,20'],
  [`${HEAD}\na,0,0,0,900,0,0,thick,`, 2, 'a,0,0,0,900,0,0,thick,'],
])('%j: one mistake at its line', (source, line, read) => {
  const complaint = refusalOf(() => framed(source));
  expect(complaint).toMatchObject({ file: 'lines.csv', line, read });
  expect(complaint.instead).not.toBe('');
});

test('more lines than any frame has are refused before they are looked at', () => {
  const complaint = refusalOf(() => framed(`${HEAD}\n${'a,0,0,0,900,0,0,30,2\n'.repeat(20_001)}`));
  expect(complaint).toMatchObject({ code: 'too-large', line: 1 });
});

test('a frame has more points than a job has slips', () => {
  const rows = Array.from({ length: 1100 }, (_, i) => `t${i},${i * 100},0,0,${i * 100},0,500,30,2`);
  const text = framed([HEAD, ...rows].join('\n')).text;
  expect(excessOf(text)).toBeUndefined();
  expect(excessOf(text.replace('  points:', '  point:'))?.code).toBe('too-large');
});

// Each column looked for in each row takes minutes, and once for all a second.
test('a table of very many columns is read in proportion', { timeout: 30_000 }, () => {
  const head = `x1,y1,z1,x2,y2,z2${',q'.repeat(1_000_000)}`;
  const { tubes, told } = framed(`${head}\n${'0,0,0,1000,0,0\n'.repeat(20_000)}`);
  expect(tubes).toBe(1);
  expect(told.join('\n')).toContain('q and 999994 more');
});
