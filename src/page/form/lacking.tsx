import { useBench } from '../bench.ts';
import { keyOf, type Path } from '../job/job-doc.ts';
import { idOf } from './entry.tsx';

/** What the joint still waits for, each leading to its field; and mistakes that no field shows. */
export function Lacking() {
  const { outcome } = useBench();
  if (outcome.kind === 'read') return null;
  const lacking = outcome.problems.filter((problem) => problem.lacking);
  const wrong = outcome.problems.filter((problem) => !problem.lacking);
  return (
    <div class="lacking">
      {lacking.length > 0 && (
        <>
          <h2>Still to fill in</h2>
          <ul>
            {lacking.map(({ path, complaint }) => (
              <li key={keyOf(path)}>
                <button type="button" class="jump" onClick={() => goTo(path)}>
                  {placeInWords(path)}
                </button>{' '}
                {complaint.why}
              </li>
            ))}
          </ul>
        </>
      )}
      {wrong.length > 0 && (
        <>
          <h2>What can’t be read</h2>
          <ul>
            {wrong.map(({ path, complaint }) => (
              <li key={`${keyOf(path)} ${complaint.code}`}>
                <button type="button" class="jump" onClick={() => goTo(path)}>
                  {placeInWords(path) || `line ${complaint.line ?? 1}`}
                </button>{' '}
                <code>{complaint.read}</code>: {complaint.why}. Write {complaint.instead}.
              </li>
            ))}
          </ul>
        </>
      )}
    </div>
  );
}

/** The field of a value, or the first one inside it, or the nearest round it. */
function goTo(path: Path): void {
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

/** Where a value stands, as people say it: `end A, angle`. */
function placeInWords(path: Path): string {
  const ofEnd = path.includes('ends');
  return path
    .flatMap((step, i) => {
      if (step === 'ends' || step === 'tubes' || (ofEnd && step === 'tube')) return [];
      if (typeof step === 'number') return [`${listOf(path[i - 1])} ${step + 1}`];
      if (step === 'A' || step === 'B') return [`end ${step}`];
      if (step === 'onto') return ['header'];
      return [step === 'od' ? 'size' : step];
    })
    .join(', ');
}

/** What a list under this key holds. */
function listOf(key: Path[number] | undefined): string {
  if (key === 'tubes') return 'tube';
  if (key === 'A' || key === 'B') return 'header';
  if (key === 'triangle') return 'side';
  return key === 'stock' ? 'length' : 'reading';
}
