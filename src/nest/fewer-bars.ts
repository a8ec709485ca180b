import type { Mm } from '../measure/units.ts';
import { SAME, sum } from './least-stock.ts';
import { byTrying } from './try-bars.ts';

/** A length of stock and the places of the pieces in it. */
export interface Packing {
  readonly length: Mm;
  readonly pieces: readonly number[];
}

/** How often a handful of bars is packed anew, how many make a handful, and how long each is tried. */
const HANDFULS = 800;
const MOST_BARS = 9;
const TRIES = 1_000;

/**
 * Does without one bar after another: takes a handful of bars, always the same ones in turn, and packs their pieces anew into all
 * but one of them. Gives up when no handful has had room to spare for a while, or when no more than `least` is left.
 */
export function fewerBars(
  bars: readonly Packing[],
  sizes: readonly Mm[],
  kerf: Mm,
  least: Mm,
): readonly Packing[] {
  let kept = [...bars];
  let seed = 1;
  const next = (below: number): number => {
    seed = (seed * 48271) % 2147483647;
    return seed % below;
  };
  for (let n = 0; n < HANDFULS; n++) {
    if (kept.length < 2 || sum(kept.map(({ length }) => length)) <= least + SAME) break;
    const handful = picked(kept, Math.min(kept.length, 3 + (n % (MOST_BARS - 2))), next);
    const packed = withoutOne(handful, sizes, kerf);
    if (packed) kept = [...kept.filter((bar) => !handful.includes(bar)), ...packed];
  }
  return kept;
}

function picked(bars: readonly Packing[], many: number, next: (below: number) => number): readonly Packing[] {
  const left = [...bars];
  return Array.from({ length: many }, () => left.splice(next(left.length), 1)).flat();
}

/** The handful's pieces in all its bars but the longest that they can do without. */
function withoutOne(
  handful: readonly Packing[],
  sizes: readonly Mm[],
  kerf: Mm,
): readonly Packing[] | undefined {
  const pieces = handful.flatMap((bar) => bar.pieces);
  const own = pieces.map((piece) => sizes[piece] ?? 0);
  const order = own.map((_, i) => i).sort((a, b) => (own[b] ?? 0) - (own[a] ?? 0));
  const spare = sum(handful.map(({ length }) => length + kerf)) - sum(own);
  const out = handful
    .filter(({ length }) => length + kerf <= spare + SAME)
    .sort((a, b) => b.length - a.length)[0];
  if (!out) return undefined;
  const rest = handful.filter((bar) => bar !== out);
  const filling = byTrying(
    own,
    order,
    rest.map(({ length }) => length + kerf),
    TRIES,
  );
  return (
    filling &&
    rest.map(({ length }, i) => ({
      length,
      pieces: (filling.bars[i] ?? []).flatMap((place) => pieces[place] ?? []),
    }))
  );
}
