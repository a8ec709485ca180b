import type { Box, Drawing } from '../draw/drawing.ts';
import type { Said } from '../measure/said.ts';

/** Which way something lies on paper. */
export type JointSide = 'up' | 'down';

/** One end of one tube on paper, in the two pieces that may lie apart. */
export interface Leaf {
  /** For maps, neighbours' names and messages, e.g. "bunk stay, end A". */
  readonly title: Said;
  /** The flat pattern with its tab and hatch: may be turned, may be cut into tiles. */
  readonly wrap: Drawing;
  /** Title block, words, side view: never cut by a seam, and on the wrap's (first) sheet where it can be. Left out where a ticket says it. */
  readonly card?: Drawing;
  /** What it is made from, as a text that is the same where that is. */
  readonly numbers: string;
  /** Which way the joint lies on the wrap, unturned; left out where it is not to cut by. */
  readonly joint?: JointSide;
  /** Places of the wrap that a seam keeps off: heel, toe, words at the spine, a steep cut; in the wrap's coordinates. */
  readonly keepWhole: readonly Box[];
}

/** A leaf as it is drawn, its card with it. */
export interface CardedLeaf extends Leaf {
  readonly card: Drawing;
  /** Whether the card says what has no room on the wrap. */
  readonly beside: boolean;
}
