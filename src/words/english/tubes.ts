import type { Said } from '../../measure/said.ts';
import type { Length } from '../../measure/units.ts';
import { say } from '../said.ts';
import { quantities } from './quantities.ts';

const { own, written } = quantities;

/** A tube's outside, by its shape. */
type Outside =
  | { readonly kind: 'round'; readonly od: Length }
  | { readonly kind: 'rectangular'; readonly wide: Length; readonly deep: Length; readonly corner: Length };

/** Tubes by their size and their edge. */
export const tubes = {
  /** A tube's size as the person wrote it and in the other unit. */
  size: (outside: Outside): Said =>
    outside.kind === 'round'
      ? written(outside.od)
      : say`${own(outside.wide)} x ${own(outside.deep)}, corners ${written(outside.corner)}`,
};
