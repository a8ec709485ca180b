import { useMemo, useReducer, useRef, useState } from 'preact/hooks';
import { type Bench, BenchContext } from './bench.ts';
import { Board } from './board.tsx';
import { withValues } from './edit.ts';
import { ghostTube } from './ghost.ts';
import { begin, changed } from './history.ts';
import { docOf, keyOf, tubePaths, unitsOf } from './job-doc.ts';
import { JobFields } from './job-row.tsx';
import { useNotes } from './notes.ts';
import { workOut } from './outcome.ts';
import { type Shown, shownOf } from './shown.ts';
import { TopBar } from './top-bar.tsx';
import { Views } from './views.tsx';
import type { Problem } from './where.ts';

/** The whole page, for the job that it begins with. */
export function App({ start }: { readonly start: string }) {
  const [history, change] = useReducer(changed, start, begin);
  const [place] = useState(0);
  const [part, pointAt] = useState<string | undefined>(undefined);
  const text = history.present;
  const doc = useMemo(() => docOf(text), [text]);
  const outcome = useMemo(() => workOut(text), [text]);
  const tubes = tubePaths(doc);
  const tube = tubes[Math.min(place, tubes.length - 1)] ?? ['tube'];
  const shown = useMemo(() => shownOf(outcome, place), [outcome, place]);
  const last = useRef<Shown | undefined>(undefined);
  if (shown) last.current = shown;
  const notes = useNotes(shown?.solution);
  const ghost = useMemo(ghostTube, []);
  const bench = useMemo((): Bench => {
    const problems = outcome.kind === 'refused' ? byPath(outcome.problems) : new Map<string, Problem[]>();
    return {
      doc,
      units: unitsOf(doc),
      outcome,
      problemsAt: (path) => problems.get(keyOf(path)) ?? [],
      write: (values, typing) =>
        change({
          kind: 'write',
          text: withValues(text, values),
          ...(typing !== undefined && { touched: typing }),
        }),
      settle: () => change({ kind: 'settle' }),
      pointAt,
    };
  }, [doc, outcome, text]);
  const pictured = last.current
    ? { solution: last.current.solution, ghost: false }
    : { solution: ghost, ghost: true };
  return (
    <BenchContext.Provider value={bench}>
      <TopBar history={history} change={change} shown={shown} />
      <main>
        <div class="desk">
          <Board tube={tube} shown={pictured} notes={notes} part={part} />
          <JobFields />
        </div>
        <Views shown={last.current} stale={shown === undefined} notes={notes} text={text} />
      </main>
    </BenchContext.Provider>
  );
}

function byPath(problems: readonly Problem[]): Map<string, Problem[]> {
  const found = new Map<string, Problem[]>();
  for (const problem of problems) {
    const key = keyOf(problem.path);
    found.set(key, [...(found.get(key) ?? []), problem]);
  }
  return found;
}
