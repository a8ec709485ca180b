import { dihedralsOf } from '../../fit/dihedrals.ts';
import { isKnife } from '../../fit/warnings.ts';
import { factsOf } from '../../job/kinds.ts';
import { CLEAN_IN_WORDS } from '../../leaf/footprint/clean-to.ts';
import { isHollow, ventOf } from '../../leaf/footprint/vent.ts';
import { writeAngle } from '../../measure/write.ts';
import { isMitred, landingName, type NamedEnd, type Piece } from '../piece.ts';

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

/** By the printed footprints where they are asked for, else round the tube itself. */
export function landingStep(piece: Piece): string[] {
  const [landing, other] = landed(copesOf(piece));
  if (!landing) return [];
  if (piece.footprints) return [footprintWords(landing, other)];
  if (other) return ['Hold the tube in place and scribe both landings round it.'];
  return [`Hold the tube in place and scribe its landing round it, on ${landingName(landing)}.`];
}

/** Which of them are printed and how each lies is on their cards. */
function footprintWords(landing: NamedEnd, other: NamedEnd | undefined): string {
  const flat = [landing, ...(other ? [other] : [])].some(({ cope }) =>
    cope.end.parts.some(({ onto }) => onto.kind === 'plate'),
  );
  const [verb, how] = flat ? ['Lay', 'on'] : ['Wrap', 'round'];
  if (other) return `${verb} each end’s footprint ${how} its header, as its card says, and scribe by it.`;
  const on = `of end ${landing.name} ${how} ${landingName(landing)}`;
  return landing.cope.end.parts.length > 1
    ? `${verb} the footprints ${on}, as their cards say, and scribe by them.`
    : `${verb} the footprint ${on}, as its card says, and scribe by it.`;
}

/** The coped ends, A before B. */
function copesOf({ first, second }: Piece): readonly NamedEnd[] {
  return [first, second].flatMap((end) => end ?? []).toSorted((a, b) => (a.name < b.name ? -1 : 1));
}

/** A tube that is welded shut at both ends needs a way out for its air: one, into the first hollow header. */
export function ventStep(piece: Piece): string[] {
  const vent = ventOf(piece.solution);
  if (!vent) return [];
  const hollow = copesOf(piece).find(({ cope }) => cope.end.parts.some(isHollow));
  if (vent === 'in the tube' || !hollow)
    return ['Drill one vent, in the tube itself: welded shut, it would burst.'];
  const { parts } = hollow.cope.end;
  const wall = parts.length > 1 ? `the wall of header ${parts.findIndex(isHollow) + 1}` : 'the header’s wall';
  return [
    `Drill one vent, inside end ${hollow.name}’s landing, through ${wall}: welded shut, it would burst.`,
  ];
}

export function cleanStep(ends: readonly NamedEnd[]): string[] {
  if (ends.length === 0) return [];
  const landings = landed(ends).flatMap(({ cope }) => cope.end.parts).length;
  const round = landings > 0 ? ` and round ${landings > 1 ? 'each' : 'its'} landing` : '';
  return [`Clean bright ${CLEAN_IN_WORDS} back from the edges${round}.`];
}

/** How it goes in: between two headers it is held by both, on one its angle is set. */
export function setSteps(piece: Piece): string[] {
  const [landing, other] = landed(copesOf(piece));
  if (!landing) return [];
  if (other) return ['Set it in by hand: do not spring the frame to make it fit. Tack, and check again.'];
  const { parts } = landing.cope.end;
  const angles = parts.map(({ onto, angle }, i) => {
    const to = parts.length > 1 ? `header ${i + 1}` : factsOf(onto).name;
    return angle.rad === Math.PI / 2 ? `square to ${to}` : `at ${writeAngle(angle.rad)} to ${to}`;
  });
  return [
    `Set it ${angles.join(' and ')}. Tack, check the angle, and set it again where the tack has drawn it.`,
  ];
}

function landed(ends: readonly NamedEnd[]): readonly NamedEnd[] {
  return ends.filter((end) => !isMitred(end));
}

function namesOf(ends: readonly NamedEnd[]): string {
  return ends.map(({ name }) => `end ${name}`).join(' and ');
}
