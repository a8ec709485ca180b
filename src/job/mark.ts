import type { Angle } from '../measure/units.ts';
import type { End, EndName, Section } from './job.ts';
import { tubeFactsOf } from './sections.ts';
import { complain, type Desk, type Spot } from './text/desk.ts';

/**
 * The clock of an end whose rotation is marked on the tube: stations count from the mark, which is made where the
 * header's centre line comes nearest the heel. With an obtuse angle the heel is half a turn from the clock.
 */
export function markedClock(angle: Angle): Angle {
  return { rad: angle.rad <= Math.PI / 2 ? 0 : Math.PI, wrote: 'mark', unit: 'deg' };
}

/** Why a rotation can't be marked here and what to write instead; undefined where it can. */
export function noMark(
  at: EndName | 'list',
  section: Section | undefined,
): { readonly why: string; readonly instead: string } | undefined {
  if (at === 'A') {
    const why = 'end A is coped and seated first, and the mark is made with it in its place';
    return { why, instead: 'an angle such as 35deg here, and the mark at end B' };
  }
  if (at === 'list') {
    const why = 'several headers have no one centre line to mark';
    return { why, instead: 'an angle such as 35deg for each, counted from the spine' };
  }
  const turned = section && tubeFactsOf(section).turned;
  return turned && { why: turned.why, instead: 'an angle such as 0deg or 90deg, counted from the spine' };
}

/** End B with its length marked at the frame; complains at `between` where it can't be. */
export function withLengthMark(desk: Desk, spot: Spot, end: End | undefined): End | undefined {
  const instead = 'a length such as 600mm, or a coped end B that lands on one header';
  const refuse = (why: string): undefined => complain(desk, spot, 'mark', why, instead);
  if (end === undefined)
    return refuse('it is end B whose length is marked, with end A seated, and there is no end B');
  if (end.kind === 'plain')
    return refuse('a square end B is cut at the mark itself and has no leaf to lay on it');
  if (end.parts.length > 1) return refuse('several headers have no one centre line to mark the length on');
  return { ...end, fitUp: { clock: end.fitUp?.clock ?? false, between: true } };
}
