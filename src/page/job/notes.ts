import { useEffect, useState } from 'preact/hooks';
import type { Checker, Counter } from './asker.ts';
import type { Checked } from './check.ts';

/** What follows for a tube and what to watch; nothing is said until it is known. */
export type Notes = Partial<Pick<Checked, 'aloud'>> & Pick<Checked, 'warnings'>;

const NONE: Notes = { warnings: [] };

/** How long the person has to be still before the fit is looked at. */
const STILL = 120;

/** The notes on a tube, a little after it was last changed; the ones before stand until then. None where the job can't be read. */
export function useNotes(checker: Checker, text: string, place: number, readable: boolean): Notes {
  const [notes, setNotes] = useState<Notes>(NONE);
  useEffect(() => {
    if (!readable) {
      setNotes(NONE);
      return undefined;
    }
    let wanted = true;
    const waiting = setTimeout(() => {
      checker({ kind: 'check', text, place }, (checked) => {
        if (wanted) setNotes(checked ?? NONE);
      });
    }, STILL);
    return () => {
      wanted = false;
      clearTimeout(waiting);
    };
  }, [checker, text, place, readable]);
  return notes;
}

/** How many warnings the whole job gives, a while after it was last changed; none while that is not known. */
export function useWarningCount(counter: Counter, text: string, readable: boolean): number {
  const [found, setFound] = useState({ text: '', count: 0 });
  useEffect(() => {
    if (!readable) return undefined;
    const waiting = setTimeout(
      () => counter({ kind: 'count', text }, (count) => setFound({ text, count })),
      3 * STILL,
    );
    return () => clearTimeout(waiting);
  }, [counter, text, readable]);
  return found.text === text ? found.count : 0;
}
