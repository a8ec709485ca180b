import { boundsOf, boxRoundBoth, grown, isWithin } from '../../draw/boxes.ts';
import type { Box, Drawing, Mark, Point, Stroke } from '../../draw/drawing.ts';
import { partsWhere } from '../../draw/parts.ts';
import { distance, legsOf, onWay, point, type Segment, segmentsOf } from '../../draw/path.ts';
import { HALF_LINE } from '../../draw/pens.ts';
import { addBarrier, emptyField, type Field } from '../../draw/placer.ts';
import { line, linesAlong, outline, solid } from '../../draw/strokes.ts';
import type { Said } from '../../measure/said.ts';
import type { Mm } from '../../measure/units.ts';
import { footprintOf, type Outline } from '../../saddle/footprint.ts';
import { cleanTo } from './clean-to.ts';
import { outlineStrokes } from './flat.ts';
import { arrowOf, type Landed, notesOf, type OpenEnd } from './notes.ts';
import { type Note, placeNotes } from './words.ts';

/** Round the clean-to line, and round a place that a tile's seam keeps off, mm. */
const ROOM: Mm = 9;

/** The sheet that is laid on the header: its lines, then the words where they are free of them, and what found no room. */
export function drawSheet(
  name: string,
  landed: Landed,
  footprint: Outline,
  title: Pick<Note, 'heading' | 'text'>,
): { drawing: Drawing; beside: readonly Said[]; keepWhole: readonly Box[] } {
  const lines = sheetLines(landed, footprint);
  const { edge, outside, bore, clean, cleaned, crossed, folds, arrow } = lines;
  const field = fieldOf(lines);
  const open = openEnds(outside, footprint);
  const drawn = { edge, shape: shapeOf(outside), bore: shapeOf(bore), clean, open };
  const notes = notesOf(landed, drawn, title);
  const { marks, beside } = placeNotes(field, notes);
  const all: Mark[] = [
    outline(
      'outline',
      point(edge.left, edge.top),
      point(edge.left, edge.bottom),
      point(edge.right, edge.bottom),
      point(edge.right, edge.top),
    ),
    ...linesAlong('guide', crossed),
    ...linesAlong('fold', folds),
    ...cleaned.map((run) => line('clean', ...run)),
    solid('guide', ...arrow),
    ...bore,
    ...outside,
    ...marks,
  ];
  const keepWhole = notes.flatMap(({ whole, near }) => (whole ? [grown(boundsOf([near]), ROOM)] : []));
  return { drawing: { name, box: grown(edge, HALF_LINE), marks: all }, beside, keepWhole };
}

/** All that is on a sheet before its words. */
interface SheetLines {
  readonly edge: Box;
  /** The tube's outside and its inside where they meet the header. */
  readonly outside: readonly Stroke[];
  readonly bore: readonly Stroke[];
  /** How far to clean: the whole line, and what of it lies on the sheet. */
  readonly clean: readonly Point[];
  readonly cleaned: readonly (readonly [Point, ...Point[]])[];
  /** The long line and the cross line, and ticks where an outline is open. */
  readonly crossed: readonly Segment[];
  readonly folds: readonly Segment[];
  readonly arrow: readonly [Point, Point, Point];
}

function sheetLines(landed: Landed, footprint: Outline): SheetLines {
  const { cope, part, flat, cross } = landed;
  const outside = outlineStrokes('guide', flat, footprint);
  const bore = cope.thickness
    ? outlineStrokes('other-edge', flat, footprintOf(cope, cope.thickness, part))
    : [];
  const shape = shapeOf(outside);
  const clean = shape.length > 0 ? cleanTo(shape) : [];
  const edge = edgeOf(cross, clean, [...outside, ...bore].flatMap(coarse), flat.half);
  return {
    edge,
    outside,
    bore,
    clean,
    cleaned: partsWhere(fine(clean), (at) => isWithin(at, edge)),
    crossed: [
      { from: point(edge.left, cross.y), to: point(edge.right, cross.y) },
      { from: point(cross.x, edge.bottom), to: point(cross.x, edge.top) },
      ...openTicks(outside, footprint),
    ],
    folds: flat.folds
      .filter((y) => y > edge.bottom && y < edge.top)
      .map((y) => ({ from: point(edge.left, y), to: point(edge.right, y) })),
    arrow: arrowOf(landed, edge),
  };
}

/** Where words may stand among these lines. */
function fieldOf({ edge, outside, bore, cleaned, crossed, folds, arrow }: SheetLines): Field {
  const field = emptyField(grown(edge, -1));
  addBarrier(field, [...outside, ...bore].flatMap(coarse), 0.8);
  const others = [...crossed, ...folds, ...cleaned.flatMap(legsOf), ...legsOf([...arrow, arrow[0]])];
  addBarrier(field, others, 0.6);
  return field;
}

/** An outline in straight pieces, as closely as words keep off it. */
function coarse({ path }: Stroke): Segment[] {
  return segmentsOf(path, 2);
}

/**
 * The sheet's edge: round the clean-to line, but never more than once round the header; further only where the outlines themselves
 * reach beyond its far side, and the paper overlaps.
 */
function edgeOf(cross: Point, clean: readonly Point[], outlines: readonly Segment[], half: Mm): Box {
  const { left, right, bottom, top } = boundsOf([cross, ...clean]);
  const drawn = boundsOf([cross, ...outlines.flatMap(({ from, to }) => [from, to])]);
  const edge = { left: left - ROOM, right: right + ROOM, bottom: bottom - ROOM, top: top + ROOM };
  return boxRoundBoth(
    { ...edge, bottom: Math.max(-half, edge.bottom), top: Math.min(half, edge.top) },
    drawn,
  );
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
    return Array.from({ length: count }, (_, k) => onWay(from, to, (k + 1) / count));
  });
}

/** The ends of an open outline, and the headers that the tube meets beyond them. */
function openEnds(outside: readonly Stroke[], { closed, beyond }: Outline): OpenEnd[] {
  if (closed) return [];
  return outside.flatMap(({ path }, i) => [
    { at: path.start, onto: beyond[i]?.[0] },
    { at: path.pieces.at(-1)?.to ?? path.start, onto: beyond[i]?.[1] },
  ]);
}

function openTicks(outside: readonly Stroke[], footprint: Outline): Segment[] {
  return openEnds(outside, footprint).map(({ at: { x, y } }) => ({
    from: point(x - 2, y),
    to: point(x + 2, y),
  }));
}
