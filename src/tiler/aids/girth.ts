import { across, upright } from '../../draw/boxes.ts';
import type { Mark } from '../../draw/drawing.ts';
import { heightOf, LARGE, linesOf, PLAIN, setLines, type TextLine } from '../../draw/lettering.ts';
import type { SheetAsk } from '../../job/job.ts';
import type { Printer } from '../../job/paper/printer.ts';
import type { Mm } from '../../measure/units.ts';
import type { Language } from '../../words/language.ts';
import { type Furniture, furnish } from '../furniture.ts';
import type { LaidSheets } from '../lay-sheets.ts';
import type { Page } from '../page.ts';
import { girthStrip, STRIP_HEIGHT, type Strip } from './girth-strip.ts';
import { namedAid, oneSheet, pagesForAid } from './one-sheet.ts';

/** Beside a strip, for the words at its ends. */
const BESIDE: Mm = 6;
const BETWEEN: Mm = 9;
/** How far one strip goes on under the next. */
const OVERLAP: Mm = 10;
/** No tube that is coped by hand is larger. */
const LARGEST_TUBE: Mm = 230;

/** How much of a roll it takes. */
const OFF_ROLL: Mm = 300;

/**
 * Strips that read a round tube's diameter from its girth, in mm and inches; those after the first are taped to the one
 * before. Wrapped round a tube of diameter D, paper of thickness t reads C = pi (D + t), so that is where D stands.
 */
export function girthSheet(ask: SheetAsk, words: Language, printer?: Printer): LaidSheets {
  const named = namedAid(words.aids.girth.subject, ask, words, printer);
  const sheets = pagesForAid(ask, printer, OFF_ROLL).map((page) => ({
    page,
    furniture: furnish(page, named),
  }));
  const [widest] = sheets.sort((a, b) => across(b.furniture.content) - across(a.furniture.content));
  if (widest === undefined) throw new RangeError(`${ask.paper.name} has no way to lie.`);
  return girthOn(widest.page, widest.furniture, ask.paperThickness.mm, words);
}

function girthOn(page: Page, furniture: Furniture, thickness: Mm, words: Language): LaidSheets {
  const { content } = furniture;
  const length = across(content) - 2 * BESIDE;
  const width = Math.min(180, across(content) - 2 * BESIDE);
  const room = upright(content) - heightOf(told(width, thickness, 99, words)) - BETWEEN;
  const most = Math.max(1, Math.floor(room / (STRIP_HEIGHT + BETWEEN)));
  const strips = stripsOf(length, most, thickness);
  const lines = told(width, thickness, strips.length, words);
  const left = content.left + BESIDE;
  let foot = content.top - heightOf(lines) - BETWEEN / 2;
  const marks: Mark[] = strips.flatMap((each) => {
    foot -= STRIP_HEIGHT + (each.number > 1 ? BETWEEN : 0);
    return girthStrip(each, { x: left, y: foot }, words);
  });
  return oneSheet(page, furniture, [...setLines(lines, { x: left, y: content.top }), ...marks]);
}

function stripsOf(length: Mm, most: number, thickness: Mm): Strip[] {
  const needed = Math.PI * (LARGEST_TUBE + thickness);
  const count = Math.min(most, Math.max(1, Math.ceil((needed - OVERLAP) / (length - OVERLAP))));
  return Array.from({ length: count }, (_, index) => {
    const from = index * (length - OVERLAP);
    const next = index + 1 < count ? { next: from + length - OVERLAP } : {};
    return { number: index + 1, from, to: from + length, thickness, ...next };
  });
}

function told(width: Mm, thickness: Mm, strips: number, { aids: { girth } }: Language): TextLine[] {
  const steps = girth.steps(thickness, strips).flatMap((step) => linesOf(step, 'aid', PLAIN, width));
  return [...linesOf(girth.title, 'aid', LARGE, width), ...steps];
}
