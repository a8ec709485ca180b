import type { EndName } from '../job/job.ts';
import type { Mm } from '../measure/units.ts';
import type { Cope } from './cope.ts';
import type { TubeSolution } from './solve.ts';

/** No saw keeps closer. */
const LEVEL: Mm = 0.05;
const LOOKS = 72;

/**
 * The setback of an end that is one straight cut square across the tube, which is sawn without a leaf: it is plain, or it sits on a
 * flat that stands square to it. Undefined of any other, and where the length is not known, for it is measured from there.
 */
export function sawnAt({ ends, lengths }: TubeSolution, name: EndName): Mm | undefined {
  const end = ends[name];
  if (!end) return undefined;
  if (end.kind === 'plain') return 0;
  return lengths && isSquare(end) ? end.longPoint.setback : undefined;
}

/** Whether a coped end is one straight cut square across the tube, so that it leaves the tube's own outline where it lands. */
export function isSquare({ throat, longPoint, other, joint }: Cope): boolean {
  const level = ({ setback }: { readonly setback: Mm }): boolean =>
    Math.abs(setback - longPoint.setback) <= LEVEL;
  const looks = Array.from({ length: other ? LOOKS : 0 }, (_, i) => (i * joint.section.turn) / LOOKS);
  return level(throat) && looks.every((at) => other && level(other(at)));
}
