import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { warningsOf } from '../../src/fit/report.ts';
import { readFrame } from '../../src/frame/read-frame.ts';
import { EN_DIAMETERS } from '../../src/measure/sizes/pipe.ts';
import { solvePieces } from '../../src/together/pieces.ts';
import { reportJob } from '../../src/together/report-job.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { A4, readSample, refusalOf } from './sample.ts';

/** A metric job of one end as most people write it, with a line of it mistaken. */
interface Slip {
  readonly head?: string;
  readonly od?: string;
  readonly wall?: string;
  readonly tube?: string;
  readonly onto?: string;
  readonly angle?: string;
  readonly more?: string;
}

function oneEnd(slip: Slip): string {
  const { head = '', od = '38.1', wall = '2.4', tube = '' } = slip;
  const { onto = '{ od: 44.5 }', angle = '60', more = '' } = slip;
  return `copeleaf: 1\n${head}tube:\n  od: ${od}\n  wall: ${wall}\n${tube}  ends:\n    A: { onto: ${onto}, angle: ${angle}${more} }\n`;
}

/** The same in inches. */
function inches(slip: Slip): string {
  const head = `units: in\n${slip.head ?? ''}`;
  return oneEnd({ od: '1.5', wall: '.095', onto: '{ od: 1.75 }', ...slip, head });
}

function bothEnds(between: string, head = '', od = '38.1', onto = '44.5'): string {
  const end = `{ onto: { od: ${onto} }, angle: 60 }`;
  return `copeleaf: 1\n${head}tube:\n  od: ${od}\n${between}  ends:\n    A: ${end}\n    B: ${end}\n`;
}

/** A rung of 600 mm, by what its two ends land on and how. */
function rung(a: string, b: string, head = ''): string {
  return `copeleaf: 1\n${head}tube:\n  od: 26.9\n  wall: 2.6\n  between: 600\n  ends:\n    A: { onto: ${a} }\n    B: { onto: ${b} }\n`;
}

/** One end on a pipe by its name; another on a header so wide. */
const onPipe: Slip = { tube: '  between: 600mm\n', onto: '{ pipe: NPS 1-1/2 }' };
const atB = (od: string): string => ` }\n    B: { onto: { od: ${od} }, angle: 90`;

/** Two headers of one end. */
const atNode = (more: string): string =>
  `[{ onto: { od: 60.3 }, angle: 45 }, { onto: { od: 48.3 }, angle: 45${more} }]`;

/** A tube mitred at both ends. */
const mitred = (turn: string): string =>
  `  ends:\n    A: { onto: { mitre: { turn: ${turn} } } }\n    B: { onto: { mitre: { turn: ${turn} } } }\n`;

/** Long sides and short ones of a hatch, so many of each. */
function hatch(turn: string, copies: number): string {
  const side = (between: number): string =>
    `  - od: 42.4\n    wall: 2.6\n    between: ${between}\n    copies: ${copies}\n${mitred(turn).replace(/^/gm, '  ').trimEnd()}\n`;
  return `copeleaf: 1\ntubes:\n${side(800)}${side(500)}`;
}

const elbow = (turn: string, pieces: number, radius: number): string =>
  `copeleaf: 1\ntube: { od: 48.3, wall: 2.6, ends: { A: { onto: { mitre: { turn: ${turn}, pieces: ${pieces}, radius: ${radius} } } } } }\n`;

/** A stay of the left side, and one of the right. */
function sides(right: string): string {
  const stay = (side: string, more: string): string =>
    `  - { name: stay ${side}, od: 31.75, wall: 2.4, between: 510, ends: { A: { onto: { od: 38.1 }, angle: 72 }, B: { onto: { od: 44.5 }, angle: 48, ${more} } } }\n`;
  return `copeleaf: 1\ntubes:\n${stay('left', 'clock: 35, offset: 3')}${stay('right', right)}`;
}

const GOOD = oneEnd({});

