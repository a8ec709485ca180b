import type { Box, Mark, Point } from '../../draw/drawing.ts';
import type { Subject } from '../../draw/facts.ts';
import { TEXT, tellingOf, WORTH, words } from '../../draw/lettering.ts';
import { widthOf } from '../../draw/letters.ts';
import type { EndName } from '../../job/job.ts';
import type { Fact } from '../../leaf/card/fact.ts';
import { heelsPicture } from '../../leaf/picture/heels-picture.ts';
import { marksPicture } from '../../leaf/picture/marks-picture.ts';
import { isHanded, viewsOf } from '../../leaf/picture/side-view.ts';
import { wholeBendPicture } from '../../leaf/picture/whole-bend.ts';
import { badgeOf } from '../../leaf/wrap/badge.ts';
import { sideAtClock } from '../../leaf/wrap/sides.ts';
import type { Said } from '../../measure/said.ts';
import type { Mm } from '../../measure/units.ts';
import type { Cope } from '../../saddle/cope.ts';
import type { Hand } from '../../saddle/solve.ts';
import type { Language } from '../../words/language.ts';
import { joined } from '../../words/said.ts';
import { bendJobOf } from '../bend-pieces.ts';
import { type Laid, type LaidItem, layFacts, layText } from '../laid.ts';
import { baseOf, layInRow } from './head.ts';
import type { Ticket, TicketEnd, TicketHand } from './ticket.ts';

/** A picture, and under it from where it is seen where it does not show that. */
interface View {
  readonly draw: (box: Box) => Mark[];
  readonly caption?: Said;
}

/** A picture or two, with a name over them and their facts under them. */
interface Panel {
  readonly of: Subject;
  readonly title?: (at: Point, width: Mm) => Laid;
  readonly pictures: readonly View[];
  readonly saw: readonly Fact[];
  readonly facts: readonly Fact[];
}

/** How high a picture is: where a ticket has its sheet to itself, where it shares it, and where that takes more of its room or the last. */
export const HIGH = { alone: 38, shared: 28, snug: 24.5, close: 21 } as const;
export type Pictured = keyof typeof HIGH;
/** A picture in less room is not read at arm's length. */
const LEAST: Mm = 26;
const WIDEST: Mm = 56;
const GUTTER: Mm = 4;

/** The pictures of a ticket with what they don't say, side by side, in as many rows as they take. */
export function panelRows(ticket: Ticket, width: Mm, pictured: Pictured): readonly LaidItem[] {
  const panels = [
    ...ticket.ends.map((end) => endPanel(ticket, end)),
    ...ticket.hands.flatMap((hand) => handPanel(ticket, hand)),
  ];
  const rows: Panel[][] = [];
  const room = (count: number): Mm => (width + GUTTER) / count - GUTTER;
  for (const panel of panels) {
    const row = rows.at(-1);
    if (row && room(shares([...row, panel])) >= LEAST) row.push(panel);
    else rows.push([panel]);
  }
  return rows.map((row) => ({
    lay: (at) => layPanels(row, HIGH[pictured], Math.min(WIDEST, room(shares(row))), at),
  }));
}

function shares(panels: readonly Panel[]): number {
  return panels.reduce((sum, { pictures }) => sum + Math.max(1, pictures.length), 0);
}

function layPanels(panels: readonly Panel[], high: Mm, share: Mm, at: Point): Laid {
  const marks: Mark[] = [];
  let [left, foot] = [at.x, at.y];
  for (const panel of panels) {
    const width = (share + GUTTER) * Math.max(1, panel.pictures.length) - GUTTER;
    const laid = layPanel(panel, high, { x: left, y: at.y }, width);
    marks.push(...tellingOf(panel.of, laid.marks));
    foot = Math.min(foot, laid.foot);
    left += width + GUTTER;
  }
  return { marks, foot: foot - 1 };
}

function layPanel({ title, pictures, saw, facts }: Panel, high: Mm, at: Point, width: Mm): Laid {
  const head = title?.(at, width) ?? { marks: [], foot: at.y };
  const share = (width + GUTTER) / Math.max(1, pictures.length);
  const drawn = pictures.map((picture, i) =>
    layPicture(picture, high, { x: at.x + i * share, y: head.foot }, share - GUTTER),
  );
  const foot = Math.min(head.foot, ...drawn.map((each) => each.foot));
  const far = layInRow(saw, WORTH, { x: at.x, y: foot }, width);
  const told = [head, ...drawn].flatMap(({ marks }) => marks);
  const left = facts.filter((fact) => !told.some((mark) => shows(mark, fact)));
  const near = layFacts(left, TEXT, { x: at.x, y: far.foot }, width);
  return { marks: [head, ...drawn, far, near].flatMap(({ marks }) => marks), foot: near.foot };
}

