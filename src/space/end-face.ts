import type { Mm } from '../measure/units.ts';
import { entryOn, type Landing, type Met, pastClock, towardsClock, whatCounts } from './landing.ts';
import { MISSED, PATCHES } from './solid.ts';
import type { Vector } from './vector.ts';

/** The face in which a header ends, on one line along it: the other side of what the header was cut to. */
export interface EndFace extends Met {
  readonly normal: Vector;
  /** Where it changes the face has an edge or a step. */
  readonly patch: number;
}

const SQUARE_OFF: EndFace = { contact: false, setback: 0, normal: [0, 0, -1], patch: 0 };

export function endFaceAt(cut: readonly Landing[], x: Mm, y: Mm): EndFace {
  return (
    whatCounts(cut, { x, y }, (landing, part, floor) => faceOn(landing, part, { x, y, floor })) ?? SQUARE_OFF
  );
}

/** Whether a place is not under that face: told without the face where all that may lie over the place is quick to enter, or none is. */
export function standsAbove(cut: readonly Landing[], [a, b, c]: Vector): boolean {
  let trim = Number.NEGATIVE_INFINITY;
  let isTouched = false;
  const slow: Landing[] = [];
  for (const landing of cut) {
    const { solid, shift, trimClimb } = landing;
    const x = towardsClock(landing, a, b);
    const y = pastClock(landing, a, b);
    const most = solid.deepest ? solid.deepest(x, y) : solid.enter(x, y)?.z;
    trim = Math.max(trim, x * trimClimb + shift);
    if (most === undefined) continue;
    const isOver = most + shift > c;
    if (solid.deepest) {
      if (isOver) slow.push(landing);
    } else {
      if (isOver) return false;
      isTouched = true;
    }
  }
  for (const landing of slow) {
    const entry = entryOn(landing, a, b, c);
    if (entry && entry.z + landing.shift > c) return false;
  }
  if (isTouched || (trim <= c && cut.length > 0)) return true;
  return c >= endFaceAt(cut, a, b).setback;
}

/** Which way a step of the end face looks: across the side of the header beside which it begins; undefined at an edge. */
export function stepBetween(cut: readonly Landing[], near: OverFace, far: OverFace): Vector | undefined {
  const touches = (landing: Landing, { a, b }: OverFace): boolean => entryOn(landing, a, b) !== undefined;
  const side = cut.find((landing) => touches(landing, near) !== touches(landing, far));
  return side && [-side.sinClock, side.cosClock, 0];
}

interface FaceLine {
  readonly x: Mm;
  readonly y: Mm;
  readonly floor: Mm | undefined;
}

function faceOn(landing: Landing, part: number, { x: a, y: b, floor }: FaceLine): EndFace {
  const { cosClock, sinClock, trimClimb, shift } = landing;
  const x = towardsClock(landing, a, b);
  const entry = entryOn(landing, a, b, floor);
  const steep = Math.hypot(1, trimClimb);
  const { nx, ny, nz, z, patch } = entry ?? {
    nx: -trimClimb / steep,
    ny: 0,
    nz: 1 / steep,
    z: x * trimClimb,
    patch: MISSED,
  };
  const normal: Vector = [ny * sinClock - nx * cosClock, -nx * sinClock - ny * cosClock, -nz];
  return { contact: entry !== undefined, setback: z + shift, normal, patch: PATCHES * part + patch };
}

/** How far above the face in which the header ends a place stands, on the header's body side, and what that face is there. */
export interface OverFace {
  readonly above: Mm;
  readonly face: EndFace;
  /** The line along the header on which that is. */
  readonly a: Mm;
  readonly b: Mm;
}
/** What stands at a place of the frame of the header's own end. */
export function overFaceAt(cut: readonly Landing[], [a, b, c]: Vector): OverFace {
  const face = endFaceAt(cut, a, b);
  return { above: c - face.setback, face, a, b };
}

/** The headers that an end was cut to are convex, and so is one that stops where all that it was cut to are planes. */
export function isConvex({ solid }: Landing): boolean {
  return !solid.deepest || solid.convex === true;
}

/** Under which of these, each convex, a place was cut away: of two places under one of them all between them was. */
export function awayUnder(landings: readonly Landing[], [a, b, c]: Vector): readonly Landing[] {
  return landings.filter((landing) => {
    const entry = entryOn(landing, a, b, c);
    return entry !== undefined && c < entry.z + landing.shift;
  });
}
