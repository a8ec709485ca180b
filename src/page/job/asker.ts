import type { Language } from '../../words/language.ts';
import { type CheckAsk, type Checked, type CountAsk, checkTube, countWarnings } from './check.ts';
import { ownWorker } from './own-worker.ts';
import { answerPdf, type PdfAsk, type PdfMaker } from './pdf-maker.ts';

/** Works something out beside the page, so that typing goes on meanwhile. What was asked before and not begun is left out. */
export type Asker<Ask, Answer> = (ask: Ask, tell: (answer: Answer) => void) => void;

export type Checker = Asker<CheckAsk, Checked | undefined>;
export type Counter = Asker<CountAsk, number>;

/** All that is worked out beside the page. */
export interface Aside {
  readonly check: Checker;
  readonly count: Counter;
  readonly makePdf: PdfMaker;
}

export function checkerOf(script: string, words: Language): Checker {
  return askerOf(script, (ask) => checkTube(ask, words));
}

export function counterOf(script: string, words: Language): Counter {
  // Nobody waits for it: the page begins without its worker.
  let counter: Counter | undefined;
  return (ask, tell) => {
    counter ??= askerOf(script, (own: CountAsk) => countWarnings(own, words));
    counter(ask, tell);
  };
}

/** In a worker that runs the page's own script; where the browser keeps a page from having one, in the page itself. */
function askerOf<Ask, Answer>(script: string, inThePage: (ask: Ask) => Answer): Asker<Ask, Answer> {
  const worker = ownWorker(script);
  if (!worker) return (ask, tell) => tell(inThePage(ask));
  let busy: Parameters<Asker<Ask, Answer>> | undefined;
  let next: Parameters<Asker<Ask, Answer>> | undefined;
  let broken = false;
  const begin: Asker<Ask, Answer> = (ask, tell) => {
    busy = [ask, tell];
    worker.postMessage(ask);
  };
  worker.onmessage = ({ data }: MessageEvent<Answer>) => {
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
    if (ask) tell?.(inThePage(ask));
  };
  return (ask, tell) => {
    if (broken) tell(inThePage(ask));
    else if (busy) next = [ask, tell];
    else begin(ask, tell);
  };
}

/** What the script does in a worker. */
export function answerAsks(words: Language): void {
  addEventListener('message', ({ data }: MessageEvent<CheckAsk | CountAsk | PdfAsk>) => {
    if (data.kind === 'pdf') void answerPdf(data, words, (answer) => postMessage(answer));
    else postMessage(data.kind === 'count' ? countWarnings(data, words) : checkTube(data, words));
  });
}
