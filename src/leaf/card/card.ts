import { grown } from '../../draw/boxes.ts';
import { broken } from '../../draw/breaking.ts';
import type { Drawing, Mark } from '../../draw/drawing.ts';
import type { FactName } from '../../draw/facts.ts';
import { type Block, extentOf, LETTER, lettered, TEXT, TITLE, wordsBox } from '../../draw/lettering.ts';
import { widthOf } from '../../draw/letters.ts';
import { point } from '../../draw/path.ts';
import { line } from '../../draw/strokes.ts';
import type { EndName } from '../../job/job.ts';
import type { Said } from '../../measure/said.ts';
import type { Mm } from '../../measure/units.ts';
import type { Cope } from '../../saddle/cope.ts';
import type { Language } from '../../words/language.ts';
import { asWritten, joined } from '../../words/said.ts';
import type { Names } from '../names.ts';
import { type JointView, viewsOf } from '../picture/side-view.ts';
import { type Fact, factOf } from './fact.ts';

/** The card's grid: two columns, facts to the left, picture to the right. */
const LEFT: Mm = 60;
const GUTTER: Mm = 3;
const RIGHT: Mm = 32;
const WIDTH: Mm = LEFT + GUTTER + RIGHT;
const LABELS: Mm = 20.5;
const ROW_GAP: Mm = 0.45;
const BLOCK_GAP: Mm = 1.3;

/** Half a rule's width and a little more: the card's box holds the ink of its frame. */
const HALF_RULE: Mm = 0.1;

/** Marks from a top edge downwards, and where they end. */
interface Laid {
  readonly marks: readonly Mark[];
  readonly foot: Mm;
}

/** What stands beside a wrap: which tube and end, its facts, the joint's picture, what found no room; of these the last alone where a ticket says the rest. */
export function drawCard(
  name: string,
  names: Names,
  facts: readonly Fact[],
  beside: readonly Said[],
  cope: Cope,
  words: Language,
  ticketed: boolean,
): Drawing {
  const head = layHead(names, words);
  if (ticketed) return besideCard(name, head, facts, besideLines(beside, words, WIDTH));
  const left = layFacts(
    [...facts, factOf('date', words.card.labels.date, NOTHING)],
    head.foot - BLOCK_GAP,
    LEFT,
  );
  const listed = besideLines(beside, words, RIGHT);
  const room = head.foot - BLOCK_GAP - left.foot - extentOf({ lines: listed, size: TEXT }).height;
  const picture = layPictures(cope, names.end, head.foot - BLOCK_GAP, room, words);
  const right = layLines('beside', listed, LEFT + GUTTER, picture.foot);
  const foot = Math.min(left.foot, right.foot) - BLOCK_GAP;
  return {
    name,
    box: grown({ left: 0, bottom: foot, right: WIDTH, top: 0 }, HALF_RULE),
    marks: [...head.marks, ...left.marks, ...picture.marks, ...right.marks, rule(foot)],
  };
}

/** What no ticket says. */
function besideCard(name: string, head: Laid, facts: readonly Fact[], listed: readonly Said[]): Drawing {
  const own = layFacts(facts, head.foot - BLOCK_GAP, WIDTH);
  const list = layLines('beside', listed, 0.2, own.foot);
  const foot = list.foot - BLOCK_GAP;
  return {
    name,
    box: grown({ left: 0, bottom: foot, right: WIDTH, top: 0 }, HALF_RULE),
    marks: [...head.marks, ...own.marks, ...list.marks, rule(foot)],
  };
}

