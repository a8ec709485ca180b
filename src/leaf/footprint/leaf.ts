import type { Point } from '../../draw/drawing.ts';
import type { Subject } from '../../draw/facts.ts';
import { spelled } from '../../draw/letters.ts';
import { point } from '../../draw/path.ts';
import { ventPlaceOf } from '../../fit/vent.ts';
import type { EndName, Part } from '../../job/job.ts';
import type { HeaderShape } from '../../job/kind.ts';
import { headerFactsOf } from '../../job/kinds.ts';
import { centreOn } from '../../job/landing.ts';
import { tubeFactsOf, unitsOfTube } from '../../job/sections.ts';
import type { Said } from '../../measure/said.ts';
import type { Mm } from '../../measure/units.ts';
import type { Cope } from '../../saddle/cope.ts';
import { footprintLength, footprintOf, type Outline } from '../../saddle/footprint.ts';
import { isSquare } from '../../saddle/sawn.ts';
import type { TubeSolution } from '../../saddle/solve.ts';
import type { Language } from '../../words/language.ts';
import { drawCard } from '../card/card.ts';
import { type Fact, factOf } from '../card/fact.ts';
import { jobFacts } from '../card/facts.ts';
import { partFacts } from '../card/header-facts.ts';
import { isShared, type LeafContext } from '../draw-leaf.ts';
import { drawingKey } from '../key.ts';
import type { CardedLeaf } from '../leaf.ts';
import { namesOf, subjectOf } from '../names.ts';
import { footprintNumbers, markOf } from '../numbers.ts';
import { sideOfPart } from '../wrap/sides.ts';
import { type HeaderFlat, headerFlat } from './flat.ts';
import { drawSheet } from './sheet.ts';

/**
 * The headers whose footprints are worth a print, by their places in an end's list: those with a wall to land on. A square end leaves
 * its tube's own outline, which is scribed round the tube itself.
 */
export function landings(cope: Cope): number[] {
  if (isSquare(cope)) return [];
  return cope.end.parts.flatMap(({ onto }, part) => (headerFactsOf(onto).wall ? [part] : []));
}

/** What one end's footprint on one of its headers is drawn from, as a text. */
export function numbersOfFootprint(
  solution: TubeSolution,
  end: EndName,
  part: number,
  { paperThickness, placeOf }: Pick<LeafContext, 'paperThickness' | 'placeOf'>,
): string {
  return footprintNumbers(solution, end, part, paperThickness, placeOf?.(solution, end, part) ?? []);
}

/**
 * What one end leaves on one header, by its place in the end's list, unrolled as a leaf to wrap round the header. Throws a
 * RangeError where the end is not coped or has no such header, or lands on no wall there.
 */
export function drawFootprint(
  solution: TubeSolution,
  endName: EndName,
  part: number,
  context: LeafContext,
): CardedLeaf {
  const cope = solution.ends[endName];
  if (cope?.kind !== 'coped') throw new RangeError(`End ${endName} of ${solution.tube.name} is not coped.`);
  const asked = cope.end.parts[part];
  if (!asked || !headerFactsOf(asked.onto).wall)
    throw new RangeError(
      `End ${endName} of ${solution.tube.name} has no header ${part + 1} with a wall to land on.`,
    );
  const units = unitsOfTube(solution.tube);
  const { words } = context;
  const { card, footprint: say } = words;
  const shape = headerFactsOf(asked.onto).shape();
  const outline = footprintOf(cope, 0, part);
  const length = footprintLength(cope, 0, part);
  const vent = ventPlaceOf(solution);
  const vented = vent?.end === endName && vent.part === part;
  const header = cope.end.parts.length > 1 ? card.headerName(part + 1) : undefined;
  const shared = !context.placeOf && isShared(solution, endName, context);
  const names = { ...namesOf(solution, endName, words, shared), use: say.use };
  const title = say.title(words.leaf.title(names.tube, endName, names.hand === 'opposite'), header);
  const place = context.placeOf?.(solution, endName, part) ?? [];
  const isPlaced = place.length > 0;
  const lay = factOf('footprint', card.labels.lay, isPlaced ? say.lay.onCross : layWords(shape, words));
  const facts: Fact[] = [
    ...jobFacts(context.job, words),
    ...partFacts(asked, header, sideOfPart(cope, part), units, words),
    factOf('tube', card.labels.tube, spelled(tubeFactsOf(solution.tube.section).said(words).words)),
    factOf('footprint', card.labels.outline, lengthWords(shape, outline, length, units, words)),
    lay,
    factOf('footprint', card.labels.scribe, say.scribe),
    ...holeFacts(cope, vented, outline, words),
    factOf('footprint', card.labels.clean, say.clean),
  ];
  const numbers = numbersOfFootprint(solution, endName, part, context);
  const key = drawingKey(title, [part, length], [...facts, ...place]);
  const flat = headerFlat(shape, endName === 'A' ? 1 : -1, context.paperThickness);
  const sheet = drawSheet(
    `footprint:${key}`,
    {
      cope,
      asked,
      part,
      flat,
      vented,
      words,
      mark: words.leaf.mark(markOf(numbers)),
      cross: (isPlaced && crossOf(asked, flat)) || point(0, 0),
      isPlaced,
    },
    outline,
    {
      heading: names.tube,
      text: say.heading(endName, names.paired ? names.handName : undefined, header),
    },
  );
  const { ticketed = false } = context;
  // No ticket says how near the truth a footprint on a bend is.
  const told = [...(ticketed ? [lay].filter(() => shape.kind === 'bent') : facts), ...place];
  const of: Subject = { ...subjectOf(solution, endName), place: 'footprint', part };
  return {
    title,
    numbers,
    wrap: { ...sheet.drawing, of },
    card: {
      ...drawCard(`card:${key}`, names, told, sheet.beside, cope, words, ticketed),
      of: { ...of, place: 'card' },
    },
    beside: told.length + sheet.beside.length > 0,
    keepWhole: sheet.keepWhole,
  };
}

/** Where the tube's centre line comes out of a header that runs on; undefined where it passes beside. */
function crossOf(asked: Part, flat: HeaderFlat): Point | undefined {
  const { landing, out } = centreOn(asked);
  return out && flat.to(landing.solid.develop(0, 0, out.z));
}

/** What the hole in the outline is for. */
function holeFacts(
  cope: Cope,
  vented: boolean,
  { closed }: Outline,
  { card: { labels }, footprint }: Language,
): Fact[] {
  const dashed = cope.thickness !== undefined;
  if (vented) return [factOf('footprint', labels.vent, footprint.ventHere(footprint.vent(dashed, closed)))];
  return dashed ? [factOf('edge', labels.dashes, footprint.shortDashes)] : [];
}

function lengthWords(
  shape: HeaderShape,
  { closed }: Outline,
  length: Mm,
  units: 'mm' | 'in',
  { footprint: { long } }: Language,
): Said {
  if (shape.kind === 'bent') return long.bent(length, units);
  return closed ? long.closed(length, units) : long.open(length, units);
}

function layWords(shape: HeaderShape, { footprint: { lay } }: Language): Said {
  switch (shape.kind) {
    case 'plane':
      return lay.plane;
    case 'bent':
      return lay.bent;
    case 'bar':
      return lay.bar(shape.folds !== undefined);
  }
}
