import type { Mm } from '../measure/units.ts';
import type { Joint } from '../saddle/joint.ts';
import { meetAt } from '../saddle/lines.ts';
import { highestOf } from '../saddle/peaks.ts';
import { goldenSectionMaximum } from '../space/golden-section.ts';
import { type Face, type FaceZone, layersOf } from './face.ts';

const STATIONS = 180;

/**
 * How far the end must slide along its own axis, away from the header, so that its face just touches; negative
 * where it slides on. The greatest foul over the face, outer edge to inner, found by sampling and climbing.
 */
export function slideToTouch(joint: Joint, face: Face, sideLimits: readonly number[]): Mm {
  const most = face.map((zone) => foulOf(joint, zone, sideLimits)).filter((foul) => foul !== undefined);
  return most.length > 0 ? Math.max(...most) : 0;
}

/** The greatest foul of one zone; undefined where it meets nothing. */
function foulOf(joint: Joint, zone: FaceZone, sideLimits: readonly number[]): Mm | undefined {
  const layers = layersOf(zone);
  const foulAt = (station: number): Foul => {
    const there = zone.at(station);
    return (depth) => {
      const met = meetAt(joint, station, depth);
      return met.contact ? met.setback - there(depth) : Number.NEGATIVE_INFINITY;
    };
  };
  const rough = (station: number): Mm => Math.max(...layers.map(foulAt(station)));
  const fine = (station: number): Mm => deepestFoul(foulAt(station), layers);
  const { turn } = joint.section;
  return highestOf({ height: fine, rough, turn, start: 0, steps: STATIONS, sideLimits })?.height;
}

/** How far the face at one station, by depth, reaches into what is landed on. */
type Foul = (depth: Mm) => Mm;

function deepestFoul(foul: Foul, layers: readonly Mm[]): Mm {
  const fouls = layers.map(foul);
  const most = Math.max(...fouls);
  if (layers.length === 1) return most;
  const at = fouls.indexOf(most);
  const low = layers[Math.max(0, at - 1)] ?? 0;
  const high = layers[Math.min(layers.length - 1, at + 1)] ?? low;
  return Math.max(most, foul(goldenSectionMaximum(foul, low, high, 30)));
}
