import { asWritten } from '../../words/said.ts';
import { piecesIn } from '../job/shown.ts';
import type { JobAtHand } from '../job/use-job.ts';
import { TextView } from '../views/text-view.tsx';
import { useWords } from '../words.ts';

/** A frame has no fields yet: which of its tubes is looked at, and its points and tubes as text. */
export function FrameDesk({ outcome, place, lookAt, text, write }: JobAtHand) {
  const words = useWords().page.form.tubes;
  return (
    <>
      <div class="tubes">
        <label>
          <span>{words.choice}</span>
          <select value={place} onChange={(event) => lookAt(Number(event.currentTarget.value))}>
            {piecesIn(outcome).map(({ tube }, i) => (
              <option key={tube.name} value={i}>
                {asWritten(tube.name)}
              </option>
            ))}
          </select>
        </label>
      </div>
      <TextView id="frame-text" text={text} onWrite={write} />
    </>
  );
}
