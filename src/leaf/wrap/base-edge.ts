import { MM_PER_INCH, type Mm } from '../../measure/units.ts';
import type { Cope } from '../../saddle/cope.ts';

/**
 * The setback of the base edge: far enough beyond the deepest point of both lines for a leaf's words, more on a narrow leaf where they
 * stand above one another, and rounded up to what is easily set on a tape (5 mm, a quarter of an inch).
 */
export function baseSetbackOf(cope: Cope, units: 'mm' | 'in'): Mm {
  const { girth } = cope.joint.section;
  const [, room] = ROOM.find(([most]) => girth < most) ?? [0, cope.heel === undefined ? 26 : 30];
  const step = units === 'mm' ? 5 : MM_PER_INCH / 4;
  return Math.ceil((deepestOf(cope) + room) / step) * step;
}

/**
 * How far apart the base edges of a tube's two leaves lie along the spine, `between` its work points; negative where the leaves overlap.
 * The same to the last bit whichever end is named first: a sum in another order can round to another hundredth.
 */
export function baseEdgesApart(between: Mm, one: Cope, other: Cope, units: 'mm' | 'in'): Mm {
  const [near, far] = [baseSetbackOf(one, units), baseSetbackOf(other, units)].sort((a, b) => a - b);
  return between - (near ?? 0) - (far ?? 0);
}

const STATIONS = 72;

/** How deep the cut or the dashed line goes; of the latter as far as every fifth degree shows, which the room covers. */
function deepestOf({ throat, other, joint }: Cope): Mm {
  let deepest = throat.setback;
  if (!other) return deepest;
  for (let i = 0; i < STATIONS; i++) {
    deepest = Math.max(deepest, other((i * joint.section.turn) / STATIONS).setback);
  }
  return deepest;
}

/** Under this girth, so much room. */
const ROOM: readonly (readonly [Mm, Mm])[] = [
  [45, 54],
  [70, 44],
  [110, 34],
];
