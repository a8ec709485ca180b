import { useBench } from '../bench.ts';
import { type JobDoc, keyOf, nodeAt, type Path, wordsAt } from '../job/job-doc.ts';
import type { Problem } from '../job/where.ts';
import { echoOf } from './echo.ts';
import type { Blank, Reads } from './measure.ts';

interface EntryProps {
  readonly base: Path;
  readonly blank: Blank;
  /** What of the picture it belongs to. */
  readonly part: string;
  /** A name that says more than the label that is shown. */
  readonly fullName?: string;
}

/** One text to fill in, and below its row what is wrong with it. */
export function Entry(props: EntryProps) {
  const { base, blank } = props;
  return (
    <>
      <Field {...props} />
      <WrongAt path={[...base, ...blank.at]} label={blank.label} />
    </>
  );
}

/** One text to fill in: its label, and what was understood of it. What is wrong with it has to be shown beside, by `WrongAt`. */
export function Field({ base, blank, part, fullName }: EntryProps) {
  const { doc, units, problemsAt, write, settle, pointAt } = useBench();
  const path = [...base, ...blank.at];
  const id = idOf(path);
  const words = wordsAt(doc, path);
  const problems = problemsAt(path);
  const wrong = problems.filter(({ lacking }) => !lacking);
  const echo = echoOf(words, blank.reads, units);
  const removable = blank.at.length === 1 || blank.optional === true;
  const change = (text: string): void =>
    write([[path, text === '' && removable ? undefined : text]], keyOf(path));
  const common = {
    id,
    onFocus: () => pointAt(part),
    onBlur: () => {
      pointAt(undefined);
      settle();
    },
    'aria-invalid': wrong.length > 0 ? ('true' as const) : undefined,
    'aria-describedby': wrong.length > 0 ? `${id}-wrong` : isEchoed(blank.reads) ? `${id}-echo` : undefined,
    ...(fullName !== undefined && { 'aria-label': fullName }),
  };
  return (
    <div
      class={`entry${wrong.length > 0 ? ' is-wrong' : ''}${isLacking(doc, path, problems) ? ' is-lacking' : ''}`}
    >
      <label for={id}>{blank.label}</label>
      {Array.isArray(blank.reads) ? (
        <select {...common} value={words} onChange={(event) => change(event.currentTarget.value)}>
          {blank.reads.includes(words) ? null : <option value={words}>{words}</option>}
          {blank.reads.map((choice) => (
            <option key={choice} value={choice}>
              {choice}
            </option>
          ))}
        </select>
      ) : (
        <input
          {...common}
          type="text"
          value={words}
          placeholder={blank.example}
          list={blank.list}
          autocomplete="off"
          autocapitalize="off"
          spellcheck={false}
          onInput={(event) => change(event.currentTarget.value)}
        />
      )}
      {wrong.length === 0 && isEchoed(blank.reads) && (
        <span class="echo" id={`${id}-echo`}>
          {echo}
        </span>
      )}
    </div>
  );
}

function isEchoed(reads: Reads): boolean {
  return typeof reads === 'string' && reads !== 'words' && reads !== 'count';
}

/** Empty, and the joint waits for it. */
function isLacking(doc: JobDoc, path: Path, problems: readonly Problem[]): boolean {
  return (
    problems.some(({ lacking }) => lacking) && (nodeAt(doc, path) === undefined || wordsAt(doc, path) === '')
  );
}

/** What is wrong with the value at a path; nothing while it is only still to be filled in. */
export function WrongAt({ path, label }: { readonly path: Path; readonly label: string }) {
  const problems = useBench().problemsAt(path);
  return <Wrong id={idOf(path)} label={label} problems={problems.filter(({ lacking }) => !lacking)} />;
}

interface WrongProps {
  readonly id: string;
  /** Which of the values of its row it is about. */
  readonly label: string;
  readonly problems: readonly Problem[];
}

/** What is wrong with a value, why, and what to write in its place. */
export function Wrong({ id, label, problems }: WrongProps) {
  if (problems.length === 0) return null;
  return (
    <p class="wrong" id={`${id}-wrong`}>
      <strong>{label}:</strong>
      {problems.map(({ complaint }) => (
        <span key={complaint.code}>
          {' '}
          {sentence(complaint.why)} Write {complaint.instead}.
        </span>
      ))}
    </p>
  );
}

function sentence(words: string): string {
  return `${words.slice(0, 1).toUpperCase()}${words.slice(1)}.`;
}

export function idOf(path: Path): string {
  return `at-${keyOf(path).replaceAll('.', '-')}`;
}
