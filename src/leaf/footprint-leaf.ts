import type { EndName, Part } from '../job/job.ts';
import type { HeaderShape } from '../job/kind.ts';
import { factsOf } from '../job/kinds.ts';
import { sectionInWords, sizeOf } from '../job/shape.ts';
import type { Mm } from '../measure/units.ts';
import { isMetric } from '../measure/write.ts';
import type { Cope } from '../saddle/cope.ts';
import { footprintLength, footprintOf, type Outline } from '../saddle/footprint.ts';
import type { TubeSolution } from '../saddle/solve.ts';
import { stationInWords } from '../saddle/station.ts';
import type { Unrolled } from '../space/solid.ts';
import { drawCard } from './card.ts';
import { CLEAN_IN_WORDS, cleanTo, dashes, middleOf } from './clean-to.ts';
import type { LeafContext } from './draw-leaf.ts';
import type { Box, Drawing, Mark, Point, Stroke } from './drawing.ts';
import type { Fact } from './fact.ts';
import { type HeaderFlat, headerFlat, outlineStrokes } from './footprint-flat.ts';
import { type Note, placeNotes } from './footprint-words.ts';
import { headerName, partFacts } from './header-facts.ts';
import { keyOf } from './key.ts';
import type { Leaf } from './leaf.ts';
import { SMALL, TEXT } from './lettering.ts';
import { spelled } from './letters.ts';
import { inBoth, namesOf, titleOf } from './names.ts';
import { grown, point, type Segment, segmentsOf, strokeOf } from './path.ts';
import { addBarrier, emptyField } from './placer.ts';
import { sideNames, sidesOf } from './sides.ts';

/**
 * What one end leaves on one header, by its place in the end's list, unrolled as a leaf to wrap round the header. Throws a
 * RangeError where the end is not coped or has no such header.
 */
export function drawFootprint(
  solution: TubeSolution,
  endName: EndName,
  part: number,
  context: LeafContext,
): Leaf {
  const cope = solution.ends[endName];
  if (cope?.kind !== 'coped') throw new RangeError(`End ${endName} of ${solution.tube.name} is not coped.`);
  const asked = cope.end.parts[part];
  if (!asked) throw new RangeError(`End ${endName} of ${solution.tube.name} has no header ${part + 1}.`);
  const units = isMetric(sizeOf(solution.tube.section).unit) ? 'mm' : 'in';
  const shape = factsOf(asked.onto).shape();
  const outline = footprintOf(cope, 0, part);
  const length = footprintLength(cope, 0, part);
  const header = cope.end.parts.length > 1 ? headerName(part) : 'header';
  const names = { ...namesOf(solution, endName), use: 'footprint: to mark by, not to cut' };
  const title = `${titleOf(names)}, footprint${header === 'header' ? '' : ` on ${header}`}`;
  const facts: Fact[] = [
    ...(context.job ? [{ label: 'job', text: spelled(context.job) }] : []),
    ...partFacts(asked, header, units),
    { label: 'tube', text: spelled(sectionInWords(solution.tube.section)) },
    { label: 'outline', text: lengthWords(shape, outline, inBoth(length, units)) },
    { label: 'lay it', text: layWords(shape) },
    {
      label: 'vent',
      text: cope.inside ? 'drill inside the dashed outline' : 'drill well inside the outline',
    },
    { label: 'clean', text: `to the long dashes, ${CLEAN_IN_WORDS} outside` },
  ];
  const key = keyOf(title, [part, length], facts);
  const flat = headerFlat(shape, endName === 'A' ? 1 : -1, context.paperThickness);
  const sheet = drawSheet(`footprint of ${key}`, cope, asked, part, outline, flat, [
    names.tube,
    `end ${endName}${names.paired ? `, ${names.hand}` : ''}: footprint on ${header}`,
  ]);
  return {
    title,
    wrap: sheet.drawing,
    card: drawCard(`card of ${key}`, names, facts, sheet.beside, cope),
    keepWhole: [],
  };
}

function lengthWords(shape: HeaderShape, { closed }: Outline, long: string): string {
  if (shape.kind === 'bent') return `about ${long}: a bend does not unroll`;
  if (closed) return `${long}, as long as the outside line on the tube`;
  return `${long} in all; open where the tube passes beside this header or meets another`;
}

function layWords(shape: HeaderShape): string {
  const marks = 'its long line on the line that faces the tube, its cross line on the work point';
  switch (shape.kind) {
    case 'plane':
      return `flat, words up: ${marks}`;
    case 'bent':
      return `round the bend, words out: ${marks}. Approximate: true round the tube, along it on its centre line only`;
    case 'bar': {
      const folded = shape.folds ? ', folded at the short dashes' : '';
      return `round the header, words out${folded}: ${marks}`;
    }
  }
}

/** Round the clean-to line, mm. */
const ROOM: Mm = 6;

