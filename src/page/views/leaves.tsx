import { useState } from 'preact/hooks';
import { Action } from '../action.tsx';
import type { Shown } from '../job/shown.ts';
import { useWords } from '../words.ts';
import { LeafView } from './leaf-view.tsx';

/** The leaf of one end of the tube that is looked at, whole or so large that all of it can be read. */
export function Leaves({ shown }: { readonly shown: Shown }) {
  const words = useWords().page.views;
  const [end, setEnd] = useState<'A' | 'B'>('A');
  const [readable, setReadable] = useState(false);
  const [enough, setEnough] = useState(true);
  const ends = (['A', 'B'] as const).filter((each) => shown.solution.ends[each]?.kind === 'coped');
  const chosen = ends.includes(end) ? end : ends[0];
  if (!chosen) return <p class="aside">{words.leaf.none}</p>;
  return (
    <>
      {(ends.length > 1 || !enough) && (
        <div class="tools">
          {ends.length > 1 &&
            ends.map((each) => (
              <Action
                key={each}
                words={words.end(each)}
                fullName={words.leaf.ofEnd(each)}
                onAct={() => setEnd(each)}
                pressed={each === chosen}
              />
            ))}
          {!enough && (
            <Action words={words.leaf.readable} onAct={() => setReadable(!readable)} pressed={readable} />
          )}
        </div>
      )}
      <LeafView
        job={shown.job}
        solution={shown.solution}
        end={chosen}
        readable={readable}
        onRoom={setEnough}
      />
    </>
  );
}
