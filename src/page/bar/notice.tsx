export interface NoticeWords {
  readonly words: string;
  /** Something did not come off. */
  readonly bad: boolean;
}

interface NoticeProps {
  readonly notice: NoticeWords | undefined;
  /** The job came by a link, and there is another one that is kept. */
  readonly guest: boolean;
  readonly onBack: () => void;
  readonly onKeep: () => void;
}

/** What was just done, and what a job that came by a link asks. */
export function Notice({ notice, guest, onBack, onKeep }: NoticeProps) {
  return (
    <div class={`notice${notice?.bad ? ' is-bad' : ''}`} role="status">
      {guest && (
        <p>
          This job came by a link. Your own last job is kept as it was.{' '}
          <button type="button" onClick={onBack}>
            Back to my last job
          </button>{' '}
          <button type="button" onClick={onKeep}>
            Keep this one in its place
          </button>
        </p>
      )}
      {notice && <p>{notice.words}</p>}
    </div>
  );
}
