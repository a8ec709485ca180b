import type { Said } from '../../measure/said.ts';
import type { Language } from '../../words/language.ts';
import type { Notes } from './notes.ts';
import type { Outcome } from './outcome.ts';

/** One sentence on how the job stands, for those who hear the page. */
export function statusOf(
  outcome: Outcome,
  { aloud, warnings }: Notes,
  { page: { notices } }: Language,
): Said | undefined {
  if (outcome.kind === 'refused') {
    const lacking = outcome.problems.filter((problem) => problem.missing).length;
    const wrong = outcome.problems.length - lacking;
    return wrong > 0 ? notices.unread(wrong) : notices.unfilled(lacking);
  }
  return aloud === undefined ? undefined : notices.drawn(warnings.length);
}
