import type { Mark, Point } from '../../draw/drawing.ts';
import { TEXT } from '../../draw/lettering.ts';
import { spelled, widthOf } from '../../draw/letters.ts';
import type { End } from '../../job/job.ts';
import { headerSign } from '../../leaf/picture/header-sign.ts';
import type { Said } from '../../measure/said.ts';
import type { Mm } from '../../measure/units.ts';
import type { Language } from '../../words/language.ts';
import { asWritten } from '../../words/said.ts';
import { bendJobOf, elbowsOf } from '../bend-pieces.ts';
import { heading, type Laid, type LaidItem, layText, tickBox } from '../laid.ts';
import { handsOf } from '../piece.ts';
import { settingName } from './header-key.ts';
import type { EndTask, Stage } from './order.ts';

/** More boxes than this in a row are not told apart: then there is one, for all. */
const MOST_BOXES = 8;
const PITCH: Mm = 3.6;
const INDENT: Mm = 4.5;
const APART: Mm = 8;

/** The order of work: a heading for each setting, and under it each end with a box for every copy of both hands. */
export function orderItems(
  stages: readonly Stage[],
  ticketOf: (task: EndTask) => number,
  widest: Mm,
  framed: boolean,
  words: Language,
): readonly LaidItem[] {
  const rows = stages.map(({ tasks }) =>
    tasks
      .filter(({ solution: { hand } }) => hand === 'as-drawn')
      .map((task) => rowOf(task, ticketOf(task), words)),
  );
  const boxes = Math.max(1, ...rows.flat().map(({ boxes }) => boxes));
  const many = rows.flat().some(({ boxes, ends }) => boxes < ends);
  return [
    heading(words.lists.order.title),
    {
      lay: (at, width) => {
        const down = rows.some((each) => isReadDown(each, leftOf(boxes), widest));
        const laid = layText(words.lists.order.note(many, down, framed), 'note', TEXT, at, width);
        return { ...laid, foot: laid.foot - 0.8 };
      },
    },
    ...stages.flatMap(({ like }, i) => {
      const name = words.lists.order.setting(i + 1, settingName(like, words));
      return stageItems(like, name, rows[i] ?? [], boxes);
    }),
  ];
}

interface Row {
  readonly text: Said;
  readonly ends: number;
  readonly boxes: number;
}

function rowOf({ solution, end }: EndTask, ticket: number, { lists }: Language): Row {
  const { tube } = solution;
  const bend = bendJobOf(solution);
  const made = bend ?? elbowsOf(solution).find((elbow) => elbow.end === end);
  const ends = tube.copies * (made?.ends ?? 1) * handsOf(tube);
  return {
    text: lists.order.task(bend ? 'mitred' : end, asWritten(tube.name), ends, ticket),
    ends,
    boxes: ends <= MOST_BOXES ? ends : 1,
  };
}

/** Side by side where the sheet is wide, to be read down one column after the other, as long as they stay on one page. */
function stageItems(like: End, name: Said, rows: readonly Row[], boxes: number): LaidItem[] {
  const head: LaidItem = {
    heading: true,
    lay: ({ x, y }, wide) => {
      const sign = headerSign(like, { left: x, right: x + SIGN, top: y - 1, bottom: y - 1 - SIGN });
      const laid = layText(
        name,
        'order',
        TEXT,
        { x: x + SIGN + 2, y: y - 1 - (SIGN - TEXT) / 2 },
        wide - SIGN - 2,
      );
      return { marks: [...sign, ...laid.marks], foot: Math.min(laid.foot, y - 1.5 - SIGN) };
    },
  };
  const left = leftOf(boxes);
  if (rows.length > MOST_TOGETHER)
    return [head, ...rows.map((row): LaidItem => ({ lay: (at, wide) => layRow(row, left, at, wide) }))];
  return [head, { lay: (at, wide) => layBlock(rows, left, at, wide) }];
}

/** How large the sign of a setting's header is. */
const SIGN: Mm = 6;

/** How wide a column of a setting is, and how many rows deep. */
function columnsOf(rows: readonly Row[], left: Mm, width: Mm): { column: Mm; deep: number } {
  const longest = Math.max(...rows.map(({ text }) => widthOf(spelled(text), TEXT))) + 1;
  const column = Math.min(width, left + longest);
  const columns = Math.max(1, Math.floor((width + APART) / (column + APART)));
  return { column, deep: Math.ceil(rows.length / columns) };
}

function isReadDown(rows: readonly Row[], left: Mm, width: Mm): boolean {
  const { deep } = columnsOf(rows, left, width);
  return rows.length <= MOST_TOGETHER && deep > 1 && deep < rows.length;
}

function layBlock(rows: readonly Row[], left: Mm, at: Point, width: Mm): Laid {
  const { column, deep } = columnsOf(rows, left, width);
  const marks: Mark[] = [];
  let foot = at.y;
  for (let from = 0; from < rows.length; from += deep) {
    const x = at.x + (from / deep) * (column + APART);
    let y = at.y;
    for (const row of rows.slice(from, from + deep)) {
      const laid = layRow(row, left, { x, y }, column);
      marks.push(...laid.marks);
      y = laid.foot;
    }
    foot = Math.min(foot, y);
  }
  return { marks, foot };
}

/** Where the rows of a setting begin, beside the most boxes that any has. */
function leftOf(boxes: number): Mm {
  return INDENT + boxes * PITCH + 1;
}

/** A block of more rows than this would leave much of a page empty. */
const MOST_TOGETHER = 24;

function layRow({ text, boxes }: Row, left: Mm, at: Point, width: Mm): Laid {
  const laid = layText(text, 'order', TEXT, { x: at.x + left, y: at.y }, width - left);
  const ticks = Array.from({ length: boxes }, (_, i) =>
    tickBox({ x: at.x + left - 1 - (boxes - i) * PITCH, y: at.y }, TEXT),
  );
  return { marks: [...ticks.flat(), ...laid.marks], foot: laid.foot };
}
