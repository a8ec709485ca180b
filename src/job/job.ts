import type { Angle, Length } from '../measure/units.ts';
import type { Paper } from './paper.ts';
import type { Origin } from './place.ts';

/** What a job file asks for, with every default filled in. Values keep the words they were written in. */
export interface Job {
  readonly title?: string;
  readonly units: 'mm' | 'in';
  readonly sheet: SheetAsk;
  readonly tubes: readonly Tube[];
  /** The text of the job file, to travel inside the PDF. Flags are turned into such a text first. */
  readonly source: string;
  /** Where each value was written; `locate` and `complainAt` read it. */
  readonly origin?: Origin;
}

export interface SheetAsk {
  readonly paper: Paper;
  readonly margins: Margins;
  readonly paperThickness: Length;
}

export interface Margins {
  readonly left: Length;
  readonly right: Length;
  readonly top: Length;
  readonly bottom: Length;
}

export interface Tube {
  readonly name: string;
  readonly section: Section;
  readonly wall?: Length;
  /** Work point to work point. Stated whenever both ends are. */
  readonly between?: Length;
  readonly allowance: Length;
  readonly pair: boolean;
  /** How many of each hand. */
  readonly copies: number;
  readonly ends: Ends;
}

/** The shape of the tube that is coped. */
export interface Section {
  readonly kind: 'round';
  readonly od: Length;
}

export interface Ends {
  readonly A?: End;
  readonly B?: End;
}

export type EndName = 'A' | 'B';

export type End = PlainEnd | CopedEnd;

/** Cut off square, at its work point. */
export interface PlainEnd {
  readonly kind: 'plain';
}

export interface CopedEnd {
  readonly kind: 'coped';
  /** What the end lands on; more than one header is their union. */
  readonly parts: readonly [Part, ...Part[]];
  readonly preparation: Preparation;
  /** The gap meant for the weld, taken off along the tube's axis; from 0 to under 10 mm. */
  readonly root?: Length;
  /** The station of the leaf's seam, where the job says so. */
  readonly seam?: Angle;
}

export interface Part {
  readonly onto: Header;
  /** Between the tube's body and the header's axis. */
  readonly angle: Angle;
  /** The station of the heel, when the angle is acute. */
  readonly clock: Angle;
  /** From the tube's axis to the header's, positive towards clock + 90 degrees. */
  readonly offset: Length;
}

export interface Header {
  readonly kind: 'round';
  readonly od: Length;
}

/** How the edge of the cut is made, which decides the line to cut to. */
export type Preparation =
  | { readonly edge: 'bevel'; readonly blunt?: Length }
  | { readonly edge: 'square'; readonly from: 'outside' | 'inside' };
