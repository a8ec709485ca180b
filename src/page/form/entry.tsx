import { useState } from 'preact/hooks';
import type { Said } from '../../measure/said.ts';
import { asWritten } from '../../words/said.ts';
import { useBench } from '../bench.ts';
import { countAt, type DocPath, docWordsAt, type JobDoc, keyOf, nodeAt } from '../job/job-doc.ts';
import type { Problem } from '../job/where.ts';
import { useWords } from '../words.ts';
import { isBare } from './bare.ts';
import { echoOf } from './echo.ts';
import type { BlankField, Choice, Reads } from './measure.ts';

interface EntryProps {
  readonly base: DocPath;
  readonly blank: BlankField;
  /** What of the picture it belongs to. */
  readonly part: string;
  /** In place of the usual label. */
  readonly label?: Said;
  /** Whose it is: its label alone does not say it to those who hear the form. */
  readonly of?: Said;
  /** In place of the label with whose it is. */
  readonly fullName?: Said;
}

/** One text to fill in, and below its row what is wrong with it. */
export function Entry(props: EntryProps) {
  const { base, blank, label } = props;
  const { fields } = useWords().page.measures;
  return (
    <>
      <EntryField {...props} />
      <WrongAt path={[...base, ...blank.at]} label={label ?? fields[blank.name].label} />
    </>
  );
}

/** One text to fill in: its label, and what was understood of it. What is wrong with it has to be shown beside, by `WrongAt`. */
export function EntryField({ base, blank, part, label, of, fullName }: EntryProps) {
  const { doc, units, change, pointAt } = useBench();
  const { form, measures } = useWords().page;
  const path = [...base, ...blank.at];
  const id = idOf(path);
  const [text, write] = useText(path, blank);
  const field = measures.fields[blank.name];
  const shown = label ?? field.label;
  const problems = useProblems()(path);
  const wrong = problems.some(({ missing: lacking }) => !lacking);
  const common = {
    id,
    value: text,
    onFocus: () => pointAt(part),
    onBlur: () => {
      pointAt(undefined);
      change({ kind: 'settle' });
    },
    'aria-invalid': wrong ? ('true' as const) : undefined,
    'aria-describedby': wrong ? `${id}-wrong` : isEchoed(blank.reads) ? `${id}-unit ${id}-echo` : undefined,
    'aria-label': fullName ?? (of && form.fieldOf(shown, of)),
  };
  return (
    <div class={`entry${wrong ? ' is-wrong' : ''}${isLacking(doc, path, problems) ? ' is-lacking' : ''}`}>
      <label for={id}>{shown}</label>
      {typeof blank.reads === 'string' ? (
        <span class="blank">
          <input
            {...common}
            type="text"
            placeholder={field.example[units]}
            list={blank.list}
            autocomplete="off"
            autocapitalize="off"
            maxLength={blank.reads === 'lengths' ? undefined : 95}
            spellcheck={false}
            onInput={(event) => write(event.currentTarget.value)}
          />
          <Unit id={`${id}-unit`} text={text} reads={blank.reads} />
        </span>
      ) : (
        <select {...common} onChange={(event) => write(event.currentTarget.value)}>
          <Choices choices={blank.reads} chosen={text} />
        </select>
      )}
      {!wrong && isEchoed(blank.reads) && (
        <span class="echo" id={`${id}-echo`}>
          {echoOf(text, blank.reads, units, measures.echo)}
        </span>
      )}
    </div>
  );
}

/** The text at a path, and how another is written in its place. */
function useText(
  path: DocPath,
  { at, reads, optional }: BlankField,
): readonly [text: string, write: (next: string) => void] {
  const { doc, write } = useBench();
  const [typed, setTyped] = useState('');
  const isList = reads === 'lengths';
  const removable = optional || (at.length === 1 && !isList);
  const take = (next: string): void => {
    setTyped(next);
    const value = isList ? listOf(next) : next;
    write([[path, value === '' && removable ? undefined : value]], keyOf(path));
  };
  return [isList ? listedAt(doc, path, typed) : docWordsAt(doc, path), take];
}

