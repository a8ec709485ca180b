import type { Mm } from '../measure/units.ts';
import type { BarFilling } from './fill-bars.ts';
import { SAME, sum } from './least-stock.ts';

/** How many places are tried before it is given up, unless told. */
const TRIES = 10_000;

/**
 * Each piece in turn into each bar that holds it, the one that it leaves least of first, until all have gone in; back and on where
 * one finds no room, or where more is lost than the bars have to spare. Undefined where none of the tries holds all.
 */
export function byTrying(
  sizes: readonly Mm[],
  order: readonly number[],
  rooms: readonly Mm[],
  most = TRIES,
): BarFilling | undefined {
  const free = [...rooms];
  const bars: number[][] = rooms.map(() => []);
  const spare = sum(rooms) - sum(sizes);
  const least = order.toReversed().map((piece) => sizes[piece] ?? 0);
  // The shortest of the pieces from each place of the order on.
  const shortest = least.map((_, i) => Math.min(...least.slice(0, i + 1))).reverse();
  let tries = 0;
  const place = (n: number): boolean => {
    const piece = order[n];
    if (piece === undefined) return true;
    const size = sizes[piece] ?? 0;
    const lost = sum(free.filter((room) => room < (shortest[n] ?? 0) - SAME));
    if (lost > spare + SAME || tries > most) return false;
    const seen = new Set<Mm>();
    const fitting = [...free.keys()].filter((bar) => (free[bar] ?? 0) >= size - SAME);
    fitting.sort((a, b) => (free[a] ?? 0) - (free[b] ?? 0) || a - b);
    for (const bar of fitting) {
      const room = free[bar] ?? 0;
      if (seen.has(room)) continue;
      seen.add(room);
      tries++;
      free[bar] = room - size;
      bars[bar]?.push(piece);
      if (place(n + 1)) return true;
      bars[bar]?.pop();
      free[bar] = room;
    }
    return false;
  };
  return spare >= -SAME && place(0) ? { bars, left: [] } : undefined;
}
