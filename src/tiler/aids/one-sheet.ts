import type { Drawing, Mark } from '../../draw/drawing.ts';
import type { SheetAsk } from '../../job/job.ts';
import type { Printer } from '../../job/paper/printer.ts';
import type { Said } from '../../measure/said.ts';
import type { Mm } from '../../measure/units.ts';
import type { Language } from '../../words/language.ts';
import type { Furniture, SheetWords } from '../furniture.ts';
import type { LaidSheets } from '../lay-sheets.ts';
import { type Page, pagesOf } from '../page.ts';
import type { Placement } from '../sheets.ts';

/**
 * The ways an aid's sheet can lie, upright first; of a roll it takes so many mm. Throws a RangeError where the paper is too
 * small for any.
 */
export function pagesForAid(
  ask: SheetAsk,
  printer: Printer | undefined,
  offRoll: Mm,
): readonly [Page, ...Page[]] {
  if (!ask.paper.roll) return pagesOf(ask, printer);
  return pagesOf({ ...ask, paper: { ...ask.paper, height: offRoll } }, printer);
}

/** What an aid's furniture names. */
export function namedAid(
  job: Said,
  { paper }: SheetAsk,
  words: Language,
  printer: Printer | undefined,
): SheetWords {
  return { job, paper: paper.name, words, ...(printer && { printer }) };
}

/** A set of one sheet: the furniture, and drawings whose coordinates are the sheet's. */
export function oneSheet(
  page: Page,
  furniture: Furniture,
  marks: readonly Mark[],
  others: readonly Placement[] = [],
): LaidSheets {
  const drawing: Drawing = {
    name: 'aid',
    box: page.printable,
    marks: [...furniture.sheetLine(1, 1), ...marks],
  };
  const placements: Placement[] = [
    ...furniture.placements,
    ...others,
    { drawing, at: { x: 0, y: 0 }, turn: 0 },
  ];
  return {
    width: page.width,
    height: page.height,
    ...(page.stretch && { stretch: page.stretch }),
    count: 1,
    mostOfOne: 1,
    sheets: [{ placements }],
  };
}