function drawSheet(
  name: string,
  cope: Cope,
  asked: Part,
  part: number,
  outline: Outline,
  flat: HeaderFlat,
  titles: readonly string[],
): { drawing: Drawing; beside: string[] } {
  const solid = outlineStrokes('guide', flat, outline);
  const inside = cope.thickness
    ? outlineStrokes('other-edge', flat, footprintOf(cope, cope.thickness, part))
    : [];
  const points = solid.flatMap(({ path }) => [path.start, ...segmentsOf(path, 1.5).map(({ to }) => to)]);
  const clean = points.length > 0 ? cleanTo(points) : [];
  const outlines = [...solid, ...inside].flatMap(({ path }) => segmentsOf(path, 2));
  const edge = edgeOf(clean, outlines, flat.half);
  const outer = dashes(fine(clean), edge);
  const lines = [
    { from: point(edge.left, 0), to: point(edge.right, 0) },
    { from: point(0, edge.bottom), to: point(0, edge.top) },
    ...flat.folds.filter((y) => y > edge.bottom && y < edge.top).flatMap((y) => foldLine(edge, y)),
    ...openTicks(solid, outline.closed),
  ];
  const field = emptyField(grown(edge, -1));
  addBarrier(field, outlines, 0.8);
  addBarrier(field, [...lines, ...outer], 0.6);
  const { marks, beside } = placeNotes(field, [
    ...notesOf(cope, asked, part, flat, edge, clean, titles),
    ...openNotes(solid, outline.closed),
  ]);
  const corners = [
    point(edge.left, edge.bottom),
    point(edge.right, edge.bottom),
    point(edge.right, edge.top),
  ];
  const all: Mark[] = [
    strokeOf('outline', [point(edge.left, edge.top), ...corners], true),
    ...[...lines, ...outer].map(({ from, to }) => strokeOf('guide', [from, to])),
    ...inside,
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
  const xs = [0, ...clean.map(({ x }) => x)];
  const ys = [0, ...clean.map(({ y }) => y)];
  const drawn = [0, ...outlines.map(({ to }) => to.y)];
  return {
    left: Math.min(...xs) - ROOM,
    right: Math.max(...xs) + ROOM,
    bottom: Math.min(Math.max(-half, Math.min(...ys) - ROOM), Math.min(...drawn)),
    top: Math.max(Math.min(half, Math.max(...ys) + ROOM), Math.max(...drawn)),
  };
}

/** A line through points with no leg longer than half a millimetre or so. */
function fine(line: readonly Point[]): Point[] {
  return line.slice(1).flatMap((to, i) => {
    const from = line[i] ?? to;
    const count = Math.max(1, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / 0.5));
    return Array.from({ length: count }, (_, k) => {
      const t = (k + 1) / count;
      return point(from.x + t * (to.x - from.x), from.y + t * (to.y - from.y));
    });
  });
}

function foldLine({ left, right }: Box, y: Mm): Segment[] {
  const count = Math.floor((right - left) / 2.2);
  return Array.from({ length: count }, (_, i) => {
    const x = left + i * 2.2;
    return { from: point(x, y), to: point(x + 1.2, y) };
  });
}

/** The ends of an open outline. */
function openEnds(solid: readonly Stroke[], closed: boolean): Point[] {
  if (closed) return [];
  return solid.flatMap(({ path }) => [path.start, path.pieces.at(-1)?.to ?? path.start]);
}

function openTicks(solid: readonly Stroke[], closed: boolean): Segment[] {
  return openEnds(solid, closed).map(({ x, y }) => ({ from: point(x - 2, y), to: point(x + 2, y) }));
}

function openNotes(solid: readonly Stroke[], closed: boolean): Note[] {
  const ends = openEnds(solid, closed);
  return ends.filter((_, i) => i % 2 === 0).map((near) => ({ text: 'open here', near }));
}

function notesOf(
  cope: Cope,
  asked: Part,
  part: number,
  flat: HeaderFlat,
  edge: Box,
  clean: readonly Point[],
  titles: readonly string[],
): Note[] {
  const middle = middleOf(clean);
  const highest = clean.reduce((a, b) => (b.y > a.y && b.y < edge.top ? b : a), point(0, 0));
  const full = edge.top >= flat.half && edge.bottom <= -flat.half;
  return [
    ...sideNotes(cope, asked, part, flat),
    ...titles.map((text, i) => ({
      text,
      near: point(edge.left + 24, edge.top - 4 - 4 * i),
      size: i === 0 ? TEXT : SMALL,
    })),
    { text: cope.inside ? 'vent inside the dashed outline' : 'vent well inside', near: middle },
    { text: 'faces the tube', near: point(edge.left + 12, 2.5) },
    { text: 'work point', near: point(9, edge.bottom + 3) },
    { text: 'clean to the long dashes', near: point(highest.x + 12, highest.y - 3) },
    ...(flat.folds.length > 0
      ? [{ text: 'fold', near: point(edge.right - 6, (flat.folds[0] ?? 0) + 2) }]
      : []),
    ...(full
      ? [
          {
            text: 'this edge meets the other one behind the header',
            near: point(edge.right - 24, edge.top - 2),
          },
        ]
      : []),
  ];
}

/** Heel and toe, just outside the outline, with the tube's stations there. */
function sideNotes(cope: Cope, asked: Part, part: number, flat: HeaderFlat): Note[] {
  const sides = sidesOf(cope);
  if (!sides) return [];
  const names = sideNames(asked);
  return (
    [
      ['heel', 1],
      ['toe', -1],
    ] as const
  ).flatMap(([side, way]) => {
    const station = sides[side];
    const place = unrolledAt(cope, part, station);
    if (!place) return [];
    const { x, y } = flat.to(place);
    const onward = asked.angle.rad <= Math.PI / 2 ? way : -way;
    return [
      {
        text: `${names[side]}, tube's ${stationInWords(station, cope.joint.section)}`,
        near: point(x + 13 * onward, y + 3),
      },
    ];
  });
}

function unrolledAt({ joint, outside }: Cope, part: number, station: number): Unrolled | undefined {
  const landing = joint.landings[part];
  if (!landing) return undefined;
  const { cosClock, sinClock, shift, solid } = landing;
  const { x, y } = joint.section.at(station);
  return solid.unroll(
    x * cosClock + y * sinClock,
    y * cosClock - x * sinClock,
    outside(station).setback - shift,
  );
}
