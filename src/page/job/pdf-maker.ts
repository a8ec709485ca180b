import type { Language } from '../../words/language.ts';
import { workOut } from './outcome.ts';
import { ownWorker } from './own-worker.ts';
import { pdfOfJob, sheetsOfJob } from './printed.ts';
import type { Printing, TubesDrawn } from './printing.ts';

/** A job to be made a PDF of; `name` is that of its file without an ending. */
export interface PdfAsk {
  readonly kind: 'pdf';
  readonly text: string;
  readonly name: string;
  readonly printing: Printing;
}

/** What a worker answers: how far it is, the bytes, or what was thrown; a `RangeError` is one that the person can mend. */
type Answer =
  | { readonly kind: 'drawn'; readonly drawn: number; readonly of: number }
  | { readonly kind: 'pdf'; readonly bytes: Uint8Array }
  | { readonly kind: 'failed'; readonly why: string; readonly mendable: boolean };

/** Makes the PDF of a job that can be read beside the page, which goes on meanwhile. Throws as `laySheets` does. */
export type PdfMaker = (ask: PdfAsk, progress: TubesDrawn) => Promise<Uint8Array>;

/** A maker in a worker that runs the page's own script; where the browser keeps a page from having one, in the page itself. */
export function pdfMakerOf(script: string, words: Language): PdfMaker {
  return (ask, progress) =>
    new Promise((resolve, reject) => {
      const inThePage = (): void => {
        makePdf(ask, words, progress).then(resolve, reject);
      };
      const worker = ownWorker(script);
      if (!worker) return inThePage();
      worker.onerror = () => {
        worker.terminate();
        inThePage();
      };
      worker.onmessage = ({ data }: MessageEvent<Answer>) => {
        if (data.kind === 'drawn') return progress(data.drawn, data.of);
        worker.terminate();
        if (data.kind === 'pdf') resolve(data.bytes);
        else reject(data.mendable ? new RangeError(data.why) : new Error(data.why));
      };
      worker.postMessage(ask);
    });
}

/** What the worker does. */
export async function answerPdf(
  ask: PdfAsk,
  words: Language,
  answer: (answer: Answer) => void,
): Promise<void> {
  try {
    const bytes = await makePdf(ask, words, (drawn, of) => answer({ kind: 'drawn', drawn, of }));
    answer({ kind: 'pdf', bytes });
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    answer({ kind: 'failed', why, mendable: error instanceof RangeError });
  }
}

function makePdf(
  { text, name, printing }: PdfAsk,
  words: Language,
  progress: TubesDrawn,
): Promise<Uint8Array> {
  const outcome = workOut(text, words);
  if (outcome.kind !== 'read') throw new Error('a job is read before it is printed');
  const { job, solutions } = outcome;
  const { footprints, printer } = printing;
  return pdfOfJob(job, sheetsOfJob(job, solutions, name, footprints, printer, progress), name);
}
