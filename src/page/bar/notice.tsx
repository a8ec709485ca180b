import type { Said } from '../../measure/said.ts';
import { Action } from '../action.tsx';
import { useWords } from '../words.ts';

export interface NoticeWords {
  readonly words: Said;
  /** Something did not come off. */
  readonly bad: boolean;
}

interface NoticeProps {
  readonly notice: NoticeWords | undefined;
  /** The job came by a link, and there is another one that is kept. */
  readonly guest: boolean;
  readonly onClose: () => void;
  readonly onBack: () => void;
  readonly onKeep: () => void;
}

/** What was just done, and what a job that came by a link asks. */
export function Notice({ notice, guest, onClose, onBack, onKeep }: NoticeProps) {
  const { close, guest: words } = useWords().page.bar;
  return (
    <div class={`notice${notice?.bad ? ' is-bad' : ''}`} role="status">
      {guest && (
        <p>
          {words.came}
          <Action words={words.back} onAct={onBack} /> <Action words={words.keep} onAct={onKeep} />
        </p>
      )}
      {notice && (
        <p>
          {notice.words} <Action words={close} onAct={onClose} kind="quiet" />
        </p>
      )}
    </div>
  );
}
