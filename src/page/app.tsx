import { useLayoutEffect, useMemo, useReducer, useRef, useState } from 'preact/hooks';
import { BenchContext } from './bench.ts';
import { benchOf } from './bench-of.ts';
import { Board } from './board.tsx';
import type { Checker } from './checker.ts';
import { ghostTube } from './ghost.ts';
import { begin, changed } from './history.ts';
import { docOf, tubePaths } from './job-doc.ts';
import { JobFields } from './job-row.tsx';
import { keepJob, keepPrinters, keptPrinters } from './keep.ts';
import { useNotes } from './notes.ts';
import { Notice, type NoticeWords } from './notice.tsx';
import { openFile } from './opened.ts';
import { workOut } from './outcome.ts';
import { PrinterDialog } from './printer-dialog.tsx';
import { printersAsText, printersIn } from './printers.ts';
import type { Printing } from './printing.ts';
import { type Shown, shownOf } from './shown.ts';
import type { Start } from './start.ts';
import { statusOf } from './status.ts';
import { TopBar } from './top-bar.tsx';
import { Tubes } from './tubes.tsx';
import { useFiles } from './use-files.ts';
import { useKeptFocus } from './use-kept-focus.ts';
import { useUndoKeys } from './use-undo-keys.ts';
import { Views } from './views.tsx';

/** The whole page, for the job that it begins with. */
export function App({ start, checker }: { readonly start: Start; readonly checker: Checker }) {
  const [history, change] = useReducer(changed, start.text, begin);
  const [place, setPlace] = useState(0);
  const [part, pointAt] = useState<string | undefined>(undefined);
  const [printing, setPrinting] = useState<Printing>({ footprints: false });
  const [printers, setPrinters] = useState(() => printersIn(keptPrinters()));
  const [settingUp, setSettingUp] = useState(false);
  const [notice, setNotice] = useState<NoticeWords | undefined>(start.notice);
  /** A job that came by a link is not kept until that is asked for. */
  const [guest, setGuest] = useState(start.guest);
  const text = history.present;
  const doc = useMemo(() => docOf(text), [text]);
  const outcome = useMemo(() => workOut(text), [text]);
  const tubes = tubePaths(doc);
  const at = Math.min(place, tubes.length - 1);
  const shown = useMemo(() => shownOf(outcome, at), [outcome, at]);
  const last = useRef<Shown | undefined>(undefined);
  if (shown) last.current = shown;
  const notes = useNotes(checker, text, at, shown !== undefined);
  const ghost = useMemo(ghostTube, []);
  // At once, and not after the next picture: the window may be shut before that.
  useLayoutEffect(() => {
    if (!guest) keepJob(text);
  }, [text, guest]);
  useUndoKeys(change);
  useKeptFocus();
  const write = (next: string, typing?: string): void =>
    change({ kind: 'write', text: next, ...(typing !== undefined && { touched: typing }) });
  const replace = (next: string): void => {
    last.current = undefined;
    setPlace(0);
    write(next);
  };
  const open = async (file: File): Promise<void> => {
    const opened = await openFile(file);
    if (opened.ok) replace(opened.text);
    setNotice({
      words: opened.ok ? `${file.name} is open.` : `${file.name} can’t be opened. ${opened.why}`,
      bad: !opened.ok,
    });
  };
  const dropping = useFiles((file) => void open(file));
  const bench = useMemo(() => benchOf({ doc, outcome, text, change, pointAt }), [doc, outcome, text]);
  const pictured = last.current
    ? { solution: last.current.solution, ghost: false }
    : { solution: ghost, ghost: true };
  return (
    <BenchContext.Provider value={bench}>
      <TopBar
        history={history}
        change={change}
        shown={shown}
        printing={printing}
        onOpen={(file) => void open(file)}
        onNew={() => replace(start.empty)}
        onPrinter={() => setSettingUp(true)}
        onFootprints={(footprints) => setPrinting({ ...printing, footprints })}
        say={(words) => setNotice({ words, bad: false })}
      />
      <Notice
        notice={notice}
        guest={guest}
        onBack={() => {
          setGuest(false);
          replace(start.kept ?? start.empty);
          setNotice({ words: 'This is your last job again.', bad: false });
        }}
        onKeep={() => {
          setGuest(false);
          setNotice({ words: 'This job is kept in place of your last one.', bad: false });
        }}
      />
      <p class="unseen" role="status">
        {statusOf(outcome, notes)}
      </p>
      <main class={dropping ? 'is-dropping' : ''}>
        <div class="desk">
          <Tubes place={at} onPlace={setPlace} />
          <Board tube={tubes[at] ?? ['tube']} shown={pictured} notes={notes} part={part} />
          <JobFields />
        </div>
        <Views
          shown={last.current}
          stale={shown === undefined}
          notes={notes}
          text={text}
          printing={printing}
          onWrite={write}
        />
      </main>
      {settingUp && (
        <PrinterDialog
          sheet={last.current?.job.sheet ?? start.sheet}
          printers={printers}
          chosen={printing.printer}
          onSave={(next) => {
            setPrinters(next);
            keepPrinters(printersAsText(next));
          }}
          onChoose={(printer) =>
            setPrinting({ footprints: printing.footprints, ...(printer && { printer }) })
          }
          onClose={() => setSettingUp(false)}
        />
      )}
    </BenchContext.Provider>
  );
}
