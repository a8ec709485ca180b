import { useEffect, useState } from 'preact/hooks';
import { reportTube, type TubeReport } from '../fit/report.ts';
import type { Warning } from '../fit/warnings.ts';
import type { TubeSolution } from '../saddle/solve.ts';

/** What follows for a tube and what to watch. */
export interface Notes {
  readonly report?: TubeReport;
  readonly warnings: readonly Warning[];
}

const NONE: Notes = { warnings: [] };

/** How long the person has to be still before the fit is looked at, which takes longer than a leaf. */
const STILL = 120;

/** The report of a tube, a little after it was last changed; the one before stands until then. */
export function useNotes(solution: TubeSolution | undefined): Notes {
  const [notes, setNotes] = useState<Notes>(NONE);
  useEffect(() => {
    if (!solution) {
      setNotes(NONE);
      return undefined;
    }
    const waiting = setTimeout(() => {
      const report = reportTube(solution);
      setNotes({ report, warnings: report.warnings });
    }, STILL);
    return () => clearTimeout(waiting);
  }, [solution]);
  return notes;
}