function layHead({ tube, end, hand, handName, paired, made, use }: Names, words: Language): Laid {
  const letterRoom = 9;
  const room = WIDTH - letterRoom - 0.4;
  const size = widthOf(tube, TITLE) <= room ? TITLE : TEXT;
  const name: Block = { fact: 'name', lines: broken(tube, size, room), size };
  const what = use ? [use] : [...(hand === 'both' ? [] : [made]), words.card.printedSideOut];
  const about = [...(paired ? [handName] : []), ...what];
  const told = joined(about, '  ·  ');
  const lines = widthOf(told, TEXT) <= room ? [told] : broken(told, TEXT, room);
  const second: Block = { fact: 'copies', lines, size: TEXT };
  const nameFoot = -0.6 - extentOf(name).height;
  const letter: Block = { fact: 'end', lines: [words.leaf.letter(end)], size: LETTER };
  const letterFoot = -0.4 - extentOf(letter).height;
  const foot = Math.min(nameFoot - extentOf(second).height, letterFoot);
  return {
    marks: [
      rule(0),
      ...lettered(letter, 0.2, letterFoot),
      ...lettered(name, letterRoom, nameFoot),
      ...lettered(second, letterRoom, nameFoot - extentOf(second).height),
      rule(foot - 0.6),
    ],
    foot: foot - 0.6,
  };
}

/** What a person writes on the card by hand. */
const NOTHING = asWritten('');

function layFacts(facts: readonly Fact[], top: Mm, right: Mm): Laid {
  const marks: Mark[] = [];
  let foot = top;
  for (const { fact, label, text } of facts) {
    const block: Block = { fact, lines: broken(text, TEXT, right - LABELS), size: TEXT };
    const name: Block = { fact, more: true, lines: broken(label, TEXT, LABELS - 1), size: TEXT };
    const [under, beside] = [extentOf(name).height, extentOf(block).height];
    marks.push(...lettered(name, 0.2, foot - under));
    if (text === NOTHING)
      marks.push(line('frame', point(LABELS, foot - beside), point(right, foot - beside)));
    else marks.push(...lettered(block, LABELS, foot - beside));
    foot -= Math.max(under, beside) + ROW_GAP;
  }
  return { marks, foot };
}

/** The side view, and where it can't show all a second view, in what height the facts leave. */
function layPictures(cope: Cope, end: EndName, top: Mm, room: Mm, words: Language): Laid {
  const [left, right] = [LEFT + GUTTER, WIDTH - 0.2];
  const [side, second] = viewsOf(cope, end, words);
  const caption = extentOf({ lines: [NOTHING], size: TEXT }).height + BLOCK_GAP;
  const [least, most] = second ? [42, 58] : [24, 36];
  const high = Math.min(most, Math.max(least, room - (second ? 2 : 1) * (caption + BLOCK_GAP)));
  const lay = ({ draw, caption }: JointView, from: Mm, share: number): Laid => {
    const picture = draw({ left, right, bottom: from - share * high, top: from });
    const under = layLines(
      'picture',
      broken(caption, TEXT, RIGHT - 0.4),
      left,
      footOf(picture, from) - ROW_GAP,
    );
    return { marks: [...picture, ...under.marks], foot: under.foot - BLOCK_GAP };
  };
  if (!second) return lay(side, top, 1);
  const upper = lay(side, top, 0.6);
  const lower = lay(second, upper.foot, 0.4);
  return { marks: [...upper.marks, ...lower.marks], foot: lower.foot };
}

/** The foot of a picture's ink: its box is higher where the picture is wide. */
function footOf(marks: readonly Mark[], top: Mm): Mm {
  return Math.min(
    top,
    ...marks.map((mark) => {
      if (mark.kind === 'words') return wordsBox(mark).bottom;
      const { start, pieces } = mark.path;
      return Math.min(start.y, ...pieces.map(({ to }) => to.y));
    }),
  );
}

/** What found no room on the wrap, as a list. */
function besideLines(beside: readonly Said[], { card }: Language, width: Mm): Said[] {
  if (beside.length === 0) return [];
  const items = beside.length > 1 ? beside.map(card.item) : beside;
  const lines = [card.notOnTheLeaf, ...items];
  return lines.flatMap((line) => broken(line, TEXT, width - 0.4));
}

function layLines(fact: FactName, lines: readonly Said[], left: Mm, top: Mm): Laid {
  if (lines.length === 0) return { marks: [], foot: top };
  const block: Block = { fact, lines, size: TEXT };
  const foot = top - extentOf(block).height;
  return { marks: lettered(block, left, foot), foot };
}

function rule(y: Mm): Mark {
  return line('frame', point(0, y), point(WIDTH, y));
}
