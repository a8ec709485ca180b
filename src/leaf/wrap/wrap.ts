import { grown } from '../../draw/boxes.ts';
import { shortened } from '../../draw/breaking.ts';
import { inTurn, type Label } from '../../draw/candidates.ts';
import type { Box, Drawing, Mark, Stroke } from '../../draw/drawing.ts';
import { type Block, TEXT, WORTH } from '../../draw/lettering.ts';
import { type Segment, segmentsOf } from '../../draw/path.ts';
import { HALF_LINE } from '../../draw/pens.ts';
import { addBarrier, type Candidate, emptyField, type Placed, placeAll } from '../../draw/placer.ts';
import { linesAlong } from '../../draw/strokes.ts';
import type { Said } from '../../measure/said.ts';
import type { Mm } from '../../measure/units.ts';
import { type Cope, curveOf } from '../../saddle/cope.ts';
import type { Language } from '../../words/language.ts';
import { dashedLine } from '../card/edge-words.ts';
import type { Names } from '../names.ts';
import { ARROWS, arrowMarks } from './arrow.ts';
import { badgeOf } from './badge.ts';
import { type Body, placesFor, placesForWords } from './body.ts';
import { curveStroke } from './cut-line.ts';
import { type FitUpLines, fitUpLines, fitUpNames } from './fit-up-lines.ts';
import { type Flat, height, xAt } from './flat.ts';
import { hatch } from './hatch.ts';
import { kinksOf, kinkTicks } from './kinks.ts';
import { type NamedPlace, namedPlaces, placeNames, placeTicks } from './named-places.ts';
import { changeNames, changesOf, changeTicks, type PartChange } from './part-changes.ts';
import { edgeSegments, TAB, tabMarks, tickSegments } from './seam-edges.ts';
import { foldLabel, guideMarks, guidesOf, quarterLabels, spineLabel } from './stations.ts';
import { alongCut, stationsFrom, WASTE_ROOM } from './waste.ts';

/** What a wrap says besides what its lines say. */
export interface WrapWords {
  readonly names: Names;
  /** How far the base edge is from what it is measured to, the longest first. */
  readonly distances: readonly [Said, ...Said[]];
  /** Its mark. */
  readonly mark: Said;
  /** What it proves that the seam edges meet. */
  readonly seam: Said;
  readonly language: Language;
}

export interface Wrap {
  readonly drawing: Drawing;
  readonly cut: readonly Segment[];
  /** What found no room on the wrap, to stand on the card. */
  readonly beside: readonly Said[];
  /** Whether there are ticks at the kinks of the cut, for the card to say what they are. */
  readonly ticked: boolean;
}

/** The flat pattern of one end: lines first, then each word where it is free of them and of the words before it. */
export function drawWrap(name: string, flat: Flat, cope: Cope, base: Mm, words: WrapWords): Wrap {
  const curve = curveOf(cope, cope.cut, flat.seam, flat.scale);
  const cutStroke = curveStroke('cut', flat, curve);
  const dashed = dashedLine(cope);
  const otherStroke = dashed && curveStroke('other-edge', flat, curveOf(cope, dashed, flat.seam, flat.scale));
  const cut = segmentsOf(cutStroke.path, 3);
  const box = boxOfWrap(flat, cope, base, otherStroke ? [cutStroke, otherStroke] : [cutStroke]);
  const field = emptyField({ ...box, right: flat.width }, guidesOf(flat, cope, base));
  const body: Body = { flat, cope, base, field, words: words.language };
  addBarrier(field, cut, 0.8, true);
  if (otherStroke) addBarrier(field, segmentsOf(otherStroke.path, 3), 0.6, true);
  const tab = tabMarks(body);
  const edges = [...edgeSegments(body), ...tickSegments(body)];
  addBarrier(field, edges, 0.5);
  const fitUp = fitUpLines(body);
  const changes = changesOf(cope.cut, curve);
  const named = namedPlaces(cope, words.language);
  // Where a corner of the tube itself begins or ends the cut runs on smoothly.
  const bent = flat.section.corners.flatMap(({ from, to }) => [from, to]);
  const places = [...named, ...changes].map(({ station }) => station);
  const marked = [...places, ...bent].map((station) => xAt(flat, station));
  const ticks = kinkTicks(body, kinksOf(flat, cope.cut, curve), marked);
  // Ticks come before all words, which then keep off them.
  const known = [...placeTicks(body, named), ...changeTicks(body, changes)];
  const { marks, beside } = letter(body, named, changes, words, fitUp);
  const all: Mark[] = [
    ...linesAlong('outline', edges.slice(0, 1)),
    ...linesAlong('seam', edges.slice(1)),
    ...tab,
    ...guideMarks(field),
    ...(fitUp?.marks ?? []),
    ...hatch(flat, cut, field),
    ...(otherStroke ? [otherStroke] : []),
    cutStroke,
    ...ticks,
    ...known,
    ...marks,
  ];
  return { drawing: { name, box, marks: all }, cut, beside, ticked: ticks.length > 0 };
}

