import type * as radians from './asked-end.ts';
import { landingOnAll, partAt, wallOf } from './solids/implicit-headers.ts';
import type { EndName, Header, Landing } from './solids/implicit-solids.ts';

/** What a tube can land on. Lengths in mm, angles in degrees. */
export type Onto =
  | { readonly kind: 'round'; readonly od: number }
  | { readonly kind: 'plate' }
  | {
      readonly kind: 'mitre';
      /** Of the whole corner. */
      readonly turn: number;
      readonly elbow?: { readonly pieces: number; readonly radius: number };
    }
  | {
      readonly kind: 'box';
      readonly wide: number;
      readonly deep: number;
      readonly corner: number;
      readonly roll: number;
    }
  | { readonly kind: 'bend'; readonly od: number; readonly radius: number; readonly centre: number };

/** One header as it lies at an end; a mitre's angle is 90 less half its turn. Lengths in mm, angles in degrees. */
export interface AskedPart {
  readonly onto: Onto;
  readonly angle: number;
  readonly clock: number;
  readonly offset: number;
  readonly shift: number;
}

/** The tube that is coped: round by its outside diameter, or rectangular with corners of an outside radius. */
export type AskedTube =
  | { readonly od: number }
  | { readonly wide: number; readonly deep: number; readonly corner: number };

/** One end of a tube, asked for in numbers as a job file has them. */
export interface AskedEnd {
  readonly tube: AskedTube;
  readonly wall: number;
  readonly end: EndName;
  readonly parts: readonly [AskedPart, ...AskedPart[]];
}

const DEGREE = Math.PI / 180;

/** A part as a solid and the half space behind its trim plane. */
export function headerAt(part: AskedPart, end: EndName): Header {
  const { onto, angle, clock, offset, shift } = part;
  return partAt(end, {
    header: headerOf(onto),
    angle: angle * DEGREE,
    clock: clock * DEGREE,
    offset,
    shift,
  });
}

function headerOf(onto: Onto): radians.AskedHeader {
  switch (onto.kind) {
    case 'round':
      return { kind: 'round', radius: onto.od / 2 };
    case 'plate':
      return { kind: 'plate' };
    case 'mitre':
      return { kind: 'mitre', turn: onto.turn * DEGREE };
    case 'box':
      return { ...onto, roll: onto.roll * DEGREE };
    case 'bend': {
      const { od, radius, centre } = onto;
      return { kind: 'bend', radius: od / 2, bendRadius: radius, centre: centre * DEGREE };
    }
  }
}

/** Where the line of the tube's outside at a station lands on one part, coming from the body. */
export function landedOn(tube: AskedTube, header: Header, station: number): Landing {
  const { x, y } = outsideAt(tube, station);
  return landingOnAll([header], x, y);
}

/** All the way round a tube in its stations: 2 pi, or mm round the outside of a rectangular one. */
export function turnOf(tube: AskedTube): number {
  return wallOf({ tube: tubeOf(tube) }).turn;
}

/** The point of the outside at a station: an angle, or mm walked from the middle of the wide face on +x towards +y. */
export function outsideAt(tube: AskedTube, station: number): { readonly x: number; readonly y: number } {
  const [x, y] = wallOf({ tube: tubeOf(tube) }).at(station, 0);
  return { x, y };
}

function tubeOf(tube: AskedTube): radians.AskedTube {
  return 'od' in tube ? { kind: 'round', radius: tube.od / 2 } : { kind: 'rectangular', ...tube };
}
