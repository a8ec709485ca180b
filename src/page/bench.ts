import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { DocPath, JobDoc, Value } from './job/job-doc.ts';
import type { Outcome } from './job/outcome.ts';
import type { Problem } from './job/where.ts';

/** What every part of the form works on. */
export interface Bench {
  readonly doc: JobDoc;
  readonly units: 'mm' | 'in';
  readonly outcome: Outcome;
  /** What is wrong with, or lacking at, the value at a path. */
  readonly problemsAt: (path: DocPath) => readonly Problem[];
  /** Writes values into the job; `typing` names the field where they are typed. */
  readonly write: (values: readonly (readonly [DocPath, Value | undefined])[], typing?: string) => void;
  readonly settle: () => void;
  /** What of the picture the person is at: `A.angle`. */
  readonly pointAt: (part: string | undefined) => void;
}

export const BenchContext = createContext<Bench | undefined>(undefined);

export function useBench(): Bench {
  const bench = useContext(BenchContext);
  if (!bench) throw new Error('a part of the form stands outside of it');
  return bench;
}
