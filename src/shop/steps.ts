import { blankStep, scrapStep, spineStep, squareSteps } from './blank-steps.ts';
import { copeStep, facingStep, markSteps, otherEndsSteps, seatStep } from './cope-steps.ts';
import { cleanStep, deburrStep, knifeStep, landingStep, setSteps, ventStep } from './finishing-steps.ts';
import type { Piece } from './piece.ts';

/** One thing to do, in words; done for each copy unless `once`. */
export interface Step {
  readonly text: string;
  readonly once?: true;
}

/**
 * What is done to one tube, in the order of the trade and with its own numbers, and only what this tube needs: blank,
 * spine, a try on scrap, the first end, its seat, the marks of a fit-up, which way it faces, the second end, edges,
 * landing, vent, clean metal, and the fit.
 */
export function stepsOf(piece: Piece): readonly Step[] {
  const { first, second } = piece;
  const copes = [first, second].flatMap((end) => end ?? []);
  return [
    ...each(blankStep(piece), ...squareSteps(piece), ...spineStep(piece)),
    ...(first ? [{ text: scrapStep(piece, first), once: true } as const] : []),
    ...(first ? each(copeStep(piece, first, 'first'), seatStep(first)) : []),
    ...(second ? each(...markSteps(piece, second), facingStep(piece, second)) : []),
    ...(second ? each(copeStep(piece, second, 'second'), seatStep(second)) : []),
    ...each(
      ...copes.flatMap(otherEndsSteps),
      deburrStep(piece),
      ...knifeStep(copes),
      ...landingStep(copes),
      ...ventStep(piece),
      ...cleanStep(copes),
      ...setSteps(piece),
    ),
  ];
}

function each(...texts: readonly string[]): readonly Step[] {
  return texts.map((text) => ({ text }));
}