/** What is told of a job: its mistakes, or where there are none its warnings, each on a line. */
function toldOf(job: string): string {
  const warned: string[] = [];
  const refused = refusalOf(() => {
    for (const { warnings } of reportJob(readSample(job))) {
      warned.push(
        ...warnings.map(({ code, end, inFile }) => `${code}: ${end ? `end ${end}: ` : ''}${inFile}`),
      );
    }
  });
  return [...refused.map(({ read, why, instead }) => `${read}: ${why}: ${instead}`), ...warned].join('\n');
}

const WRONG: readonly (readonly [string, string, RegExp])[] = [
  [
    'sizes in mm under units: in',
    inches({ od: '38.1', wall: '2.4', onto: '{ od: 44.5 }' }),
    /od: 38.1.*38.1mm or 38.1in/,
  ],
  [
    'inches in a job in mm',
    oneEnd({ od: '1.5', wall: '.095', onto: '{ od: 1.75 }' }),
    /od: 1.5.*1.5in .* or 1.5mm/,
  ],
  ['a wall in inches in a job in mm', oneEnd({ wall: '0.065' }), /0.065in .* or 0.065mm/],
  ['a gauge without its name', oneEnd({ wall: '16' }), /42 % of the tube.*16 BWG .* or 16mm/],
  ['wall and diameter swapped', oneEnd({ od: '2.4', wall: '38.1' }), /od: 2.4.*`od: 38.1` and `wall: 2.4`/],
  ['the radius of the header for its diameter', oneEnd({ onto: '{ od: 22.25 }' }), /wider: .*22.25 mm/],
  [
    'the diameter of the header with two digits too many',
    oneEnd({ onto: '{ od: 4450 }' }),
    /hardly a header is that size/,
  ],
  ['a header by its radius', oneEnd({ onto: '{ radius: 22.25 }' }), /`radius` is not a key under `onto`/],
  ['a header as a number alone', oneEnd({ onto: '44.5' }), /a single value.*a map with `od`/],
  ['a girth for a diameter', oneEnd({ od: '120' }), /wider: /],
  ['a decimal comma between braces', oneEnd({ onto: '{ od: 44,5 }' }), /a comma ends the value/],
  ['an offset as wide as both tubes', oneEnd({ more: ', offset: 60' }), /misses it/],
  ['an offset in inches in a job in mm', oneEnd({ more: ', offset: 3/32' }), /3.32in .* or 3.32mm/],
  [
    'an offset to a plate',
    oneEnd({ onto: '{ plate: {} }', more: ', offset: 10' }),
    /it has no axis to be beside/,
  ],
  ['an angle along the header', oneEnd({ angle: '180' }), /the tube runs along the header/],
  ['an angle with a sign', oneEnd({ angle: '-60' }), /over 0 and under 180/],
  ['a percentage', oneEnd({ angle: '60%' }), /angle: 60%: /],
  ['the slope off the header for the angle', oneEnd({ angle: '12' }), /acute angle is 12°: under 30°/],
  ['an angle in radians without the word', oneEnd({ angle: '1.047' }), /1.047rad .59.99°. or 1.047deg/],
  ['a slope as a fraction', oneEnd({ angle: '7/12' }), /rise: 7, run: 12/],
  ['a slope in percent', oneEnd({ angle: '58%' }), /a slope in % is no angle.*rise: 58, run: 100/],
  ['a run without the unit of its rise', oneEnd({ angle: '{ rise: 12in, run: 7 }' }), /run: 7.*7in or 7mm/],
  [
    'a side of a triangle without the unit of the others',
    oneEnd({ angle: '{ triangle: [8in, 8in, 8] }' }),
    /8in or 8mm/,
  ],
  [
    'degrees off square for the angle',
    oneEnd({ angle: '5' }),
    /acute angle is 5°.*`off-square` if it was read from square/,
  ],
  ['a clock with a digit too many', oneEnd({ more: ', clock: 3500' }), /more than two turns/],
  ['the thickness of paper ten times too great', oneEnd({ head: 'paper-thickness: 1\n' }), /0.1mm or 1mm/],
  ['a margin in centimetres in a job in mm', oneEnd({ head: 'margin: 1\n' }), /1in .25.4 mm. or 1mm/],
  ['a kerf ten times too great', oneEnd({ head: 'kerf: 25\nstock: 6m\n' }), /2.5mm or 25mm/],
  [
    'an elbow round less than its own tube',
    GOOD.replace('onto: { od: 44.5 }, angle: 60', 'onto: { mitre: { turn: 90, pieces: 5, radius: 15 } }'),
    /nothing left on their inside/,
  ],
  ['a thousand set off by a point', bothEnds('  between: 1.420\n'), /1.420m .1420 mm./],
  [
    'the wide and the deep side of a box swapped',
    oneEnd({ od: '50', onto: '{ box: { wide: 30, deep: 60, wall: 3 } }' }),
    /`wide` lies across the tube/,
  ],
  ['the radius of a header, told as what `od` is', oneEnd({ onto: '{ od: 22.25 }' }), /`od` is a diameter/],
  ['minutes for degrees', oneEnd({ angle: "60'" }), /minutes or seconds but no degrees/],
  ['an angle in words', oneEnd({ angle: 'sixty' }), /angle: sixty: there is no number/],
  ['a length for a clock', oneEnd({ more: ', clock: 12mm' }), /`mm` is not a unit of angle/],
  ['tabs', 'copeleaf: 1\ntube:\n\tod: 38.1\n', /does not take tabs/],
  ['a line indented too far', GOOD.replace('  wall', '   wall'), /colon|indented/],
  ['a missing comma', GOOD.replace('},', '}'), /something follows/],
  ['a missing brace', GOOD.replace(' },', ' ,'), /not indented alike, or a bracket is not closed/],
  ['no space after a colon', GOOD.replace('od: 38.1', 'od:38.1'), /colon/],
  ['a key in capitals', GOOD.replace('od: 38.1', 'OD: 38.1'), /`od`, if that is meant/],
  ['an end in small letters', GOOD.replace('A:', 'a:'), /`A`, if that is meant/],
  ['curly quotes', oneEnd({ od: '“38.1”' }), /od: “38.1”/],
  ['the sign of a diameter', oneEnd({ od: 'Ø38.1' }), /od: Ø38.1/],
  ['the name of a pipe for a diameter', oneEnd({ od: 'NPS 1-1/2' }), /`pipe: NPS 1-1.2` in its place/],
  [
    'a pipe that nobody rolls',
    GOOD.replace(/od: 38.1\n {2}wall: 2.4/, 'pipe: NPS 1-3/4 sch 40'),
    /NPS 1-1.2 or NPS 2/,
  ],
  ['a nominal diameter', oneEnd({ onto: '{ pipe: DN 40 }' }), /series whose outside diameters differ/],
  ['a sign lost from a mixed number', oneEnd({ od: '11/2in' }), /1-1.2 or 5-1.2/],
  ['feet in a job in inches', bothEnds('  between: 4\n', 'units: in\n', '1.5', '1.75'), /short: Only/],
  ['metres in a job in mm', bothEnds('  between: 1.2\n'), /hardly a tube is that long/],
  ['no length between two ends', bothEnds(''), /no `between`/],
  ['a length that the two cuts use up', bothEnds('  between: 60\n'), /leave no tube between them/],
  ['a comma in a thousand', bothEnds('  between: 1,200\n'), /1.200 or 1200/],
  ['copies where a pair is meant', oneEnd({ tube: '  pair: 2\n' }), /neither true nor false/],
  ['a unit that a file has not', oneEnd({ head: 'units: cm\n' }), /mm or in/],
  ['a gap in inches in a job in mm', oneEnd({ tube: '  root: 1/16\n' }), /1.16in .* or 1.16mm/],
  ['a gap in mm in a job in inches', inches({ tube: '  root: 1.6\n' }), /40.64 mm.*1.6mm or 1.6in/],
  ['a land thicker than the wall', oneEnd({ tube: '  land: 3\n' }), /thicker than the wall/],
  ['a square edge of no known wall', GOOD.replace('wall: 2.4', 'edge: square'), /takes the wall/],
  ['metres of stock in a job in mm', oneEnd({ head: 'stock: [6]\n' }), /hardly a stock length is that long/],
  [
    'a kerf in mm in a job in inches',
    inches({ head: 'stock: [240]\nkerf: 3\n' }),
    /hardly a saw takes that much/,
  ],
  ['an allowance in mm in a job in inches', inches({ tube: '  allowance: 10\n' }), /10mm or 10in/],
  [
    'the thickness of paper in mm in a job in inches',
    inches({ head: 'paper-thickness: 0.1\n' }),
    /more than 0.078 in/,
  ],
  [
    'a way round a header for its diameter',
    oneEnd({ onto: '{ od: 119.7 }' }),
    /119.7 mm is no usual.*38.1 mm is/,
  ],
  [
    'the way round a header that stands at the other end, near a size that is sold',
    oneEnd({ tube: '  between: 380\n', onto: '{ od: 133.2 }', more: atB('42.4') }),
    /^as-meant: end A: 133.2 mm is no usual.*42.4 mm is/,
  ],
  [
    'a header by its bore, whose outside stands at the other end',
    oneEnd({ tube: '  between: 380\n', onto: '{ od: 43.1 }', more: atB('48.3') }),
    /^as-meant: end A: 43.1 mm is no usual size; the 48.3 mm .* a wall of 2.6 mm/,
  ],
  [
    'a diameter for the way round',
    oneEnd({ od: '{ girth: 31.75 }', wall: '1' }),
    /31.75 mm round is 10.11 mm across, no usual size; 31.75 mm across is one/,
  ],
  ['two figures changed round', oneEnd({ onto: '{ od: 45.4 }' }), /end A: 45.4 mm is no usual size; 44.5 is/],
  ['the same in inches', inches({ onto: '{ od: 2.735 }' }), /2.735 in is no usual size; 2.375 is/],
  [
    'a pipe by its name for its diameter',
    inches({ od: '1-1/2in', wall: '.145in' }),
    /the pipe NPS 1-1.2 sch 40, which is ~1-29.32 in .1.900. across and not 1-1.2in/,
  ],
  [
    'a header by the name of the pipe that the other one is',
    inches({ ...onPipe, more: atB('1-1/2in') }),
    /end B: The header is 1-1.2in across; the pipe NPS 1-1.2, .* is ~1-29.32 in .1.900.. Are they the same/,
  ],
  ["an hour for a clock's angle", oneEnd({ more: ', clock: 3' }), /`3deg` or `90deg`, whichever is meant/],
  [
    'the radius of a bend to its inside',
    oneEnd({ onto: '{ bend: { od: 44.5, radius: 40, centre: 180 } }' }),
    /Round a centre line of 40 mm hardly a tube of 44.5 mm is bent/,
  ],
  [
    'a gap in mm in a job in inches, in words of a gap',
    inches({ tube: '  root: 1.6\n' }),
    /hardly a gap is left so/,
  ],
  [
    'an end forgotten, to which a length was given',
    oneEnd({ tube: '  between: 420\n' }),
    /^as-meant: End B is not given: .* 420 mm is not used.*`B: plain`/,
  ],
  [
    "a saw's scale for the turn of a corner",
    `copeleaf: 1\ntube:\n  od: 42.4\n  wall: 2.6\n  between: 800\n  copies: 4\n${mitred('45')}`,
    /^as-meant: 4 corners of 45° turn 180° .* 4 of 90° do.*`turn: 90°`/,
  ],
  ['the same of long sides and short ones', hatch('45', 2), /^as-meant: 4 corners of 45° turn 180°/],
  [
    'the turn of one joint for the whole elbow',
    elbow('22.5', 5, 150),
    /^as-meant: end A: .* turns 22.5°, 5.63° at a joint: .* 14.74 mm long.*`turn: 90°`/,
  ],
  [
    'the sign of an offset turned for the other side, and not that of a clock',
    sides('clock: 35, offset: -3'),
    /^as-meant: .*no mirror image of stay left: .*`pair: true`/,
  ],
  [
    'feet with a point before the inches',
    bothEnds('  between: 2.3ft\n'),
    /^as-meant: 2.3ft is 27.6 in; 2 ft 3 in is 27 in.*`27.6in` or `2ft 3in`/,
  ],
  ['feet of stock in a job in inches', inches({ head: 'stock: [20 x 4]\n' }), /stock: 20.*20ft.* or 20in/],
  [
    'a square tube, by its name, as a round one',
    oneEnd({ od: '40', tube: '  name: bunk bearer 40x40x3\n', onto: '{ od: 60.3 }' }),
    /^as-meant: By its name it is square .* round tube of 40 mm/,
  ],
  [
    'the first length of a notch again as the last',
    'copeleaf: 1\ntube: { od: 33.7, wall: 2.6, ends: { A: { onto: { od: 48.3 }, offset: 0, notch: [144.5, 147, 154, 160.5, 163, 162, 161.5, 162, 162.5, 161, 154, 147, 144.5] } } }\n',
    /last length is the first again.*the 12 without the last/,
  ],
  [
    'a header of a node that the other one covers, its clock forgotten',
    GOOD.replace('{ onto: { od: 44.5 }, angle: 60 }', atNode('')),
    /end A: The second header takes nothing off: .*`clock`/,
  ],
  [
    'the DN of a pipe for its diameter',
    rung('{ pipe: EN 48.3 x 2.6 }, angle: 90', '{ od: 40 }, angle: 90'),
    /^as-meant: end B: .* DN 40 is the pipe of 48.3 mm .*`od: 48.3 mm`/,
  ],
  [
    'the side of an offset seen from the other end',
    rung('{ od: 60.3 }, angle: 90, offset: 16', '{ od: 60.3 }, angle: 90, offset: -16'),
    /^as-meant: The two headers are 32 mm out of line/m,
  ],
  [
    'an end turned over by its angle and by its clock',
    rung('{ od: 42.4 }, angle: 48', '{ od: 42.4 }, angle: 132, clock: 180'),
    /^as-meant: 132° turns the joint over, .*`angle: 48`/,
  ],
  [
    'a box turned over by its sides and by its roll',
    rung(
      '{ box: { wide: 60, deep: 40, wall: 3 } }, angle: 75',
      '{ box: { wide: 40, deep: 60, wall: 3, roll: 90 } }, angle: 75, clock: 180',
    ),
    /^as-meant: Its width and depth are changed round .* rolled by 90° as well/,
  ],
  [
    'a rung that is its own mirror image, so many for each hand',
    rung('{ od: 48.3 }, angle: 90', '{ od: 48.3 }, angle: 90', 'pair: true\ncopies: 2\n'),
    /^as-meant: Its mirror image is the same piece: 4 are made.*`copies: 2` without `pair`/,
  ],
  [
    'the thickness of a tape in tenths',
    oneEnd({ od: '{ girth: 101.3mm, tape: 5 }', wall: '2' }),
    /tape: 5: without a unit that is 5 mm, and hardly a tape is that thick: 0.5mm or 5mm/,
  ],
  ['a box of one size', oneEnd({ onto: '{ box: 50 }' }), /a map with `wide`, `deep`/],
];

