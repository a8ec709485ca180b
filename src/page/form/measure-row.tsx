import { useBench } from '../bench.ts';
import type { Path } from '../job/job-doc.ts';
import { Entry, Field, idOf, Wrong, WrongAt } from './entry.tsx';
import { type Measure, wayAt } from './measure.ts';
import { isSeveral, SEVERAL, turned } from './readings.ts';
import { ReadingsList } from './readings-list.tsx';

interface MeasureRowProps {
  readonly base: Path;
  readonly measure: Measure;
  readonly part: string;
  /** Whose it is, for those who hear the form: `end A`. */
  readonly of: string;
}

/** One value: how it was measured, as a choice where there is one, and what to fill in for that. */
export function MeasureRow({ base, measure, part, of }: MeasureRowProps) {
  const { doc, write, problemsAt } = useBench();
  const way = wayAt(doc, base, measure);
  const [only, ...others] = way.blanks;
  if (measure.ways.length === 1 && only && others.length === 0)
    return <Entry base={base} blank={only} part={part} fullName={`${only.label}, ${of}`} />;
  const several = isSeveral(doc, base, measure);
  const id = idOf([...base, measure.keys[0]]);
  const own = measure.keys
    .map((key) => [...base, key])
    .filter((path) => several || !way.blanks.some(({ at }) => idOf([...base, ...at]) === idOf(path)))
    .flatMap(problemsAt)
    .filter(({ lacking }) => !lacking);
  const blanks = way.blanks.map((blank) => (
    <Field key={idOf(blank.at)} base={base} blank={blank} part={part} fullName={`${blank.label}, ${of}`} />
  ));
  // A choice of ways names a single text well enough.
  const named = !several && way.blanks.length === 1;
  return (
    <>
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset can't be laid out as part of a grid in every browser. */}
      <div
        class={`measure${named ? ' is-named' : ''}${several ? ' is-several' : ''}`}
        role="group"
        aria-label={`${measure.label}, ${of}`}
        aria-describedby={own.length > 0 ? `${id}-whole-wrong` : undefined}
      >
        {several && <strong aria-hidden="true">{measure.label}</strong>}
        <select
          class="way"
          aria-label={`how the ${measure.label} of ${of} was measured`}
          value={several ? SEVERAL : way.name}
          onChange={(event) => write(turned(doc, base, measure, event.currentTarget.value))}
        >
          {[...measure.ways.map(({ name }) => name), SEVERAL].map((name) => (
            <option key={name}>{name}</option>
          ))}
        </select>
        {several ? <ReadingsList base={base} measure={measure} part={part} of={of} /> : blanks}
        {!several && way.word && <p class="aside">The leaf carries the lines to lay on the marks.</p>}
      </div>
      {!several &&
        way.blanks.map(({ at, label }) => <WrongAt key={idOf(at)} path={[...base, ...at]} label={label} />)}
      <Wrong id={`${id}-whole`} label={measure.label} problems={own} />
    </>
  );
}
