import type { Said } from '../measure/said.ts';
import type { Angle, Length, Mm } from '../measure/units.ts';
import type { Stop } from '../space/stopped.ts';
import type { Vector } from '../space/vector.ts';
import type { Language } from '../words/language.ts';
import type { Paper } from './paper/paper.ts';
import type { Origin } from './text/place.ts';

/** What a job file asks for, with every default filled in. Values keep the words they were written in. */
export interface Job {
  readonly title?: string;
  /** The language in which its paper, its reports and its mistakes are said. */
  readonly words: Language;
  readonly units: 'mm' | 'in';
  readonly sheet: SheetAsk;
  readonly tubes: readonly Tube[];
  /** What the shop has to cut from; the same lengths of every size of tube. */
  readonly stock?: Stock;
  /** Where its tubes stand, if they were made from points. */
  readonly frame?: Frame;
  /** The text of the job file, to travel inside the PDF. Flags are turned into such a text first. */
  readonly source: string;
  /** Where each value was written; `locate` and `complainAt` read it. */
  readonly origin?: Origin;
}

/** Tubes in space, in mm: x to the right, y away from the person, z up. */
export interface Frame {
  /** By their names; both names of two points that were joined are there. */
  readonly points: ReadonlyMap<string, Vector>;
  /** How each tube of the job stands, in the job's order. */
  readonly seats: readonly Seat[];
  /** What to know of it that is no mistake. */
  readonly notes: readonly FrameNote[];
  /** Of what the tubes are made, in g/cm3. */
  readonly density: number;
}

export interface Seat {
  /** The names of its two points, as the file has them. */
  readonly along: readonly [from: string, to: string];
  readonly from: Vector;
  /** From `from` to the tube's other point, of length 1, and how far that is. */
  readonly axis: Vector;
  readonly length: Mm;
  /** The way that its spine faces, of length 1 and square to the axis. */
  readonly spine: Vector;
  readonly ends: { readonly A: SeatEnd; readonly B: SeatEnd };
}

export interface SeatEnd {
  /** Where its work point lies, along the axis from the seat's first point. */
  readonly workPoint: Mm;
  /** Which tubes its headers are, by their places in the job; a plate is none. */
  readonly headers: readonly number[];
  /** Of a plain end: how far it runs on beyond its point. */
  readonly past?: Mm;
  /** Of a plain end that nothing closes. */
  readonly open?: true;
  /** The tube that it sits in as a sleeve's inner part does. */
  readonly inside?: number;
}

/** What is told of a frame: the tubes, by their places in the job, that it is about. */
export interface FrameNote {
  readonly code: 'near' | 'joined' | 'sense' | 'askew';
  readonly tubes: readonly number[];
  readonly text: Said;
}

export interface Stock {
  readonly lengths: readonly StockLength[];
  /** What one cut takes off the length. */
  readonly kerf: Length;
}

export interface StockLength {
  readonly length: Length;
  /** How many of it there are. */
  readonly count: number;
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
  readonly section: TubeSection;
  readonly wall?: Length;
  /**
   * Work point to work point, or what was measured in its place. There whenever both ends are, unless end B's length
   * is marked at the frame.
   */
  readonly between?: Length | MeasuredBetween;
  readonly allowance: Length;
  readonly pair: boolean;
  /** How many of each hand. */
  readonly copies: number;
  /** The person's own words for its ticket. */
  readonly note?: TicketNote;
  readonly ends: Ends;
}

/** Each a line, with those that hang under it. */
export type TicketNote = readonly (readonly [NoteLine, ...NoteLine[]])[];

export interface NoteLine {
  /** What it is about, where that is set off from the rest. */
  readonly of?: string;
  readonly says: string;
}

/** The length as measured in ways that take the solved ends to come to a number; the first of several is taken. */
export interface MeasuredBetween {
  readonly ways: readonly [BetweenReading, ...BetweenReading[]];
}

