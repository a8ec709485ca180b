import type { NamedEnd, Piece } from './piece.ts';

/** Cutting the blank, and how much longer it is than between its work points, and why. */
export function blankStep({ solution, first, second, say }: Piece): string {
  const { lengths, tube } = solution;
  const blank = tube.copies > 1 ? `${tube.copies} blanks` : 'the blank';
  if (!lengths) {
    if (solution.tube.ends.A && solution.tube.ends.B)
      return `Cut ${blank} long enough to reach past the far side of both headers: the length is marked later.`;
    const depth = first ? first.cope.throat.setback - first.cope.longPoint.setback : 0;
    return `Cut ${blank} longer than the tube has to be: the cut takes up ${say(depth)} of it.`;
  }
  if (!first && !second) return `Cut ${blank} off square at both ends, ${say(lengths.between)} long.`;
  const more = lengths.blank - lengths.between;
  const beyond = lengths.overall - lengths.between;
  const why =
    beyond > 1e-6
      ? `its long points reach ${say(beyond)} beyond, and a cut needs room to be tried`
      : 'a cut needs room to be tried';
  return `Cut ${blank} ${say(lengths.blank)} long, ${say(more)} more than between the work points: ${why}.`;
}

/** A square end beside a coped one: it is what the length is measured from. */
export function squareSteps({ solution, first }: Piece): string[] {
  if (!first) return [];
  const { A, B } = solution.ends;
  const plain = A?.kind === 'plain' ? 'A' : B?.kind === 'plain' ? 'B' : undefined;
  return plain ? [`Cut end ${plain} off square: the length is measured from it.`] : [];
}

/** The reference line for both ends; a round tube with one coped end can do without. */
export function spineStep({ solution, second }: Piece): string[] {
  const { section } = solution.tube;
  if (section.kind === 'rectangular')
    return ['Scribe the spine along the middle of a wide face, from end to end.'];
  return second
    ? ['Scribe the spine from end to end: an angle iron laid along the tube is parallel to it.']
    : [];
}

/** Proves leaf, scale and tube before anything is spoilt. */
export function scrapStep({ solution, say }: Piece, { name }: NamedEnd): string {
  return (
    `Try the leaf of end ${name} on a scrap of this tube: its seam edges meet, and a tape reads ` +
    `${say(solution.section.girth)} round.`
  );
}
