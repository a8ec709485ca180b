import { useState } from 'preact/hooks';
import { LeafView } from './leaf-view.tsx';
import type { Notes } from './notes.ts';
import type { Shown } from './shown.ts';

interface ViewsProps {
  /** The last job that could be read. */
  readonly shown: Shown | undefined;
  /** What is in the form now can't be read. */
  readonly stale: boolean;
  readonly notes: Notes;
  readonly text: string;
}

/** What comes of the job, one view at a time. */
export function Views({ shown, stale }: ViewsProps) {
  const [end, setEnd] = useState<'A' | 'B'>('A');
  if (!shown) return <section class="views" aria-label="Views" />;
  const ends = (['A', 'B'] as const).filter((name) => shown.solution.ends[name]?.kind === 'coped');
  const chosen = ends.includes(end) ? end : ends[0];
  return (
    <section class={`views${stale ? ' is-stale' : ''}`} aria-label="Views">
      {ends.map((name) => (
        <button type="button" key={name} aria-pressed={name === chosen} onClick={() => setEnd(name)}>
          Leaf {name}
        </button>
      ))}
      {chosen && <LeafView job={shown.job} solution={shown.solution} end={chosen} />}
    </section>
  );
}
