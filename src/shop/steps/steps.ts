import { hollowLanding } from '../../fit/vent.ts';
import { bendJobOf } from '../bend-pieces.ts';
import { copedEnds, type NamedEnd, type Piece } from '../piece.ts';
import { bendSteps, elbowSteps } from './bend-steps.ts';
import { blankStep, scrapStep, squareSteps } from './blank-steps.ts';
import { firstCutStep, firstLayStep, secondCutStep, secondLayStep } from './cope-steps.ts';
import { facingStep, firstFacingStep } from './facing-step.ts';
import { cleanStep, landingSteps, setStep, ventStep } from './finishing-steps.ts';
import { markSteps } from './mark-steps.ts';
import { seatStep } from './seat-steps.ts';
import { isPlaced, spineStep } from './spine-step.ts';
import type { Step } from './step.ts';

/**
 * What is done to one tube, in the order of the trade and with its own numbers, and only what this tube needs: a try on
 * scrap, blank, spine, the first leaf, which way it faces where that can be wrong, the first end and its seat, the marks of a fit-up, the second leaf, which way it faces, the second
 * end, its seat, landing, vent, clean metal, and the fit. Landings that are printed are marked, and vented, before an end is seated
 * there, unless one is found at the frame; those that are scribed round the held tube, after. A tube that goes among others, whose header
 * may be one that is cut later, has both its ends cut before either is seated, unless one is found at the frame.
 */
export function stepsOf(piece: Piece): readonly Step[] {
  const { first, second, sawn, solution } = piece;
  const bend = bendJobOf(solution);
  if (bend && first) return bendSteps(piece, first, bend);
  const copes = copedEnds(piece);
  const { printed, held } = landingSteps(piece);
  const vent = ventStep(piece);
  const vented = hollowLanding(solution)?.end;
  const isVentedLate = held.some(({ end }) => end === undefined || end === vented);
  const isFoundAtFrame = copes.some(({ cope }) => cope.fitUp);
  const isEarly = piece.footprints && !isFoundAtFrame;
  const marked = isEarly ? [...printed, ...(isVentedLate ? [] : vent)] : [];
  const ends = [
    ...sawn.flatMap((end) => of(end, [seatStep({ ...piece, first: end }, end)])),
    ...(first ? of(first, firstSteps(piece, first)) : []),
    ...(second ? of(second, secondSteps(piece, second)) : []),
  ];
  return [
    ...scrapStep(piece),
    blankStep(piece),
    ...squareSteps(piece),
    ...spineStep(piece),
    ...marked,
    ...(isPlaced(piece) && !isFoundAtFrame ? seatedLast(ends) : ends),
    ...elbowSteps(piece),
    ...[...printed, ...held, ...vent].filter((each) => !marked.includes(each)),
    ...cleanStep(piece, copes),
    ...setStep(piece),
  ];
}

function firstSteps(piece: Piece, first: NamedEnd): readonly Step[] {
  return [
    firstLayStep(piece, first),
    ...firstFacingStep(piece, first),
    firstCutStep(piece, first),
    seatStep(piece, first),
  ];
}

function secondSteps(piece: Piece, second: NamedEnd): readonly Step[] {
  return [
    ...markSteps(piece, second),
    secondLayStep(piece, second),
    facingStep(piece, second),
    secondCutStep(piece, second),
    seatStep(piece, second),
  ];
}

function seatedLast(steps: readonly Step[]): readonly Step[] {
  return [false, true].flatMap((seats) => steps.filter(({ fact }) => (fact === 'step:seat') === seats));
}

function of({ name }: NamedEnd, steps: readonly Step[]): readonly Step[] {
  return steps.map((each) => ({ ...each, end: name }));
}
