import { grown } from '../../draw/boxes.ts';
import { shortened } from '../../draw/breaking.ts';
import { inTurn, type Label } from '../../draw/candidates.ts';
import type { Box, Drawing, Mark, Stroke } from '../../draw/drawing.ts';
import { PLAIN, SMALL } from '../../draw/lettering.ts';
import { type Segment, segmentsOf } from '../../draw/path.ts';
import { HALF_LINE } from '../../draw/pens.ts';
import { addBarrier, type Candidate, emptyField, type Placed, placeAll } from '../../draw/placer.ts';
import { linesAlong } from '../../draw/strokes.ts';
import type { Said } from '../../measure/said.ts';
import type { Mm } from '../../measure/units.ts';
import { type Cope, curveOf } from '../../saddle/cope.ts';
import type { Language } from '../../words/language.ts';
import type { Names } from '../names.ts';
import { ARROWS, arrowMarks } from './arrow.ts';
import { type Body, placesFor, placesForWords } from './body.ts';
import { curveStroke } from './cut-line.ts';
import { type FitUpLines, fitUpLines, fitUpNames } from './fit-up-lines.ts';
import { type Flat, height, xAt } from './flat.ts';
import { hatch } from './hatch.ts';
import { kinksOf, kinkTicks } from './kinks.ts';
import { type NamedPlace, namedPlaces, placeNames, placeTicks } from './named-places.ts';
import { changeNames, changesOf, changeTicks, type PartChange } from './part-changes.ts';
import { edgeSegments, TAB, tabMarks, tickSegments } from './seam-edges.ts';
import { foldLabel, guideMarks, guidesOf, stationLabels } from './stations.ts';
import { alongCut, stationsFrom, WASTE_ROOM } from './waste.ts';
import { zoneBar, zonesOf, zoneWords } from './zones.ts';

/** What a wrap says besides what its lines say. */
export interface WrapWords {
  readonly names: Names;
  /** How far the base edge is from what it is measured to, the longest first. */
  readonly distances: readonly Said[];
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
  const otherStroke =
    cope.other && curveStroke('other-edge', flat, curveOf(cope, cope.other, flat.seam, flat.scale));
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
  const marked = [...named, ...changes].map(({ station }) => xAt(flat, station));
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

function letter(
  body: Body,
  named: readonly NamedPlace[],
  changes: readonly PartChange[],
  words: WrapWords,
  fitUp: FitUpLines | undefined,
): Placed {
  const { flat, cope, field } = body;
  const stations = [...stationLabels(body), ...foldLabel(body)];
  const { language } = words;
  const { leaf } = language;
  const zones = zonesOf(cope, language);
  const bar = zoneBar(body, zones);
  const over = changeNames(body, changes);
  const places = placeNames(body, named);
  const laid = fitUp ? fitUpNames(body, fitUp) : { marks: [], beside: [] };
  const weld =
    bar || zones.length === 0
      ? []
      : [leaf.weldAngles([...new Set(zones.map((zone) => zoneWords(zone, language)))])];
  const spine = xAt(flat, 0);
  const size = flat.width < 60 ? SMALL : PLAIN;
  const deepFirst = stationsFrom(cope.throat.station, flat.turn, 24);
  const shallowFirst = stationsFrom(cope.longPoint.station, flat.turn, 24);
  const others = placeAll(field, [
    { places: arrows(body, spine + flat.width / 8) },
    { places: identities(body, spine + flat.width / 8, words.names, size) },
    { places: distances(body, spine - flat.width / 8, words.distances) },
    ...[deepFirst, ...furtherOn(flat, cope)].map((each) => ({
      places: alongCut(body, 'waste', { fact: 'waste', lines: [leaf.waste], size: PLAIN }, each),
    })),
    {
      places: alongCut(
        body,
        'body',
        { fact: 'middle', lines: [leaf.cutToTheMiddle], size: SMALL },
        shallowFirst,
      ),
    },
    { places: placesForWords(body, flat.width, 'seam', [words.seam], SMALL) },
    { places: baseWords(body), otherwise: squareWords(body) },
  ]);
  const all = [over, places, laid, others];
  return {
    marks: [...stations, ...(bar ?? []), ...all.flatMap(({ marks }) => marks)],
    beside: [...all.flatMap(({ beside }) => beside), ...weld],
  };
}

function distances(body: Body, near: Mm, texts: readonly Said[]): Iterable<Candidate> {
  return inTurn(texts, (text) => placesForWords(body, near, 'base-distance', [text], SMALL));
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

function baseWords(body: Body): Iterable<Candidate> {
  const square = squareWords(body);
  const texts = [body.words.leaf.baseProves(square), square];
  return inTurn(texts, (text) => placesForWords(body, 0, 'base-edge', [text], SMALL));
}

/** A leaf that is laid on a rotation mark has no spine. */
function squareWords({ cope, words: { leaf } }: Body): Said {
  return leaf.base(cope.fitUp?.clock === true);
}

function arrows(body: Body, near: Mm): Iterable<Candidate> {
  return inTurn(ARROWS, (shape) => {
    const draw: Label['draw'] = (left, bottom) => arrowMarks(body, shape, left, bottom);
    return placesFor(body, near, { ...shape, draw });
  });
}

function* identities(body: Body, near: Mm, names: Names, size: Mm): Iterable<Candidate> {
  const { leaf } = body.words;
  const { end, handName, paired } = names;
  const named = paired ? leaf.endOfHand(end, handName) : leaf.end(end);
  const copies = names.copies > 1 ? [leaf.make(names.copies)] : [];
  for (const length of [52, 34, 20, 12]) {
    const tube = shortened(names.tube, size, length);
    yield* placesForWords(body, near, 'name', [tube, named, ...copies], size);
  }
  const last = [leaf.nameAndEnd(shortened(names.tube, SMALL, 9), end), ...(paired ? [handName] : [])];
  yield* placesForWords(body, near, 'name', last, SMALL);
}
