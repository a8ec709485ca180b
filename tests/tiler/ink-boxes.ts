import type { Box, Mark, Path, Point } from '../../src/draw/drawing.ts';
import { ASCENT, DESCENT, widthOf } from '../../src/draw/letters.ts';
import type { Placement } from '../../src/tiler/sheets.ts';

/** A point of a placed drawing, on its sheet. Written apart from the tiler's own turning. */
export function onSheet({ at, turn }: Placement, { x, y }: Point): Point {
  return turn === 0 ? { x: at.x + x, y: at.y + y } : { x: at.x - y, y: at.y + x };
}

/** The box of one mark on its sheet, cut to the placement's clip; control points count, so it may be too large. */
export function inkBox(placement: Placement, mark: Mark): Box {
  const box = boxAround(cornersOf(mark).map((point) => onSheet(placement, point)));
  const { clip } = placement;
  if (clip === undefined) return box;
  return {
    left: Math.max(box.left, clip.left),
    bottom: Math.max(box.bottom, clip.bottom),
    right: Math.min(box.right, clip.right),
    top: Math.min(box.top, clip.top),
  };
}

/** A placement's whole drawing, as far as it shows. */
export function shownBox(placement: Placement): Box {
  if (placement.clip !== undefined) return placement.clip;
  const { left, bottom, right, top } = placement.drawing.box;
  return boxAround([onSheet(placement, { x: left, y: bottom }), onSheet(placement, { x: right, y: top })]);
}

export function boxAround(points: readonly Point[]): Box {
  const xs = points.map(({ x }) => x);
  const ys = points.map(({ y }) => y);
  return { left: Math.min(...xs), bottom: Math.min(...ys), right: Math.max(...xs), top: Math.max(...ys) };
}

export function pointsOf({ start, pieces }: Path): Point[] {
  return [
    start,
    ...pieces.flatMap((piece) => (piece.kind === 'line' ? [piece.to] : [piece.c1, piece.c2, piece.to])),
  ];
}

function cornersOf(mark: Mark): Point[] {
  if (mark.kind !== 'words') return pointsOf(mark.path);
  const { at, size, text } = mark;
  const width = widthOf(text, size);
  const up = { below: DESCENT * size, above: ASCENT * size };
  const quarter = (x: number, y: number): Point => {
    const [dx, dy] = [
      [x, y],
      [-y, x],
      [-x, -y],
      [y, -x],
    ][mark.turn] ?? [0, 0];
    return { x: at.x + (dx ?? 0), y: at.y + (dy ?? 0) };
  };
  return [quarter(0, -up.below), quarter(width, up.above)];
}
