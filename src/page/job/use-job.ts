import { useMemo, useReducer, useRef, useState } from 'preact/hooks';
import { useWords } from '../words.ts';
import { begin, type Change, changed, type History } from './history.ts';
import { type DocPath, docOf, isFrame, type JobDoc, tubePaths } from './job-doc.ts';
import { type Outcome, workOut } from './outcome.ts';
import { isCoped, piecesIn, type Shown, shownOf } from './shown.ts';

/** The job that is at hand, and what follows from it. */
export interface JobAtHand {
  readonly history: History;
  readonly text: string;
  readonly doc: JobDoc;
  readonly outcome: Outcome;
  /** Where each of its tubes stands, which of them is looked at, counted from 0, and where that one stands. */
  readonly tubes: readonly DocPath[];
  readonly place: number;
  readonly tube: DocPath;
  /** What there is to show of that tube; undefined while the job can't be read. */
  readonly shown: Shown | undefined;
  /** The same of the last text that could be read. */
  readonly last: Shown | undefined;
  readonly change: (change: Change) => void;
  /** Writes the whole text; `typing` names the field where it is typed. */
  readonly writeWhole: (text: string, typing?: string) => void;
  /** Takes another job in place of this one. */
  readonly replace: (text: string) => void;
  readonly lookAt: (place: number) => void;
}

/** Keeps a job and the texts before and after it, beginning with this text. */
export function useJob(beginning: string): JobAtHand {
  const words = useWords();
  const [history, change] = useReducer(changed, beginning, begin);
  const [asked, lookAt] = useState<number | undefined>(undefined);
  const text = history.present;
  const doc = useMemo(() => docOf(text), [text]);
  const outcome = useMemo(() => workOut(text, words), [text, words]);
  const tubes = tubePaths(doc);
  const pieces = isFrame(doc) ? piecesIn(outcome) : [];
  const first = Math.max(0, pieces.findIndex(isCoped));
  const place = Math.min(asked ?? first, (pieces.length || tubes.length) - 1);
  const shown = useMemo(() => shownOf(outcome, place), [outcome, place]);
  const last = useRef<Shown | undefined>(undefined);
  if (shown) last.current = shown;
  const writeWhole = (next: string, typing?: string): void =>
    change({ kind: 'write', text: next, ...(typing !== undefined && { touched: typing }) });
  const replace = (next: string): void => {
    last.current = undefined;
    lookAt(undefined);
    writeWhole(next);
  };
  return {
    history,
    text,
    doc,
    outcome,
    tubes,
    place,
    tube: tubes[place] ?? ['tube'],
    shown,
    last: last.current,
    change,
    writeWhole,
    replace,
    lookAt,
  };
}
