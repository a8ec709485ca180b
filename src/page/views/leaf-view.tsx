import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Drawing } from '../../draw/drawing.ts';
import { inkDrawingSvg } from '../../ink/svg-sheet.ts';
import type { Job } from '../../job/job.ts';
import { drawLeaf } from '../../leaf/draw-leaf.ts';
import { contextOf } from '../../leaf/leaves-of.ts';
import type { Said } from '../../measure/said.ts';
import type { TubeSolution } from '../../saddle/solve.ts';
import { useWords } from '../words.ts';

interface LeafViewProps {
  readonly job: Job;
  readonly solution: TubeSolution;
  readonly end: 'A' | 'B';
  /** So large that its small print can be read, whatever the width of the page. */
  readonly readable: boolean;
  /** Whether there is room for it so large is told whenever that changes. */
  readonly onRoom: (enough: boolean) => void;
}

/** The leaf of one end, the same drawing that is printed. */
export function LeafView({ job, solution, end, readable, onRoom }: LeafViewProps) {
  const words = useWords().page.views.leaf;
  const paper = useRef<HTMLDivElement>(null);
  const leaf = useMemo(() => drawLeaf(solution, end, contextOf(job)), [job, solution, end]);
  useLayoutEffect(() => {
    const wrap = shown(leaf.wrap, words.wrap(leaf.title));
    const card = shown(leaf.card, words.card(leaf.title));
    paper.current?.replaceChildren(wrap, card);
  }, [leaf, words]);
  const room = useWidth(paper);
  const enough = room >= Math.max(readableWidth(leaf.wrap), readableWidth(leaf.card)) * NEARLY;
  useEffect(() => onRoom(enough), [enough, onRoom]);
  const scrolls = readable && !enough;
  return (
    <section
      class={`paper${scrolls ? ' is-readable' : ''}`}
      aria-label={words.name}
      // What scrolls has to be reached by keys.
      tabIndex={scrolls ? 0 : undefined}
      ref={paper}
    />
  );
}

/** At this scale the smallest letters of a leaf are as large as those of the page. */
const PIXELS_A_MM = 5.5;

/** A little smaller than that is as good. */
const NEARLY = 0.85;

function readableWidth({ box }: Drawing): number {
  return PIXELS_A_MM * (box.right - box.left);
}

function shown(drawing: Drawing, label: Said): SVGSVGElement {
  const svg = inkDrawingSvg(drawing, window);
  svg.setAttribute('role', 'img');
  svg.setAttribute('aria-label', label);
  svg.style.setProperty('--readable', `${readableWidth(drawing)}px`);
  return svg;
}

/** The width in pixels that an element has for what is in it; without bounds until it is known. */
function useWidth(element: { readonly current: HTMLElement | null }): number {
  const [width, setWidth] = useState(Number.POSITIVE_INFINITY);
  useEffect(() => {
    if (!element.current) return undefined;
    const watcher = new ResizeObserver(([entry]) => {
      if (entry) setWidth(entry.contentRect.width);
    });
    watcher.observe(element.current);
    return () => watcher.disconnect();
  }, [element]);
  return width;
}
