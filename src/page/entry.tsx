import { useBench } from './bench.ts';
import { echoOf } from './echo.ts';
import { type JobDoc, keyOf, nodeAt, type Path, wordsAt } from './job-doc.ts';
import type { Blank, Reads } from './measure.ts';
import type { Problem } from './where.ts';

interface EntryProps {
  readonly base: Path;
  readonly blank: Blank;
  /** What of the picture it belongs to. */
  readonly part: string;
  /** A name that says more than the label that is shown. */
  readonly fullName?: string;
}

/** One text to fill in: its label, what was understood of it, and what is wrong with it. */
export function Entry({ base, blank, part, fullName }: EntryProps) {
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
      <Wrong id={id} problems={wrong} />
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

/** What is wrong with a value, why, and what to write in its place. */
export function Wrong({ id, problems }: { readonly id: string; readonly problems: readonly Problem[] }) {
  if (problems.length === 0) return null;
  return (
    <p class="wrong" id={`${id}-wrong`}>
      {problems.map(({ complaint }) => (
        <span key={complaint.code}>
          {sentence(complaint.why)} Write {complaint.instead}.{' '}
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
