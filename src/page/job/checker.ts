import type { Language } from '../../words/language.ts';
import { type CheckAsk, type Checked, checkTube } from './check.ts';

/** Checks a job beside the page, so that typing goes on meanwhile. What was asked before and not begun is left out. */
export type Checker = (ask: CheckAsk, tell: (checked: Checked | undefined) => void) => void;

/**
 * A checker in a worker that runs the page's own script; where the browser keeps a page from having one, it checks in the page
 * itself.
 */
export function checkerOf(script: string, words: Language): Checker {
  const worker = workerOf(script);
  if (!worker) return (ask, tell) => tell(checkTube(ask, words));
  let busy: Parameters<Checker> | undefined;
  let next: Parameters<Checker> | undefined;
  let broken = false;
  const begin: Checker = (ask, tell) => {
    busy = [ask, tell];
    worker.postMessage(ask);
  };
  worker.onmessage = ({ data }: MessageEvent<Checked | undefined>) => {
    const [, tell] = busy ?? [];
    const following = next;
    [busy, next] = [undefined, undefined];
    if (following) begin(...following);
    else tell?.(data);
  };
  // Some browsers make a worker and then won't run it.
  worker.onerror = () => {
    broken = true;
    const [ask, tell] = next ?? busy ?? [];
    if (ask) tell?.(checkTube(ask, words));
  };
  return (ask, tell) => {
    if (broken) tell(checkTube(ask, words));
    else if (busy) next = [ask, tell];
    else begin(ask, tell);
  };
}

function workerOf(script: string): Worker | undefined {
  try {
    const address = URL.createObjectURL(new Blob([script], { type: 'text/javascript' }));
    return new Worker(address);
  } catch {
    return undefined;
  }
}

/** What the script does in the worker. */
export function answerAsks(words: Language): void {
  addEventListener('message', ({ data }: MessageEvent<CheckAsk>) => postMessage(checkTube(data, words)));
}
