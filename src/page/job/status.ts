import type { Notes } from './notes.ts';
import type { Outcome } from './outcome.ts';

/** One sentence on how the job stands, for those who hear the page. */
export function statusOf(outcome: Outcome, { aloud, warnings }: Notes): string {
  if (outcome.kind === 'refused') {
    const lacking = outcome.problems.filter((problem) => problem.lacking).length;
    const wrong = outcome.problems.length - lacking;
    if (wrong > 0) return `${counted(wrong, 'value')} can’t be read.`;
    return `${counted(lacking, 'value')} still to fill in.`;
  }
  if (aloud === undefined) return '';
  return `The leaf is drawn. ${warnings.length === 0 ? 'Nothing out of the ordinary.' : `${counted(warnings.length, 'warning')}.`}`;
}

function counted(count: number, what: string): string {
  return `${count} ${what}${count === 1 ? '' : 's'}`;
}
