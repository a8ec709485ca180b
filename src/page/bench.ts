import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { Said } from '../measure/said.ts';
import { replaced, withValues } from './job/edit.ts';
import { type DocPath, keyOf, unitsOfDoc, type Value } from './job/job-doc.ts';
import type { Notes } from './job/notes.ts';
import type { Printing } from './job/printing.ts';
import type { JobAtHand } from './job/use-job.ts';
import type { Problem } from './job/where.ts';

/** What every part of the page works on: the job at hand, and what is kept beside it. */
interface Kept extends JobAtHand {
  readonly notes: Notes;
  readonly printing: Printing;
  readonly setPrinting: (printing: Printing) => void;
  /** Tells the person what came of something. */
  readonly tell: (words: Said) => void;
  /** What of the picture the person is at: `A.angle`. */
  readonly part: string | undefined;
  readonly pointAt: (part: string | undefined) => void;
}

export interface Bench extends Kept {
  readonly units: 'mm' | 'in';
  /** What is wrong with, or lacking at, the value at a path. */
  readonly problemsAt: (path: DocPath) => readonly Problem[];
  /** Writes values into the job; `typing` names the field where they are typed. */
  readonly write: (values: readonly (readonly [DocPath, Value | undefined])[], typing?: string) => void;
}

/** The bench for a job as it stands. */
export function benchOf(kept: Kept): Bench {
  const { doc, outcome, text, writeWhole } = kept;
  const problems = outcome.kind === 'refused' ? byPath(outcome.problems) : new Map<string, Problem[]>();
  return {
    ...kept,
    units: unitsOfDoc(doc),
    problemsAt: (path) => problems.get(keyOf(path)) ?? [],
    write(values, typing) {
      const [[path, value] = [[], undefined], ...others] = values;
      // What is typed mostly takes the place of what was there: the file need not be read again for that.
      const typed = others.length === 0 ? replaced(text, doc, path, value) : undefined;
      writeWhole(typed ?? withValues(text, values), typing);
    },
  };
}

function byPath(problems: readonly Problem[]): Map<string, Problem[]> {
  const found = new Map<string, Problem[]>();
  for (const problem of problems) {
    const key = keyOf(problem.path);
    found.set(key, [...(found.get(key) ?? []), problem]);
  }
  return found;
}

export const BenchContext = createContext<Bench | undefined>(undefined);

export function useBench(): Bench {
  const bench = useContext(BenchContext);
  if (!bench) throw new Error('a part of the page stands outside of its bench');
  return bench;
}
