import type { Box, Drawing, Mark, Point, Stroke } from '../../draw/drawing.ts';
import { partsWhere } from '../../draw/parts.ts';
import {
  boundsOf,
  distance,
  fillOf,
  grown,
  isWithin,
  point,
  type Segment,
  segmentsOf,
  strokeOf,
} from '../../draw/path.ts';
import { addBarrier, emptyField } from '../../draw/placer.ts';
import type { Mm } from '../../measure/units.ts';
import { footprintOf, type Outline } from '../../saddle/footprint.ts';
import { cleanTo } from './clean-to.ts';
import { outlineStrokes } from './flat.ts';
import { arrowOf, type Landed, notesOf } from './notes.ts';
import { type Note, placeNotes } from './words.ts';

/** Round the clean-to line, mm. */
const ROOM: Mm = 6;

/** The sheet that is laid on the header: its lines, then the words where they are free of them, and what found no room. */
export function drawSheet(
  name: string,
  landed: Landed,
  outline: Outline,
  title: Pick<Note, 'heading' | 'text'>,
): { drawing: Drawing; beside: string[] } {
  const { cope, part, flat } = landed;
  const solid = outlineStrokes('guide', flat, outline);
  const bore = cope.thickness
    ? outlineStrokes('other-edge', flat, footprintOf(cope, cope.thickness, part))
    : [];
  const shape = shapeOf(solid);
  const clean = shape.length > 0 ? cleanTo(shape) : [];
  const outlines = [...solid, ...bore].flatMap(({ path }) => segmentsOf(path, 2));
  const edge = edgeOf(clean, outlines, flat.half);
  const cleaned = partsWhere(fine(clean), (at) => isWithin(at, edge));
  const folds = flat.folds
    .filter((y) => y > edge.bottom && y < edge.top)
    .map((y) => ({ from: point(edge.left, y), to: point(edge.right, y) }));
  const lines = [
    { from: point(edge.left, 0), to: point(edge.right, 0) },
    { from: point(0, edge.bottom), to: point(0, edge.top) },
    ...openTicks(solid, outline.closed),
  ];
  const arrow = arrowOf(landed, edge);
  const field = emptyField(grown(edge, -1));
  addBarrier(field, outlines, 0.8);
  addBarrier(field, [...lines, ...folds, ...cleaned.flatMap(legs), ...legs([...arrow, arrow[0]])], 0.6);
  const { marks, beside } = placeNotes(
    field,
    notesOf(
      landed,
      { edge, shape, bore: shapeOf(bore), clean, open: openEnds(solid, outline.closed) },
      title,
    ),
  );
  const corners = [
    point(edge.left, edge.bottom),
    point(edge.right, edge.bottom),
    point(edge.right, edge.top),
  ];
  const all: Mark[] = [
    strokeOf('outline', [point(edge.left, edge.top), ...corners], true),
    ...lines.map(({ from, to }) => strokeOf('guide', [from, to])),
    ...folds.map(({ from, to }) => strokeOf('fold', [from, to])),
    ...cleaned.map((run) => strokeOf('clean', run)),
    fillOf('guide', arrow),
    ...bore,
    ...solid,
    ...marks,
  ];
  return { drawing: { name, box: grown(edge, 0.2), marks: all }, beside };
}

/**
 * The sheet's edge: round the clean-to line, but never more than once round the header; further only where the outlines themselves
 * reach beyond its far side, and the paper overlaps.
 */
function edgeOf(clean: readonly Point[], outlines: readonly Segment[], half: Mm): Box {
  const { left, right, bottom, top } = boundsOf([point(0, 0), ...clean]);
  const drawn = [0, ...outlines.flatMap(({ from, to }) => [from.y, to.y])];
  return {
    left: left - ROOM,
    right: right + ROOM,
    bottom: Math.min(Math.max(-half, bottom - ROOM), Math.min(...drawn)),
    top: Math.max(Math.min(half, top + ROOM), Math.max(...drawn)),
  };
}

/** How far apart points along an outline are taken. */
const GRAIN: Mm = 1.5;

/** The outline as one closed shape: from the end of each open run straight to where the next begins, for there the tube goes on. */
function shapeOf(runs: readonly Stroke[]): Point[] {
  const points = runs.flatMap(({ path }) => [path.start, ...segmentsOf(path, GRAIN).map(({ to }) => to)]);
  return stepped([...points, ...points.slice(0, 1)], GRAIN);
}

/** A line through points with no leg longer than half a millimetre or so. */
function fine(line: readonly Point[]): Point[] {
  return stepped(line, 0.5);
}

function stepped(line: readonly Point[], most: Mm): Point[] {
  return line.slice(1).flatMap((to, i) => {
    const from = line[i] ?? to;
    const count = Math.max(1, Math.ceil(distance(from, to) / most));
    return Array.from({ length: count }, (_, k) => {
      const t = (k + 1) / count;
      return point(from.x + t * (to.x - from.x), from.y + t * (to.y - from.y));
    });
  });
}

function legs(line: readonly Point[]): Segment[] {
  return line.slice(1).map((to, i) => ({ from: line[i] ?? to, to }));
}

/** The ends of an open outline. */
function openEnds(solid: readonly Stroke[], closed: boolean): Point[] {
  if (closed) return [];
  return solid.flatMap(({ path }) => [path.start, path.pieces.at(-1)?.to ?? path.start]);
}

function openTicks(solid: readonly Stroke[], closed: boolean): Segment[] {
  return openEnds(solid, closed).map(({ x, y }) => ({ from: point(x - 2, y), to: point(x + 2, y) }));
}
