import type { FactName } from '../../draw/facts.ts';
import type { EndName } from '../../job/job.ts';
import type { Said } from '../../measure/said.ts';
import { bendJobOf } from '../bend-pieces.ts';
import type { NamedEnd, Piece } from '../piece.ts';
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
    ...(first ? [{ fact: 'step:scrap', text: scrapStep(piece, first), once: true } as const] : []),
    ...each('step:blank', blankStep(piece)),
    ...each('step:square', ...squareSteps(piece)),
    ...each('step:spine', ...spineStep(piece)),
    ...(first ? cutSteps(first.name, firstCutSteps(piece, first)) : []),
    ...(first ? of(first.name, each('step:seat', seatStep(piece, first))) : []),
    ...(second ? secondSteps(piece, second) : []),
    ...each('step:deburr', deburrStep(piece)),
    ...each('step:knife', ...knifeStep(piece, copes)),
    ...each('step:footprint', ...landingStep(piece)),
    ...each('step:vent', ...ventStep(piece)),
    ...each('step:clean', ...cleanStep(piece, copes)),
    ...each('step:set', ...setSteps(piece)),
  ];
}

function secondSteps(piece: Piece, second: NamedEnd): readonly Step[] {
  return of(second.name, [
    ...each('step:mark', ...markSteps(piece, second)),
    ...each('step:lay', secondLayStep(piece, second)),
    ...each('step:facing', facingStep(piece, second)),
    ...each('step:cut', secondCutStep(piece, second)),
    ...each('step:seat', seatStep(piece, second)),
  ]);
}

function cutSteps(end: EndName, [lay, cut]: readonly [Said, Said]): readonly Step[] {
  return of(end, [...each('step:lay', lay), ...each('step:cut', cut)]);
}

function each(fact: FactName, ...texts: readonly Said[]): readonly Step[] {
  return texts.map((text) => ({ fact, text }));
}

function of(end: EndName, steps: readonly Step[]): readonly Step[] {
  return steps.map((step) => ({ ...step, end }));
}
