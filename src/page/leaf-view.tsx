import { useLayoutEffect, useRef } from 'preact/hooks';
import { inkSvgElement } from '../ink/svg.ts';
import type { Job } from '../job/job.ts';
import { drawLeaf } from '../leaf/draw-leaf.ts';
import { contextOf } from '../leaf/leaves-of.ts';
import type { TubeSolution } from '../saddle/solve.ts';

interface LeafViewProps {
  readonly job: Job;
  readonly solution: TubeSolution;
  readonly end: 'A' | 'B';
}

/** The leaf of one end, the same drawing that is printed. */
export function LeafView({ job, solution, end }: LeafViewProps) {
  const paper = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    const leaf = drawLeaf(solution, end, contextOf(job));
    const svg = inkSvgElement([leaf], window);
    svg.setAttribute('role', 'img');
    svg.setAttribute('aria-label', `Leaf: ${leaf.title}`);
    svg.removeAttribute('width');
    svg.removeAttribute('height');
    paper.current?.replaceChildren(svg);
  }, [job, solution, end]);
  return <div class="paper" ref={paper} />;
}