/** In what a number is that has no unit of its own. */
function Unit({ id, text, reads }: { readonly id: string; readonly text: string; readonly reads: Reads }) {
  const { units } = useBench();
  const words = useWords().page.measures.units;
  const isLength = reads === 'length' || reads === 'lengths' || reads === 'wall';
  const unit = reads === 'angle' ? 'deg' : isLength ? units : undefined;
  if (unit === undefined || !isBare(text)) return null;
  return (
    <span class="unit" id={id}>
      {words[unit]}
    </span>
  );
}

/** What can be chosen, and what is written if it is none of it. */
function Choices({ choices, chosen }: { readonly choices: readonly Choice[]; readonly chosen: string }) {
  const words = useWords().page.measures.choices;
  return (
    <>
      {!choices.some((choice) => choice === chosen) && <option value={chosen}>{asWritten(chosen)}</option>}
      {choices.map((choice) => (
        <option key={choice} value={choice}>
          {words[choice]}
        </option>
      ))}
    </>
  );
}

function isEchoed(reads: Reads): boolean {
  return typeof reads === 'string' && reads !== 'words' && reads !== 'count' && reads !== 'lengths';
}

/** Finds what is wrong with a value or with an item of the list that it is. */
function useProblems(): (path: DocPath) => readonly Problem[] {
  const { doc, problemsAt } = useBench();
  return (path) =>
    [path, ...Array.from({ length: countAt(doc, path) }, (_, i) => [...path, i])].flatMap(problemsAt);
}

/** A list as one text: as it is being typed, as long as that is what the job holds. */
function listedAt(doc: JobDoc, path: DocPath, typed: string): string {
  const listed = Array.from({ length: countAt(doc, path) }, (_, i) => docWordsAt(doc, [...path, i])).join(
    ', ',
  );
  return [listOf(typed)].flat().join(', ') === listed ? typed : listed;
}

/** The items of a list that is written as one text: a comma with no gap after it is a decimal's, and a fraction belongs to its number. */
function listOf(text: string): readonly string[] | '' {
  const items = text.split(/[;\n]|,(?=\s|$)|\s(?!\d+\/|[\p{L}"'′″])/u).map((each) => each.trim());
  const written = items.filter((each) => each !== '');
  return written.length > 0 ? written : '';
}

/** Empty, and the joint waits for it. */
function isLacking(doc: JobDoc, path: DocPath, problems: readonly Problem[]): boolean {
  return (
    problems.some(({ missing: lacking }) => lacking) &&
    countAt(doc, path) === 0 &&
    (nodeAt(doc, path) === undefined || docWordsAt(doc, path) === '')
  );
}

/** What is wrong with the value at a path; nothing while it is only still to be filled in. */
export function WrongAt({ path, label }: { readonly path: DocPath; readonly label: Said }) {
  const problems = useProblems()(path);
  return (
    <Wrong id={idOf(path)} label={label} problems={problems.filter(({ missing: lacking }) => !lacking)} />
  );
}

interface WrongProps {
  readonly id: string;
  /** Which of the values of its row it is about. */
  readonly label: Said;
  readonly problems: readonly Problem[];
}

/** What is wrong with a value, why, and what to write in its place. */
export function Wrong({ id, label, problems }: WrongProps) {
  const { named, mistake } = useWords().page.form;
  if (problems.length === 0) return null;
  return (
    <p class="wrong" id={`${id}-wrong`}>
      <strong>{named(label)}</strong>
      {problems.map(({ complaint: { code, why, instead } }) => (
        <span key={code}> {mistake(why, instead)}</span>
      ))}
    </p>
  );
}

export function idOf(path: DocPath): string {
  return `at-${keyOf(path).replaceAll('.', '-')}`;
}
