import { standOffOf } from '../../fit/stand-off.ts';
import { isTight, MOST_STAND_OFF, tooShort } from '../../fit/warnings.ts';
import type { Tube } from '../../job/job.ts';
import { tubeFactsOf } from '../../job/sections.ts';
import { foldStations } from '../../leaf/wrap/folds.ts';
import type { Said } from '../../measure/said.ts';
import { sawLength, tapeLength } from '../../measure/saw-length.ts';
import type { Mm } from '../../measure/units.ts';
import { copedEnds, isMitred, type NamedEnd, type Piece, plainEnd } from '../piece.ts';
import { cutWarnings, edgeOf } from './cope-steps.ts';
import { type Step, step } from './step.ts';

/** All leaves of the tube cut out and tried on scrap, before a blank is cut. */
export function scrapStep({ solution, first, second, units, words: { steps, quantities } }: Piece): Step[] {
  const folded = foldStations(solution.section).length > 0;
  const ends = [first, second].flatMap((end) => end ?? []);
  if (ends.length === 0) return [];
  const off = Math.max(...ends.map(offOnDashes));
  const dashed = off > MOST_STAND_OFF ? [steps.warnings.dashed(quantities.oneToATenth(off, units))] : [];
  return [{ ...step('step:scrap', steps.blank.scrap(ends.map(edgeOf), folded), dashed), once: true }];
}

/** How far a square end stands off where its leaf is cut out on its dashes, which are easily taken for the line. */
function offOnDashes({ cope }: NamedEnd): Mm {
  const { preparation } = cope.end;
  return preparation.edge === 'square' && preparation.from === 'outside' ? (standOffOf(cope) ?? 0) : 0;
}

/** Cutting the blank, how much longer it is than the finished tube, and what no cut mends: a tight heel, and what is too short to be sound or to be held. */
export function blankStep(piece: Piece): Step {
  const { first, second, words } = piece;
  const { blank } = words.steps;
  const small = smallOf(piece);
  const text = small.length > 0 ? blank.onStock(second && first?.name) : blankWords(piece);
  return step('step:blank', text, [...tightOf(piece), ...shortOf(piece), ...small]);
}

function blankWords({ solution, first, second, blanks, units, words }: Piece): Said {
  const { lengths, ends } = solution;
  const { blank } = words.steps;
  if (!lengths) {
    if (ends.A && ends.B) return blank.marked(blanks);
    return first
      ? blank.unmeasured(blanks, first.name, -first.cope.longPoint.setback, units)
      : blank.long(blanks);
  }
  if (!first && !second) return blank.square(blanks, words.quantities.tape(lengths.overall, units));
  const over = tapeLength(sawLength(lengths.blank, units) - lengths.overall, units);
  return over > 0 ? blank.over(blanks, words.quantities.tape(over, units)) : blank.exact(blanks);
}

/** Ends whose angle is opened now or never. */
function tightOf(piece: Piece): Said[] {
  const ends = copedEnds(piece).filter((end) => !isMitred(end) && end.cope.end.parts.some(isTight));
  return ends.map(({ name }) => piece.words.steps.warnings.heel(name));
}

function shortOf({ solution, units, words }: Piece): Said[] {
  const left = tooShort(solution);
  return left === undefined ? [] : [words.steps.warnings.short(words.quantities.tape(left, units))];
}

/** Two hands hold no less than 150 mm, nor than three diameters: common practice, no source. */
export function leastHeld({ section }: Tube): Mm {
  return Math.max(150, 3 * tubeFactsOf(section).across.mm);
}

/** A piece that is never held by hand. */
function smallOf({ solution: { lengths, tube }, first, second, words }: Piece): Said[] {
  if (!lengths || !first) return [];
  if (lengths.overall >= leastHeld(tube)) return [];
  return [words.steps.warnings.small(first.name, second?.name)];
}

/** A saw of a small shop takes no more: common practice, no source. */
const SAW: Mm = 100;

/** A square end beside a coped one: it is what the length is measured from. */
export function squareSteps(piece: Piece): Step[] {
  const { solution, first, words } = piece;
  const plain = plainEnd(solution) ?? piece.sawn[0]?.name;
  if (!first || !plain) return [];
  const isWide = tubeFactsOf(solution.tube.section).across.mm > SAW;
  const warnings = piece.sawn.flatMap((end) => cutWarnings(piece, end));
  return [step('step:square', words.steps.blank.squareEnd(plain, isWide), warnings)];
}
