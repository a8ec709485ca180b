import { standOffOf } from '../../fit/stand-off.ts';
import type { Mm } from '../../measure/units.ts';
import type { Cope } from '../../saddle/cope.ts';
import { inBoth, wrote } from '../names.ts';
import type { Fact } from './fact.ts';

/** How the edge of one end is made, and what its dashed line is; lengths in the tube's unit and the other. */
export function edgeFacts(cope: Cope, units: 'mm' | 'in'): Fact[] {
  const edge = { label: 'edge', text: edgeWords(cope, units) };
  if (!cope.other || cope.end.preparation.edge === 'bevel') return [edge];
  return [edge, { label: 'dashes', text: 'where the outer edge alone would touch: weld fills from there.' }];
}

function edgeWords(cope: Cope, units: 'mm' | 'in'): string {
  const { preparation } = cope.end;
  const line = 'cut to the middle of the solid line';
  if (preparation.edge === 'bevel') {
    const land = preparation.blunt ? ` A thin edge is left ${wrote(preparation.blunt)} thick.` : '';
    return `bevel: ${line}; ${innerEdgeWords(cope)}.${land}`;
  }
  if (preparation.from === 'inside') {
    const off = inBoth(standOffOf(cope) ?? 0, units);
    return `square, torch held radially: ${line}. Stands off ${off}: fill with weld.`;
  }
  return `square: ${line}, square to the surface; fill the outer gap with weld.`;
}

/**
 * What becomes of the inner edge of an end that is bevelled, true of that end: a bevel takes metal away only where the dashed line
 * lies on the body's side of the solid one. For leaf and ticket; small letters, no full stop.
 */
export function innerEdgeWords(cope: Cope): string {
  const dashes = dashesOf(cope);
  if (!dashes) return 'bevel the inner edge until it seats';
  if (dashes.inWaste)
    return 'where the dashes lie in the waste, lean the cut to leave the inner edge out to them; elsewhere grind it back to them';
  return dashes.onBody
    ? 'grind the inner edge back to the dashed line'
    : 'the inner edge ends on the same line';
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
