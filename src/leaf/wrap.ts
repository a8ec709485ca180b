import type { Mm } from '../measure/units.ts';
import { type Cope, curveOf } from '../saddle/cope.ts';
import { ARROWS, arrowAt } from './arrow.ts';
import { type Body, baseHeight, placesFor, placesForWords } from './body.ts';
import { curveStroke } from './cut-line.ts';
import type { Box, Drawing, Mark, Stroke } from './drawing.ts';
import { across, type Flat, height } from './flat.ts';
import { hatch } from './hatch.ts';
import { SMALL, shortened, TEXT } from './lettering.ts';
import type { Names } from './names.ts';
import { type Segment, segmentsOf, strokeOf } from './path.ts';
import { addBarrier, type Candidate, emptyField, type Field, place } from './placer.ts';
import { edgeSegments, TAB, tabMarks, tabWords, tickSegments } from './seam-edges.ts';
import { guideMarks, guidesOf, namedPlaces, placeLabels, roundAngle, stationLabels } from './stations.ts';
import { alongCut, stationsFrom, WASTE_ROOM } from './waste.ts';

/** What a wrap says besides what its lines say. */
export interface WrapWords {
  readonly names: Names;
  /** How far the base edge is from the other end's, in words. */
  readonly distance: string;
  /** What it proves that the seam edges meet. */
  readonly seam: string;
}

export interface Wrap {
  readonly drawing: Drawing;
  readonly cut: readonly Segment[];
  /** What found no room on the wrap, to stand on the card. */
  readonly beside: readonly string[];
}

/** The flat pattern of one end: lines first, then each word where it is free of them and of the words before it. */
export function drawWrap(name: string, flat: Flat, cope: Cope, base: Mm, words: WrapWords): Wrap {
  const cutStroke = curveStroke('cut', flat, curveOf(cope, cope.cut, flat.seam, flat.scale));
  const otherStroke =
    cope.other && curveStroke('other-edge', flat, curveOf(cope, cope.other, flat.seam, flat.scale));
  const cut = segmentsOf(cutStroke.path, 3);
  const body: Body = { flat, cope, base, field: fieldOf(flat, cope, base) };
  const { field } = body;
  addBarrier(field, cut, 0.8);
  if (otherStroke) addBarrier(field, segmentsOf(otherStroke.path, 3), 0.6);
  const tab = tabMarks(body);
  const edges = [...edgeSegments(body), ...tickSegments(body)];
  addBarrier(field, edges, 0.6);
  const { marks, beside } = letter(body, words, tab.start);
  const [baseEdge, ...seamAndTicks] = edges;
  const all: Mark[] = [
    ...(baseEdge ? [stroke('outline', baseEdge)] : []),
    ...seamAndTicks.map((segment) => stroke('seam', segment)),
    ...tab.marks,
    ...guideMarks(field),
    ...hatch(flat, cut, field),
    ...(otherStroke ? [otherStroke] : []),
    cutStroke,
    ...marks,
  ];
  return { drawing: { name, box: field.bounds, marks: all }, cut, beside };
}

function stroke(purpose: 'outline' | 'seam', { from, to }: Segment): Stroke {
  return strokeOf(purpose, [from, to]);
}

function fieldOf(flat: Flat, cope: Cope, base: Mm): Field {
  const least = Math.min(cope.longPoint.setback, otherLeast(cope));
  const ends = [height(flat, least - WASTE_ROOM), height(flat, base)];
  const bounds: Box = {
    left: -EDGE,
    right: flat.width + TAB + EDGE,
    bottom: Math.min(...ends) - EDGE,
    top: Math.max(...ends) + EDGE,
  };
  const field = emptyField(bounds);
  field.guides.push(...guidesOf(flat, cope, base));
  return field;
}

/** Half a line's width, so that the box holds the ink. */
const EDGE: Mm = 0.2;

/** The least setback of the dashed line, which may lie on the waste side, seen at every third of a degree... */
function otherLeast(cope: Cope): Mm {
  if (!cope.other) return cope.longPoint.setback;
  const { turn } = cope.joint.section;
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < 180; i++) least = Math.min(least, cope.other((i * turn) / 180).setback);
  return least;
}

function letter(body: Body, words: WrapWords, tabStart: Mm): { marks: Mark[]; beside: string[] } {
  const { flat, cope, field } = body;
  const marks: Mark[] = [];
  const beside: string[] = [];
  const put = (candidates: Iterable<Candidate>, otherwise?: string): void => {
    const found = place(field, candidates);
    if (found) marks.push(...found);
    else if (otherwise) beside.push(otherwise);
  };
  const stations = stationLabels(body);
  marks.push(...stations.marks);
  const places = placeLabels(body, namedPlaces(cope));
  marks.push(...places.marks);
  for (const { names, station } of places.left) {
    beside.push(
      `${names.join(', ')}: at ${roundAngle(station)}, ${across(flat, station).toFixed(1)} mm from the left edge`,
    );
  }
  const spine = across(flat, 0);
  const size = flat.width < 60 ? SMALL : TEXT;
  put(arrows(body, spine + flat.width / 8));
  put(identities(body, spine + flat.width / 8, words.names, size));
  put(placesForWords(body, spine - flat.width / 8, [words.distance], SMALL), words.distance);
  const deepFirst = stationsFrom(cope.throat.station, flat.turn, 24);
  put(alongCut(body, 'waste', { lines: ['waste'], size: TEXT }, deepFirst), 'waste: the hatched side');
  const shallowFirst = stationsFrom(cope.longPoint.station, flat.turn, 24);
  put(alongCut(body, 'body', { lines: [CUT_WORDS], size: SMALL }, shallowFirst), CUT_WORDS);
  put(placesForWords(body, flat.width, [words.seam], SMALL), words.seam);
  put(placesForWords(body, 0, [BASE_WORDS], SMALL), BASE_WORDS);
  put(tabWords(body, tabStart));
  return { marks, beside };
}

const CUT_WORDS = 'cut to the middle of the line';
const BASE_WORDS = 'Base edge: square to the spine. Its ends meet when the leaf is wrapped true.';

function* arrows(body: Body, near: Mm): Iterable<Candidate> {
  for (const shape of ARROWS) {
    yield* placesFor(body, near, shape.width, shape.height, (left, bottom) =>
      arrowAt(body.flat, shape, left, bottom),
    );
  }
}

function* identities(body: Body, near: Mm, names: Names, size: Mm): Iterable<Candidate> {
  const hand = names.paired ? `, ${names.hand}` : '';
  const copies = names.copies > 1 ? [`cut ${names.copies}`] : [];
  for (const length of [52, 34, 20, 12]) {
    const tube = shortened(names.tube, size, length);
    yield* placesForWords(body, near, [tube, `end ${names.end}${hand}`, ...copies], size);
  }
  yield* placesForWords(body, near, [`${shortened(names.tube, SMALL, 9)} ${names.end}`], SMALL);
}

/** Where a line of the drawing stands, for those who keep tile seams off it. */
export function baseLine(body: Body): Mm {
  return baseHeight(body);
}
