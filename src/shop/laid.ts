import type { Mark, Point } from '../draw/drawing.ts';
import type { FactName } from '../draw/facts.ts';
import { heightOf, linesOf, setLines, tellingOf, WORTH } from '../draw/lettering.ts';
import { CAP_HEIGHT, spelled, widthOf } from '../draw/letters.ts';
import { filled, framed } from '../draw/strokes.ts';
import type { Fact } from '../leaf/card/fact.ts';
import type { Said } from '../measure/said.ts';
import type { Mm } from '../measure/units.ts';
import type { Hand } from '../saddle/solve.ts';
import type { OnSheet } from '../tiler/front.ts';

/** Marks from a top edge down, and where they end. */
export interface Laid {
  readonly marks: readonly Mark[];
  readonly foot: Mm;
}

/** What goes down a page whole: drawn under a point, or moved to the next page where it has no room. */
export interface LaidItem {
  /** `sheets`: where its leaves lie or, before that is known, as it takes the most room. */
  readonly lay: (at: Point, width: Mm, sheets?: readonly OnSheet[]) => Laid;
  /** It stays with what follows it. */
  readonly heading?: boolean;
}

/** A text in lines of one size, no wider than `width`, under `at`. */
export function layText(text: Said, fact: FactName, size: Mm, at: Point, width: Mm): Laid {
  const lines = linesOf(spelled(text), fact, size, width);
  return { marks: setLines(lines, at, 'close'), foot: at.y - heightOf(lines, 'close') };
}

/** Facts one under the other, their values in line with those of all that they stand among. */
export function layFacts(
  facts: readonly Fact[],
  size: Mm,
  at: Point,
  width: Mm,
  among: readonly Fact[] = facts,
): Laid {
  const labels = Math.max(0, ...among.map(({ label }) => widthOf(label, size))) + 1.5;
  const marks: Mark[] = [];
  let foot = at.y;
  for (const each of facts) {
    const { fact, label, text } = each;
    const name = layText(label, fact, size, { x: at.x, y: foot }, labels);
    const value = layText(text, fact, size, { x: at.x + labels, y: foot }, width - labels);
    marks.push(...toldOf(each, [...name.marks.map(furtherOn), ...value.marks]));
    foot = Math.min(name.foot, value.foot) - 0.15 * size;
  }
  return { marks, foot };
}

/** The words of a fact, with the end and the part that it is of. */
export function toldOf({ end, part }: Fact, marks: readonly Mark[]): Mark[] {
  return tellingOf({ ...(end && { end }), ...(part !== undefined && { part }) }, marks);
}

/** Words that go on with those beside them. */
export function furtherOn(mark: Mark): Mark {
  return mark.kind === 'words' ? { ...mark, more: true } : mark;
}

/** A box to tick, level with the capitals of the first line under `at`; of one hand of a pair it is black where that hand's tag is. */
export function tickBox(at: Point, size: Mm, hand?: Hand): Mark[] {
  const side = CAP_HEIGHT * size;
  const top = at.y - 0.25 * size;
  const box = { left: at.x, right: at.x + side, bottom: top - side, top };
  const bar = 0.3 * side;
  if (!hand) return [framed(box)];
  const black = hand === 'opposite' ? { ...box, left: box.right - bar } : { ...box, right: box.left + bar };
  return [framed(box), filled(black)];
}

/** The name of a list. */
export function heading(text: Said): LaidItem {
  return {
    heading: true,
    lay: (at, width) => {
      const laid = layText(text, 'heading', WORTH, { x: at.x, y: at.y - 2 }, width);
      return { ...laid, foot: laid.foot - 0.6 };
    },
  };
}
