import { useMemo, useState } from 'preact/hooks';
import { Notice } from './bar/notice.tsx';
import { PrinterSetUp } from './bar/printer-set-up.tsx';
import { TopBar } from './bar/top-bar.tsx';
import { BenchContext } from './bench.ts';
import { benchOf } from './bench-of.ts';
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
  const { text, doc, outcome, place, shown, last, change } = job;
  const notes = useNotes(aside.check, text, place, shown !== undefined);
  const warnings = useWarningCount(aside.count, text, shown !== undefined);
  const tube = job.tubes[place] ?? ['tube'];
  const example = exampleOf(doc, tube);
  const ghost = useMemo(() => ghostTube(example, words), [example, words]);
  useUndoKeys(change);
  useKeptFocus();
  const dropping = useFiles(arrivals.open);
  const bench = useMemo(() => benchOf({ doc, outcome, text, change, pointAt }), [doc, outcome, text]);
  const pictured = last ? { solution: last.solution, ghost: false } : { solution: ghost, ghost: true };
  return (
    <BenchContext.Provider value={bench}>
      <TopBar
        history={job.history}
        change={change}
        shown={shown}
        printing={printing}
        makePdf={aside.makePdf}
        onPrinted={() => setPrinted(true)}
        warnings={warnings}
        onOpen={arrivals.open}
        onNew={() => job.replace(start.empty)}
        onPrinter={() => setSettingUp(true)}
        onFootprints={(footprints) => setPrinting({ ...printing, footprints })}
        tell={arrivals.tell}
      />
      <Notice
        notice={arrivals.notice}
        guest={arrivals.guest}
        onClose={arrivals.hush}
        onBack={arrivals.goBack}
        onKeep={arrivals.keepGuest}
      />
      <p class="unseen" role="status">
        {statusOf(outcome, notes, words)}
      </p>
      <main class={dropping ? 'is-dropping' : ''}>
        <div class="desk">
          {isFrame(doc) ? (
            <FrameDesk {...job} />
          ) : (
            <>
              <Tubes place={place} onPlace={job.lookAt} />
              <Board tube={tube} shown={pictured} notes={notes} part={part} />
              <JobFields />
            </>
          )}
        </div>
        <Views
          shown={last}
          stale={shown === undefined}
          notes={notes}
          text={text}
          printing={printing}
          printed={printed}
          onWrite={job.write}
        />
      </main>
      <PrinterSetUp
        open={settingUp}
        sheet={last?.job.sheet ?? start.sheet}
        printing={printing}
        onPrinting={setPrinting}
        onClose={() => setSettingUp(false)}
      />
    </BenchContext.Provider>
  );
}
