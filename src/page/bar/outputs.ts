import { inkDxf } from '../../ink/dxf.ts';
import { inkSvg } from '../../ink/svg.ts';
import type { Said } from '../../measure/said.ts';
import type { Language } from '../../words/language.ts';
import { asWritten } from '../../words/said.ts';
import type { PdfMaker } from '../job/pdf-maker.ts';
import { leavesOfJob } from '../job/printed.ts';
import type { Printing } from '../job/printing.ts';
import { openTab, save } from '../job/save.ts';
import { isCoped, type Shown } from '../job/shown.ts';

/** Who hears of what comes of it. */
interface Hearers {
  readonly tell: (words: Said) => void;
  readonly printed: () => void;
}

/** From so many tubes on it is told how far the PDF is. */
const MANY = 12;

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
  printing: Printing,
  make: PdfMaker,
  { tell, printed }: Hearers,
  { page: { notices } }: Language,
): Outputs {
  const coped = shown?.solutions.some(isCoped);
  const pdf = ({ job }: Shown): Promise<Uint8Array> =>
    make({ kind: 'pdf', text: job.source, name, printing }, (drawn, of) => {
      if (of >= MANY) tell(notices.making(drawn, of));
    });
  const leaves = ({ job, solutions }: Shown) => leavesOfJob(job, solutions, printing.footprints, false);
  /** Does it, and tells why where a paper, such as one that a printer's factor leaves too small, does not allow it. */
  const tried = async (act: (job: Shown) => Promise<void>): Promise<void> => {
    if (!shown) return;
    try {
      await act(shown);
      printed();
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      tell(notices.cantPrint(asWritten(error.message)));
    }
  };
  const out = (ending: string, type: string, made: (job: Shown) => Promise<string | Uint8Array>) => () =>
    tried(async (job) => {
      const file = `${name}.${ending}`;
      save(file, await made(job), type);
      tell(notices.saved(asWritten(file)));
    });
  return {
    ready: coped ?? false,
    print: () => tried(async (job) => tell(openTab(await pdf(job)) ? notices.inNewTab : notices.noNewTab)),
    savePdf: out('pdf', 'application/pdf', pdf),
    saveSvg: out('svg', 'image/svg+xml', async (job) => inkSvg(leaves(job), window)),
    saveDxf: out('dxf', 'application/dxf', async (job) => inkDxf(leaves(job))),
  };
}
