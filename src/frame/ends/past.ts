import { landingOf } from '../../job/landing.ts';
import type { Mm } from '../../measure/units.ts';
import { greatestRound } from '../../space/golden-section.ts';
import { type Landing, pastClock, towardsClock } from '../../space/landing.ts';
import { dot, wayTo } from '../../space/vector.ts';
import { type Meeting, meetingOf, partOfMeeting } from '../meeting.ts';
import { bodyOf, pointOf, type StoodEnd } from '../stood.ts';

/**
 * How far a plain end runs on beyond its point, so that the outside footprints of all that land on it, wherever these touch and
 * before any trim, lie whole on it.
 */
export function pastOf(plain: StoodEnd, landers: readonly StoodEnd[]): Mm {
  return Math.max(0, ...landers.map((lander) => reachBeyond(plain, lander)));
}

const LOOKS = 720;

function reachBeyond(plain: StoodEnd, lander: StoodEnd): Mm {
  const meeting = meetingOf(lander, plain.tube);
  if (!meeting) return 0;
  const landing = landingOf(partOfMeeting(meeting, true, 'mm'), 0, false);
  const { outline } = lander.tube;
  const beyond = beyondAt(meeting, landing, plain);
  const height = (station: number): Mm => {
    const { x, y } = outline.at(station);
    return beyond(towardsClock(landing, x, y), pastClock(landing, x, y));
  };
  return greatestRound(height, outline.turn, LOOKS);
}

/** How far beyond the plain end's point a line of the lander's outside comes to it; endlessly short where it passes beside. */
function beyondAt(meeting: Meeting, landing: Landing, plain: StoodEnd): (x: Mm, y: Mm) => Mm {
  const { h, foot } = meeting;
  const body = bodyOf(plain);
  const outwards = dot(h, body) > 0 ? -1 : 1;
  const fromPoint = dot(wayTo(pointOf(plain), foot), body);
  return (x, y) => {
    const entry = landing.solid.enter(x, y);
    if (!entry) return Number.NEGATIVE_INFINITY;
    return outwards * landing.solid.develop(x, y, entry.z).along - fromPoint;
  };
}
