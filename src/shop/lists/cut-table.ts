import type { Mark, Point } from '../../draw/drawing.ts';
import { PLAIN, SMALL, words } from '../../draw/lettering.ts';
import { spelled, widthOf } from '../../draw/letters.ts';
import { line } from '../../draw/strokes.ts';
import { twistInWords } from '../../leaf/card/twist-words.ts';
import type { Mm } from '../../measure/units.ts';
import { lengthAsWritten } from '../../measure/write.ts';
import { type Item, type Laid, layText, tickBox } from '../laid.ts';
import {
  anglesInWords,
  blankInWords,
  type CutRow,
  handInWords,
  LENGTHS,
  lengthInWords,
  rowName,
} from './cut-list.ts';

const GAP: Mm = 3;
/** Less than this is no room for a tube's name. */
const LEAST_NAME: Mm = 30;

/** The cut list as a table with a box to tick for each blank; where a sheet is too narrow, a few lines for each tube. */
export function cutTable(rows: readonly CutRow[], units: 'mm' | 'in', width: Mm): readonly Item[] {
  const heads = ['no.', `blank, ${units}`, ...LENGTHS, 'end A', 'end B', 'twist'];
  const cells = rows.map((row) => cellsOf(row, units));
  const widths = heads.map((head, i) =>
    Math.max(widthOf(head, SMALL), ...cells.map((each) => widthOf(each[i] ?? '', PLAIN))),
  );
  const taken = widths.reduce((sum, each) => sum + each + GAP, 0);
  const longest = Math.max(
    ...rows.map((row) =>
      Math.max(widthOf(spelled(nameOf(row)), PLAIN), widthOf(spelled(sizeOf(row)), SMALL)),
    ),
  );
  const room = Math.min(width - taken - BOX, longest + GAP);
  if (room < Math.min(LEAST_NAME, longest)) return rows.map((row) => lines(row, units));
  const whole = BOX + room + taken;
  // Right ends of the columns, from the name's.
  const ends = widths.map(
    (_, i) => BOX + room + widths.slice(0, i + 1).reduce((sum, each) => sum + each + GAP, 0),
  );
  return [
    { heading: true, lay: (at) => headRow(heads, ends, at, whole) },
    ...rows.map((row, i): Item => ({ lay: (at) => tableRow(row, cells[i] ?? [], ends, room, at, whole) })),
  ];
}

const BOX: Mm = 4.5;

function cellsOf(row: CutRow, units: 'mm' | 'in'): string[] {
  return [
    `${row.copies}`,
    blankInWords(row, units),
    lengthInWords(row.overall, units),
    lengthInWords(row.between, units),
    anglesInWords(row.ends.A),
    anglesInWords(row.ends.B),
    row.twist === undefined ? '' : twistInWords(row.twist),
  ];
}

function headRow(heads: readonly string[], ends: readonly Mm[], at: Point, width: Mm): Laid {
  const base = at.y - SMALL * 1.1;
  const marks = heads.map((head, i) =>
    words(head, SMALL, { x: at.x + (ends[i] ?? 0) - widthOf(head, SMALL), y: base }),
  );
  const foot = at.y - SMALL * 1.6;
  return {
    marks: [...marks, line('frame', { x: at.x, y: foot }, { x: at.x + width, y: foot })],
    foot: foot - 0.5,
  };
}

function tableRow(
  row: CutRow,
  cells: readonly string[],
  ends: readonly Mm[],
  room: Mm,
  at: Point,
  width: Mm,
): Laid {
  const name = layText(nameOf(row), PLAIN, { x: at.x + BOX, y: at.y }, room);
  const size = layText(sizeOf(row), SMALL, { x: at.x + BOX, y: name.foot + 0.3 }, room);
  const values = cells.flatMap((cell, i): Mark[] =>
    cell === ''
      ? []
      : [
          words(spelled(cell), PLAIN, {
            x: at.x + (ends[i] ?? 0) - widthOf(spelled(cell), PLAIN),
            y: baseOf(at),
          }),
        ],
  );
  const foot = size.foot - 0.4;
  const rule = line('frame', { x: at.x, y: foot }, { x: at.x + width, y: foot });
  return { marks: [tickBox(at, PLAIN), ...name.marks, ...size.marks, ...values, rule], foot: foot - 0.4 };
}

/** The base line of a first line of plain type under a point. */
function baseOf(at: Point): Mm {
  const [first] = layText('0', PLAIN, at, 10).marks;
  return first?.kind === 'words' ? first.at.y : at.y;
}

function nameOf(row: CutRow): string {
  return row.pair ? `${rowName(row)}, ${handInWords(row.hand)}` : rowName(row);
}

function sizeOf({ size, wall }: CutRow): string {
  return wall ? `${size}, wall ${lengthAsWritten(wall)}` : size;
}

function lines(row: CutRow, units: 'mm' | 'in'): Item {
  const [no, blank, overall, between, a, b, twist] = cellsOf(row, units);
  const facts = [
    `cut ${no}`,
    `blank ${blank}`,
    overall && `${LENGTHS[0]} ${overall}`,
    between && `${LENGTHS[1]} ${between}`,
    a && `end A ${a}`,
    b && `end B ${b}`,
    twist && `twist ${twist}`,
  ].filter((fact) => fact);
  return {
    lay: (at, width) => {
      const name = layText(nameOf(row), PLAIN, { x: at.x + BOX, y: at.y }, width - BOX);
      const text = `${sizeOf(row)}; ${facts.join(', ')}`;
      const below = layText(text, SMALL, { x: at.x + BOX, y: name.foot }, width - BOX);
      return { marks: [tickBox(at, PLAIN), ...name.marks, ...below.marks], foot: below.foot - 0.8 };
    },
  };
}
