import type { Mark, Path, Point, Words } from '../draw/drawing.ts';
import { CAP_HEIGHT, widthOf } from '../draw/letters.ts';
import { PENS } from '../draw/pens.ts';
import type { Leaf } from '../leaf/leaf.ts';
import type { Mm } from '../measure/units.ts';
import type { Placement } from '../tiler/sheets.ts';
import { asWritten } from '../words/said.ts';
import { type Group, group } from './dxf-group.ts';
import { layerOf, PATTERN, SCALE_BAR, section, tables } from './dxf-layers.ts';
import { patternOf } from './dxf-pattern.ts';
import { dxfText } from './dxf-words.ts';
import { flattened } from './flatten.ts';
import { written } from './number.ts';
import { sideBySide } from './side-by-side.ts';

/** How far a straight piece may stray from the curve it stands for. */
const STRAY: Mm = 0.002;

/** The bar's length, and how far under the leaves it lies. */
const BAR: Mm = 100;
const BAR_Y: Mm = -15;

/**
 * Leaves as one DXF file of release 12 (AC1009), all ASCII, in millimetres: layers by purpose, every line a POLYLINE, closed
 * ones without their first corner again. Under the leaves lies a bar of 100 mm. The same leaves give the same text. Throws where
 * words hold a sign that the font lacks or a number is none. The format is from memory.
 */
export function inkDxf(leaves: readonly Leaf[]): string {
  const { width, height, rows } = sideBySide(leaves);
  const entities = rows.flatMap(({ wrap, card }) => [
    ...drawn(wrap),
    ...patternOf(wrap.drawing).flatMap((path) => polyline(PATTERN, path, wrap.at)),
    ...(card ? drawn(card) : []),
  ]);
  const groups = [
    ...header(Math.max(width, BAR), height),
    ...tables(),
    ...section('ENTITIES', [...entities, ...scaleBar()]),
    group(0, 'EOF'),
  ];
  return `${groups.join('\r\n')}\r\n`;
}

/** Release 12 itself knows no unit of length; later readers take it from MEASUREMENT (1: metric) and INSUNITS (4: mm). */
function header(width: Mm, height: Mm): Group[] {
  const corner = (x: Mm, y: Mm): Group[] => [group(10, x), group(20, y)];
  return section('HEADER', [
    ...[group(9, '$ACADVER'), group(1, 'AC1009')],
    ...[group(9, '$INSBASE'), ...corner(0, 0), group(30, 0)],
    ...[group(9, '$EXTMIN'), ...corner(0, BAR_Y - TICK), group(30, 0)],
    ...[group(9, '$EXTMAX'), ...corner(width, height), group(30, 0)],
    ...[group(9, '$LIMMIN'), ...corner(0, BAR_Y - TICK)],
    ...[group(9, '$LIMMAX'), ...corner(width, height)],
    ...[group(9, '$LTSCALE'), group(40, 1)],
    ...[group(9, '$LUNITS'), group(70, 2)],
    ...[group(9, '$LUPREC'), group(70, 4)],
    ...[group(9, '$MEASUREMENT'), group(70, 1)],
    ...[group(9, '$INSUNITS'), group(70, 4)],
  ]);
}

function drawn({ drawing, at }: Placement): Group[] {
  return drawing.marks.flatMap((mark) => entityOf(mark, at));
}

/** A solid shape is its contour: release 12 fills triangles and no more. */
function entityOf(mark: Mark, at: Point): Group[] {
  const layer = layerOf(mark.purpose);
  if (mark.kind === 'words') return text(layer, mark, at);
  return polyline(layer, mark.path, at, mark.kind === 'stroke' && PENS[mark.purpose].dash.length > 0);
}

const CLOSED = 1;
/** Dashes run on past corners; else each of a curve's short pieces would begin with a dash, and none would end. */
const DASHES_RUN_ON = 128;

function polyline(layer: string, path: Path, at: Point, dashed = false): Group[] {
  const corners = cornersOf(path, at);
  return [
    group(0, 'POLYLINE'),
    group(8, layer),
    group(66, 1),
    ...[group(10, 0), group(20, 0), group(30, 0)],
    group(70, (path.closed ? CLOSED : 0) + (dashed ? DASHES_RUN_ON : 0)),
    ...corners.flatMap(({ x, y }) => [
      group(0, 'VERTEX'),
      group(8, layer),
      ...[group(10, x), group(20, y), group(30, 0)],
    ]),
    group(0, 'SEQEND'),
    group(8, layer),
  ];
}

/** Where a path's corners lie, none twice in a row as the file writes them, nor the first again at a closed path's end. */
function cornersOf(path: Path, at: Point): Point[] {
  const corners = flattened(path, STRAY)
    .map(({ x, y }) => ({ x: at.x + x, y: at.y + y }))
    .filter((corner, i, all) => !isSame(corner, all[i - 1]));
  while (path.closed && corners.length > 1 && isSame(corners[0], corners.at(-1))) corners.pop();
  return corners;
}

function isSame(a: Point | undefined, b: Point | undefined): boolean {
  return a !== undefined && b !== undefined && written(a.x) === written(b.x) && written(a.y) === written(b.y);
}

const FITTED = 5;

/** Text fitted between two points (72: 5) keeps the room it was given, whatever font a reader has. */
function text(layer: string, { text, size, at, turn }: Words, origin: Point): Group[] {
  const [x, y] = [origin.x + at.x, origin.y + at.y];
  const width = widthOf(text, size);
  const [dx, dy] = (
    [
      [1, 0],
      [0, 1],
      [-1, 0],
      [0, -1],
    ] as const
  )[turn];
  return [
    group(0, 'TEXT'),
    group(8, layer),
    ...[group(10, x), group(20, y), group(30, 0)],
    group(40, size * CAP_HEIGHT),
    group(1, dxfText(text)),
    group(50, 90 * turn),
    group(7, 'STANDARD'),
    group(72, FITTED),
    ...[group(11, x + dx * width), group(21, y + dy * width), group(31, 0)],
  ];
}

/** Half the height of the bar's end ticks, and the em of its label. */
const TICK: Mm = 2;
const LABEL: Mm = 4;

function scaleBar(): Group[] {
  const line = (from: Point, to: Point): Group[] =>
    polyline(SCALE_BAR, { start: from, pieces: [{ kind: 'line', to }], closed: false }, { x: 0, y: BAR_Y });
  const label = asWritten(`${BAR} mm`);
  const at = { x: (BAR - widthOf(label, LABEL)) / 2, y: 1 };
  const words: Words = {
    kind: 'words',
    purpose: 'words',
    text: label,
    fact: 'sheet',
    size: LABEL,
    at,
    turn: 0,
  };
  return [
    ...line({ x: 0, y: 0 }, { x: BAR, y: 0 }),
    ...[0, BAR].flatMap((x) => line({ x, y: -TICK }, { x, y: TICK })),
    ...text(SCALE_BAR, words, { x: 0, y: BAR_Y }),
  ];
}
