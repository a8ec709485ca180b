import type { Mm } from '../measure/units.ts';
import type { Cope } from '../saddle/cope.ts';
import { toCut } from '../saddle/joint.ts';
import { meetAt } from '../saddle/lines.ts';

/** The cut face of an end: at a station, the setback at which its metal begins by depth in from the outside. */
export type Face = (station: number) => (depth: Mm) => Mm;

/**
 * The face that this edge preparation leaves. A bevel follows the header, or the one that is larger by the root gap, from
 * the outer edge to the inner. An edge with a land does too, but for that land, which nowhere reaches past the line that is cut to: a
 * thin ear is square there, a sound side is not cut back. A square face keeps one setback through the wall.
 */
export function cutFaceOf(cope: Cope): Face {
  const { preparation } = cope.end;
  const joint = toCut(cope.joint);
  const follow: Face = (station) => (depth) => meetAt(joint, station, depth).setback;
  const square = (station: number): Mm => cope.cut(station).setback;
  if (preparation.edge === 'square') {
    return (station) => {
      const setback = square(station);
      return () => setback;
    };
  }
  const land = preparation.land?.mm ?? 0;
  if (land === 0) return follow;
  return (station) => {
    const bevelled = follow(station);
    const squared = square(station);
    return (depth) => (depth <= land ? Math.max(bevelled(depth), squared) : bevelled(depth));
  };
}

/** The face cut from a leaf printed at the wrong scale: stations about the spine, and setbacks, alike. */
export function scaledFace(face: Face, scale: number, turn: number): Face {
  return (station) => {
    const fromSpine = station - turn * Math.round(station / turn);
    const there = face(fromSpine / scale);
    return (depth) => scale * there(depth);
  };
}
