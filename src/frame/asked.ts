import type { Header, RectangularSection, TubeSection } from '../job/job.ts';
import type { EdgeAsk } from '../job/preparation.ts';
import type { Spot } from '../job/text/desk.ts';
import type { TubeAsk } from '../job/tube.ts';
import type { Angle, Length, Mm } from '../measure/units.ts';
import type { Vector } from '../space/vector.ts';

/** A frame as its file asks for it, with no place worked out yet. */
export interface AskedFrame {
  readonly points: readonly AskedPoint[];
  readonly tubes: readonly AskedTube[];
  readonly plane?: MirrorPlane;
  /** Points that are nearer than this are one. */
  readonly snap: Mm;
  readonly density: number;
}

/** What stands at one number on one axis: 0, 1 and 2 are x, y and z. */
export interface MirrorPlane {
  readonly axis: 0 | 1 | 2;
  readonly at: Mm;
}

/** A name of the file as it is spoken of, and where it stands. */
export interface Named {
  readonly name: string;
  readonly spot: Spot;
}

export interface AskedPoint extends Named {
  readonly way: PointWay;
}

export type PointWay =
  | { readonly kind: 'at'; readonly place: Vector }
  /** So far along a tube's axis from its first point; with `out`, on its outside there. */
  | { readonly kind: 'on'; readonly tube: Named; readonly at: Length; readonly out?: Vector }
  | { readonly kind: 'between'; readonly of: readonly [Named, Named]; readonly share: number }
  | { readonly kind: 'from'; readonly from: Named; readonly by: Vector };

/** A point by its name, or by its place written out. */
export type PointAsk = Named | { readonly place: Vector; readonly spot: Spot };

export interface AskedTube extends Named, TubeAsk {
  readonly section: TubeSection;
  readonly along: readonly [PointAsk, PointAsk];
  readonly face?: { readonly way: Vector; readonly spot: Spot };
  readonly through: boolean;
  readonly after: readonly Named[];
  readonly ends: { readonly A: AskedEnd; readonly B: AskedEnd };
}

export interface AskedEnd {
  readonly spot: Spot;
  readonly cut: CutAsk;
  readonly edges: EdgeAsk;
  readonly root?: Length;
  readonly toFlat?: true;
  readonly seam?: Angle | Length;
  readonly inside?: Named;
}

/** How an end is cut where its file says so; `found` is what follows from what it meets. */
export type CutAsk =
  | { readonly kind: 'found'; readonly mitre?: boolean; readonly past?: Length }
  | { readonly kind: 'plain'; readonly past?: Length }
  | { readonly kind: 'onto'; readonly names: readonly Named[] }
  /** In the plane through its point that is square to this way. */
  | { readonly kind: 'flat'; readonly way: Vector };

/** A tube's outside as another tube lands on it, turned by `roll` where its shape shows that. */
export function asHeader(section: TubeSection, roll: Angle): Header {
  return section.kind === 'round' ? { kind: 'round', od: section.od } : boxOf(section, roll);
}

function boxOf({ wide, deep, corner }: RectangularSection, roll: Angle): Header {
  return { kind: 'box', wide, deep, corner, roll };
}
