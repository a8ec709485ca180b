import { useMemo, useState } from 'preact/hooks';
import { Notice } from './bar/notice.tsx';
import { PrinterDialog } from './bar/printer-dialog.tsx';
import { TopBar } from './bar/top-bar.tsx';
import { BenchContext, benchOf } from './bench.ts';
import { Board } from './form/board.tsx';
import { FrameDesk } from './form/frame-desk.tsx';
import { JobFields } from './form/job-row.tsx';
import { Tubes } from './form/tubes.tsx';
import type { Aside } from './job/asker.ts';
import { exampleOf, ghostTube } from './job/ghost.ts';
import { isFrame } from './job/job-doc.ts';
import { useNotes, useWarningCount } from './job/notes.ts';
import type { Printing } from './job/printing.ts';
import type { Start } from './job/start.ts';
import { statusOf } from './job/status.ts';
import { useArrivals } from './job/use-arrivals.ts';
import { useFiles } from './job/use-files.ts';
import { useJob } from './job/use-job.ts';
import { useKeptFocus } from './use-kept-focus.ts';
import { useUndoKeys } from './use-undo-keys.ts';
import { Views } from './views/views.tsx';
import { useWords } from './words.ts';

/** The whole page, for the job that it begins with. */
export function App({ start, aside }: { readonly start: Start; readonly aside: Aside }) {
  const words = useWords();
  const job = useJob(start.text);
  const arrivals = useArrivals(start, job);
  const [part, pointAt] = useState<string | undefined>(undefined);
  const [printing, setPrinting] = useState<Printing>({ footprints: false });
  const [printed, setPrinted] = useState(false);
  const [settingUp, setSettingUp] = useState(false);
  const { text, doc, place, shown, last } = job;
  const notes = useNotes(aside.check, text, place, shown !== undefined);
  const warnings = useWarningCount(aside.count, text, shown !== undefined);
  const example = exampleOf(doc, job.tube);
  const ghost = useMemo(() => ghostTube(example, words), [example, words]);
  useUndoKeys(job.change);
  useKeptFocus();
  const dropping = useFiles(arrivals.open);
  const bench = benchOf({ ...job, notes, printing, setPrinting, tell: arrivals.tell, part, pointAt });
  return (
    <BenchContext.Provider value={bench}>
      <TopBar
        makePdf={aside.makePdf}
        onPrinted={() => setPrinted(true)}
        warnings={warnings}
        onOpen={arrivals.open}
        onNew={() => job.replace(start.empty)}
        onPrinter={() => setSettingUp(true)}
      />
      <Notice {...arrivals} />
      <p class="unseen" role="status">
        {statusOf(job.outcome, notes, words)}
      </p>
      <main class={dropping ? 'is-dropping' : ''}>
        <div class="desk stack">
          {isFrame(doc) ? (
            <FrameDesk />
          ) : (
            <>
              <Tubes />
              <Board solution={last?.solution ?? ghost} ghost={!last} />
              <JobFields />
            </>
          )}
        </div>
        <Views printed={printed} />
      </main>
      <PrinterDialog
        open={settingUp}
        sheet={last?.job.sheet ?? start.sheet}
        onClose={() => setSettingUp(false)}
      />
    </BenchContext.Provider>
  );
}
