import { asWritten } from '../../words/said.ts';
import { useBench } from '../bench.ts';
import { piecesIn } from '../job/shown.ts';
import { TextView } from '../views/text-view.tsx';
import { useWords } from '../words.ts';

/** A frame has no fields yet: which of its tubes is looked at, and its points and tubes as text. */
export function FrameDesk() {
  const { outcome, place, lookAt } = useBench();
  const words = useWords().page.form.tubes;
  return (
    <>
      <div class="tubes beside">
        <label class="beside">
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
      <TextView id="frame-text" />
    </>
  );
}
