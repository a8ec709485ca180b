import type { Mm, Radians } from '../measure/units.ts';
import { exactCosine, roundHeader } from './round.ts';
import type { Solid } from './solid.ts';

/** One header as the end meets it: turned to its clock. Both ends of a tube use the same formulae. */
export interface Landing {
  readonly solid: Solid;
  readonly cosClock: number;
  readonly sinClock: number;
  /** The plane to which a missed line is trimmed climbs this much per mm of x: cot(angle). */
  readonly trimClimb: number;
  /** The header's axis, from the tube's axis, along y. */
  readonly offset: Mm;
  /** The header's work point, from the tube's, along the tube. */
  readonly shift: Mm;
  /** Whether it is the plane of a mitre, on which another tube meets this one alike. */
  readonly mitred: boolean;
  /** Whether the header ends at the joint. */
  readonly stops: boolean;
}

/** What of a direction of the section's frame points to the landing's clock: its x there. */
export function towardsClock({ cosClock, sinClock }: Landing, x: number, y: number): number {
  return x * cosClock + y * sinClock;
}

/** What of it points a quarter turn past the clock: its y there. */
export function pastClock({ cosClock, sinClock }: Landing, x: number, y: number): number {
  return y * cosClock - x * sinClock;
}

/**
 * Where the line of the wall through a point of the section ends: at the deepest header touched; only where none is, at
 * the deepest plane to which a missed line is trimmed.
 */
export function setbackAt(landings: readonly Landing[], x: Mm, y: Mm): Mm {
  let touched = Number.NEGATIVE_INFINITY;
  let missed = Number.NEGATIVE_INFINITY;
  const look = (landing: Landing): void => {
    const towards = towardsClock(landing, x, y);
    const entry = landing.solid.enter(towards, pastClock(landing, x, y));
    if (entry) touched = Math.max(touched, entry.z + landing.shift);
    else missed = Math.max(missed, towards * landing.trimClimb + landing.shift);
  };
  let slow = 0;
  for (const landing of landings) {
    if (landing.solid.deepest) slow++;
    else look(landing);
  }
  if (slow > 0) {
    for (const { landing, most } of slowOnes(landings, x, y)) if (most > touched) look(landing);
  }
  return touched > Number.NEGATIVE_INFINITY ? touched : missed;
}

/** A header that is slow to enter, its place among the others, and how deep a line can meet it at most. */
interface SlowOne {
  readonly landing: Landing;
  readonly part: number;
  readonly most: Mm;
}

/** Those that a line can meet deepest first, so that most need not be entered; one that it passes by is never skipped. */
export function slowOnes(landings: readonly Landing[], x: Mm, y: Mm): readonly SlowOne[] {
  return landings
    .flatMap((landing, part): SlowOne[] => {
      const { solid, shift } = landing;
      if (!solid.deepest) return [];
      const most = solid.deepest(towardsClock(landing, x, y), pastClock(landing, x, y));
      return [{ landing, part, most: most === undefined ? Number.POSITIVE_INFINITY : most + shift }];
    })
    .sort((a, b) => b.most - a.most);
}

/** Of two headers met on one line of the wall the one that counts: a touched one, and of those the deeper. */
export function touchedOrDeeper<Met extends { readonly contact: boolean; readonly setback: Mm }>(
  a: Met,
  b: Met,
): Met {
  if (a.contact !== b.contact) return a.contact ? a : b;
  return b.setback > a.setback ? b : a;
}

/** Where a header lies, but for its solid. Lengths in mm, angles in radians. */
export function lying(
  angle: Radians,
  clock: Radians,
  offset: Mm,
  shift: Mm,
): Omit<Landing, 'solid' | 'mitred' | 'stops'> {
  return {
    cosClock: Math.cos(clock),
    sinClock: Math.sin(clock),
    trimClimb: exactCosine(angle) / Math.sin(angle),
    offset,
    shift,
  };
}

/** A landing on a round header of this outside radius. */
export function roundLanding(radius: Mm, angle: Radians, clock: Radians, offset: Mm): Landing {
  return {
    solid: roundHeader(radius, angle, offset),
    ...lying(angle, clock, offset, 0),
    mitred: false,
    stops: false,
  };
}
