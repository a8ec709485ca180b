import type { Mm } from '../measure/units.ts';

/** Pieces that are taken for one size: their places, and the shortest and the longest of them. */
export interface SizeClass {
  readonly shortest: Mm;
  readonly longest: Mm;
  readonly places: readonly number[];
}

/**
 * Pieces sorted into classes, the shortest first: one for each size, where there are no more than `most`; else about as
 * many pieces in each of `most`. Pieces of the same size are never parted.
 */
export function sizeClasses(sizes: readonly Mm[], most: number): readonly SizeClass[] {
  const order = sizes.map((_, place) => place).sort((a, b) => (sizes[a] ?? 0) - (sizes[b] ?? 0) || a - b);
  const many = new Set(sizes).size;
  const each = many <= most ? 1 : Math.ceil(sizes.length / most);
  const classes: { shortest: Mm; longest: Mm; places: number[] }[] = [];
  for (const place of order) {
    const size = sizes[place] ?? 0;
    const last = classes.at(-1);
    if (last && (last.longest === size || last.places.length < each)) {
      last.longest = size;
      last.places.push(place);
    } else classes.push({ shortest: size, longest: size, places: [place] });
  }
  return classes;
}
