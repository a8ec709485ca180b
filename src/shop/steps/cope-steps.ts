import { standOffOf } from '../../fit/stand-off.ts';
import { ROD } from '../../fit/warnings.ts';
import { innerEdgeWords } from '../../leaf/card/edge-words.ts';
import { wrote } from '../../leaf/names.ts';
import { baseEdgesApart, baseSetbackOf } from '../../leaf/wrap/base-edge.ts';
import { settingOf } from '../lists/header-key.ts';
import type { NamedEnd, Piece } from '../piece.ts';
import { hasSpine } from './blank-steps.ts';
import { throatDepth } from './deepness.ts';

/** The first leaf on the tube, why this end comes first, and the cut. */
export function firstCutSteps(piece: Piece, end: NamedEnd): string[] {
  const { second, solution } = piece;
  const { name } = end;
  const spine = hasSpine(piece) ? 'its spine on the scribed one' : 'its spine anywhere round the tube';
  const why = second ? ` first: ${whyFirst(end, second)}. Printed` : ' printed';
  const base = second && solution.lengths ? ' and the base edge' : '';
  return [
    `Lay the leaf of end ${name}${why} side out, ${spine}, ${placedFirst(piece)}. Wrap and tape it so that the ends of its base edge meet.`,
    `Mark the line${base}, take the leaf off and cut end ${name}${edgeWords(piece, end)}`,
  ];
}

function placedFirst(piece: Piece): string {
  const { solution, second, say } = piece;
  if (second || !solution.lengths)
    return 'its long point just on the tube: as little off as gives a full cut';
  const plain = solution.ends.A?.kind === 'plain' ? 'A' : 'B';
  return `its base edge ${say(baseApart(piece) ?? 0)} from end ${plain} all round`;
}

/** The second leaf on the tube, placed by the first one or by the marks made at the frame. */
export function secondLayStep(piece: Piece, { name, cope }: NamedEnd): string {
  return `Lay the leaf of end ${name} ${placedSecond(piece, cope)}. Wrap and tape it as before.`;
}

/** The second cut, after the look at which way it faces. */
export function secondCutStep(piece: Piece, end: NamedEnd): string {
  const { first } = piece;
  const own = edgeWords(piece, end);
  const edge = first && edgeWords(piece, first) === own ? `; edge as at end ${first.name}.` : own;
  return `Mark the line, take the leaf off and cut end ${end.name}${edge}`;
}

function whyFirst(end: NamedEnd, other: NamedEnd): string {
  if (other.cope.fitUp) return 'the other is marked with this one seated';
  const [own, its] = [throatDepth(end.cope), throatDepth(other.cope)];
  const apart = own - its;
  if (apart < -SAME) return 'it matters less, for its cut is the shallower one';
  if (areAlike(end, other)) return 'both ends are alike';
  const equally = apart < SAME ? 'both cuts are equally deep; ' : '';
  if (settingOf(end.cope.end).key !== settingOf(other.cope.end).key)
    return `${equally}its header comes first`;
  return equally ? 'both cuts are equally deep' : 'so the order of work has it';
}

/** Setbacks and angles closer than this are the same, mm and radians. */
const SAME = 1e-6;

/** Whether two ends are cut alike: onto the same headers at the same angles, with the same edge and as deep. */
function areAlike({ cope }: NamedEnd, { cope: other }: NamedEnd): boolean {
  if (settingOf(cope.end).key !== settingOf(other.end).key) return false;
  if (cope.end.preparation.edge !== other.end.preparation.edge) return false;
  if (Math.abs(throatDepth(cope) - throatDepth(other)) > SAME) return false;
  return cope.end.parts.every((part, i) => {
    const its = other.end.parts[i];
    return (
      its !== undefined &&
      Math.abs(Math.sin(part.angle.rad) - Math.sin(its.angle.rad)) < SAME &&
      Math.abs(Math.abs(part.offset.mm) - Math.abs(its.offset.mm)) < SAME
    );
  });
}

function placedSecond(piece: Piece, { fitUp }: NamedEnd['cope']): string {
  const { first, say } = piece;
  if (fitUp?.clock && fitUp.lengthSetback !== undefined)
    return 'with its lines on the rotation mark and the length mark';
  const turned = fitUp?.clock ? 'with its line on the rotation mark' : 'with its spine on the spine';
  if (fitUp?.lengthSetback !== undefined) return `${turned} and its line on the length mark`;
  const apart = baseApart(piece);
  if (apart === undefined || !first) return turned;
  const marked = `the one marked at end ${first.name}`;
  if (apart >= 0) return `${turned}, its base edge ${say(apart)} from ${marked}`;
  return `${turned}, its base edge ${say(-apart)} beyond ${marked}, over where that leaf lay`;
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

/** How the edge is made, after `cut end A`. */
function edgeWords({ say }: Piece, { cope }: NamedEnd): string {
  const { preparation } = cope.end;
  if (preparation.edge === 'bevel') {
    const land = preparation.blunt ? `; leave a land of ${wrote(preparation.blunt)} where it is thin` : '';
    return ` on the solid line; ${innerEdgeWords(cope)}${land}.`;
  }
  if (preparation.from === 'inside') return ' on the solid line, the torch held radially.';
  const off = standOffOf(cope) ?? 0;
  const not = off > ROD ? `: cut on the dashed line it would stand off ${say(off)}` : '';
  return ` on the solid line and leave the face square${not}.`;
}