function shows(mark: Mark, { fact, end }: Fact): boolean {
  return mark.kind === 'words' && mark.fact === fact && mark.of?.end === end;
}

function layPicture({ draw, caption }: View, high: Mm, { x, y }: Point, width: Mm): Laid {
  const foot = y - high;
  const drawn = draw({ left: x, right: x + width, bottom: foot, top: y });
  if (!caption) return { marks: drawn, foot };
  const left = x + Math.max(0, (width - widthOf(caption, TEXT)) / 2);
  const under = layText(caption, 'picture', TEXT, { x: left, y: foot - 0.5 }, x + width - left);
  return { marks: [...drawn, ...under.marks], foot: under.foot };
}

/** The joint from its side, and along its header where that shows what the first can't; of a pair that stands with its hand. */
function endPanel({ words: language, hands }: Ticket, { name, cope, facts }: TicketEnd): Panel {
  const [side, ...others] = viewsOf(cope, name, language);
  const marks = marksPicture(cope, name, language);
  const paired = hands.length > 1;
  const isShown = !paired && cope.end.parts.some((part, _, { length }) => length > 1 || isHanded(part));
  const second = (isShown ? others : []).map(({ draw, caption }) => ({
    draw,
    caption: cope.end.parts.length > 1 ? caption : alongHeader(cope, language),
  }));
  return {
    of: { end: name },
    title: (at, width) => layEnd(language.ticket.end(name), facts, at, width),
    pictures: [{ draw: side.draw }, ...second, ...(marks ? [{ draw: marks }] : [])],
    saw: [],
    facts,
  };
}

/** An end's letter, and the code of its leaf beside it where that has room. */
function layEnd(name: Said, facts: readonly Fact[], at: Point, width: Mm): Laid {
  const named = layText(name, 'end', WORTH, at, width);
  const x = at.x + widthOf(name, WORTH) + GUTTER;
  const marks = facts.flatMap(({ fact, label, text }) => {
    const code = joined([label, text], ' ');
    const fits = fact === 'mark' && x + widthOf(code, TEXT) <= at.x + width;
    return fits ? [words(code, fact, TEXT, { x, y: baseOf(named) })] : [];
  });
  return { ...named, marks: [...named.marks, ...marks] };
}

/** From where a view along the header is seen, and to which side of the tube the header lies there, which a small offset hardly shows. */
function alongHeader(
  {
    end: {
      parts: [part],
    },
  }: Cope,
  language: Language,
  name?: EndName,
): Said {
  return language.ticket.alongHeader(name, sideAtClock(part, language), part.offset.mm);
}

/** Both ends as they lie to one another; of a pair each hand's, and what the hands have otherwise. */
function handPanel({ words: language }: Ticket, { solution, hand, saw, facts }: TicketHand): Panel[] {
  const heels = heelsPicture(solution, language);
  const bend = bendJobOf(solution);
  const second = (['A', 'B'] as const).flatMap((name) => {
    const cope = solution.ends[name];
    if (!hand || cope?.kind !== 'coped' || !cope.end.parts.some(isHanded)) return [];
    return viewsOf(cope, name, language)
      .slice(1)
      .map(({ draw }) => ({
        draw: (box: Box) => tellingOf({ end: name }, draw(box)),
        caption: alongHeader(cope, language, name),
      }));
  });
  const pictures: View[] = [
    ...(heels ? [{ draw: heels, caption: language.ticket.seenFromA }] : []),
    ...(bend ? [{ draw: wholeBendPicture(bend.bend, solution.section.reach, language) }] : []),
    ...second,
  ];
  if (pictures.length === 0 && !hand) return [];
  return [
    {
      of: hand ? { hand } : {},
      ...(hand && { title: (at: Point) => layHand(language.ticket.hand(hand), hand, at) }),
      pictures,
      saw: hand ? saw : [],
      facts: facts.map(({ end, fact }) => ({ ...fact, end, label: language.ticket.ofEnd(end, fact.label) })),
    },
  ];
}

/** The tag that the hand's leaves have. */
function layHand(text: Said, hand: Hand, { x, y }: Point): Laid {
  const { height, draw } = badgeOf(hand, text, TEXT);
  return { marks: draw(x, y - height), foot: y - height - 0.3 };
}
