import { Action } from '../action.tsx';
import type { Arrivals } from '../job/use-arrivals.ts';
import { useWords } from '../words.ts';

/** What was just done, and what a job that came by a link asks. */
export function Notice({ notice, guest, hush, goBack, keepGuest }: Arrivals) {
  const { close, guest: words } = useWords().page.bar;
  return (
    <div class={`notice${notice?.bad ? ' is-bad' : ''}`} role="status">
      {guest && (
        <p class="beside">
          {words.came}
          <Action words={words.back} onAct={goBack} /> <Action words={words.keep} onAct={keepGuest} />
        </p>
      )}
      {notice && (
        <p class="beside">
          {notice.words} <Action words={close} onAct={hush} kind="quiet" />
        </p>
      )}
    </div>
  );
}
