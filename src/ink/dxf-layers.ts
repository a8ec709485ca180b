import type { Purpose } from '../draw/drawing.ts';
import { PENS } from '../draw/pens.ts';
import { type Group, group } from './dxf-group.ts';

/** The layers that are no mark's purpose: the whole pattern as one closed contour, and the bar of known length. */
export const PATTERN = 'PATTERN';
export const SCALE_BAR = 'SCALE_BAR';

/** A purpose's layer: R12 knows capitals, digits, `$`, `-` and `_` in a name. */
export function layerOf(purpose: Purpose): string {
  return purpose.toUpperCase().replaceAll('-', '_');
}

const PURPOSES: readonly Purpose[] = [
  'cut',
  'other-edge',
  'waste',
  'guide',
  'fold',
  'clean',
  'outline',
  'seam',
  'bar',
  'registration',
  'picture',
  'frame',
  'words',
];

/** Colours by number, for who picks what to cut by colour: red and blue are cut, green is measured, the rest is shown. */
const COLOURS: Readonly<Record<string, number>> = { CUT: 1, [PATTERN]: 5, [SCALE_BAR]: 3 };
const SHOWN = 7;

/** The TABLES section: line types, layers and a text style. */
export function tables(): Group[] {
  return [
    ...section('TABLES', [
      ...table('LTYPE', [
        lineType('CONTINUOUS', []),
        ...dashed().map(([name, dash]) => lineType(name, dash)),
      ]),
      ...table('LAYER', [
        layer('0'),
        ...PURPOSES.map((purpose) => layer(layerOf(purpose), lineTypeOf(purpose))),
        layer(PATTERN),
        layer(SCALE_BAR),
      ]),
      ...table('STYLE', [textStyle()]),
    ]),
  ];
}

/** A section with its end. */
export function section(name: string, groups: readonly Group[]): Group[] {
  return [group(0, 'SECTION'), group(2, name), ...groups, group(0, 'ENDSEC')];
}

/** A dashed purpose has a line type of its layer's name. */
export function lineTypeOf(purpose: Purpose): string {
  return PENS[purpose].dash.length > 0 ? layerOf(purpose) : 'CONTINUOUS';
}

function dashed(): (readonly [name: string, dash: readonly number[]])[] {
  return PURPOSES.filter((purpose) => PENS[purpose].dash.length > 0).map((purpose) => [
    layerOf(purpose),
    PENS[purpose].dash,
  ]);
}

function table(name: string, entries: readonly Group[][]): Group[] {
  return [
    group(0, 'TABLE'),
    group(2, name),
    group(70, entries.length),
    ...entries.flat(),
    group(0, 'ENDTAB'),
  ];
}

/** Dashes are positive, spaces negative. */
function lineType(name: string, dash: readonly number[]): Group[] {
  return [
    group(0, 'LTYPE'),
    group(2, name),
    group(70, 0),
    group(3, dash.length > 0 ? dash.join(' ') : 'Solid line'),
    group(72, 65),
    group(73, dash.length),
    group(
      40,
      dash.reduce((sum, length) => sum + length, 0),
    ),
    ...dash.map((length, i) => group(49, i % 2 === 0 ? length : -length)),
  ];
}

function layer(name: string, lineType = 'CONTINUOUS'): Group[] {
  return [
    group(0, 'LAYER'),
    group(2, name),
    group(70, 0),
    group(62, COLOURS[name] ?? SHOWN),
    group(6, lineType),
  ];
}

function textStyle(): Group[] {
  return [
    group(0, 'STYLE'),
    group(2, 'STANDARD'),
    group(70, 0),
    group(40, 0),
    group(41, 1),
    group(50, 0),
    group(71, 0),
    group(42, 2.5),
    group(3, 'txt'),
    group(4, ''),
  ];
}
