import type { Placement } from './solids/implicit-solids.ts';

/** One end in plain numbers, mm and radians: what the brute force, the kernel and the program are all given. */
export interface AskedEnd {
  readonly tube: AskedTube;
  readonly wall: number;
  readonly parts: readonly [AskedPart, ...AskedPart[]];
}

export type AskedTube =
  | { readonly kind: 'round'; readonly radius: number }
  | { readonly kind: 'rectangular'; readonly wide: number; readonly deep: number; readonly corner: number };

/** A header and how it lies; `shift` moves its work point towards the tube's body. */
export interface AskedPart extends Omit<Placement, 'end'> {
  readonly header: AskedHeader;
  readonly shift: number;
}

export type AskedHeader =
  | { readonly kind: 'round'; readonly radius: number }
  | { readonly kind: 'plate' }
  | { readonly kind: 'mitre'; readonly turn: number }
  | AskedBox
  | AskedBend;

export interface AskedBox {
  readonly kind: 'box';
  readonly wide: number;
  readonly deep: number;
  readonly corner: number;
  readonly roll: number;
}

export interface AskedBend {
  readonly kind: 'bend';
  /** Of the bent tube's outside, and of its centre line. */
  readonly radius: number;
  readonly bendRadius: number;
  readonly centre: number;
}
