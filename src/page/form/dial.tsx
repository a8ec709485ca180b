import type { Part } from '../../job/job.ts';
import { headerFactsOf } from '../../job/kinds.ts';
import type { Said } from '../../measure/said.ts';
import type { TubeSolution } from '../../saddle/solve.ts';
import type { Section } from '../../space/section.ts';

/**
 * How an end is turned and how far its header lies aside, as seen along the tube from A to B: stations run as the hands of a
 * clock do, the spine on top.
 */
export function Dial({ solution, part, label }: { solution: TubeSolution; part: Part; label: Said }) {
  const { section } = solution;
  const { reach } = section;
  const half = Math.min(headerFactsOf(part.onto).across, 1.5 * reach);
  const view = 1.75 * reach;
  const turn = (part.clock.rad * 180) / Math.PI;
  const acute = part.angle.rad <= Math.PI / 2;
  const aside = part.offset.mm;
  return (
    <svg class="dial" viewBox={`${-view} ${-view} ${2 * view} ${2 * view}`} role="img" aria-label={label}>
      <g transform={`rotate(${turn})`}>
        <path
          class="header"
          d={`M${aside - half} ${-1.6 * reach}V${1.6 * reach}M${aside + half} ${-1.6 * reach}V${1.6 * reach}`}
        />
        <path class="axes" d={`M${aside} ${-1.7 * reach}V${1.7 * reach}`} />
        <path class="heel" d={heel(acute ? -reach : reach, 0.16 * reach, acute ? -1 : 1)} />
      </g>
      <path class="tube" d={outlineOf(section)} />
      <path class="spine" d={`M0 ${-1.2 * reach}V${-0.8 * reach}`} />
    </svg>
  );
}

/** All round the outside, its corners among the points. */
function outlineOf({ turn, corners, at }: Section): string {
  const even = Array.from({ length: STEPS }, (_, i) => (i * turn) / STEPS);
  const stations = [...even, ...corners.flatMap(({ from, to }) => [from, to])].sort((a, b) => a - b);
  const points = stations.map(at).map(({ x, y }) => `${y.toFixed(2)} ${(-x).toFixed(2)}`);
  return `M${points.join('L')}Z`;
}

const STEPS = 120;

/** A mark at the heel, its point on the tube. */
function heel(y: number, size: number, way: 1 | -1): string {
  return `M0 ${y}l${size} ${way * 2 * size}h${-2 * size}z`;
}
