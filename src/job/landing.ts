import type { Mm } from '../measure/units.ts';
import { type Landing, lying } from '../space/landing.ts';
import type { WallEntry } from '../space/solid.ts';
import { type Stop, stopped } from '../space/stopped.ts';
import type { HeaderEnd, Part } from './job.ts';
import { headerFactsOf } from './kinds.ts';

/** One header of an end as a solid where it lies: larger by a root gap, and where it is a box with its corners filled if asked. */
export function landingOf(part: Part, root: Mm, toFlat: boolean): Landing {
  const { solid: asIs, filled, wall } = headerFactsOf(part.onto);
  const { angle, clock, offset, shift, stops } = part;
  const whole = ((toFlat ? filled : undefined) ?? asIs)(angle.rad, offset.mm, root);
  const solid = stops ? stopped(whole, angle.rad, offset.mm, stopOf(stops)) : whole;
  return {
    solid,
    ...lying(angle.rad, clock.rad, offset.mm, shift.mm),
    mitred: !wall,
    stops: stops !== undefined,
  };
}

/** A header that runs on, and where the centre line of what lands on it comes out of its outside; no such place where it passes beside. */
export function centreOn({ stops, ...whole }: Part): { readonly landing: Landing; readonly out?: WallEntry } {
  const landing = landingOf(whole, 0, false);
  const entry = landing.solid.enter(0, 0);
  return { landing, ...(entry && entry.nz > 0 && { out: entry }) };
}

/** A bevelled end and a square one alike: up to what it lands on, and no further. */
function stopOf({ end, at, ahead, turn, round }: HeaderEnd): Stop {
  const cut =
    end.kind === 'plain'
      ? []
      : end.parts.map((part) => landingOf(part, end.root?.mm ?? 0, end.toFlat ?? false));
  return { cut, at, ahead, turn, round };
}
