import type { Angle } from '../../measure/units.ts';
import type { TubeSection } from '../job.ts';
import { mirroredLength } from '../mirrored.ts';
import { tubeFactsOf } from '../sections.ts';
import { complain, type Desk, type Spot } from '../text/desk.ts';
import { isMapAt, wordOf } from '../text/fields.ts';
import { angleAt, lengthAt } from '../text/values.ts';
import { comparedAngles } from './agreement.ts';
import { agreed } from './several.ts';
import { givenAt, measuredAt, type Way } from './ways.ts';

/** The word for what is marked at the frame and not known as a number. */
export function isMark(spot: Spot | undefined): boolean {
  return spot !== undefined && wordOf(spot) === 'mark';
}

/** A station of the header: an angle, measured round the outside of this tube, or a list of such that has to agree. */
export function clockAt(desk: Desk, spot: Spot, section: TubeSection | undefined): Angle | undefined {
  const ways = [arcWay(section)];
  const read = (way: Spot): Angle | undefined => {
    if (isMark(way)) return complain(desk, way, 'mark', desk.words.job.ways.markAmongReadings);
    return isMapAt(way) ? measuredAt(desk, way, 'clock', ways) : withinTurns(desk, way);
  };
  return agreed(
    desk,
    spot,
    givenAt(desk, spot, desk.words.job.ways.clock, read),
    comparedAngles(true, desk.words),
  );
}

/** Twice round is more than anyone turns a tube. */
function withinTurns(desk: Desk, spot: Spot): Angle | undefined {
  const angle = angleAt(desk, spot);
  if (!angle || Math.abs(angle.rad) <= 4 * Math.PI + 1e-9) return angle;
  return complain(desk, spot, 'angle-range', desk.words.job.values.manyTurns);
}

function arcWay(section: TubeSection | undefined): Way<Angle> {
  return {
    key: 'arc',
    read(desk, at) {
      const arc = lengthAt(desk, at('arc'), 'any');
      if (!arc || !section) return undefined;
      const words = desk.words.job.ways;
      const outline = tubeFactsOf(section).outline();
      if (Math.abs(arc.mm) > outline.girth) {
        return complain(desk, at('arc'), 'arc', words.tooFarRound(outline.girth, desk.bareUnit));
      }
      const [wrote, opposite] = [words.arc(arc), words.arc(mirroredLength(arc))];
      return { rad: outline.directionOf(arc.mm), wrote, opposite, unit: 'deg', byName: true };
    },
  };
}
