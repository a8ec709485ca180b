import type { Said } from '../../measure/said.ts';
import { bendJobOf } from '../bend-pieces.ts';
import type { Piece } from '../piece.ts';
import { bendSteps } from './bend-steps.ts';
import { blankStep, scrapStep, spineStep, squareSteps } from './blank-steps.ts';
import { firstCutSteps, secondCutStep, secondLayStep } from './cope-steps.ts';
import { facingStep } from './facing-step.ts';
import { cleanStep, deburrStep, knifeStep, landingStep, setSteps, ventStep } from './finishing-steps.ts';
import { markSteps } from './mark-steps.ts';
import { seatStep } from './seat-steps.ts';
import type { Step } from './step.ts';

/**
 * What is done to one tube, in the order of the trade and with its own numbers, and only what this tube needs: a try on
 * scrap, blank, spine, the first end, its seat, the marks of a fit-up, the second leaf, which way it faces, the second
 * end, edges, landing, vent, clean metal, and the fit.
 */
export function stepsOf(piece: Piece): readonly Step[] {
  const { first, second, solution } = piece;
  const bend = bendJobOf(solution);
  if (bend && first) return bendSteps(piece, first, bend);
  const copes = [first, second].flatMap((end) => end ?? []);
  return [
    ...(first ? [{ text: scrapStep(piece, first), once: true } as const] : []),
    ...each(blankStep(piece), ...squareSteps(piece), ...spineStep(piece)),
    ...(first ? each(...firstCutSteps(piece, first), seatStep(piece, first)) : []),
    ...(second ? each(...markSteps(piece, second), secondLayStep(piece, second)) : []),
    ...(second ? each(facingStep(piece, second), secondCutStep(piece, second)) : []),
    ...(second ? each(seatStep(piece, second)) : []),
    ...each(
      deburrStep(piece),
      ...knifeStep(piece, copes),
      ...landingStep(piece),
      ...ventStep(piece),
      ...cleanStep(piece, copes),
      ...setSteps(piece),
    ),
  ];
}

function each(...texts: readonly Said[]): readonly Step[] {
  return texts.map((text) => ({ text }));
}
