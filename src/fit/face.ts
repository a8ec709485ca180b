import type { Mm } from '../measure/units.ts';
import type { Cope } from '../saddle/cope.ts';
import { meetAt } from '../saddle/lines.ts';

/** The cut face of an end: the setback at which its metal begins, by station and by depth in from the outside. */
export type Face = (station: number, depth: Mm) => Mm;

/**
 * The face that this edge preparation leaves, its root gap closed up again. A bevel follows the header from the outer
 * edge to the inner. A blunt edge does too, but for its land, which nowhere reaches past the line that is cut to: a
 * thin ear is square there, a sound side is not cut back. A square face keeps one setback through the wall.
 */
export function faceOf(cope: Cope): Face {
  const { preparation, root } = cope.end;
  const gap = root?.mm ?? 0;
  const follow: Face = (station, depth) => meetAt(cope.joint, station, depth).setback;
  const square: Face = (station) => cope.cut(station).setback - gap;
  if (preparation.edge === 'square') return square;
  const land = preparation.blunt?.mm ?? 0;
  if (land === 0) return follow;
  return (station, depth) => {
    const bevelled = follow(station, depth);
    return depth <= land ? Math.max(bevelled, square(station, depth)) : bevelled;
  };
}

/** The face cut from a leaf printed at the wrong scale: stations about the spine, and setbacks, alike. */
export function scaledFace(face: Face, scale: number, turn: number): Face {
  return (station, depth) => {
    const fromSpine = station - turn * Math.round(station / turn);
    return scale * face(fromSpine / scale, depth);
  };
}
