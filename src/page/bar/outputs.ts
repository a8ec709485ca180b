import { inkDxf } from '../../ink/dxf.ts';
import { inkSvg } from '../../ink/svg.ts';
import type { Said } from '../../measure/said.ts';
import type { Language } from '../../words/language.ts';
import { asWritten } from '../../words/said.ts';
import { leavesOfJob, pdfOfJob, sheetsOfJob } from '../job/printed.ts';
import type { Printing } from '../job/printing.ts';
import { openTab, save } from '../job/save.ts';
import type { Shown } from '../job/shown.ts';

/** What a job is printed and saved as. Each tells what came of it, and does nothing where there is no end to cut. */
export interface Outputs {
  readonly ready: boolean;
  readonly print: () => Promise<void>;
  readonly savePdf: () => Promise<void>;
  readonly saveSvg: () => Promise<void>;
  readonly saveDxf: () => Promise<void>;
}

/** The outputs of the job that is shown; `name` is that of its files without an ending. */
export function outputsOf(
  shown: Shown | undefined,
  name: string,
  { footprints, printer }: Printing,
  tell: (words: Said) => void,
  { page: { notices } }: Language,
): Outputs {
  const coped = shown?.solutions.some(({ ends: { A, B } }) => A?.kind === 'coped' || B?.kind === 'coped');
  const pdf = async ({ job, solutions }: Shown): Promise<Uint8Array> =>
    pdfOfJob(job, sheetsOfJob(job, solutions, name, footprints, printer), name);
  const leaves = ({ job, solutions }: Shown) => leavesOfJob(job, solutions, footprints);
  const out =
    (ending: string, type: string, make: (job: Shown) => Promise<string | Uint8Array>) => async () => {
      if (!shown) return;
      const file = `${name}.${ending}`;
      try {
        save(file, await make(shown), type);
        tell(notices.saved(asWritten(file)));
      } catch (error) {
        // Such as a paper that a printer's factor leaves too small.
        if (!(error instanceof RangeError)) throw error;
        tell(notices.cantPrint(asWritten(error.message)));
      }
    };
  return {
    ready: coped ?? false,
    async print() {
      if (shown) tell(openTab(await pdf(shown)) ? notices.inNewTab : notices.noNewTab);
    },
    savePdf: out('pdf', 'application/pdf', pdf),
    saveSvg: out('svg', 'image/svg+xml', async (job) => inkSvg(leaves(job), window)),
    saveDxf: out('dxf', 'application/dxf', async (job) => inkDxf(leaves(job))),
  };
}
