import type { Job } from '../../job/job.ts';
import type { Said } from '../../measure/said.ts';
import { sawLength } from '../../measure/saw-length.ts';
import type { Mm } from '../../measure/units.ts';
import type { TubeSolution } from '../../saddle/solve.ts';
import type { Language } from '../../words/language.ts';
import { asWritten, endedLines } from '../../words/said.ts';
import { lengthless, pieceAsData } from './cut-list.ts';
import { type Blank, type PlannedBar, type SizePlan, type StockPlan, stockPlan } from './stock.ts';

/** A blank's name: the tube's, and which piece of it; blanks of both hands are alike. */
export function blankName({ solution: { tube }, piece }: Omit<Blank, 'length'>, { lists }: Language): Said {
  return lists.cut.name(asWritten(tube.name), piece);
}

/** What is cut from one length, as it is sawn, and what is left of it. */
export function barInWords(bar: PlannedBar, units: 'mm' | 'in', words: Language): Said {
  const pieces = countedAlike(bar.blanks, units, words);
  const rounded = bar.blanks.reduce((sum, { length }) => sum + sawLength(length, units) - length, 0);
  return words.lists.stock.cuts(pieces, bar.offcut - rounded, units, bar.offcutName);
}

/** How the nesting stands against the lower bound. */
export function boundInWords(
  { bars, total, lowerBound, left }: SizePlan,
  units: 'mm' | 'in',
  words: Language,
): Said {
  return words.lists.stock.bound(bars.length, total, units, left.length > 0, lowerBound);
}

/** What found no stock, and how long it is together. */
export function leftInWords({ left }: SizePlan, units: 'mm' | 'in', words: Language): Said | undefined {
  if (left.length === 0) return undefined;
  const sum = left.reduce((all, { length }) => all + length, 0);
  return words.lists.stock.left(countedAlike(left, units, words), sum, units);
}

/** What of a job finds no stock, size by size; nothing where it tells of none. */
export function stockLacking(job: Job, solutions: readonly TubeSolution[]): readonly Said[] {
  const sizes = stockPlan(job, solutions)?.sizes ?? [];
  return sizes.flatMap((size) => leftInWords(size, job.units, job.words) ?? []);
}

/** Blanks of one name that are sawn alike, counted, in the order in which the first of each comes. */
function countedAlike(
  blanks: readonly Blank[],
  units: 'mm' | 'in',
  words: Language,
): readonly { readonly name: Said; readonly length: Mm; readonly count: number }[] {
  const alike: { name: Said; length: Mm; count: number }[] = [];
  for (const blank of blanks) {
    const [name, length] = [blankName(blank, words), sawLength(blank.length, units)];
    const same = alike.find((each) => each.name === name && each.length === length);
    if (same) same.count++;
    else alike.push({ name, length, count: 1 });
  }
  return alike;
}

/** The whole plan for a terminal. */
export function stockAsText(plan: StockPlan, units: 'mm' | 'in', words: Language): Said {
  const { stock } = words.lists;
  const sizes = plan.sizes.flatMap((size) => {
    const left = leftInWords(size, units, words);
    return [
      size.size,
      ...size.bars.map((bar) => stock.named(bar.name, barInWords(bar, units, words))),
      stock.under(boundInWords(size, units, words)),
      ...(left ? [stock.under(left)] : []),
    ];
  });
  const unknown = plan.unknown.map((solution) =>
    stock.lengthless(blankName({ solution }, words), lengthless(solution)),
  );
  const rack = stock.rack(plan.rack, plan.sizes.length);
  return endedLines([stock.heading(plan.kerf.mm, units), rack, asWritten(''), ...sizes, ...unknown]);
}

/** The plan as JSON data, mm. */
export function stockAsData(plan: StockPlan): object {
  const named = (blank: Blank): object => ({
    tube: blank.solution.tube.name,
    hand: blank.solution.hand,
    ...(blank.piece && { piece: pieceAsData(blank.piece) }),
    length: blank.length,
  });
  return {
    kerf: plan.kerf.mm,
    sizes: plan.sizes.map(({ size, bars, left, total, lowerBound }) => ({
      size,
      bars: bars.map(({ name, length, blanks, offcut, offcutName }) => ({
        name,
        length,
        blanks: blanks.map(named),
        offcut,
        ...(offcutName && { offcutName }),
      })),
      left: left.map(named),
      total,
      ...(lowerBound !== undefined && { least: lowerBound }),
    })),
    unknown: plan.unknown.map(({ tube, hand }) => ({ tube: tube.name, hand })),
  };
}
