import { KEYS } from '../../job/text/keys.ts';
import { asWritten } from '../../words/said.ts';
import { useBench } from '../bench.ts';
import { keysAt, type Path, tubePaths, type Value, valueAt, wordsAt } from '../job/job-doc.ts';
import { useWords } from '../words.ts';

interface TubesProps {
  readonly place: number;
  readonly onPlace: (place: number) => void;
}

/** Which tube of the job is looked at, and tubes added and taken away. */
export function Tubes({ place, onPlace }: TubesProps) {
  const { doc, write } = useBench();
  const words = useWords().page.form.tubes;
  const tubes = tubePaths(doc);
  const names = tubes.map(
    (tube, i) => asWritten(wordsAt(doc, [...tube, 'name']).trim()) || words.unnamed(i + 1),
  );
  const add = (tube: Value): void => {
    const single = keysAt(doc, []).includes('tube');
    const others = single ? [valueAt(doc, ['tube'], KEYS.tube), tube] : undefined;
    if (others)
      write([
        [['tubes'], others],
        [['tube'], undefined],
      ]);
    else write([[['tubes', tubes.length], tube]]);
    onPlace(tubes.length);
  };
  const shown = tubes[place] ?? ['tube'];
  return (
    <div class="tubes">
      {tubes.length > 1 && (
        <label>
          <span>{words.choice}</span>
          <select value={place} onChange={(event) => onPlace(Number(event.currentTarget.value))}>
            {names.map((name, i) => (
              <option key={`${i}-${name}`} value={i}>
                {name}
              </option>
            ))}
          </select>
        </label>
      )}
      <button type="button" class="quiet" onClick={() => add({ ends: { A: {} } })}>
        {words.add}
      </button>
      <button type="button" class="quiet" onClick={() => add(copyOf(shown, names))}>
        {words.copy}
      </button>
      {tubes.length > 1 && (
        <button
          type="button"
          class="quiet"
          onClick={() => {
            write([[shown, undefined]]);
            onPlace(Math.max(0, place - 1));
          }}
        >
          {words.remove}
        </button>
      )}
    </div>
  );

  /** Under a name that no other tube has. */
  function copyOf(tube: Path, taken: readonly string[]): Value {
    const own = wordsAt(doc, [...tube, 'name']).trim();
    const numbers = Array.from({ length: taken.length + 1 }, (_, i) => `${own} ${i + 2}`);
    const name = numbers.find((each) => !taken.includes(each)) ?? own;
    const { name: _, ...rest } = valueAt(doc, tube, KEYS.tube);
    return own === '' ? rest : { name, ...rest };
  }
}
