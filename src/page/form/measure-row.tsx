import type { Said } from '../../measure/said.ts';
import { useBench } from '../bench.ts';
import { useWords } from '../words.ts';
import { Entry, EntryField, idOf, Wrong, WrongAt } from './entry.tsx';
import { type MeasureProps, wayAt } from './measure.ts';
import { isSeveral, SEVERAL, turnedReading } from './readings.ts';
import { ReadingsList } from './readings-list.tsx';
import { notchTold } from './readings-told.ts';
import { WayChoice } from './way-choice.tsx';

/** One value: how it was measured, as a choice where there is one, and what to fill in for that. */
export function MeasureRow({ base, measure, part, of }: MeasureProps) {
  const { doc, write, problemsAt, outcome } = useBench();
  const { form, measures } = useWords().page;
  const { fields } = measures;
  const way = wayAt(doc, base, measure);
  const [only, ...others] = way.blanks;
  if (measure.ways.length === 1 && only && others.length === 0)
    return <Entry base={base} blank={only} part={part} of={of} />;
  const { label } = fields[measure.name];
  const several = isSeveral(doc, base, measure);
  const id = idOf([...base, measure.keys[0]]);
  const own = measure.keys
    .map((key) => [...base, key])
    .filter((path) => several || !way.blanks.some(({ at }) => idOf([...base, ...at]) === idOf(path)))
    .flatMap(problemsAt)
    .filter(({ missing: lacking }) => !lacking);
  const blanks = way.blanks.map((blank) => (
    <EntryField key={idOf(blank.at)} base={base} blank={blank} part={part} of={of} />
  ));
  // A choice of ways names a single text well enough.
  const named = !several && way.blanks.length === 1;
  return (
    <>
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset can't be laid out as part of a grid in every browser. */}
      <div
        class={`measure${named ? ' is-named' : ''}${several ? ' is-several' : ''}`}
        role="group"
        aria-label={form.fieldOf(label, of)}
        aria-describedby={own.length > 0 ? `${id}-whole-wrong` : undefined}
      >
        {several && <strong aria-hidden="true">{label}</strong>}
        <WayChoice
          label={form.measured(label, of)}
          ways={[...measure.ways.map(({ name }) => name), SEVERAL]}
          chosen={several ? SEVERAL : way.name}
          onChoose={(name) => write(turnedReading(doc, base, measure, name))}
        />
        {several ? <ReadingsList base={base} measure={measure} part={part} of={of} /> : blanks}
        {!several && way.word && <p class="aside">{form.marksOnLeaf}</p>}
        {way.name === 'notch' && <Found found={notchTold(outcome, base, form.readings.told)} />}
      </div>
      {!several &&
        way.blanks.map(({ at, name }) => (
          <WrongAt key={idOf(at)} path={[...base, ...at]} label={fields[name].label} />
        ))}
      <Wrong id={`${id}-whole`} label={label} problems={own} />
    </>
  );
}

/** What a list of lengths gave. */
function Found({ found }: { readonly found: readonly Said[] }) {
  return (
    <>
      {found.map((each) => (
        <p class="aside" key={each}>
          {each}
        </p>
      ))}
    </>
  );
}