test('the job with no mistake is told nothing of', () => {
  expect(toldOf(GOOD)).toBe('');
  expect(toldOf(inches({}))).toBe('');
});

describe('a wrong job is told what is wrong with it', () => {
  test.each(WRONG)('%s', (_, job, fault) => {
    expect(toldOf(job)).toMatch(fault);
  });
});

describe('a job in inches is told its limits in inches, none over what holds', () => {
  test.each([
    // Half of 1.315 in is 0.6575 in.
    ['of a wall', inches({ od: '1.315in', wall: '1in' }), /a wall of 0.657 in at most/],
    // A tube of 1-1/2 in is 4.7123... in round.
    ['of an arc', inches({ more: ', clock: { arc: 6 }' }), /way round this tube is 4.712 in/],
    // 10 mm are 0.3937 in.
    ['of a root gap', inches({ tube: '  root: 1in\n' }), /under 0.393 in, such as 1.16in/],
    [
      'of a corner',
      inches({ onto: '{ box: { wide: 2in, deep: 1-5/8in, corner: 1in } }' }),
      /a corner up to 0.812 in/,
    ],
    ['of paper', inches({ head: 'paper-thickness: 1in\n' }), /more than 0.078 in/],
    // Letter is 8.5 by 11 in, and 110 mm are 4-11/32 in, or nearly.
    [
      'of margins',
      inches({ head: 'paper: letter\nmargin: 4\n' }),
      /leave 0.5 in x 3 in .* ~4-11.32 in each way/,
    ],
    [
      'of a root gap inside a bend',
      inches({ tube: '  root: 1/8in\n', onto: '{ bend: { od: 1-3/4in, radius: 15/16in } }' }),
      /leaves 0.062 in inside it/,
    ],
  ])('%s', (_, job, limit) => {
    expect(toldOf(job)).toMatch(limit);
  });
});

