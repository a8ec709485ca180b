import { useLayoutEffect, useRef } from 'preact/hooks';
import { inkDrawingSvg } from '../ink/svg-sheet.ts';
import type { Job } from '../job/job.ts';
import { drawLeaf } from '../leaf/draw-leaf.ts';
import type { Drawing } from '../leaf/drawing.ts';
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
    const wrap = shown(leaf.wrap, `Leaf: ${leaf.title}`);
    const card = shown(leaf.card, `Card: ${leaf.title}`);
    paper.current?.replaceChildren(wrap, card);
  }, [job, solution, end]);
  return <div class="paper" ref={paper} />;
}

/** Large enough to read where the page is wide; never wider than the page. */
const PIXELS_A_MM = 5;

function shown(drawing: Drawing, label: string): SVGSVGElement {
  const svg = inkDrawingSvg(drawing, window);
  svg.setAttribute('role', 'img');
  svg.setAttribute('aria-label', label);
  svg.style.maxWidth = `${PIXELS_A_MM * (drawing.box.right - drawing.box.left)}px`;
  return svg;
}
