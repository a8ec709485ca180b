import type { Mm } from '../measure/units.ts';
import { type Demand, type Packing, SAME } from './demand.ts';

/** First fit decreasing: each blank, the longest first, into the first bar with room for it, else into the longest stock. */
export function firstFitDecreasing({ sizes, kinds, kerf }: Demand): Packing {
  const sizeOf = (blank: number): Mm => sizes[blank] ?? 0;
  const bars: { length: Mm; blanks: number[]; free: Mm }[] = [];
  const stock = kinds.map(({ length, count }) => ({ length, spare: count }));
  const left: number[] = [];
  for (const blank of [...sizes.keys()].sort((a, b) => sizeOf(b) - sizeOf(a))) {
    const least = sizeOf(blank) - SAME;
    let bar = bars.find(({ free }) => free >= least);
    if (!bar) {
      const kind = stock.find(({ length, spare }) => spare > 0 && length + kerf >= least);
      if (!kind) {
        left.push(blank);
        continue;
      }
      kind.spare--;
      bar = { length: kind.length, blanks: [], free: kind.length + kerf };
      bars.push(bar);
    }
    bar.blanks.push(blank);
    bar.free -= sizeOf(blank);
  }
  return { bars, left };
}
