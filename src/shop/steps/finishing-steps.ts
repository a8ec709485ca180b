import { hollowLanding, ventOf } from '../../fit/vent.ts';
import type { Tube } from '../../job/job.ts';
import { headerFactsOf } from '../../job/kinds.ts';
import { tubeFactsOf, unitsOfTube } from '../../job/sections.ts';
import { landings } from '../../leaf/footprint/leaf.ts';
import type { Said } from '../../measure/said.ts';
import type { Mm } from '../../measure/units.ts';
import type { Language } from '../../words/language.ts';
import { copedEnds, isMitred, landingName, type NamedEnd, type Piece, plainEnd } from '../piece.ts';
import { type Step, step } from './step.ts';

/** The footprints scribed by their prints, where these are asked for, and those scribed round the tube itself. */
export function landingSteps(piece: Piece): Record<'printed' | 'held', readonly Step[]> {
  const ends = landed(copedEnds(piece));
  const isPrinted = ({ cope }: NamedEnd): boolean => piece.footprints && landings(cope).length > 0;
  const [printed, held] = [ends.filter(isPrinted), ends.filter((end) => !isPrinted(end))];
  const told = (words: Said, [end, other]: readonly NamedEnd[]): Step => ({
    ...step('step:footprint', words),
    ...(end && !other && { end: end.name }),
  });
  return {
    printed: printed.length > 0 ? [told(printedWords(piece, printed), printed)] : [],
    held: held.length > 0 ? [told(heldWords(piece, held, printed.length > 0), held)] : [],
  };
}

/** `mixed` where the other end has its footprint printed. What no print tells of a frame's places, the tickets of its headers do. */
function heldWords({ footprints, solution, words }: Piece, ends: readonly NamedEnd[], mixed: boolean): Said {
  const [end, other] = ends;
  const { finish } = words.steps;
  const isPlaced = footprints && solution.places !== undefined && ends.some(isOnTube);
  if (!end || other) return finish.scribeBoth(isPlaced);
  return finish.scribe(landingName(end, words), mixed ? end.name : undefined, isPlaced);
}

function isOnTube({ cope }: NamedEnd): boolean {
  return cope.end.parts.some(({ onto }) => onto.kind !== 'plate');
}

/** Which of them are printed and how each lies is on their cards. */
function printedWords({ solution, words }: Piece, ends: readonly NamedEnd[]): Said {
  const [end, other] = ends;
  const flat = ends.some(({ cope }) => cope.end.parts.some(({ onto }) => onto.kind === 'plate'));
  const several = ends.some(({ cope }) => cope.end.parts.length > 1);
  const placed = solution.places !== undefined && ends.some(isOnTube);
  const { finish } = words.steps;
  if (!end || other) return finish.footprints(flat, several, placed);
  return finish.footprintsOf(end.name, landingName(end, words), flat, several, placed);
}

/** A tube that is welded shut at both ends needs a way out for its air: one, into a hollow header; one that is capped, later, but for an end that goes on in another tube. */
export function ventStep(piece: Piece): Step[] {
  const text = ventWords(piece, drillOf(piece.solution.tube, piece.words));
  return text ? [step('step:vent', text)] : [];
}

/** Into a tube of less a hole would be near its wall. */
const SMALL: Mm = 15;

/** How wide a vent is. */
export function drillOf(tube: Tube, words: Language): Said {
  return words.steps.finish.drill(tubeFactsOf(tube.section).across.mm < SMALL, unitsOfTube(tube));
}

function ventWords(piece: Piece, drill: Said): Said | undefined {
  const { solution, goesOn, words } = piece;
  const { finish } = words.steps;
  const vent = ventOf(solution);
  const inside = ventInside(piece, drill);
  if (vent) return vent === 'footprint' && inside ? finish.vent(inside) : finish.ventTube(drill);
  const { A, B } = solution.ends;
  const plain = plainEnd(solution);
  if (!piece.hollow || (plain && goesOn)) return undefined;
  if (A?.kind === 'plain' && B?.kind === 'plain') return finish.ventRail(drill);
  if (landed(copedEnds(piece)).length === 0) return undefined;
  if (plain) return finish.ventLater(drill, plain);
  if (A && B) return undefined;
  return inside ? finish.ventNow(A ? 'B' : 'A', inside) : finish.ventUntold(drill, A ? 'B' : 'A');
}

/** Where a vent goes through a header's wall; undefined where no header is hollow. */
function ventInside({ solution, words }: Piece, drill: Said): Said | undefined {
  const place = hollowLanding(solution);
  const cope = place && solution.ends[place.end];
  if (!place || cope?.kind !== 'coped') return undefined;
  const number = cope.end.parts.length > 1 ? place.part + 1 : undefined;
  return words.steps.finish.ventInside(drill, place.end, number);
}

export function cleanStep({ hollow, units, words }: Piece, ends: readonly NamedEnd[]): Step[] {
  if (ends.length === 0) return [];
  const footprints = landed(ends).flatMap(({ cope }) => cope.end.parts).length;
  return [step('step:clean', words.steps.finish.clean(footprints, hollow, units))];
}

/** How it goes in, between two headers held by both, on one its angle is set; and the hot work that follows. */
export function setStep(piece: Piece): Step[] {
  const [landing, other] = landed(copedEnds(piece));
  const { finish } = piece.words.steps;
  if (!landing) return [];
  const { parts } = landing.cope.end;
  const angles = parts.map(({ onto, angle }, i) => ({
    rad: angle.rad,
    to: parts.length > 1 ? finish.header(i + 1) : headerFactsOf(onto).said(piece.words).name,
  }));
  const text = finish.watched(other ? finish.setBetween : finish.set(angles));
  return [step('step:set', text)];
}

function landed(ends: readonly NamedEnd[]): readonly NamedEnd[] {
  return ends.filter((end) => !isMitred(end));
}
