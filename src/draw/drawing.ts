import type { Said } from '../measure/said.ts';
import type { Mm } from '../measure/units.ts';
import type { FactName, Subject } from './facts.ts';

/**
 * A drawing in millimetres, x to the right and y up, that knows no file format. What a line means decides its
 * weight: a mark carries its purpose, and `pens.ts` says how each purpose is drawn.
 */
export interface Drawing {
  /** Unique within a set of sheets; a drawing placed many times is stored once. */
  readonly name: string;
  readonly box: Box;
  readonly marks: readonly Mark[];
  /** What all its words tell of. */
  readonly of?: Subject;
}

export interface Point {
  readonly x: Mm;
  readonly y: Mm;
}

/** A rectangle by its corners: left < right, bottom < top. */
export interface Box {
  readonly left: Mm;
  readonly bottom: Mm;
  readonly right: Mm;
  readonly top: Mm;
}

export type Mark = Stroke | Fill | Words;

/** A line, open or closed, of straight pieces and cubic Béziers. */
export interface Stroke {
  readonly kind: 'stroke';
  readonly purpose: Purpose;
  readonly path: Path;
}

/** A solid shape: arrow heads, tick boxes' marks. */
export interface Fill {
  readonly kind: 'fill';
  readonly purpose: Purpose;
  readonly path: Path;
}

export interface Path {
  readonly start: Point;
  readonly pieces: readonly PathPiece[];
  readonly closed: boolean;
}

export type PathPiece =
  | { readonly kind: 'line'; readonly to: Point }
  | { readonly kind: 'cubic'; readonly c1: Point; readonly c2: Point; readonly to: Point };

/** A run of text on one line. `at` is the left end of its base line before it is turned. */
export interface Words {
  readonly kind: 'words';
  readonly purpose: Purpose;
  readonly text: Said;
  /** What it states: a fact stands once in a file. */
  readonly fact: FactName;
  /** Of what, where the drawing tells of several. */
  readonly of?: Subject;
  /** A further line of the words before it. */
  readonly more?: true;
  /** Height of the em, mm. */
  readonly size: Mm;
  readonly at: Point;
  /** Quarter turns, counter-clockwise: 0, 1, 2 or 3. */
  readonly turn: 0 | 1 | 2 | 3;
}

/** What a mark is for. One weight means one thing; DXF and SVG make a layer of each. */
export type Purpose =
  | 'cut'
  | 'other-edge'
  | 'waste'
  | 'guide'
  | 'fold'
  | 'clean'
  | 'outline'
  | 'seam'
  | 'bar'
  | 'registration'
  | 'picture'
  | 'frame'
  | 'words';
