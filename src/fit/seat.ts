import type { Mm } from '../measure/units.ts';
import type { Joint } from '../saddle/joint.ts';
import { meetAt } from '../saddle/lines.ts';
import { highestOf } from '../saddle/peaks.ts';
import { goldenSectionMaximum } from '../space/golden-section.ts';
import type { Face } from './face.ts';
import { LAYERS } from './side-limits.ts';

const STATIONS = 180;

/**
 * How far the end must slide along its own axis, away from the header, so that its face just touches; negative
 * where it slides on. The greatest foul over the face, outer edge to inner, found by sampling and climbing.
 */
export function slideToTouch(joint: Joint, face: Face, wall: Mm, sideLimits: readonly number[]): Mm {
  const foulAt = (station: number): Foul => {
    const there = face(station);
    return (depth) => {
      const met = meetAt(joint, station, depth);
      return met.contact ? met.setback - there(depth) : Number.NEGATIVE_INFINITY;
    };
  };
  const rough = (station: number): Mm => {
    const foul = foulAt(station);
    return Math.max(...LAYERS.map((layer) => foul(layer * wall)));
  };
  const fine = (station: number): Mm => deepestFoul(foulAt(station), wall);
  const { turn } = joint.section;
  const most = highestOf({ height: fine, rough, turn, start: 0, steps: STATIONS, sideLimits });
  return most?.height ?? 0;
}

/** How far the face at one station, by depth, reaches into what is landed on. */
type Foul = (depth: Mm) => Mm;

function deepestFoul(foul: Foul, wall: Mm): Mm {
  const fouls = LAYERS.map((layer) => foul(layer * wall));
  const most = Math.max(...fouls);
  if (wall === 0) return most;
  const at = fouls.indexOf(most);
  const low = LAYERS[Math.max(0, at - 1)] ?? 0;
  const high = LAYERS[Math.min(LAYERS.length - 1, at + 1)] ?? 1;
  return Math.max(most, foul(goldenSectionMaximum(foul, low * wall, high * wall, 30)));
}
