import type { Mm } from '../measure/units.ts';
import type { BarPattern, Demand } from './demand.ts';
import { sum } from './least-stock.ts';
import { type Column, mix } from './pattern-mix.ts';

/** Bars mixed in fractions so that there is enough of each size, and no more of a kind than there are. */
export interface BarMixed {
  readonly cost: Mm;
  /** What one more piece of each size would take. */
  readonly prices: readonly number[];
  /** What one more bar of each kind would save, where there are too few. */
  readonly scarce: readonly number[];
  /** How many bars are cut to each pattern. */
  readonly shares: ReadonlyMap<BarPattern, number>;
}

export interface BarMix {
  readonly add: (patterns: readonly BarPattern[]) => void;
  readonly solved: () => BarMixed;
}

interface BarColumn extends Column {
  readonly pattern: BarPattern;
}

/** A size of which no pattern makes enough is had at so many times the longest bar. */
const DEAR = 10;

/** The rows of the mix are the sizes of which there are pieces, then the kinds of which there are fewer than pieces. */
export function barMix({ sizes, many, kinds }: Demand): BarMix {
  const pieces = sum(many);
  const needed = sizes.map((_, i) => i).filter((i) => (many[i] ?? 0) > 0);
  const limited = kinds.map((_, kind) => kind).filter((kind) => (kinds[kind]?.count ?? 0) < pieces);
  const rowOfSize = new Map(needed.map((size, row) => [size, row]));
  const rowOfKind = new Map(limited.map((kind, i) => [kind, needed.length + i]));
  const needs = [...needed.map((i) => many[i] ?? 0), ...limited.map((kind) => -(kinds[kind]?.count ?? 0))];
  const master = mix<BarColumn>(needs, DEAR * Math.max(...kinds.map(({ length }) => length)));
  return {
    add: (patterns) =>
      master.add(
        patterns.map((pattern) => {
          const kind = rowOfKind.get(pattern.kind);
          const rows = pattern.sizes.flatMap((size) => rowOfSize.get(size) ?? []);
          return {
            pattern,
            cost: kinds[pattern.kind]?.length ?? 0,
            rows: kind === undefined ? rows : [...rows, kind],
            gives: kind === undefined ? pattern.many : [...pattern.many, -1],
          };
        }),
      ),
    solved: () => {
      const { cost, prices, shares } = master.solved();
      return {
        cost,
        prices: sizes.map((_, size) => prices[rowOfSize.get(size) ?? -1] ?? 0),
        scarce: kinds.map((_, kind) => prices[rowOfKind.get(kind) ?? -1] ?? 0),
        shares: new Map([...shares].map(([{ pattern }, share]) => [pattern, share])),
      };
    },
  };
}
