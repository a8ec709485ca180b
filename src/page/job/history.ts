/** What the page keeps of a job as it is written: its text, and the texts before and after it. */
export interface History {
  readonly past: readonly string[];
  readonly present: string;
  readonly future: readonly string[];
  /** What the last change was to; more of the same is one step back. */
  readonly touched?: string;
}

export type Change =
  | {
      readonly kind: 'write';
      readonly text: string;
      /** The field that is typed in, so that a word is undone as a whole; none for a step of its own. */
      readonly touched?: string;
    }
  /** The field is left: what comes next is a step of its own. */
  | { readonly kind: 'settle' }
  | { readonly kind: 'undo' }
  | { readonly kind: 'redo' };

const MOST_STEPS = 200;

export function begin(text: string): History {
  return { past: [], present: text, future: [] };
}

/** The history after a change; the same one where nothing changes. */
export function changed(history: History, change: Change): History {
  switch (change.kind) {
    case 'write':
      return written(history, change.text, change.touched);
    case 'settle': {
      const { past, present, future } = history;
      return history.touched === undefined ? history : { past, present, future };
    }
    case 'undo': {
      const before = history.past.at(-1);
      if (before === undefined) return history;
      const future = [history.present, ...history.future];
      return { past: history.past.slice(0, -1), present: before, future };
    }
    case 'redo': {
      const [after, ...future] = history.future;
      if (after === undefined) return history;
      return { past: [...history.past, history.present], present: after, future };
    }
  }
}

function written(history: History, text: string, touched: string | undefined): History {
  if (text === history.present) return history;
  const same = touched !== undefined && touched === history.touched;
  const past = same ? history.past : [...history.past, history.present].slice(-MOST_STEPS);
  return { past, present: text, future: [], ...(touched !== undefined && { touched }) };
}
