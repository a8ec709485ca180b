import type { End, MitreHeader, Tube } from '../job/job.ts';
import type { Mm } from '../measure/units.ts';

/** The corner of a bend that is made of straight pieces. */
export type Segmented = MitreHeader & { readonly segments: NonNullable<MitreHeader['segments']> };

/**
 * The bend that a tube with one end stands for: all its pieces are made by that end's leaf. Undefined for any other
 * tube; one with two ends is itself the first piece of the elbows at its ends.
 */
export function wholeBend({ ends }: Pick<Tube, 'ends'>): Segmented | undefined {
  return ends.A && ends.B ? undefined : elbowAt(ends.A ?? ends.B);
}

/** The elbow that an end is the first joint of, if its mitre is one of several pieces. */
export function elbowAt(end: End | undefined): Segmented | undefined {
  const onto = end?.kind === 'coped' ? end.parts[0].onto : undefined;
  if (onto?.kind !== 'mitre' || !onto.segments) return undefined;
  return { ...onto, segments: onto.segments };
}

/** Every joint of the pieces has two mitred ends. */
export function mitredEnds({ segments: { pieces } }: Segmented): number {
  return 2 * pieces - 2;
}

/**
 * How long an end piece of a bend is on its centre line, from where its straight would begin; a middle piece is twice as
 * long. Each cut halves the turn of its two neighbours, T / (N - 1): R tan(T / (2N - 2)), half the side of a polygon
 * round a circle.
 */
export function endPieceLength({ turn, segments: { pieces, radius } }: Segmented): Mm {
  return radius.mm * Math.tan(turn.rad / (2 * pieces - 2));
}
