import { standOffOf } from '../../fit/stand-off.ts';
import { ROD } from '../../fit/warnings.ts';
import { innerEdgeOf } from '../../leaf/card/edge-words.ts';
import { baseEdgesApart, baseSetbackOf } from '../../leaf/wrap/base-edge.ts';
import type { Said } from '../../measure/said.ts';
import type { Language } from '../../words/language.ts';
import { settingOf } from '../lists/header-key.ts';
import type { NamedEnd, Piece } from '../piece.ts';
import { hasSpine } from './blank-steps.ts';
import { shortPointDepth } from './short-point-depth.ts';

type Edge = Parameters<Language['steps']['cut']['edge']>[0];

/** The first leaf on the tube, why this end comes first, and the cut. */
export function firstCutSteps(piece: Piece, end: NamedEnd): readonly [Said, Said] {
  const { second, solution, units, words } = piece;
  const { lay, cut } = words.steps;
  const why = second && whyFirst(end, second, words);
  const marksBase = second !== undefined && solution.lengths !== undefined;
  return [
    lay.first(end.name, why, hasSpine(piece), placedFirst(piece)),
    cut.first(end.name, marksBase, cut.edge(edgeOf(end), units)),
  ];
}

function placedFirst(piece: Piece): Said {
  const { solution, second, say, words } = piece;
  const { lay } = words.steps;
  if (second || !solution.lengths) return lay.atLongPoint;
  const plain = solution.ends.A?.kind === 'plain' ? 'A' : 'B';
  return lay.fromEnd(say(baseApart(piece) ?? 0), plain);
}

/** The second leaf on the tube, placed by the first one or by the marks made at the frame. */
export function secondLayStep(piece: Piece, { name, cope }: NamedEnd): Said {
  const { first, units, words } = piece;
  const marks = {
    rotation: cope.fitUp?.clock ?? false,
    length: cope.fitUp?.lengthSetback !== undefined,
  };
  const mm = baseApart(piece);
  const apart = mm === undefined || !first ? undefined : { mm, from: first.name };
  return words.steps.lay.second(name, words.steps.lay.after(marks, apart, units));
}

/** The second cut, after the look at which way it faces. */
export function secondCutStep({ first, units, words }: Piece, end: NamedEnd): Said {
  const { cut } = words.steps;
  const own = edgeOf(end);
  if (first && isSameEdge(edgeOf(first), own)) return cut.secondAlike(end.name, first.name);
  return cut.second(end.name, cut.edge(own, units));
}

function whyFirst(end: NamedEnd, other: NamedEnd, words: Language): Said {
  const { why } = words.steps.lay;
  if (other.cope.fitUp) return why.seated;
  const apart = shortPointDepth(end.cope) - shortPointDepth(other.cope);
  if (apart < -SAME) return why.shallower;
  if (areAlike(end, other)) return why.alike;
  const deep = apart < SAME;
  if (settingOf(end.cope.end) !== settingOf(other.cope.end)) return why.header(deep);
  return deep ? why.deep : why.order;
}

/** Setbacks and angles closer than this are the same, mm and radians. */
const SAME = 1e-6;

/** Whether two ends are cut alike: onto the same headers at the same angles, with the same edge and as deep. */
function areAlike({ cope }: NamedEnd, { cope: other }: NamedEnd): boolean {
  if (settingOf(cope.end) !== settingOf(other.end)) return false;
  if (cope.end.preparation.edge !== other.end.preparation.edge) return false;
  if (Math.abs(shortPointDepth(cope) - shortPointDepth(other)) > SAME) return false;
  return cope.end.parts.every((part, i) => {
    const its = other.end.parts[i];
    return (
      its !== undefined &&
      Math.abs(Math.sin(part.angle.rad) - Math.sin(its.angle.rad)) < SAME &&
      Math.abs(Math.abs(part.offset.mm) - Math.abs(its.offset.mm)) < SAME
    );
  });
}

/**
 * From the base edge of one end's leaf to that of the other's, or to the end that is cut square, mm; below nought where
 * the leaves overlap. Undefined where the tube's length is not known.
 */
export function baseApart({ solution, first, second, units }: Piece): number | undefined {
  if (!solution.lengths || !first) return undefined;
  const { between } = solution.lengths;
  if (!second) return between - baseSetbackOf(first.cope, units);
  return baseEdgesApart(between, first.cope, second.cope, units);
}

/** How an end's edge is made. Square, how far it would stand off if it were cut on the dashed line, where a rod would go in. */
function edgeOf({ cope }: NamedEnd): Edge {
  const { preparation } = cope.end;
  if (preparation.edge === 'bevel') {
    const { land } = preparation;
    return { kind: 'bevel', inner: innerEdgeOf(cope), ...(land && { land }) };
  }
  if (preparation.from === 'inside') return { kind: 'radial' };
  const off = standOffOf(cope) ?? 0;
  return { kind: 'square', ...(off > ROD && { off }) };
}

function isSameEdge(one: Edge, other: Edge): boolean {
  if (one.kind === 'bevel' && other.kind === 'bevel')
    return one.inner === other.inner && one.land?.mm === other.land?.mm;
  if (one.kind === 'square' && other.kind === 'square')
    return Math.abs((one.off ?? 0) - (other.off ?? 0)) < SAME;
  return one.kind === other.kind;
}
