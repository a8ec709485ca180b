import { KEYS } from '../../job/text/keys.ts';
import { asWritten } from '../../words/said.ts';
import { Action } from '../action.tsx';
import { useBench } from '../bench.ts';
import { type DocPath, docWordsAt, keysAt, type Value, valueAt } from '../job/job-doc.ts';
import { useWords } from '../words.ts';

/** Which tube of the job is looked at, and tubes added and taken away. */
export function Tubes() {
  const { doc, tubes, place, tube: shown, lookAt, write } = useBench();
  const words = useWords().page.form.tubes;
  const names = tubes.map(
    (tube, i) => asWritten(docWordsAt(doc, [...tube, 'name']).trim()) || words.unnamed(i + 1),
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
    lookAt(tubes.length);
  };
  const remove = (): void => {
    write([[shown, undefined]]);
    lookAt(Math.max(0, place - 1));
  };
  return (
    <div class="tubes beside">
      {tubes.length > 1 && (
        <label class="beside">
          <span>{words.choice}</span>
          <select value={place} onChange={(event) => lookAt(Number(event.currentTarget.value))}>
            {names.map((name, i) => (
              <option key={`${i}-${name}`} value={i}>
                {name}
              </option>
            ))}
          </select>
        </label>
      )}
      <Action words={words.add} onAct={() => add({ ends: { A: {} } })} kind="quiet" />
      <Action words={words.copy} onAct={() => add(copyOf(shown, names))} kind="quiet" />
      {tubes.length > 1 && <Action words={words.remove} onAct={remove} kind="quiet" />}
    </div>
  );

  /** Under a name that no other tube has. */
  function copyOf(tube: DocPath, taken: readonly string[]): Value {
    const own = docWordsAt(doc, [...tube, 'name']).trim();
    const numbers = Array.from({ length: taken.length + 1 }, (_, i) => `${own} ${i + 2}`);
    const name = numbers.find((each) => !taken.includes(each)) ?? own;
    const { name: _, ...rest } = valueAt(doc, tube, KEYS.tube);
    return own === '' ? rest : { name, ...rest };
  }
}
