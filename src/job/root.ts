import type { Length } from '../measure/units.ts';
import type { Part } from './job.ts';
import { complain, type Spot } from './text/desk.ts';
import { lengthAt } from './text/values.ts';

/** No weld is meant to fill as much; it is rather a length that got to the wrong key. */
const TOO_WIDE = 10;

/** The gap meant to stay open for the weld: from 0 to under 10 mm. */
export function rootAt(spot: Spot | undefined): Length | undefined {
  const root = lengthAt(spot, 'zero-or-more', 'root');
  if (spot === undefined || root === undefined || root.mm < TOO_WIDE) return root;
  return complain(spot, 'too-large', spot.desk.words.job.ends.rootTooWide(TOO_WIDE, spot.desk.bareUnit));
}

/** Complains of a bend so tight that on its inside no tube can stand so far off it all along. */
export function complainOfTightBend(spot: Spot, parts: readonly Part[], root: Length | undefined): void {
  for (const { onto } of parts) {
    if (!root || onto.kind !== 'bend') continue;
    const { od, radius } = onto;
    const room = radius.mm - od.mm / 2;
    if (root.mm >= room)
      complain(
        spot,
        'root',
        spot.desk.words.headers.bentTooTightForRoot(od, radius, room, spot.desk.bareUnit),
      );
  }
}
