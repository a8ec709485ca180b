import { missedBy } from '../../fit/contact.ts';
import { roomLacking } from '../../fit/warnings.ts';
import type { EndName } from '../../job/job.ts';
import { innerEdgeOf } from '../../leaf/card/edge-words.ts';
import { foldStations } from '../../leaf/wrap/folds.ts';
import type { Said } from '../../measure/said.ts';
import type { Mm } from '../../measure/units.ts';
import type { Cope } from '../../saddle/cope.ts';
import { sawnAt } from '../../saddle/sawn.ts';
import type { Language } from '../../words/language.ts';
import { joined } from '../../words/said.ts';
import type { NamedEnd, Piece } from '../piece.ts';
import { hasSpine } from './spine-step.ts';
import { type Step, step } from './step.ts';

type Edge = Parameters<Language['steps']['cut']['end']>[2];

/** The first leaf on the tube. */
export function firstLayStep(piece: Piece, end: NamedEnd): Step {
  const { lay } = piece.words.steps;
  const folded = foldStations(piece.solution.section).length > 0;
  return step(
    'step:lay',
    lay.first(end.name, whyFirst(piece, end), hasSpine(piece), folded, placedFirst(piece)),
  );
}

/** The first cut. */
export function firstCutStep(piece: Piece, end: NamedEnd): Step {
  const { second, solution, words } = piece;
  // The other end is measured from it: by its leaf, or later, where that end is not told.
  const marksBase = (second !== undefined) === (solution.lengths !== undefined);
  const { cut } = words.steps;
  const text = cut.end(end.name, marksBase, edgeOf(end));
  const from = marksBase && !second ? [cut.lengthFrom] : [];
  return step('step:cut', joined([text, ...from], ''), cutWarnings(piece, end));
}

/** That it is the first of two, and of an end B why. */
function whyFirst({ second, words: { steps } }: Piece, { name, cope }: NamedEnd): Said {
  const { alone, asNamed, shallower, inOrder } = steps.lay.isFirst;
  if (!second) return alone;
  if (name === 'A') return asNamed;
  return depthOf(cope) < depthOf(second.cope) ? shallower : inOrder;
}

/** How much of the tube an end's cut takes, along it. */
export function depthOf({ throat, longPoint }: Cope): Mm {
  return throat.setback - longPoint.setback;
}

function placedFirst(piece: Piece): Said {
  const { lay } = piece.words.steps;
  const from = squareEndOf(piece);
  return from ? lay.fromEnd(from) : lay.atLongPoint;
}

/** The square end from which the leaf of the other one is measured. */
export function squareEndOf({ solution, second }: Piece): EndName | undefined {
  if (second || !solution.lengths) return undefined;
  return sawnAt(solution, 'A') === undefined ? 'B' : 'A';
}

/** The second leaf on the tube, placed by the first one or by the marks made at the frame. */
export function secondLayStep({ first, solution, words }: Piece, { name, cope }: NamedEnd): Step {
  const { lay } = words.steps;
  const marks = {
    rotation: cope.fitUp?.clock ?? false,
    length: cope.fitUp?.lengthSetback !== undefined,
  };
  return step(
    'step:lay',
    lay.second(name, cope.fitUp !== undefined, lay.after(marks, solution.lengths && first?.name)),
  );
}

/** The second cut, after the look at which way it faces. */
export function secondCutStep(piece: Piece, end: NamedEnd): Step {
  const { first, words } = piece;
  const { cut } = words.steps;
  const own = edgeOf(end);
  const alike = first && isSameEdge(edgeOf(first), own);
  const text = alike ? cut.alike(end.name, first.name) : cut.end(end.name, false, own);
  return step('step:cut', text, cutWarnings(piece, end));
}

/** A tube that is wider than what it lands on. */
export function cutWarnings({ solution: { tube }, units, words }: Piece, { cope }: NamedEnd): Said[] {
  const { steps, quantities } = words;
  const missed = missedBy(tube.section, cope);
  const lacking = cope.end.parts.flatMap((part) => roomLacking(tube.section, cope.end, part) ?? []);
  return missed ? [] : lacking.map(({ by, of }) => steps.warnings.wider(quantities.tape(by, units), of));
}

/** How an end's edge is made. */
export function edgeOf({ cope }: NamedEnd): Edge {
  const { preparation } = cope.end;
  if (preparation.edge === 'square') return { kind: preparation.from === 'inside' ? 'radial' : 'square' };
  const { land } = preparation;
  return { kind: 'bevel', inner: innerEdgeOf(cope), ...(land && { land }) };
}

function isSameEdge(one: Edge, other: Edge): boolean {
  if (one.kind === 'bevel' && other.kind === 'bevel')
    return one.inner === other.inner && one.land?.mm === other.land?.mm;
  return one.kind === other.kind;
}
