import { useBench } from './bench.ts';
import { Entry, idOf, Wrong } from './entry.tsx';
import { countAt, type JobDoc, keysAt, nodeAt, type Path, type Value, wordsAt } from './job-doc.ts';
import { type Measure, type Way, wayAt } from './measure.ts';

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
  const first = [...base, ...(way?.blanks[0]?.at ?? measure.keys.slice(0, 1))];
  const id = idOf([...base, measure.keys[0] ?? '']);
  const own = measure.keys
    .map((key) => [...base, key])
    .filter((path) => !way?.blanks.some(({ at }) => idOf([...base, ...at]) === idOf(path)))
    .flatMap(problemsAt)
    .filter(({ lacking }) => !lacking);
  if (way === undefined) return <Readings base={base} measure={measure} />;
  const [only, ...others] = way.blanks;
  if (measure.ways.length === 1 && only && others.length === 0)
    return <Entry base={base} blank={only} part={part} fullName={`${only.label}, ${of}`} />;
  // A choice of ways names a single text well enough.
  const named = way.blanks.length === 1;
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset can't be laid out as part of a grid in every browser.
    <div
      class={`measure${named ? ' is-named' : ''}`}
      role="group"
      aria-label={`${measure.label}, ${of}`}
      aria-describedby={own.length > 0 ? `${id}-whole-wrong` : undefined}
    >
      <select
        class="way"
        aria-label={`how the ${measure.label} of ${of} was measured`}
        value={way.name}
        onChange={(event) => write(turned(doc, base, measure, event.currentTarget.value))}
      >
        {measure.ways.map(({ name }) => (
          <option key={name}>{name}</option>
        ))}
      </select>
      {way.blanks.map((blank) => (
        <Entry
          key={idOf([...first, ...blank.at])}
          base={base}
          blank={blank}
          part={part}
          fullName={`${blank.label}, ${of}`}
        />
      ))}
      {way.word && <p class="aside">The leaf carries the lines to lay on the marks.</p>}
      <Wrong id={`${id}-whole`} problems={own} />
    </div>
  );
}

/** The changes that turn a value to another way of measuring, with nothing filled in yet. */
function turned(
  doc: JobDoc,
  base: Path,
  { keys, ways }: Measure,
  name: string,
): readonly (readonly [Path, Value | undefined])[] {
  const way = ways.find((each) => each.name === name) ?? ways[0];
  const cleared = keys
    .filter((key) => nodeAt(doc, [...base, key]) !== undefined)
    .map((key): readonly [Path, undefined] => [[...base, key], undefined]);
  return [...cleared, ...blankOf(base, way)];
}

function blankOf(base: Path, way: Way): readonly (readonly [Path, Value])[] {
  const [key] = way.blanks[0]?.at ?? [];
  if (way.word) return [[[...base, way.word.key], way.word.says]];
  const inner = way.blanks.filter(({ optional }) => !optional);
  if (inner.every(({ at }) => at.length === 1)) {
    // A key of its own is written at once, or the choice would be forgotten; the usual one can wait.
    return key === 'pipe' ? [[[...base, key], '']] : [];
  }
  const list = inner.filter(({ at }) => at.length === 3);
  if (list.length > 0) {
    const [outer = '', middle = ''] = list[0]?.at ?? [];
    return [[[...base, outer], { [middle]: list.map(() => '') }]];
  }
  return inner.map(({ at, reads }) => [[...base, ...at], typeof reads === 'string' ? '' : (reads[0] ?? '')]);
}

/** A value that was measured in several ways, which are compared; the view of the job file is where they are changed. */
function Readings({ base, measure }: { readonly base: Path; readonly measure: Measure }) {
  const { doc, problemsAt } = useBench();
  const items = measure.keys.flatMap((key) =>
    Array.from({ length: countAt(doc, [...base, key]) }, (_, i) => [...base, key, i]),
  );
  const wrong = [...measure.keys.map((key) => [...base, key]), ...items].flatMap(problemsAt);
  return (
    <div class="measure">
      <p class="aside">
        {measure.label}, measured in several ways: {items.map((item) => readingAt(doc, item)).join('; ')}. The
        view “Job file” has them, each an item of a list.
      </p>
      <Wrong id={`${idOf([...base, measure.keys[0] ?? ''])}-readings`} problems={wrong} />
    </div>
  );
}

/** One reading as the file has it: `faces 22in`. */
function readingAt(doc: JobDoc, item: Path): string {
  const named = keysAt(doc, item).map((key) => `${key} ${wordsAt(doc, [...item, key])}`);
  return named.join(', ') || wordsAt(doc, item);
}
