import { useEffect, useState } from 'preact/hooks';
import type { Checked } from './check.ts';
import type { Checker } from './checker.ts';

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
      checker({ text, place }, (checked) => {
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
