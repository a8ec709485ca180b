import { baseEdgesApart, baseSetbackOf } from '../leaf/base-edge.ts';
import { unitsOf } from '../leaf/draw-leaf.ts';
import { wrote } from '../leaf/names.ts';
import { sideNames } from '../leaf/sides.ts';
import { writeAngle } from '../measure/write.ts';
import { landingName, type NamedEnd, type Piece } from './piece.ts';
import { ROD_IN_WORDS } from './rod.ts';

/** Cutting one end: where its leaf lies, why this end now, and how the edge is made. */
export function copeStep(piece: Piece, end: NamedEnd, turn: 'first' | 'second'): string {
  const lead = `Cut end ${end.name}${turn === 'first' && piece.second ? ' first' : ''}`;
  const placed = turn === 'first' ? placedFirst(piece, end) : placedSecond(piece, end);
  const same = turn === 'second' && piece.first && edgeWords(piece.first) === edgeWords(end);
  return `${lead}: ${placed} ${same ? `Edge as at end ${piece.first.name}.` : edgeWords(end)}`;
}

function placedFirst(piece: Piece, end: NamedEnd): string {
  const { solution, second, say } = piece;
  const plain = solution.ends.A?.kind === 'plain' ? 'A' : 'B';
  if (!second && solution.lengths) {
    return `the base edge of its leaf lies ${say(baseApart(piece) ?? 0)} from end ${plain}, cut square.`;
  }
  const little =
    'slide its leaf out until the long point just stays on the tube: as little off as gives a full cut';
  if (!second) return `${little}.`;
  return `${whyFirst(end, second)} ${upper(little)}. Mark its base edge.`;
}

function whyFirst(end: NamedEnd, other: NamedEnd): string {
  if (other.cope.fitUp) return 'the other is marked with this one seated.';
  const [own, its] = [end, other].map(({ cope }) => cope.throat.setback - cope.longPoint.setback);
  if (Math.abs((own ?? 0) - (its ?? 0)) < 1e-6) return 'both ends are alike.';
  if ((own ?? 0) < (its ?? 0)) return 'it matters less, for its cut is the shallower one.';
  return 'its header comes first in the order of work.';
}

function placedSecond(piece: Piece, end: NamedEnd): string {
  const { fitUp } = end.cope;
  const { first, say } = piece;
  const turned = fitUp?.clock ? 'its rotation mark’s line on the rotation mark' : 'its spine on the spine';
  if (fitUp?.lengthSetback !== undefined) {
    return `lay its leaf with ${turned} and its length mark’s line on the length mark.`;
  }
  const apart = baseApart(piece);
  if (apart === undefined || !first) return `lay its leaf with ${turned}.`;
  const marked = `the one marked at end ${first.name}`;
  const where =
    apart >= 0 ? `${say(apart)} from ${marked}` : `${say(-apart)} beyond ${marked}: the leaves overlap`;
  return `lay its leaf with ${turned}, its base edge ${where}.`;
}

/**
 * From the base edge of one end's leaf to that of the other's, or to the end that is cut square, mm; below nought where
 * the leaves overlap. Undefined where the tube's length is not known.
 */
export function baseApart(piece: Piece): number | undefined {
  const { solution, first, second } = piece;
  if (!solution.lengths || !first) return undefined;
  const units = unitsOf(solution);
  const { between } = solution.lengths;
  if (!second) return between - baseSetbackOf(first.cope, units);
  return baseEdgesApart(between, first.cope, second.cope, units);
}

function edgeWords({ cope }: NamedEnd): string {
  const { preparation } = cope.end;
  if (preparation.edge === 'square') {
    return preparation.from === 'inside'
      ? 'Cut on the solid line with the torch held radially.'
      : 'Cut on the solid line and leave the face square.';
  }
  const land = preparation.blunt ? `, a land of ${wrote(preparation.blunt)} left where it is thin` : '';
  return `Cut on the solid line and bevel the inner edge ${cope.other ? 'back to the dashed one' : 'until it seats'}${land}.`;
}

/** A bend of many pieces: all its mitred ends are cut alike. */
export function otherEndsSteps({ cope }: NamedEnd): string[] {
  const [{ onto }] = cope.end.parts;
  if (onto.kind !== 'mitre' || !onto.segments) return [];
  const { pieces } = onto.segments;
  const middle = pieces - 2;
  const made =
    middle > 0 ? `${middle} middle ${middle > 1 ? 'pieces' : 'piece'} and 2 end pieces` : '2 end pieces';
  return [`Cut the other mitred ends likewise, ${2 * pieces - 2} in all: ${made}.`];
}

/** Trying one end where it goes. */
export function seatStep(end: NamedEnd): string {
  const { preparation, root } = end.cope.end;
  const on = landingName(end);
  if (root && root.mm > 0)
    return `Hold end ${end.name} at ${on} with a root gap of ${wrote(root)} all round; file where it is less.`;
  if (preparation.edge === 'square')
    return `Seat end ${end.name} on ${on}: its inner edge touches all round, and the gap outside is filled with weld.`;
  return `Seat end ${end.name} on ${on}: file until no ${ROD_IN_WORDS} rod goes in.`;
}

/** The marks that a fitted end is laid on, made with the first one in its place. */
export function markSteps({ first }: Piece, { cope, name }: NamedEnd): string[] {
  const { fitUp } = cope;
  if (!fitUp || !first) return [];
  const nearest = `where the centre line of end ${name}’s header comes nearest the acute side`;
  const rotation = `With end ${first.name} seated, scribe the rotation mark along the tube ${nearest}.`;
  const line = fitUp.clock ? 'On that line' : `With end ${first.name} seated, on the line ${nearest},`;
  const length = `${line} mark the length where the tube’s outside, prolonged, meets the header.`;
  return [...(fitUp.clock ? [rotation] : []), ...(fitUp.lengthSetback === undefined ? [] : [length])];
}

/** The last look before the second end: most tubes are spoilt there. */
export function facingStep({ solution, first }: Piece, end: NamedEnd): string {
  const { tube, hand, twist } = solution;
  const own = tube.pair ? ` This tube is ${hand === 'opposite' ? 'the opposite hand' : 'as drawn'}.` : '';
  const arrows = `Check which way end ${end.name} faces before you cut: the two arrows point away from one another`;
  if (end.cope.fitUp?.clock) return `${arrows}, and hold the leaf up to the header.${own}`;
  if (twist === undefined || !first) return `${arrows}.${own}`;
  return `${arrows}, and ${twistWords(twist, sideNames(end.cope.end.parts[0]).heel)}.${own}`;
}

function twistWords(twist: number, side: string): string {
  const names = `the ${side} of end B`;
  if (Math.abs(twist) < 1e-9) return `${names} is on one line with that of end A`;
  if (Math.abs(Math.abs(twist) - Math.PI) < 1e-9) return `${names} is opposite that of end A`;
  return `${names} stands ${writeAngle(Math.abs(twist))} to the ${twist > 0 ? 'right' : 'left'} of that of end A, with B up`;
}

function upper(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
