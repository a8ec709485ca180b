import type { Angle } from '../measure/units.ts';
import type { Language } from '../words/language.ts';
import type { Objection } from '../words/said.ts';
import type { End, EndName, TubeSection } from './job.ts';
import { tubeFactsOf } from './sections.ts';
import { complain, type Spot } from './text/desk.ts';

/**
 * The clock of an end whose rotation is marked on the tube: stations count from the mark, which is made where the
 * header's centre line comes nearest the heel. With an obtuse angle the heel is half a turn from the clock.
 */
export function markedClock(angle: Angle): Angle {
  return { rad: angle.rad <= Math.PI / 2 ? 0 : Math.PI, wrote: 'mark', opposite: 'mark', unit: 'deg' };
}

/** Why a rotation can't be marked here, and what to write instead; undefined where it can. */
export function noMark(
  at: EndName | 'list',
  section: TubeSection | undefined,
  words: Language,
): Objection | undefined {
  const { noMark } = words.job.ends;
  if (at !== 'B') return at === 'A' ? noMark.endA : noMark.list;
  const turned = section && tubeFactsOf(section).turned;
  return turned && noMark.turned(turned(words).why);
}

/** End B with its length marked at the frame; complains at `between` where it can't be. */
export function withLengthMark(spot: Spot, end: End | undefined): End | undefined {
  const { noLengthMark } = spot.desk.words.job.ends;
  if (end === undefined) return complain(spot, 'mark', noLengthMark('no-end'));
  if (end.kind === 'plain') return complain(spot, 'mark', noLengthMark('plain'));
  if (end.parts.length > 1) return complain(spot, 'mark', noLengthMark('list'));
  return { ...end, fitUp: { clock: end.fitUp?.clock ?? false, between: true } };
}
