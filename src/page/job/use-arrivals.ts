import { useLayoutEffect, useState } from 'preact/hooks';
import type { NoticeWords } from '../bar/notice.tsx';
import { keepJob } from './keep.ts';
import { openFile } from './opened.ts';
import type { Start } from './start.ts';
import type { JobAtHand } from './use-job.ts';

/** How jobs come to the page by file or link, what is said of it, and whether they are kept. */
export interface Arrivals {
  readonly notice: NoticeWords | undefined;
  /** A job that came by a link, which is not kept until that is asked for. */
  readonly guest: boolean;
  readonly say: (words: string) => void;
  readonly open: (file: File) => void;
  /** Leaves a link's job for the one that was kept. */
  readonly goBack: () => void;
  readonly keepGuest: () => void;
}

/** Keeps the job at hand in the browser, but for a guest, and lets others take its place. */
export function useArrivals(start: Start, { text, replace }: JobAtHand): Arrivals {
  const [notice, setNotice] = useState<NoticeWords | undefined>(start.notice);
  const [guest, setGuest] = useState(start.guest);
  // At once, and not after the next picture: the window may be shut before that.
  useLayoutEffect(() => {
    if (!guest) keepJob(text);
  }, [text, guest]);
  const say = (words: string): void => setNotice({ words, bad: false });
  const open = async (file: File): Promise<void> => {
    const opened = await openFile(file);
    if (opened.ok) replace(opened.text);
    if (opened.ok) say(`${file.name} is open.`);
    else setNotice({ words: `${file.name} can’t be opened. ${opened.why}`, bad: true });
  };
  return {
    notice,
    guest,
    say,
    open: (file) => void open(file),
    goBack() {
      setGuest(false);
      replace(start.kept ?? start.empty);
      say('This is your last job again.');
    },
    keepGuest() {
      setGuest(false);
      say('This job is kept in place of your last one.');
    },
  };
}
