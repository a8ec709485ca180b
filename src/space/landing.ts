import type { Mm, Radians } from '../measure/units.ts';
import { exactCosine } from './round.ts';
import { type Solid, TOUCH, type WallEntry } from './solid.ts';

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
 * Where the line of the wall through a point of the section enters one header; undefined where it passes that by. What lies no
 * deeper than `floor`, a setback, need not be found.
 */
export function entryOn(landing: Landing, x: Mm, y: Mm, floor?: Mm): WallEntry | undefined {
  const { solid, shift } = landing;
  const above = floor === undefined ? undefined : floor - shift - TOUCH;
  return solid.enter(towardsClock(landing, x, y), pastClock(landing, x, y), above);
}

/** What a line of the wall meets on one header: the header itself or, where it passes that by, the plane to which it is trimmed. */
export interface Met {
  readonly contact: boolean;
  readonly setback: Mm;
}

/**
 * Of what the line of the wall through a point of the section meets on each header that which counts: the deepest header
 * touched; only where none is, the deepest plane to which a missed line is trimmed. Undefined without headers. Where `meet` is
 * given a floor, what is met no deeper does not count.
 */
export function whatCounts<M extends Met>(
  landings: readonly Landing[],
  { x, y }: { readonly x: Mm; readonly y: Mm },
  meet: (landing: Landing, part: number, floor?: Mm) => M,
): M | undefined {
  const [first] = landings;
  if (first && landings.length === 1) return meet(first, 0);
  let met: M | undefined;
  let slow = 0;
  for (let part = 0; part < landings.length; part++) {
    const landing = landings[part];
    if (!landing) continue;
    if (landing.solid.deepest) slow++;
    else met = touchedOrDeeper(met, meet(landing, part));
  }
  if (slow === 0) return met;
  for (const { landing, part, most } of slowOnes(landings, { x, y }, met)) {
    const floor = met?.contact ? met.setback : undefined;
    if (floor === undefined || most > floor) met = touchedOrDeeper(met, meet(landing, part, floor));
  }
  return met;
}

/** Where the line of the wall through a point of the section ends. */
export function setbackAt(landings: readonly Landing[], x: Mm, y: Mm): Mm {
  const met = whatCounts(landings, { x, y }, (landing, _, floor): Met => {
    const entry = entryOn(landing, x, y, floor);
    const setback = (entry ? entry.z : towardsClock(landing, x, y) * landing.trimClimb) + landing.shift;
    return { contact: entry !== undefined, setback };
  });
  return met?.setback ?? Number.NEGATIVE_INFINITY;
}

/** A header that is slow to enter, its place among the others, and how deep a line can meet it at most. */
interface SlowOne {
  readonly landing: Landing;
  readonly part: number;
  readonly most: Mm;
}

/**
 * Those that a line can meet deepest first, so that most need not be entered; none that can't be met deeper than what was touched
 * already.
 */
function slowOnes(
  landings: readonly Landing[],
  { x, y }: { readonly x: Mm; readonly y: Mm },
  met: Met | undefined,
): readonly SlowOne[] {
  const floor = met?.contact ? met.setback : Number.NEGATIVE_INFINITY;
  const found: SlowOne[] = [];
  for (const [part, landing] of landings.entries()) {
    const { solid, shift } = landing;
    if (!solid.deepest) continue;
    const depth = solid.deepest(towardsClock(landing, x, y), pastClock(landing, x, y));
    const most = depth === undefined ? Number.POSITIVE_INFINITY : depth + shift;
    if (most > floor) found.push({ landing, part, most });
  }
  return found.sort((a, b) => b.most - a.most);
}

/** Of two headers met on one line of the wall the one that counts. */
function touchedOrDeeper<M extends Met>(a: M | undefined, b: M): M {
  if (!a) return b;
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
