import { useLayoutEffect, useState } from 'preact/hooks';
import type { Said } from '../../measure/said.ts';
import { asWritten } from '../../words/said.ts';
import type { NoticeWords } from '../bar/notice.tsx';
import { useWords } from '../words.ts';
import { keepJob } from './keep.ts';
import { openFile } from './opened.ts';
import type { Start } from './start.ts';
import type { JobAtHand } from './use-job.ts';

/** How jobs come to the page by file or link, what is said of it, and whether they are kept. */
export interface Arrivals {
  readonly notice: NoticeWords | undefined;
  /** A job that came by a link, which is not kept until that is asked for. */
  readonly guest: boolean;
  readonly tell: (words: Said) => void;
  readonly open: (file: File) => void;
  /** Leaves a link's job for the one that was kept. */
  readonly goBack: () => void;
  readonly keepGuest: () => void;
}

/** Keeps the job at hand in the browser, but for a guest, and lets others take its place. */
export function useArrivals(start: Start, { text, replace }: JobAtHand): Arrivals {
  const words = useWords();
  const { notices } = words.page;
  const [notice, setNotice] = useState<NoticeWords | undefined>(start.notice);
  const [guest, setGuest] = useState(start.guest);
  // At once, and not after the next picture: the window may be shut before that.
  useLayoutEffect(() => {
    if (!guest) keepJob(text);
  }, [text, guest]);
  const tell = (told: Said): void => setNotice({ words: told, bad: false });
  const open = async (file: File): Promise<void> => {
    const opened = await openFile(file, words);
    const name = asWritten(file.name);
    if (opened.ok) replace(opened.text);
    if (opened.ok) tell(notices.opened(name));
    else setNotice({ words: notices.cantOpen(name, opened.why), bad: true });
  };
  return {
    notice,
    guest,
    tell,
    open: (file) => void open(file),
    goBack() {
      setGuest(false);
      replace(start.kept ?? start.empty);
      tell(notices.lastJobAgain);
    },
    keepGuest() {
      setGuest(false);
      tell(notices.guestKept);
    },
  };
}
