import type { Angle } from '../../measure/units.ts';
import type { TubeSection } from '../job.ts';
import { mirroredLength } from '../mirrored.ts';
import { tubeFactsOf } from '../sections.ts';
import { complain, type Spot } from '../text/desk.ts';
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
export function clockAt(spot: Spot, section: TubeSection | undefined): Angle | undefined {
  const ways = [arcWay(section)];
  const read = (way: Spot): Angle | undefined => {
    if (isMark(way)) return complain(way, 'mark', spot.desk.words.job.ways.markAmongReadings);
    return isMapAt(way) ? measuredAt(way, 'clock', ways) : withinTurns(way);
  };
  const { words } = spot.desk;
  return agreed(spot, givenAt(spot, words.job.ways.clock, read), comparedAngles(true, words));
}

/** Twice round is more than anyone turns a tube. */
function withinTurns(spot: Spot): Angle | undefined {
  const angle = angleAt(spot);
  if (!angle || Math.abs(angle.rad) <= 4 * Math.PI + 1e-9) return angle;
  return complain(spot, 'angle-range', spot.desk.words.job.values.manyTurns);
}

function arcWay(section: TubeSection | undefined): Way<Angle> {
  return {
    key: 'arc',
    read(fields) {
      const arc = lengthAt(fields.at('arc'), 'any');
      if (!arc || !section) return undefined;
      const words = fields.desk.words.job.ways;
      const outline = tubeFactsOf(section).outline();
      if (Math.abs(arc.mm) > outline.girth) {
        return complain(fields.at('arc'), 'arc', words.tooFarRound(outline.girth, fields.desk.bareUnit));
      }
      const [wrote, opposite] = [words.arc(arc), words.arc(mirroredLength(arc))];
      return { rad: outline.directionOf(arc.mm), wrote, opposite, unit: 'deg', byName: true };
    },
  };
}
