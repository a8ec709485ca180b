import type { Mark, Point } from '../../draw/drawing.ts';
import type { FactName, Subject } from '../../draw/facts.ts';
import { heightOf, PLAIN, SMALL, tellingOf, words } from '../../draw/lettering.ts';
import { DESCENT, spelled, widthOf } from '../../draw/letters.ts';
import { line } from '../../draw/strokes.ts';
import type { Said } from '../../measure/said.ts';
import type { Mm } from '../../measure/units.ts';
import type { Language } from '../../words/language.ts';
import { type Laid, type LaidItem, layText, tickBox } from '../laid.ts';
import type { CutRow } from './cut-list.ts';

const GAP: Mm = 3;
/** Less than this is no room for a tube's name. */
const LEAST_NAME: Mm = 30;

/** The cut list as a table with a box to tick for each blank; where a sheet is too narrow, a few lines for each tube. */
export function cutTable(
  rows: readonly CutRow[],
  units: 'mm' | 'in',
  width: Mm,
  { lists: { cut } }: Language,
): readonly LaidItem[] {
  const heads = cut.heads(units);
  const said = rows.map((row): SaidRow => {
    const { tube, piece, hand, pair, size, wall } = row;
    return {
      of: { tube, hand },
      name: cut.name(tube, piece, pair ? hand : undefined),
      size: cut.size(size, wall),
      cells: cut.cells(row, units),
    };
  });
  const widths = heads.map((head, i) =>
    Math.max(widthOf(head, SMALL), ...said.map(({ cells }) => widthOf(cells[i] ?? '', PLAIN))),
  );
  const taken = widths.reduce((sum, each) => sum + each + GAP, 0);
  const longest = Math.max(
    ...said.map(({ name, size }) => Math.max(widthOf(spelled(name), PLAIN), widthOf(spelled(size), SMALL))),
  );
  const room = Math.min(width - taken - BOX, longest + GAP);
  if (room < Math.min(LEAST_NAME, longest))
    return rows.map((row, i) =>
      sentence({ tube: row.tube, hand: row.hand }, said[i]?.name ?? row.tube, cut.sentence(row, units)),
    );
  const whole = BOX + room + taken;
  // Right ends of the columns, from the name's.
  const ends = widths.map(
    (_, i) => BOX + room + widths.slice(0, i + 1).reduce((sum, each) => sum + each + GAP, 0),
  );
  return [
    { heading: true, lay: (at) => headRow(heads, ends, at, whole) },
    ...said.map((row): LaidItem => ({ lay: (at) => tableRow(row, ends, room, at, whole) })),
  ];
}

interface SaidRow {
  readonly of: Subject;
  readonly name: Said;
  readonly size: Said;
  readonly cells: readonly Said[];
}

const BOX: Mm = 4.5;

/** Which ends they are about. */
const ENDS: readonly Subject[] = [{}, {}, {}, {}, { end: 'A' }, { end: 'B' }];

/** What the cells of a row state, in the order of their heads. */
const CELLS: readonly FactName[] = [
  'copies',
  'blank',
  'long-points',
  'work-points',
  'angle',
  'angle',
  'twist',
];

function headRow(heads: readonly Said[], ends: readonly Mm[], at: Point, width: Mm): Laid {
  const base = at.y - SMALL * 1.1;
  const marks = heads.map((head, i) =>
    words(head, 'heading', SMALL, { x: at.x + (ends[i] ?? 0) - widthOf(head, SMALL), y: base }),
  );
  const foot = at.y - SMALL * 1.6;
  return {
    marks: [...marks, line('frame', { x: at.x, y: foot }, { x: at.x + width, y: foot })],
    foot: foot - 0.5,
  };
}

function tableRow(
  { of, name: named, size: sized, cells }: SaidRow,
  ends: readonly Mm[],
  room: Mm,
  at: Point,
  width: Mm,
): Laid {
  const name = layText(named, 'name', PLAIN, { x: at.x + BOX, y: at.y }, room);
  const size = layText(sized, 'tube', SMALL, { x: at.x + BOX, y: name.foot + 0.3 }, room);
  const values = cells.flatMap((cell, i): Mark[] =>
    cell === ''
      ? []
      : [
          ...tellingOf(ENDS[i] ?? {}, [
            words(spelled(cell), CELLS[i] ?? 'note', PLAIN, {
              x: at.x + (ends[i] ?? 0) - widthOf(spelled(cell), PLAIN),
              y: baseOf(at),
            }),
          ]),
        ],
  );
  const foot = size.foot - 0.4;
  const rule = line('frame', { x: at.x, y: foot }, { x: at.x + width, y: foot });
  const told = tellingOf(of, [...name.marks, ...size.marks, ...values]);
  return { marks: [tickBox(at, PLAIN), ...told, rule], foot: foot - 0.4 };
}

/** The base line of a first line of plain type under a point. */
function baseOf(at: Point): Mm {
  return at.y - heightOf([{ size: PLAIN }]) + DESCENT * PLAIN;
}

function sentence(of: Subject, name: Said, text: Said): LaidItem {
  return {
    lay: (at, width) => {
      const over = layText(name, 'name', PLAIN, { x: at.x + BOX, y: at.y }, width - BOX);
      const below = layText(text, 'blank', SMALL, { x: at.x + BOX, y: over.foot }, width - BOX);
      const words = tellingOf(of, [...over.marks, ...below.marks]);
      return { marks: [tickBox(at, PLAIN), ...words], foot: below.foot - 0.8 };
    },
  };
}
