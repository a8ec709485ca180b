import { around, degreesOf } from '../fit/as-data.ts';
import type { Job } from '../job/job.ts';
import type { StandingFrame } from './frame-notes.ts';

/** A frame as `check --as json` gives it: points, landings and what is told, by the names of the tubes; mm and degrees. */
export function frameAsData({ tubes }: Job, { frame, landings, warnings, standings }: StandingFrame): object {
  const nameOf = (place: number): string => tubes[place]?.name ?? '';
  return {
    points: Object.fromEntries(frame.points),
    landings: landings.map(({ on, tube, end, at, from, to, mark, station, lean }) => ({
      on: nameOf(on),
      tube: nameOf(tube),
      end,
      at,
      from,
      to,
      ...(mark !== undefined && { mark }),
      station: standings[on]?.solution.section.stations === 'mm' ? station : around(station),
      lean: degreesOf(lean),
    })),
    warnings: warnings.map(({ code, tubes: about, at, depth, text }) => ({
      code,
      tubes: about.map(nameOf),
      ...(at && { at }),
      ...(depth !== undefined && { depth }),
      text,
    })),
  };
}
