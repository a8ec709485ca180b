import { shortened } from '../../draw/breaking.ts';
import type { Mark, Point } from '../../draw/drawing.ts';
import { TEXT, TITLE, WORTH, words } from '../../draw/lettering.ts';
import { spelled, widthOf } from '../../draw/letters.ts';
import { line } from '../../draw/strokes.ts';
import type { Fact } from '../../leaf/card/fact.ts';
import { partOf } from '../../measure/said.ts';
import type { Mm } from '../../measure/units.ts';
import type { OnSheet } from '../../tiler/front.ts';
import type { Language } from '../../words/language.ts';
import { furtherOn, type Laid, layText, toldOf } from '../laid.ts';
import type { Ticket } from './ticket.ts';

type PrintedOn = Parameters<Language['ticket']['about']>[4][number];

/** Which tube and how many, what it is made of, and the numbers that are read from afar while it is cut. */
export function layHead(ticket: Ticket, at: Point, width: Mm, sheets: readonly OnSheet[] = []): Laid {
  const { name, make, words: language } = ticket;
  const about = language.ticket.about(ticket.number, ticket.of, make, ticket.mark, sheetsOn(ticket, sheets));
  const beside = widthOf(about, TEXT);
  const least = Math.min(LEAST_NAME, widthOf(spelled(name), TITLE));
  const room = width - beside - 6 > least ? width - beside - 6 : width;
  const title = layText(partOf(name, shortened(spelled(name), TITLE, room)), 'name', TITLE, at, room);
  const below = room === width;
  const aside = below
    ? layText(about, 'about', TEXT, { x: at.x, y: title.foot }, width)
    : {
        marks: [words(about, 'about', TEXT, { x: at.x + width - beside, y: baseOf(title) })],
        foot: title.foot,
      };
  const tube = layInRow(ticket.tube, TEXT, { x: at.x, y: Math.min(title.foot, aside.foot) }, width);
  const saw = layInRow(ticket.saw, WORTH, { x: at.x, y: tube.foot - 0.6 }, width);
  return { marks: [...title.marks, ...aside.marks, ...tube.marks, ...saw.marks], foot: saw.foot - AIR };
}

/** What is printed of its ends, and on which sheets; of one tube alone these are all others. */
function sheetsOn({ of: tickets, ends }: Ticket, sheets: readonly OnSheet[]): readonly PrintedOn[] {
  if (tickets === 1) return [];
  return (['leaf', 'footprint'] as const).flatMap((place) =>
    ends.flatMap(({ name: end }) => {
      const on = sheets.flatMap(({ of, sheet }) => (of.place === place && of.end === end ? [sheet] : []));
      return on.length > 0 ? [{ place, end, on: [...new Set(on)].toSorted((a, b) => a - b) }] : [];
    }),
  );
}

/** A shorter name would be cut short for what stands beside it. */
const LEAST_NAME: Mm = 50;
const AIR: Mm = 1.5;

/** The base line of a text's first line. */
export function baseOf({ marks, foot }: Laid): Mm {
  const [first] = marks;
  return first?.kind === 'words' ? first.at.y : foot;
}

/** Between two facts of a row. */
const APART: Mm = 6;

/** Facts one after the other, each behind its name, on as many lines as they take. */
export function layInRow(facts: readonly Fact[], size: Mm, at: Point, width: Mm): Laid {
  const marks: Mark[] = [];
  let [left, top, foot] = [at.x, at.y, at.y];
  for (const each of facts) {
    const { fact, label, text } = each;
    const named = widthOf(label, TEXT) + 1.5;
    const wide = named + widthOf(spelled(text), size) + 0.5;
    if (left > at.x && left + wide > at.x + width) [left, top] = [at.x, foot];
    const value = layText(text, fact, size, { x: left + named, y: top }, at.x + width - left - named);
    const name = words(label, fact, TEXT, { x: left, y: baseOf(value) });
    marks.push(...toldOf(each, [name, ...value.marks.map(furtherOn)]));
    foot = Math.min(foot, value.foot);
    left += wide + APART;
  }
  return { marks, foot };
}

/** A rule under what stands above it. */
export function ruled(laid: Laid, at: Point, width: Mm): Laid {
  const rule = line('frame', { x: at.x, y: laid.foot }, { x: at.x + width, y: laid.foot });
  return { marks: [...laid.marks, rule], foot: laid.foot - AIR };
}
