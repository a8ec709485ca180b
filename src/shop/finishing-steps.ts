import { dihedralsOf } from '../fit/dihedrals.ts';
import { isKnife } from '../fit/warnings.ts';
import { CLEAN_IN_WORDS } from '../leaf/clean-to.ts';
import { ventOf } from '../leaf/vent.ts';
import { isMitred, landingName, type NamedEnd, type Piece } from './piece.ts';

export function deburrStep({ solution }: Piece): string {
  const { A, B } = solution.ends;
  return `Deburr ${A && B ? 'both ends' : 'the end'} inside and out.`;
}

/** Only where an end is bevelled to an edge like a knife's and nothing takes it off. */
export function knifeStep(ends: readonly NamedEnd[]): string[] {
  const sharp = ends.filter(({ cope }) => isKnife(cope, dihedralsOf(cope)));
  if (sharp.length === 0) return [];
  return [
    `Take the knife edge off ${namesOf(sharp)} to about half the wall: it cuts fingers and burns away.`,
  ];
}

export function landingStep(ends: readonly NamedEnd[]): string[] {
  const [landing, other] = landed(ends);
  if (!landing) return [];
  if (other) return ['Hold the tube in place and scribe both landings round it.'];
  return [`Hold the tube in place and scribe its landing round it, on ${landingName(landing)}.`];
}

/** A tube that is welded shut at both ends needs a way out for its air. */
export function ventStep({ solution }: Piece): string[] {
  const vent = ventOf(solution);
  if (!vent) return [];
  const where =
    vent === 'in a landing' ? 'inside one landing, through the header’s wall' : 'in the tube itself';
  return [`Drill a vent ${where}: welded shut, it would burst.`];
}

export function cleanStep(ends: readonly NamedEnd[]): string[] {
  if (ends.length === 0) return [];
  const both = landed(ends).length > 0 ? ' and round each landing' : '';
  return [`Clean bright ${CLEAN_IN_WORDS} back from the edges${both}.`];
}

/** How it goes in. */
export function setSteps({ first, second }: Piece): string[] {
  if (!first || !second || isMitred(first) || isMitred(second)) return [];
  return ['Set it in by hand: do not spring the frame to make it fit. Tack, and check again.'];
}

function landed(ends: readonly NamedEnd[]): readonly NamedEnd[] {
  return ends.filter((end) => !isMitred(end));
}

function namesOf(ends: readonly NamedEnd[]): string {
  return ends.map(({ name }) => `end ${name}`).join(' and ');
}
