import type { ComponentChildren } from 'preact';
import type { FramePlace, KeyPlace } from '../../job/text/keys.ts';
import type { Said } from '../../measure/said.ts';
import type { Language } from '../../words/language.ts';
import { asWritten } from '../../words/said.ts';
import { Action } from '../action.tsx';
import { useBench } from '../bench.ts';
import { type DocPath, keyOf } from '../job/job-doc.ts';
import type { Problem } from '../job/where.ts';
import { useWords } from '../words.ts';
import { idOf } from './entry.tsx';
import type { KeyAt } from './measure.ts';

/** What the joint still waits for, each leading to its field; and mistakes that no field shows. */
export function Lacking() {
  const { outcome } = useBench();
  const { form, measures } = useWords().page;
  if (outcome.kind === 'read') return null;
  const lacking = outcome.problems.filter((problem) => problem.missing);
  const wrong = outcome.problems.filter((problem) => !problem.missing);
  return (
    <div class="lacking">
      <Problems title={form.lacking} problems={lacking}>
        {({ path, complaint }) => (
          <>
            <Action words={placeInWords(path, measures)} onAct={() => goTo(path)} kind="jump" />{' '}
            {complaint.why}
          </>
        )}
      </Problems>
      <Problems title={form.wrong} problems={wrong}>
        {({ path, complaint: { line, read, why, instead } }) => (
          <>
            <Action
              words={path.length > 0 ? placeInWords(path, measures) : form.line(line ?? 1)}
              onAct={() => goTo(path)}
              kind="jump"
            />{' '}
            <code>{read}</code>
            {form.because(why, instead)}
          </>
        )}
      </Problems>
    </div>
  );
}

interface ProblemsProps {
  readonly title: Said;
  readonly problems: readonly Problem[];
  readonly children: (problem: Problem) => ComponentChildren;
}

function Problems({ title, problems, children }: ProblemsProps) {
  if (problems.length === 0) return null;
  return (
    <>
      <h2>{title}</h2>
      <ul>
        {problems.map((problem) => (
          <li key={`${keyOf(problem.path)} ${problem.complaint.code}`}>{children(problem)}</li>
        ))}
      </ul>
    </>
  );
}

/** The field of a value, or the first one inside it, or the nearest round it. */
function goTo(path: DocPath): void {
  for (let outer = path; outer.length > 0; outer = outer.slice(0, -1)) {
    const id = idOf(outer);
    const field =
      document.getElementById(id) ?? document.querySelector(`input[id^="${id}-"], select[id^="${id}-"]`);
    if (field instanceof HTMLElement) {
      const fold = field.closest('details');
      if (fold) fold.open = true;
      field.focus();
      return;
    }
  }
}

type Words = Language['page']['measures'];

/** Where a value stands, as people say it: `end A, angle`. */
function placeInWords(path: DocPath, { keys, items, place }: Words): Said {
  const named: ReadonlyMap<string | number, Said> = new Map(
    Object.entries(keys satisfies Readonly<Record<KeyAt<Exclude<KeyPlace, FramePlace>>, Said>>),
  );
  const ofEnd = path.includes('ends');
  return place(
    path.flatMap((step, i) => {
      if (step === 'ends' || step === 'tubes' || (ofEnd && step === 'tube')) return [];
      if (typeof step === 'number') return [items[listOf(path[i - 1])](step + 1)];
      return [named.get(step) ?? asWritten(step)];
    }),
  );
}

/** What a list under this key holds. */
function listOf(key: DocPath[number] | undefined): keyof Words['items'] {
  if (key === 'tubes') return 'tube';
  if (key === 'A' || key === 'B') return 'header';
  if (key === 'triangle') return 'side';
  return key === 'stock' ? 'stock' : 'reading';
}
