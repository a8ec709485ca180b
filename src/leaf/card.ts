import type { EndName } from '../job/job.ts';
import type { Mm } from '../measure/units.ts';
import type { Cope } from '../saddle/cope.ts';
import type { Drawing, Mark } from './drawing.ts';
import type { Fact } from './facts.ts';
import { extentOf, folded, LETTER, lettered, SMALL, TEXT, TITLE } from './lettering.ts';
import { CAP_HEIGHT, DESCENT, widthOf } from './letters.ts';
import type { Names } from './names.ts';
import { point, strokeOf } from './path.ts';
import { endView, seenFrom, sideView } from './side-view.ts';

/** The card's grid: two columns, facts to the left, picture to the right. */
const LEFT: Mm = 51;
const GUTTER: Mm = 3;
const RIGHT: Mm = 35;
const WIDTH: Mm = LEFT + GUTTER + RIGHT;
const LABELS: Mm = 12.5;
const ROW_GAP: Mm = 0.7;
const BLOCK_GAP: Mm = 1.6;

const CAUTIONS =
  'Measure the bars before cutting. Guard eyes, ears, hands, lungs; hot work sets things alight; cut edges are sharp. Zinc fume is ' +
  'poisonous. Vent a sealed tube before welding. What carries people or loads follows its rules and is designed and welded ' +
  'by those licensed for it: a paper template proves no strength.';

/** Marks from a top edge downwards, and where they end. */
interface Laid {
  readonly marks: readonly Mark[];
  readonly foot: Mm;
}

/** What stands beside a wrap: which tube and end, its facts, the joint's picture, what found no room, cautions. */
export function drawCard(
  name: string,
  names: Names,
  facts: readonly Fact[],
  beside: readonly string[],
  cope: Cope,
): Drawing {
  const head = layHead(names);
  const left = layFacts([...facts, { label: 'date', text: '' }], head.foot - BLOCK_GAP);
  const picture = layPictures(cope, names.end, head.foot - BLOCK_GAP);
  const right = layBeside(beside, picture.foot);
  const middle = Math.min(left.foot, right.foot) - BLOCK_GAP;
  const cautions = layLines(folded(CAUTIONS, SMALL, WIDTH - 0.4), 0.2, middle - BLOCK_GAP);
  return {
    name,
    box: { left: 0, bottom: cautions.foot - 0.2, right: WIDTH, top: 0 },
    marks: [...head.marks, ...left.marks, ...picture.marks, ...right.marks, rule(middle), ...cautions.marks],
  };
}

function layHead({ tube, end, hand, paired, copies }: Names): Laid {
  const letterRoom = 9;
  const size = widthOf(tube, TITLE) <= 2 * (WIDTH - letterRoom) ? TITLE : TEXT;
  const name = { lines: folded(tube, size, WIDTH - letterRoom - 0.4), size };
  const about = [`end ${end}`, ...(paired ? [hand] : []), ...(copies > 1 ? [`cut ${copies}`] : ['cut 1'])];
  const second = { lines: [about.join('  ·  ')], size: TEXT };
  const nameFoot = -0.6 - extentOf(name).height;
  const foot = nameFoot - extentOf(second).height;
  const top = -0.8 - CAP_HEIGHT * LETTER;
  return {
    marks: [
      rule(-0.1),
      ...lettered({ lines: [end], size: LETTER }, 0.2, top - DESCENT * LETTER),
      ...lettered(name, letterRoom, nameFoot),
      ...lettered(second, letterRoom, foot),
      rule(foot - 0.6),
    ],
    foot: foot - 0.6,
  };
}

function layFacts(facts: readonly Fact[], top: Mm): Laid {
  const marks: Mark[] = [];
  let foot = top;
  for (const { label, text } of facts) {
    const block = { lines: folded(text, SMALL, LEFT - LABELS), size: SMALL };
    const name = { lines: [label], size: SMALL };
    marks.push(...lettered(name, 0.2, foot - extentOf(name).height));
    foot -= extentOf(block).height;
    if (text === '') marks.push(strokeOf('frame', [point(LABELS, foot), point(LEFT, foot)]));
    else marks.push(...lettered(block, LABELS, foot));
    foot -= ROW_GAP;
  }
  return { marks, foot };
}

function layPictures(cope: Cope, end: EndName, top: Mm): Laid {
  const [left, right] = [LEFT + GUTTER, WIDTH - 0.2];
  const foot = top - 31;
  const marks = [...sideView(cope, end, { left, right, bottom: foot, top })];
  const caption = layLines([seenFrom(cope, -Math.PI / 2)], left, foot);
  if (cope.end.parts[0].offset.mm === 0) return { marks: [...marks, ...caption.marks], foot: caption.foot };
  const low = caption.foot - 22;
  marks.push(...endView(cope, end, { left, right, bottom: low, top: caption.foot }));
  const second = layLines([seenFrom(cope, 0)], left, low);
  return { marks: [...marks, ...caption.marks, ...second.marks], foot: second.foot };
}

function layBeside(beside: readonly string[], top: Mm): Laid {
  if (beside.length === 0) return { marks: [], foot: top };
  const lines = ['beside the wrap:', ...beside.map((text) => `– ${text}`)];
  return layLines(
    lines.flatMap((line) => folded(line, SMALL, RIGHT - 0.2)),
    LEFT + GUTTER,
    top - BLOCK_GAP,
  );
}

function layLines(lines: readonly string[], left: Mm, top: Mm): Laid {
  const block = { lines, size: SMALL };
  const foot = top - extentOf(block).height;
  return { marks: lettered(block, left, foot), foot };
}

function rule(y: Mm): Mark {
  return strokeOf('frame', [point(0, y), point(WIDTH, y)]);
}
