import type { Job, Stock, StockLength } from '../../job/job.ts';
import { tubeFactsOf } from '../../job/sections.ts';
import type { Said } from '../../measure/said.ts';
import type { Length, Mm } from '../../measure/units.ts';
import { type Nesting, nest } from '../../nest/nesting.ts';
import type { TubeSolution } from '../../saddle/solve.ts';
import type { Language } from '../../words/language.ts';
import { bendJobOf, type PieceKind } from '../bend-pieces.ts';
import { blanksOf } from '../blanks.ts';

/** What is cut from the shop's lengths, size by size. */
export interface StockPlan {
  /** What there is to cut from, as the job tells it. */
  readonly rack: readonly StockLength[];
  readonly kerf: Length;
  readonly sizes: readonly SizePlan[];
  /** Tubes whose length is not known yet, which are cut from none. */
  readonly unknown: readonly TubeSolution[];
}

/** All blanks of one size of tube, nested. */
export interface SizePlan {
  /** `31.75 mm, wall 2.4 mm`. */
  readonly size: Said;
  readonly bars: readonly PlannedBar[];
  /** Blanks that are longer than any length of stock, or for which there is not enough. */
  readonly left: readonly Blank[];
  /** Together of the stock that is taken, and what no nesting can do with less than: proved, where it is known. */
  readonly total: Mm;
  readonly lowerBound?: Mm;
}

export interface Blank {
  readonly solution: TubeSolution;
  readonly length: Mm;
  readonly piece?: PieceKind;
}

/** One length of stock. */
export interface PlannedBar {
  /** `6m no. 2`: written on the steel. */
  readonly name: Said;
  readonly length: Mm;
  readonly blanks: readonly Blank[];
  readonly offcut: Mm;
  /** `offcut 3`, where it is long enough to keep. */
  readonly offcutName?: Said;
}

/** A shorter offcut is scrap: two hands and a vice hold no less. */
const KEPT: Mm = 150;

/**
 * The blanks of a job nested into the stock that it tells; undefined where it tells none. The stock is there for each size of
 * tube anew, for its lengths are told without a size.
 */
export function stockPlan(
  { stock, words }: Pick<Job, 'stock' | 'words'>,
  solutions: readonly TubeSolution[],
): StockPlan | undefined {
  if (!stock) return undefined;
  const sizes = new Map<Said, Blank[]>();
  for (const solution of solutions) {
    const kinds = blanksOf(solution);
    if (kinds.length === 0) continue;
    const { tube } = solution;
    const size = words.lists.cut.size(tubeFactsOf(tube.section).said(words).brief, tube.wall);
    const blanks = sizes.get(size) ?? [];
    sizes.set(size, blanks);
    for (const { length, count, piece } of kinds) {
      for (let i = 0; i < count; i++) blanks.push({ solution, length, ...(piece && { piece }) });
    }
  }
  let offcuts = 0;
  const plans = [...sizes].map(([size, blanks]): SizePlan => {
    const plan = sizePlan(size, blanks, stock, offcuts, words);
    offcuts += plan.bars.filter(({ offcutName }) => offcutName !== undefined).length;
    return plan;
  });
  return {
    rack: stock.lengths,
    kerf: stock.kerf,
    sizes: plans,
    unknown: solutions.filter((each) => !each.lengths && !bendJobOf(each)),
  };
}

function sizePlan(
  size: Said,
  blanks: readonly Blank[],
  { lengths, kerf }: Stock,
  before: number,
  words: Language,
): SizePlan {
  const kinds = lengths.map(({ length, count }) => ({ length: length.mm, count }));
  const nesting = nest(
    blanks.map(({ length }) => length),
    kinds,
    kerf.mm,
  );
  return {
    size,
    bars: named(nesting, blanks, lengths, before, words),
    left: nesting.left.flatMap((place) => blanks[place] ?? []),
    total: nesting.total,
    ...(nesting.lowerBound !== undefined && { lowerBound: nesting.lowerBound }),
  };
}

function named(
  { bars }: Nesting,
  blanks: readonly Blank[],
  lengths: readonly StockLength[],
  before: number,
  { lists: { stock } }: Language,
): readonly PlannedBar[] {
  const numbers = new Map<Mm, number>();
  let offcuts = before;
  return bars
    .toSorted((a, b) => b.length - a.length)
    .map(({ length, blanks: places, offcut }) => {
      const number = (numbers.get(length) ?? 0) + 1;
      numbers.set(length, number);
      const wrote = lengths.find((each) => each.length.mm === length)?.length;
      const kept = offcut >= KEPT ? { offcutName: stock.offcut(++offcuts) } : {};
      return {
        name: stock.bar(wrote, number),
        length,
        blanks: places.flatMap((place) => blanks[place] ?? []),
        offcut,
        ...kept,
      };
    });
}
