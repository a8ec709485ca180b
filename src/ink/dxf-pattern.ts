import type { Drawing, Path, PathPiece, Point, Stroke } from '../draw/drawing.ts';
import type { Mm } from '../measure/units.ts';

/**
 * The contours that a machine cuts a whole pattern out by, without its tab: the cut line from seam edge to seam edge, up one
 * seam edge, along the base edge and back down the other. A sheet that is not cut to, such as a footprint, has its own closed
 * outline. None where a wrap's marks hold neither.
 */
export function patternOf({ marks }: Drawing): Path[] {
  const strokes = marks.filter((mark) => mark.kind === 'stroke');
  const cuts = strokes.filter(({ purpose }) => purpose === 'cut');
  const outlines = strokes.filter(({ purpose }) => purpose === 'outline');
  if (cuts.length === 0) return outlines.map(({ path }) => path).filter(({ closed }) => closed);
  return cuts.flatMap((cut) => {
    const base = baseEdgeOf(outlines, cut);
    if (base === undefined) return [];
    const rest: PathPiece[] = base.map((to) => ({ kind: 'line', to }));
    return [{ start: cut.path.start, pieces: [...cut.path.pieces, ...rest], closed: true }];
  });
}

/** Ends nearer than this stand over one another. */
const SAME: Mm = 1e-3;

/** The ends of the base edge, the one over the cut line's end first: the level outline as wide as the cut line is. */
function baseEdgeOf(outlines: readonly Stroke[], cut: Stroke): readonly [Point, Point] | undefined {
  const from = cut.path.start;
  const to = endOf(cut.path);
  for (const { path } of outlines) {
    const [start, end] = [path.start, endOf(path)];
    const [first, last] = start.x < end.x === from.x < to.x ? [end, start] : [start, end];
    const level = path.pieces.length === 1 && Math.abs(first.y - last.y) < SAME;
    if (level && Math.abs(first.x - to.x) < SAME && Math.abs(last.x - from.x) < SAME) return [first, last];
  }
  return undefined;
}

function endOf({ start, pieces }: Path): Point {
  return pieces.at(-1)?.to ?? start;
}
