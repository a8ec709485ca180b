import type { Mm } from '../measure/units.ts';
import type { Cope } from '../saddle/cope.ts';
import { toCut } from '../saddle/joint.ts';
import { meetAt } from '../saddle/lines.ts';

/** The cut face of an end, zone by zone from its outer edge to the inner. */
export type Face = readonly [FaceZone, ...FaceZone[]];

/** A part of a face from one depth to another, within which it has no step: at a station, the setback at which its metal begins by depth. */
export interface FaceZone {
  readonly from: Mm;
  readonly to: Mm;
  readonly at: (station: number) => (depth: Mm) => Mm;
}

/**
 * The face that this edge preparation leaves. A bevel follows the header, or the one that is larger by the root gap, from
 * the outer edge to the inner. An edge with a land does too, but for that land, which nowhere reaches past the line that is cut to: a
 * thin ear is square there, a sound side is not cut back. A square face keeps one setback through the wall.
 */
export function cutFaceOf(cope: Cope, wall: Mm): Face {
  const { preparation } = cope.end;
  const joint = toCut(cope.joint);
  const follow: FaceZone['at'] = (station) => (depth) => meetAt(joint, station, depth).setback;
  const square = (station: number): Mm => cope.cut(station).setback;
  if (preparation.edge === 'square') {
    const at: FaceZone['at'] = (station) => {
      const setback = square(station);
      return () => setback;
    };
    return [{ from: 0, to: wall, at }];
  }
  const land = Math.min(preparation.land?.mm ?? 0, wall);
  if (land === 0) return [{ from: 0, to: wall, at: follow }];
  const landed: FaceZone['at'] = (station) => {
    const bevelled = follow(station);
    const squared = square(station);
    return (depth) => Math.max(bevelled(depth), squared);
  };
  const behind: FaceZone[] = land < wall ? [{ from: land, to: wall, at: follow }] : [];
  return [{ from: 0, to: land, at: landed }, ...behind];
}

/** The setback of a face's outer edge. */
export function outerEdge([outer]: Face, station: number): Mm {
  return outer.at(station)(0);
}

/** Depths at which a face is looked at: nine in each of its zones. */
export function depthsOf(face: Face): readonly Mm[] {
  return [...new Set(face.flatMap(layersOf))];
}

/** Those of one zone. */
export function layersOf({ from, to }: Pick<FaceZone, 'from' | 'to'>): readonly Mm[] {
  return from === to ? [from] : LAYERS.map((layer) => from + layer * (to - from));
}

const LAYERS = [0, 0.125, 0.25, 0.375, 0.5, 0.625, 0.75, 0.875, 1];

/** The face cut from a leaf printed at the wrong scale: stations about the spine, and setbacks, alike. */
export function scaledFace([outer, ...inner]: Face, scale: number, turn: number): Face {
  const scaled = ({ at, ...depths }: FaceZone): FaceZone => ({
    ...depths,
    at: (station) => {
      const there = at((station - turn * Math.round(station / turn)) / scale);
      return (depth) => scale * there(depth);
    },
  });
  return [scaled(outer), ...inner.map(scaled)];
}
