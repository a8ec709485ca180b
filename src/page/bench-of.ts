import type { Bench } from './bench.ts';
import { replaced, withValues } from './job/edit.ts';
import type { Change } from './job/history.ts';
import { type JobDoc, keyOf, unitsOfDoc } from './job/job-doc.ts';
import type { Outcome } from './job/outcome.ts';
import type { Problem } from './job/where.ts';

interface Work {
  /** Of this text. */
  readonly doc: JobDoc;
  readonly outcome: Outcome;
  readonly text: string;
  readonly change: (change: Change) => void;
  readonly pointAt: Bench['pointAt'];
}

/** The bench for a job as it stands. */
export function benchOf({ doc, outcome, text, change, pointAt }: Work): Bench {
  const problems = outcome.kind === 'refused' ? byPath(outcome.problems) : new Map<string, Problem[]>();
  return {
    doc,
    units: unitsOfDoc(doc),
    outcome,
    problemsAt: (path) => problems.get(keyOf(path)) ?? [],
    write(values, typing) {
      const [[path, value] = [[], undefined], ...others] = values;
      // What is typed mostly takes the place of what was there: the file need not be read again for that.
      const typed = others.length === 0 ? replaced(text, doc, path, value) : undefined;
      const next = typed ?? withValues(text, values);
      change({ kind: 'write', text: next, ...(typing !== undefined && { touched: typing }) });
    },
    settle: () => change({ kind: 'settle' }),
    pointAt,
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