describe('what is meant is not doubted', () => {
  test.each<[string, Slip]>([
    ['a number with its unit', { onto: '{ od: 45.4mm }', more: ', clock: 3deg' }],
    ['a way round with its unit', { od: '{ girth: 31.75mm }', wall: '1' }],
    ['a tube under paint', { od: '38.3', onto: '{ od: 42.6 }' }],
    ['a tube that the mill left under its size', { od: '37.9', onto: '{ od: 59.8 }' }],
    ['a tube by a tape round it', { od: '{ girth: 120.2 }' }],
    ['a size of some other mill', { onto: '{ od: 47.2 }' }],
    ['a tube of an inch with the wall of 12 gauge, which is a pipe as well', { od: '1/2in', wall: '.109in' }],
    // 133 mm is 42.34 across, and sold.
    [
      'a size that is sold beside one that is as far across',
      { ...onPipe, onto: '{ od: 133 }', more: atB('42.4') },
    ],
    ['a size that is sold and another one’s bore', { ...onPipe, onto: '{ od: 42.4 }', more: atB('48.3') }],
    ['a size under paint', { ...onPipe, onto: '{ od: 133.2 }', more: atB('60.3') }],
    ['a drawn tube with the wall of a heavy pipe', { od: '1in', wall: '.25in' }],
    ['a tube beside the pipe of its number, in decimals', { ...onPipe, more: atB('1.5in') }],
    ['a clock of more than twelve degrees, or of less than nothing', { more: ', clock: -3' }],
    ['a short elbow to weld', { onto: '{ bend: { od: 48.3, radius: 38, centre: 180 } }' }],
    ['a bend round its own diameter', { onto: '{ bend: { od: 44.5, radius: 44.5, centre: 180 } }' }],
  ])('%s', (_, slip) => {
    expect(toldOf(oneEnd(slip))).not.toContain('as-meant');
  });

  test('a header of a node on the other side', () => {
    const node = atNode(', clock: 180');
    expect(toldOf(GOOD.replace('{ onto: { od: 44.5 }, angle: 60 }', node))).not.toContain('as-meant');
  });

  test.each([
    ['feet and a half', bothEnds('  between: 2.5ft\n')],
    ['feet to two places', bothEnds('  between: 2.25ft\n')],
    ['a round tube by its diameter and wall', oneEnd({ tube: '  name: stay 38.1x2.4\n' })],
    [
      'a rung named by the post it lands on',
      oneEnd({ tube: '  name: rung on SHS\n', onto: '{ box: { wide: 60, deep: 60, wall: 3 } }' }),
    ],
    ['stock with its unit', inches({ head: 'stock: [20in x 4]\n' })],
    ['a ring of eight, of which two are longer', hatch('45', 4)],
    ['a hatch of four corners', hatch('90', 2)],
    [
      'a rung of two headers, one on the same side of both',
      rung('{ od: 60.3 }, angle: 90, offset: 16', '{ od: 60.3 }, angle: 90, offset: 16'),
    ],
    [
      'the same with its clock turned',
      rung('{ od: 60.3 }, angle: 90, offset: 16', '{ od: 60.3 }, angle: 90, clock: 180, offset: -16'),
    ],
    [
      'headers on two sides, of two sizes',
      rung('{ od: 60.3 }, angle: 90, offset: 16', '{ od: 48.3 }, angle: 90, offset: -16'),
    ],
    ['an obtuse reading', rung('{ od: 42.4 }, angle: 48', '{ od: 42.4 }, angle: 132')],
    ['a diagonal', rung('{ od: 42.4 }, angle: 48', '{ od: 42.4 }, angle: 48, clock: 180')],
    [
      'a box on its other side',
      rung(
        '{ box: { wide: 60, deep: 40, wall: 3 } }, angle: 75',
        '{ box: { wide: 60, deep: 40, wall: 3, roll: 90 } }, angle: 75, clock: 180',
      ),
    ],
    ['a tube as wide as the DN of its header', rung('{ od: 33.7 }, angle: 90', '{ od: 25mm }, angle: 90')],
    [
      'a rung of which a pair is made',
      rung('{ od: 48.3 }, angle: 90', '{ od: 48.3 }, angle: 90', 'pair: true\n'),
    ],
    ['a part of a ring', hatch('45', 1)],
    ['an elbow of three pieces', elbow('45', 3, 60)],
    ['an elbow of five pieces that turns half a corner', elbow('45', 5, 72.45)],
    ['a wide elbow of many pieces', elbow('30', 6, 600)],
    ['a mirror image written by hand', sides('clock: -35, offset: -3')],
    ['one piece on both sides', sides('clock: 35, offset: 3')],
    ['a side that differs by more', sides('clock: 35, offset: -5')],
  ])('%s', (_, job) => {
    expect(toldOf(job)).not.toMatch(/as-meant|stock/);
  });

  test('no sample, no starter', () => {
    const files = ['samples', 'templates'].flatMap((folder) =>
      readdirSync(folder).map((name) => `${folder}/${name}`),
    );
    expect(files.length).toBeGreaterThan(15);
    for (const file of files) {
      const job = readFrame(readFileSync(file, 'utf8'), file, { words: ENGLISH, paper: A4 });
      const told = warningsOf(solvePieces(job), ENGLISH).map(({ warning: { code } }) => code);
      expect([file, told]).toEqual([file, expect.not.arrayContaining(['as-meant'])]);
    }
  });

  test.each(['mm', 'in'] as const)('no size that is sold, in %s', (unit) => {
    const sizes =
      unit === 'mm'
        ? EN_DIAMETERS.filter((od) => od > 40)
        : Array.from({ length: 20 }, (_, i) => 1.5 + i / 8);
    for (const od of sizes) {
      const job = unit === 'mm' ? oneEnd({ onto: `{ od: ${od} }` }) : inches({ onto: `{ od: ${od} }` });
      expect([od, toldOf(job)]).toEqual([od, expect.not.stringContaining('as-meant')]);
    }
  });
});