/** The box of all that is printed: curves never leave the hull of their control points. */
function boxOfWrap(flat: Flat, cope: Cope, base: Mm, curves: readonly Stroke[]): Box {
  const ys = [height(flat, cope.longPoint.setback - WASTE_ROOM), height(flat, base)];
  for (const { path } of curves) {
    for (const piece of path.pieces) {
      ys.push(piece.to.y);
      if (piece.kind === 'cubic') ys.push(piece.c1.y, piece.c2.y);
    }
  }
  const right = flat.width + TAB;
  return grown({ left: 0, right, bottom: Math.min(...ys), top: Math.max(...ys) }, HALF_LINE);
}

/**
 * Every word in its order of worth, but what has one place of its own on the leaf before what may stand anywhere: spine, heel, the lines
 * of marks; arrow, hand, waste, distance, name; then what can be done without.
 */
function letter(
  body: Body,
  named: readonly NamedPlace[],
  changes: readonly PartChange[],
  words: WrapWords,
  fitUp: FitUpLines | undefined,
): Placed {
  const { flat, cope, field } = body;
  const { names, language } = words;
  const { leaf } = language;
  const worth = worthOf(body);
  const spine = xAt(flat, 0);
  const [right, left] = [spine + flat.width / 8, spine - flat.width / 8];
  const waste: Block = { fact: 'waste', lines: [leaf.waste], size: worth };
  const deepFirst = stationsFrom(cope.throat.station, flat.turn, 24);
  const one = (places: Iterable<Candidate>, otherwise?: Said): Placed =>
    placeAll(field, [{ places, ...(otherwise && { otherwise }) }]);
  const changed = changes.map(({ station }) => xAt(flat, station));
  const steps = [
    () => spineLabel(body, worth),
    () => (fitUp ? fitUpNames(body, fitUp) : NONE),
    () => changeNames(body, changes),
    () => placeNames(body, named, worth, changed),
    () => one(arrows(body, right)),
    () => (names.paired ? one(badges(body, right, names, worth)) : NONE),
    () => one(alongCut(body, waste, deepFirst)),
    () => one(distances(body, left, words.distances, worth), words.distances[0]),
    () => one(identities(body, right, names, worth)),
    () => quarterLabels(body),
    () => one(placesForWords(body, flat.width, 'seam', [words.seam], TEXT)),
    () => foldLabel(body),
    () => (dashedLine(cope) ? one(dashes(body, right)) : NONE),
    () => one(placesForWords(body, right, 'mark', [words.mark], TEXT), words.mark),
    () =>
      placeAll(
        field,
        furtherOn(flat, cope).map((each) => ({ places: alongCut(body, waste, each) })),
      ),
  ];
  const all = steps.map((step) => step());
  return { marks: all.flatMap(({ marks }) => marks), beside: all.flatMap(({ beside }) => beside) };
}

const NONE: Placed = { marks: [], beside: [] };

/** Over 60 mm round, what decides is read at arm's length. */
function worthOf({ flat }: Body): Mm {
  return flat.section.girth > 60 ? WORTH : TEXT;
}

function distances(body: Body, near: Mm, texts: readonly Said[], size: Mm): Iterable<Candidate> {
  return inTurn(texts, (text) => placesForWords(body, near, 'base-distance', [text], size));
}

function dashes(body: Body, near: Mm): Iterable<Candidate> {
  const text = body.words.leaf.dashes(body.cope.end.preparation.edge);
  return placesForWords(body, near, 'dashes', [text], TEXT);
}

/** On a wide leaf the waste is named again and again, so that each tile of it says which side that is. */
function furtherOn({ width, turn }: Flat, cope: Cope): number[][] {
  const count = Math.floor(width / WASTE_EVERY);
  return stationsFrom(cope.throat.station, turn, count)
    .slice(1)
    .map((station) => stationsFrom(station, turn, NEARBY * count).slice(0, NEARBY));
}

/** How many places are tried about each. */
const NEARBY = 12;
const WASTE_EVERY: Mm = 110;

function arrows(body: Body, near: Mm): Iterable<Candidate> {
  return inTurn(ARROWS, (shape) => {
    const draw: Label['draw'] = (left, bottom) => arrowMarks(body, shape, left, bottom);
    return placesFor(body, near, { ...shape, draw });
  });
}

function badges(body: Body, near: Mm, { hand, handName }: Names, size: Mm): Iterable<Candidate> {
  return inTurn([0, 1] as const, (turn) => placesFor(body, near, badgeOf(hand, handName, size, turn)));
}

/** The tube's name, and how many to make; it is shortened before they go. */
function* identities(body: Body, near: Mm, { tube, made, once }: Names, size: Mm): Iterable<Candidate> {
  for (const length of [52, 34, 20, 12])
    yield* placesForWords(body, near, 'name', [shortened(tube, size, length), ...(once ? [] : [made])], size);
}
