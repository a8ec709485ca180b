import { blankStep, scrapStep, spineStep, squareSteps } from './blank-steps.ts';
import { copeStep, facingStep, markSteps, seatStep } from './cope-steps.ts';
import { cleanStep, deburrStep, knifeStep, landingStep, setSteps, ventStep } from './finishing-steps.ts';
import type { Piece } from './piece.ts';

/**
 * What is done to one tube, in the order of the trade and with its own numbers, and only what this tube needs: blank,
 * spine, a try on scrap, the first end, its seat, the marks of a fit-up, which way it faces, the second end, edges,
 * landing, vent, clean metal, and the fit.
 */
export function stepsOf(piece: Piece): readonly string[] {
  const { first, second } = piece;
  const copes = [first, second].flatMap((end) => end ?? []);
  return [
    blankStep(piece),
    ...squareSteps(piece),
    ...spineStep(piece),
    ...(first ? [scrapStep(piece, first), copeStep(piece, first, 'first'), seatStep(first)] : []),
    ...(second
      ? [
          ...markSteps(piece, second),
          facingStep(piece, second),
          copeStep(piece, second, 'second'),
          seatStep(second),
        ]
      : []),
    deburrStep(piece),
    ...knifeStep(copes),
    ...landingStep(copes),
    ...ventStep(piece),
    ...cleanStep(copes),
    ...setSteps(piece),
  ];
}
