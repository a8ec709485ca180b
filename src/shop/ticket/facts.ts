import { across } from '../../draw/boxes.ts';
import type { Box, Mark } from '../../draw/drawing.ts';
import { LARGE, PLAIN, SMALL, tellingOf } from '../../draw/lettering.ts';
import { widthOf } from '../../draw/letters.ts';
import type { EndName } from '../../job/job.ts';
import { viewsOf } from '../../leaf/picture/side-view.ts';
import type { Said } from '../../measure/said.ts';
import type { Mm } from '../../measure/units.ts';
import { type Laid, layFacts, layText } from '../laid.ts';
import type { Ticket } from './ticket.ts';
import { twistPicture } from './twist-picture.ts';

/** How much a ticket shows and how large its steps are set, from what reads best to what goes on the smallest paper. */
export interface TicketStyle {
  readonly steps: Mm;
  /** The numbers read from afar. */
  readonly saw: Mm;
  readonly facts?: Mm;
  /** Where the facts stand in one column: each picture beside its facts, or all in a row under them. */
  readonly pictures: 'beside' | 'under' | 'none';
  /** How high a picture is. */
  readonly picture?: Mm;
  /** Pictures are left white, where only the room they take is asked for. */
  readonly blank?: boolean;
}

/** How high a picture is, and the white between blocks. */
const PICTURE: Mm = 34;
const GUTTER: Mm = 5;
const UNDER: Mm = 2;

/** Tube and ends beside one another. */
export function layAbreast(ticket: Ticket, manner: TicketStyle, box: Box): Laid {
  const count = 1 + ticket.ends.length;
  const width = (across(box) - (count - 1) * GUTTER) / count;
  const blocks = blocksOf(ticket, manner);
  const laid = blocks.map((block, i) => {
    const left = box.left + i * (width + GUTTER);
    return layBlock(block, manner, { ...box, left, right: left + width });
  });
  const lowest = Math.min(...laid.map((each) => each.foot));
  const foot = manner.pictures !== 'none' ? lowest - UNDER / 2 : lowest;
  if (manner.pictures === 'none') return { marks: laid.flatMap(({ marks }) => marks), foot };
  const { picture = PICTURE } = manner;
  const pictures = blocks.map(({ draw }, i) => {
    const left = box.left + i * (width + GUTTER);
    return draw({ left, right: left + width, top: foot, bottom: foot - picture });
  });
  return {
    marks: [...laid, ...pictures].flatMap(({ marks }) => marks),
    foot: Math.min(...pictures.map((each) => each.foot)),
  };
}

/** Tube and ends under one another, each with its picture at its right, or the pictures in a row under them. */
export function layColumn(ticket: Ticket, manner: TicketStyle, box: Box): Laid {
  const marks: Mark[] = [];
  let top = box.top;
  const blocks = blocksOf(ticket, manner);
  for (const block of blocks) {
    const beside = manner.pictures === 'beside';
    const width = beside ? 0.62 * across(box) : across(box);
    const facts = layBlock(block, manner, { ...box, top, right: box.left + width });
    const right = { left: box.left + width + 2, right: box.right, top, bottom: top - PICTURE };
    const picture = beside ? block.draw(right) : { marks: [], foot: top };
    marks.push(...facts.marks, ...picture.marks);
    top = Math.min(facts.foot, picture.foot) - UNDER;
  }
  if (manner.pictures !== 'under') return { marks, foot: top };
  const row = layRow(
    blocks.filter(({ share }) => share > 0),
    { ...box, top: top - UNDER },
  );
  return { marks: [...marks, ...row.marks], foot: row.foot };
}

/** Pictures beside one another. */
function layRow(blocks: readonly Block[], box: Box): Laid {
  const shares = blocks.map(({ share }) => share);
  const all = shares.reduce((sum, share) => sum + share, 0);
  const room = across(box) - (blocks.length - 1) * UNDER;
  let left = box.left;
  const pictures = blocks.map(({ draw, share }) => {
    const right = left + (room * share) / all;
    const drawn = draw({ left, right, top: box.top, bottom: box.top - PICTURE });
    left = right + UNDER;
    return drawn;
  });
  return {
    marks: pictures.flatMap(({ marks }) => marks),
    foot: Math.min(box.top, ...pictures.map(({ foot }) => foot)),
  };
}

interface Block {
  readonly title: Said;
  readonly end?: EndName;
  readonly facts: Ticket['tube'];
  /** How much of a row its picture takes; nothing where there is none to draw. */
  readonly share: number;
  readonly draw: (box: Box) => Laid;
}

function blocksOf(ticket: Ticket, { blank = false }: TicketStyle): readonly Block[] {
  const { words } = ticket;
  const draw = twistPicture(ticket.solution, words);
  const twist = (box: Box): Laid => {
    if (!draw) return { marks: [], foot: box.top };
    const marks = blank ? [] : draw({ ...box, bottom: box.bottom + CAPTION });
    return captioned(marks, words.ticket.heels, box);
  };
  return [
    { title: words.ticket.tube, facts: ticket.tube, share: draw ? 0.85 : 0, draw: twist },
    ...ticket.ends.map(({ name, facts, cope }) => ({
      title: words.ticket.end(name),
      facts,
      share: cope ? 1 : 0,
      end: name,
      draw: (box: Box): Laid => {
        if (!cope) return { marks: [], foot: box.top };
        const [view] = viewsOf(cope, name, words);
        const marks = blank ? [] : view.draw({ ...box, bottom: box.bottom + CAPTION });
        const laid = captioned(marks, view.caption, box);
        return { ...laid, marks: tellingOf({ end: name }, laid.marks) };
      },
    })),
  ];
}

const CAPTION: Mm = 3.4;

function captioned(marks: readonly Mark[], caption: Said, box: Box): Laid {
  const wide = widthOf(caption, SMALL);
  const at = { x: Math.max(box.left, (box.left + box.right - wide) / 2), y: box.bottom + CAPTION };
  const under = layText(caption, 'picture', SMALL, at, box.right - at.x);
  return { marks: [...marks, ...under.marks], foot: under.foot };
}

function layBlock({ title, end, facts }: Block, { facts: size = PLAIN }: TicketStyle, box: Box): Laid {
  const head = layText(
    title,
    end ? 'end' : 'heading',
    size === SMALL ? PLAIN : LARGE,
    { x: box.left, y: box.top },
    across(box),
  );
  const rows = layFacts(facts, size, { x: box.left, y: head.foot }, across(box));
  const marks = [...head.marks, ...rows.marks];
  return { marks: end ? tellingOf({ end }, marks) : marks, foot: rows.foot };
}
