import { spelled } from '../../draw/letters.ts';
import type { EndName } from '../../job/job.ts';
import type { HeaderShape } from '../../job/kind.ts';
import { factsOf } from '../../job/kinds.ts';
import { tubeFactsOf, unitsOf } from '../../job/sections.ts';
import type { Cope } from '../../saddle/cope.ts';
import { footprintLength, footprintOf, type Outline } from '../../saddle/footprint.ts';
import type { TubeSolution } from '../../saddle/solve.ts';
import { drawCard } from '../card/card.ts';
import type { Fact } from '../card/fact.ts';
import { jobFacts } from '../card/facts.ts';
import { headerName, partFacts } from '../card/header-facts.ts';
import type { LeafContext } from '../draw-leaf.ts';
import { keyOf } from '../key.ts';
import type { Leaf } from '../leaf.ts';
import { inBoth, namesOf, ownerOf, titleOf } from '../names.ts';
import { CLEAN_IN_WORDS } from './clean-to.ts';
import { headerFlat } from './flat.ts';
import { drawSheet } from './sheet.ts';
import { isVentedInto, ventPlace } from './vent.ts';

/** The headers on which an end leaves a footprint, by their places in its list: those with a wall to land on. */
export function landings({ end }: Pick<Cope, 'end'>): number[] {
  return end.parts.flatMap(({ onto }, part) => (factsOf(onto).wall ? [part] : []));
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
): Leaf {
  const cope = solution.ends[endName];
  if (cope?.kind !== 'coped') throw new RangeError(`End ${endName} of ${solution.tube.name} is not coped.`);
  const asked = cope.end.parts[part];
  if (!asked || !landings(cope).includes(part))
    throw new RangeError(
      `End ${endName} of ${solution.tube.name} has no header ${part + 1} with a wall to land on.`,
    );
  const units = unitsOf(solution.tube);
  const shape = factsOf(asked.onto).shape();
  const outline = footprintOf(cope, 0, part);
  const length = footprintLength(cope, 0, part);
  const vented = isVentedInto(solution, asked);
  const header = cope.end.parts.length > 1 ? headerName(part) : 'header';
  const names = { ...namesOf(solution, endName), use: 'footprint: to mark by, not to cut' };
  const title = `${titleOf(names)}, footprint${header === 'header' ? '' : ` on ${header}`}`;
  const facts: Fact[] = [
    ...jobFacts(context.job),
    ...partFacts(asked, header, units, context.words),
    { label: 'tube', text: spelled(tubeFactsOf(solution.tube.section).said(context.words).words) },
    { label: 'outline', text: lengthWords(shape, outline, inBoth(length, units)) },
    { label: 'lay it', text: layWords(shape) },
    { label: 'scribe', text: "the solid outline: the tube's outside" },
    ...holeFacts(cope, vented, outline),
    { label: 'clean', text: `to the long dashes, ${CLEAN_IN_WORDS} outside` },
  ];
  const key = keyOf(title, [part, length], facts);
  const flat = headerFlat(shape, endName === 'A' ? 1 : -1, context.paperThickness);
  const sheet = drawSheet(`footprint of ${key}`, { cope, asked, part, flat, vented }, outline, {
    heading: names.tube,
    text: `end ${endName}${names.paired ? `, ${names.hand}` : ''}: footprint on ${header}`,
  });
  return {
    title,
    of: ownerOf(names),
    wrap: sheet.drawing,
    card: drawCard(`card of ${key}`, names, facts, sheet.beside, cope),
    keepWhole: [],
  };
}

/** What the hole in the outline is for. Which landing the tube is vented in is left to the person. */
function holeFacts(cope: Cope, vented: boolean, { closed }: Outline): Fact[] {
  if (vented) return [{ label: 'vent', text: `if you vent here: ${ventPlace(cope, closed)}` }];
  return cope.thickness ? [{ label: 'dashes', text: "the short ones: the tube's inside" }] : [];
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
      return `round the bend, words out: ${marks}. Approximate: true round the header; along it, true only on the centre line of its bend`;
    case 'bar': {
      const folded = shape.folds ? ', folded at the dashes and dots' : '';
      return `round the header, words out${folded}: ${marks}`;
    }
  }
}
