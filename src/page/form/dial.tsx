import type { Part } from '../../job/job.ts';
import { factsOf } from '../../job/kinds.ts';
import { reachOf } from '../../job/shape.ts';
import type { TubeSolution } from '../../saddle/solve.ts';

/**
 * How an end is turned and how far its header lies aside, as seen along the tube from A to B: stations run as the hands of a
 * clock do, the spine on top.
 */
export function Dial({ solution, part, label }: { solution: TubeSolution; part: Part; label: string }) {
  const { section } = solution.tube;
  const reach = reachOf(section);
  const half = Math.min(factsOf(part.onto).across, 1.5 * reach);
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
      {section.kind === 'round' ? (
        <circle class="tube" r={reach} />
      ) : (
        <rect
          class="tube"
          x={-section.wide.mm / 2}
          y={-section.deep.mm / 2}
          width={section.wide.mm}
          height={section.deep.mm}
          rx={section.corner.mm}
        />
      )}
      <path class="spine" d={`M0 ${-1.2 * reach}V${-0.8 * reach}`} />
    </svg>
  );
}

/** A mark at the heel, its point on the tube. */
function heel(y: number, size: number, way: 1 | -1): string {
  return `M0 ${y}l${size} ${way * 2 * size}h${-2 * size}z`;
}