/** One measured length of a tube, and between what. */
export type BetweenReading =
  | {
      /**
       * `faces`: along the tube's axis, header surface to header surface; `overall`: long point to long point;
       * `seated`: along the spine from the edge of the seated end A to the level of end B's length mark.
       */
      readonly way: 'work-points' | 'faces' | 'overall' | 'seated';
      readonly length: Length;
    }
  | {
      /** Along the line of the tube's outside at this station, header to header; a length is mm round the outside. */
      readonly way: 'straightedge';
      readonly length: Length;
      readonly at: Angle | Length;
    };

/** The shape of the tube that is coped. */
export type TubeSection = RoundSection | RectangularSection;

export interface RoundSection {
  readonly kind: 'round';
  readonly od: Length;
}

export interface RectangularSection {
  readonly kind: 'rectangular';
  /** Across station 0: the spine runs along the middle of a wide face. */
  readonly wide: Length;
  readonly deep: Length;
  /** Outside radius of the corners. */
  readonly corner: Length;
}

export interface Ends {
  readonly A?: End;
  readonly B?: End;
}

export type EndName = 'A' | 'B';

export function otherEnd(end: EndName): EndName {
  return end === 'A' ? 'B' : 'A';
}

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
  /** The gap meant for the weld, the same all round, square to the header's surface; from 0 to under 10 mm. */
  readonly root?: Length;
  /** Cut to the flat of the boxes that it lands on, and their corners are left to be filled. */
  readonly toFlat?: true;
  /** Where the leaf's seam is, if the job says so: a station, or where these are mm round the outside such a length. */
  readonly seam?: Angle | Length;
  /** What is marked on the tube at the frame, with end A seated, and not known as a number. End B only. */
  readonly fitUp?: FitUp;
}

/** At least one of the two is true. With `clock` the stations of this end count from the rotation mark. */
export interface FitUp {
  readonly clock: boolean;
  readonly between: boolean;
}

export interface Part {
  readonly onto: Header;
  /** Between the tube's body and the header's axis. */
  readonly angle: Angle;
  /** The station of the heel, when the angle is acute. */
  readonly clock: Angle;
  /** From the tube's axis to the header's, positive towards clock + 90 degrees. */
  readonly offset: Length;
  /** Moves the header's work point along the tube, positive towards the body. */
  readonly shift: Length;
  /** Of a header that ends at the joint: its own end, beyond which there is nothing of it. */
  readonly stops?: HeaderEnd;
}

/** How a straight header's own end is cut, and how that end's frame lies in the frame of what lands on the header. */
export interface HeaderEnd extends Pick<Stop, 'at' | 'ahead' | 'turn' | 'round'> {
  readonly section: TubeSection;
  readonly end: End;
  /** Of a tube of a frame that is landed on because it comes first at the point: its name. */
  readonly name?: string;
}

/** What a tube lands on. */
export type Header = RoundHeader | PlateHeader | MitreHeader | BoxHeader | BendHeader;

export interface RoundHeader {
  readonly kind: 'round';
  readonly od: Length;
}

/** A flat surface that holds the header's axis. */
export interface PlateHeader {
  readonly kind: 'plate';
}

/** Another end of the same tube: each is cut on the plane that halves the turn. */
export interface MitreHeader {
  readonly kind: 'mitre';
  readonly turn: Angle;
  /** A bend made of straight pieces. */
  readonly segments?: { readonly pieces: number; readonly radius: Length };
}

/** A rectangular tube. */
export interface BoxHeader {
  readonly kind: 'box';
  /** Along the direction square to the header and to the plane of the two axes, before it is rolled. */
  readonly wide: Length;
  readonly deep: Length;
  readonly corner: Length;
  /** Turns the body's side towards that direction. */
  readonly roll: Angle;
}

/** A bent round tube. */
export interface BendHeader {
  readonly kind: 'bend';
  readonly od: Length;
  /** To the tube's centre line. */
  readonly radius: Length;
  /** Where the bend's centre lies, seen along the tangent: 0 towards the body. */
  readonly centre: Angle;
}

/** How the edge of the cut is made, which decides the line to cut to. */
export type Preparation =
  | { readonly edge: 'bevel'; readonly land?: Length }
  | { readonly edge: 'square'; readonly from: 'outside' | 'inside' };
