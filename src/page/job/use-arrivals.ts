import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { Said } from '../../measure/said.ts';
import { asWritten } from '../../words/said.ts';
import { useWords } from '../words.ts';
import { keep } from './keep.ts';
import { openFile } from './opened.ts';
import { workOut } from './outcome.ts';
import type { NoticeWords, Start } from './start.ts';
import type { JobAtHand } from './use-job.ts';

/** How jobs come to the page by file or link, what is said of it, and whether they are kept. */
export interface Arrivals {
  readonly notice: NoticeWords | undefined;
  /** A job that came by a link, which is not kept until that is asked for. */
  readonly guest: boolean;
  readonly tell: (words: Said) => void;
  /** Takes away what was said. */
  readonly hush: () => void;
  readonly open: (file: File) => void;
  /** Leaves a link's job for the one that was kept. */
  readonly goBack: () => void;
  readonly keepGuest: () => void;
}

/** Keeps the job at hand in the browser, but for a guest and for a link's job as it came, and lets others take its place. */
export function useArrivals(start: Start, { text, replace }: JobAtHand): Arrivals {
  const words = useWords();
  const { notices } = words.page;
  const [notice, setNotice] = useState(start.notice && { ...start.notice, of: start.text });
  const [guest, setGuest] = useState(start.guest);
  const own = useRef(!start.linked);
  // At once, and not after the next picture: the window may be shut before that.
  useLayoutEffect(() => {
    if (text !== start.text) own.current = true;
    if (own.current && !guest) keep('job', text);
  }, [text, guest]);
  /** What is said of a text stands until it is changed. */
  const tell = (told: Said, of = text, bad = false): void => setNotice({ words: told, bad, of });
  const open = async (file: File): Promise<void> => {
    const opened = await openFile(file, words);
    const name = asWritten(file.name);
    if (!opened.ok) return tell(notices.cantOpen(name, opened.why), text, true);
    replace(opened.text);
    const outcome = workOut(opened.text, words);
    const wrong = outcome.kind === 'read' ? 0 : outcome.problems.filter((each) => !each.missing).length;
    tell(notices.opened(name, wrong), opened.text, wrong > 0);
  };
  return {
    notice: notice?.of === text ? notice : undefined,
    guest,
    tell: (told) => tell(told),
    hush: () => setNotice(undefined),
    open: (file) => void open(file),
    goBack() {
      setGuest(false);
      const back = start.kept ?? start.empty;
      replace(back);
      tell(notices.lastJobAgain, back);
    },
    keepGuest() {
      own.current = true;
      setGuest(false);
      tell(notices.guestKept);
    },
  };
}
