import type { Said } from '../measure/said.ts';
import type { Mm, Radians } from '../measure/units.ts';
import type { OffAxis, Ring } from '../space/outline.ts';
import type { Solid } from '../space/solid.ts';
import type { Language } from '../words/language.ts';
import type { BendHeader, Header } from './job.ts';

/** All that the rest of the program asks of one header, whatever its kind. */
export interface HeaderFacts {
  /** It in a language: `words` in the person's words and in the other unit, after `onto`, `brief` without that; `name` in few words. */
  said(language: Language): { readonly words: Said; readonly brief: Said; readonly name: Said };
  /** Alike for headers that are cut for with one setting; sizes written in different units are one size. */
  readonly setting: string;
  /** How far it reaches from its axis, along w, to either side; endless where it can't be passed beside. */
  readonly across: Mm;
  /** How far it reaches from its axis towards the tube's body. */
  readonly towards: Mm;
  /** How wide a tube may be whose edge is to touch all round, and what is so wide; not known of every header. */
  readonly room?: Room;
  /** Whether the end lands on a wall: on that it leaves a footprint, and there is something to vent and to clean. */
  readonly wall: boolean;
  /** The same for the opposite hand. */
  readonly mirrored: Header;
  /** What it looks like, in mm. */
  shape(): HeaderShape;
  /** As a solid in the frame of an end that meets it so; and larger by a root gap, square to its surface. */
  solid(angle: Radians, offset: Mm, root: Mm): Solid;
  /** The same with its corners filled square, of a header that has any; larger by a root gap on its flats. */
  filled?(angle: Radians, offset: Mm, root: Mm): Solid;
}

export interface Room {
  readonly mm: Mm;
  readonly of: 'header' | 'flat';
  /** How wide the whole face is that such a flat lies in. */
  readonly face?: Mm;
}

/** What a header looks like, and how paper is wrapped round it. */
export type HeaderShape =
  | {
      readonly kind: 'bar';
      readonly ring: Ring;
      /** Points of the ring from which an edge is seen to run along the bar. */
      readonly edges: readonly OffAxis[];
      /** Once round its outside. */
      readonly girth: Mm;
      /** Where paper round it is folded, mm round from the line that faces the tube; bent all the way where undefined. */
      readonly folds?: readonly Mm[];
    }
  | {
      readonly kind: 'plane';
      /** Whether there is metal behind it. */
      readonly filled: boolean;
    }
  | { readonly kind: 'bent'; readonly bend: BendHeader };

/** A size by which settings are told apart. */
export function keyed(mm: Mm): string {
  return mm.toFixed(4);
}
