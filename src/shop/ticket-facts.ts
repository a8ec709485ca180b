import type { Box, Mark } from '../leaf/drawing.ts';
import { widthOf } from '../leaf/letters.ts';
import { viewsOf } from '../leaf/side-view.ts';
import type { Mm } from '../measure/units.ts';
import { across } from '../tiler/boxes.ts';
import { LARGE, PLAIN, SMALL } from '../tiler/paragraph.ts';
import { type Laid, layFacts, layText } from './laid.ts';
import type { Ticket } from './ticket.ts';
import { twistPicture } from './twist-picture.ts';

/** How much a ticket shows and how large its steps are set, from what reads best to what goes on the smallest paper. */
export interface Manner {
  readonly steps: Mm;
  /** The numbers read from afar. */
  readonly saw: Mm;
  readonly facts?: Mm;
  readonly pictures: boolean;
  /** Pictures are left white, where only the room they take is asked for. */
  readonly blank?: boolean;
}

/** How high a picture is, and the white between blocks. */
const PICTURE: Mm = 34;
const GUTTER: Mm = 5;
const UNDER: Mm = 2;

/** Tube and ends beside one another. */
export function layAbreast(ticket: Ticket, manner: Manner, box: Box): Laid {
  const count = 1 + ticket.ends.length;
  const width = (across(box) - (count - 1) * GUTTER) / count;
  const blocks = blocksOf(ticket, manner);
  const laid = blocks.map((block, i) => {
    const left = box.left + i * (width + GUTTER);
    return layBlock(block, manner, { ...box, left, right: left + width });
  });
  const lowest = Math.min(...laid.map((each) => each.foot));
  const foot = manner.pictures ? lowest - UNDER / 2 : lowest;
  if (!manner.pictures) return { marks: laid.flatMap(({ marks }) => marks), foot };
  const pictures = blocks.map(({ draw }, i) => {
    const left = box.left + i * (width + GUTTER);
    return draw({ left, right: left + width, top: foot, bottom: foot - PICTURE });
  });
  return {
    marks: [...laid, ...pictures].flatMap(({ marks }) => marks),
    foot: Math.min(...pictures.map((each) => each.foot)),
  };
}

/** Tube and ends under one another, each with its picture at its right. */
export function layColumn(ticket: Ticket, manner: Manner, box: Box): Laid {
  const marks: Mark[] = [];
  let top = box.top;
  for (const block of blocksOf(ticket, manner)) {
    const width = manner.pictures ? 0.62 * across(box) : across(box);
    const facts = layBlock(block, manner, { ...box, top, right: box.left + width });
    const right = { left: box.left + width + 2, right: box.right, top, bottom: top - PICTURE };
    const picture = manner.pictures ? block.draw(right) : { marks: [], foot: top };
    marks.push(...facts.marks, ...picture.marks);
    top = Math.min(facts.foot, picture.foot) - UNDER;
  }
  return { marks, foot: top };
}

interface Block {
  readonly title: string;
  readonly facts: Ticket['tube'];
  readonly draw: (box: Box) => Laid;
}

function blocksOf(ticket: Ticket, { blank = false }: Manner): readonly Block[] {
  const twist = (box: Box): Laid => {
    const draw = twistPicture(ticket.solution);
    if (!draw) return { marks: [], foot: box.top };
    const marks = blank ? [] : draw({ ...box, bottom: box.bottom + CAPTION });
    return captioned(marks, 'heels, seen from end B', box);
  };
  return [
    { title: 'Tube', facts: ticket.tube, draw: twist },
    ...ticket.ends.map(({ name, facts, cope }) => ({
      title: `End ${name}`,
      facts,
      draw: (box: Box): Laid => {
        if (!cope) return { marks: [], foot: box.top };
        const [view] = viewsOf(cope, name);
        const marks = blank ? [] : view.draw({ ...box, bottom: box.bottom + CAPTION });
        return captioned(marks, view.caption, box);
      },
    })),
  ];
}

const CAPTION: Mm = 3.4;

function captioned(marks: readonly Mark[], caption: string, box: Box): Laid {
  const wide = widthOf(caption, SMALL);
  const at = { x: Math.max(box.left, (box.left + box.right - wide) / 2), y: box.bottom + CAPTION };
  const under = layText(caption, SMALL, at, box.right - at.x);
  return { marks: [...marks, ...under.marks], foot: under.foot };
}

function layBlock({ title, facts }: Block, { facts: size = PLAIN }: Manner, box: Box): Laid {
  const head = layText(title, size === SMALL ? PLAIN : LARGE, { x: box.left, y: box.top }, across(box));
  const rows = layFacts(facts, size, { x: box.left, y: head.foot }, across(box));
  return { marks: [...head.marks, ...rows.marks], foot: rows.foot };
}
