import { dihedralsOf } from '../../fit/dihedrals.ts';
import { isKnife } from '../../fit/warnings.ts';
import { headerFactsOf } from '../../job/kinds.ts';
import { isHollow, ventOf } from '../../leaf/footprint/vent.ts';
import type { Said } from '../../measure/said.ts';
import { isMitred, landingName, type NamedEnd, type Piece } from '../piece.ts';

export function deburrStep({ solution: { ends }, words }: Piece): Said {
  return words.steps.finish.deburr(ends.A && ends.B ? 2 : 1);
}

/** Only where an end is bevelled to an edge like a knife's and nothing takes it off. */
export function knifeStep({ words }: Piece, ends: readonly NamedEnd[]): Said[] {
  const sharp = ends.filter(({ cope }) => isKnife(cope, dihedralsOf(cope)));
  return sharp.length === 0 ? [] : [words.steps.finish.knife(sharp.map(({ name }) => name))];
}

/** By the printed footprints where they are asked for, else round the tube itself. */
export function landingStep(piece: Piece): Said[] {
  const [landing, other] = landed(copesOf(piece));
  const { finish } = piece.words.steps;
  if (!landing) return [];
  if (piece.footprints) return [footprintWords(piece, landing, other)];
  return [other ? finish.scribeBoth : finish.scribe(landingName(landing, piece.words))];
}

/** Which of them are printed and how each lies is on their cards. */
function footprintWords({ words }: Piece, landing: NamedEnd, other: NamedEnd | undefined): Said {
  const flat = [landing, ...(other ? [other] : [])].some(({ cope }) =>
    cope.end.parts.some(({ onto }) => onto.kind === 'plate'),
  );
  const { finish } = words.steps;
  if (other) return finish.footprints(flat);
  const several = landing.cope.end.parts.length > 1;
  return finish.footprintsOf(landing.name, landingName(landing, words), flat, several);
}

/** The coped ends, A before B. */
function copesOf({ first, second }: Piece): readonly NamedEnd[] {
  return [first, second].flatMap((end) => end ?? []).toSorted((a, b) => (a.name < b.name ? -1 : 1));
}

/** A tube that is welded shut at both ends needs a way out for its air: one, into the first hollow header. */
export function ventStep(piece: Piece): Said[] {
  const vent = ventOf(piece.solution);
  const { finish } = piece.words.steps;
  if (!vent) return [];
  const hollow = copesOf(piece).find(({ cope }) => cope.end.parts.some(isHollow));
  if (vent === 'tube' || !hollow) return [finish.ventTube];
  const { parts } = hollow.cope.end;
  return [finish.vent(hollow.name, parts.length > 1 ? parts.findIndex(isHollow) + 1 : undefined)];
}

export function cleanStep({ words }: Piece, ends: readonly NamedEnd[]): Said[] {
  if (ends.length === 0) return [];
  return [words.steps.finish.clean(landed(ends).flatMap(({ cope }) => cope.end.parts).length)];
}

/** How it goes in: between two headers it is held by both, on one its angle is set. */
export function setSteps(piece: Piece): Said[] {
  const [landing, other] = landed(copesOf(piece));
  const { finish } = piece.words.steps;
  if (!landing) return [];
  if (other) return [finish.setBetween];
  const { parts } = landing.cope.end;
  const angles = parts.map(({ onto, angle }, i) => ({
    rad: angle.rad,
    to: parts.length > 1 ? finish.header(i + 1) : headerFactsOf(onto).said(piece.words).name,
  }));
  return [finish.set(angles)];
}

function landed(ends: readonly NamedEnd[]): readonly NamedEnd[] {
  return ends.filter((end) => !isMitred(end));
}
