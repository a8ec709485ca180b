import { standOffOf } from '../../fit/stand-off.ts';
import { headerFactsOf } from '../../job/kinds.ts';
import type { Said } from '../../measure/said.ts';
import type { Mm } from '../../measure/units.ts';
import type { Cope } from '../../saddle/cope.ts';
import type { Line } from '../../saddle/line.ts';
import type { Language } from '../../words/language.ts';
import { type Fact, factOf } from './fact.ts';

/** How the edge of one end is made, and what its dashed line is; lengths in the tube's unit and the other. */
export function edgeFacts(cope: Cope, units: 'mm' | 'in', words: Language): Fact[] {
  const { labels, edge } = words.card;
  const made = factOf('edge', labels.edge, edgeWords(cope, units, words));
  if (!cope.other || cope.end.preparation.edge === 'bevel') return [made];
  return [made, factOf('edge', labels.dashes, edge.dashesOfSquare)];
}

function edgeWords(cope: Cope, units: 'mm' | 'in', { card: { edge }, steps }: Language): Said {
  const { preparation } = cope.end;
  if (preparation.edge === 'bevel') {
    const inner = innerEdgeOf(cope);
    return edge.bevel(inner === 'inWaste', steps.cut.innerEdge[inner], preparation.land);
  }
  return preparation.from === 'inside' ? edge.fromInside(standOffOf(cope) ?? 0, units) : edge.square;
}

/**
 * What becomes of the inner edge of an end that is bevelled, true of that end: a bevel takes metal away only where the dashed line
 * lies on the body's side of the solid one, and a cut in one plane makes both edges.
 */
export function innerEdgeOf(cope: Cope): keyof Language['steps']['cut']['innerEdge'] {
  const dashes = dashesOf(cope);
  if (!dashes) return 'unknown';
  if (!dashes.inWaste && !dashes.onBody) return 'same';
  if (isFlat(cope)) return 'flat';
  return dashes.inWaste ? 'inWaste' : 'onBody';
}

/** The dashed line of a leaf, beside its cut; none where one straight cut makes both edges, and nobody needs it. */
export function dashedLine(cope: Cope): Line | undefined {
  return cope.end.preparation.edge === 'bevel' && isFlat(cope) ? undefined : cope.other;
}

/** Whether it is cut in one plane, as for a plate or the next piece; a land makes it none. */
function isFlat({ end: { parts, preparation } }: Cope): boolean {
  const land = preparation.edge === 'bevel' && preparation.land;
  return !land && parts.length === 1 && headerFactsOf(parts[0].onto).shape().kind === 'plane';
}

/** On which sides of the solid line the dashed one lies. */
interface Dashes {
  readonly inWaste: boolean;
  readonly onBody: boolean;
}

/** Lines nearer than this are one to a grinder. */
const SHOWS: Mm = 0.1;
const LOOKS = 72;

function dashesOf({ cut, other, joint: { section } }: Cope): Dashes | undefined {
  if (!other) return undefined;
  const deeper = Array.from({ length: LOOKS }, (_, i) => {
    const station = (i * section.turn) / LOOKS;
    const [solid, dashed] = [cut(station), other(station)];
    return solid.contact && dashed.contact ? dashed.setback - solid.setback : 0;
  });
  return { inWaste: Math.min(...deeper) < -SHOWS, onBody: Math.max(...deeper) > SHOWS };
}
