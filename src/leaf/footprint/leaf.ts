import type { Point } from '../../draw/drawing.ts';
import type { Subject } from '../../draw/facts.ts';
import { spelled } from '../../draw/letters.ts';
import { point } from '../../draw/path.ts';
import { ventPlaceOf } from '../../fit/vent.ts';
import type { EndName, Part } from '../../job/job.ts';
import { headerFactsOf } from '../../job/kinds.ts';
import { centreOn } from '../../job/landing.ts';
import { tubeFactsOf, unitsOfTube } from '../../job/sections.ts';
import type { Said } from '../../measure/said.ts';
import type { Mm } from '../../measure/units.ts';
import type { Cope } from '../../saddle/cope.ts';
import { footprintLength, footprintOf, type Outline } from '../../saddle/footprint.ts';
import { isSquare } from '../../saddle/sawn.ts';
import type { TubeSolution } from '../../saddle/solve.ts';
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
import type { Landed } from './notes.ts';
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
  const { words, ticketed = false } = context;
  const place = context.placeOf?.(solution, endName, part) ?? [];
  const numbers = numbersOfFootprint(solution, endName, part, context);
  const landed = landedOf(solution, endName, part, context, markOf(numbers), place.length > 0);
  const { asked, cope } = landed;
  const [outline, length] = [footprintOf(cope, 0, part), footprintLength(cope, 0, part)];
  const header = cope.end.parts.length > 1 ? words.card.headerName(part + 1) : undefined;
  const shared = !context.placeOf && isShared(solution, endName, context);
  const names = { ...namesOf(solution, endName, words, shared), use: words.footprint.use(landed.vented) };
  const leaf = words.leaf.title(names.tube, endName, names.hand === 'opposite');
  const title = words.footprint.title(leaf, header);
  const facts: Fact[] = [
    ...jobFacts(context.job, words),
    ...partFacts(asked, header, sideOfPart(cope, part), unitsOfTube(solution.tube), words),
    ...sheetFacts(solution, landed, outline, length),
  ];
  const key = drawingKey(title, [part, length], [...facts, ...place]);
  const sheet = drawSheet(`footprint:${key}`, landed, outline, {
    heading: names.tube,
    text: words.footprint.heading(endName, names.paired ? names.handName : undefined, header),
  });
  // No ticket says how near the truth a footprint on a bend is.
  const isTold = ({ label }: Fact) =>
    !ticketed || (asked.onto.kind === 'bend' && label === words.card.labels.lay);
  const told = [...facts.filter(isTold), ...place];
  const card = drawCard(`card:${key}`, names, told, sheet.beside, cope, words, ticketed);
  const of: Subject = { ...subjectOf(solution, endName), place: 'footprint', part };
  return {
    title,
    numbers,
    wrap: { ...sheet.drawing, of },
    card: { ...card, of: { ...of, place: 'card' } },
    beside: told.length + sheet.beside.length > 0,
    keepWhole: sheet.keepWhole,
  };
}

/** The end on this header, laid flat; `isPlaced` where its card tells where it goes. */
function landedOf(
  solution: TubeSolution,
  end: EndName,
  part: number,
  { paperThickness, words }: LeafContext,
  mark: Said,
  isPlaced: boolean,
): Landed {
  const { name } = solution.tube;
  const cope = solution.ends[end];
  if (cope?.kind !== 'coped') throw new RangeError(`End ${end} of ${name} is not coped.`);
  const asked = cope.end.parts[part];
  if (!asked || !headerFactsOf(asked.onto).wall)
    throw new RangeError(`End ${end} of ${name} has no header ${part + 1} with a wall to land on.`);
  const flat = headerFlat(headerFactsOf(asked.onto).shape(), end === 'A' ? 1 : -1, paperThickness);
  const vent = ventPlaceOf(solution);
  const vented = vent?.end === end && vent.part === part;
  const cross = (isPlaced && crossOf(asked, flat)) || point(0, 0);
  return { cope, asked, part, flat, vented, words, mark: words.leaf.mark(mark), cross, isPlaced };
}

/** What its card says of the sheet itself. */
function sheetFacts(solution: TubeSolution, landed: Landed, outline: Outline, length: Mm): Fact[] {
  const { section } = solution.tube;
  const { words } = landed;
  const { labels } = words.card;
  const { scribe, clean } = words.footprint;
  const long = lengthWords(landed, outline, length, unitsOfTube(solution.tube));
  return [
    factOf('tube', labels.tube, spelled(tubeFactsOf(section).said(words).words)),
    factOf('footprint', labels.outline, long),
    factOf('footprint', labels.lay, layWords(landed)),
    factOf('footprint', labels.scribe, scribe),
    ...holeFacts(landed, outline),
    factOf('footprint', labels.clean, clean),
  ];
}

/** Where the tube's centre line comes out of a header that runs on; undefined where it passes beside. */
function crossOf(asked: Part, flat: HeaderFlat): Point | undefined {
  const { landing, out } = centreOn(asked);
  return out && flat.to(landing.solid.develop(0, 0, out.z));
}

/** What the hole in the outline is for. */
function holeFacts({ cope, vented, words }: Landed, { closed }: Outline): Fact[] {
  const { labels } = words.card;
  const { shortDashes, vent, ventHere } = words.footprint;
  const dashed = cope.thickness !== undefined;
  if (vented) return [factOf('footprint', labels.vent, ventHere(vent(dashed, closed)))];
  return dashed ? [factOf('edge', labels.dashes, shortDashes)] : [];
}

function lengthWords({ asked, words }: Landed, { closed }: Outline, length: Mm, units: 'mm' | 'in'): Said {
  const { long } = words.footprint;
  if (asked.onto.kind === 'bend') return long.bent(length, units);
  return closed ? long.closed(length, units) : long.open(length, units);
}

/** How it is laid on its header. */
function layWords({ asked, isPlaced, words }: Landed): Said {
  const { lay } = words.footprint;
  const shape = headerFactsOf(asked.onto).shape();
  if (isPlaced) return lay.onCross;
  if (shape.kind === 'plane') return lay.plane;
  return shape.kind === 'bent' ? lay.bent : lay.bar(shape.folds !== undefined);
}
