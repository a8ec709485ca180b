import { readLength } from '../../measure/length.ts';
import type { Said } from '../../measure/said.ts';
import type { Angle, Length } from '../../measure/units.ts';
import type { Language } from '../../words/language.ts';
import type { BetweenReading, MeasuredBetween, TubeSection } from '../job.ts';
import { tubeFactsOf } from '../sections.ts';
import { complain, type Spot } from '../text/desk.ts';
import { isMapAt, wordOf } from '../text/fields.ts';
import { angleAt, lengthAt } from '../text/values.ts';
import { isMark } from './clock.ts';
import { givenAt, measuredAt, type Way } from './ways.ts';

/**
 * The length of a tube: from work point to work point, measured in another way, or a list of such. Those that take
 * the solved ends are compared once these are.
 */
export function betweenAt(
  spot: Spot,
  section: TubeSection | undefined,
): Length | MeasuredBetween | undefined {
  const ways = waysOf(section);
  const read = (way: Spot): BetweenReading | undefined => {
    if (isMark(way)) return complain(way, 'mark', spot.desk.words.job.ways.markAmongReadings);
    if (isMapAt(way)) return measuredAt(way, 'between', ways);
    const length = lengthAt(way, 'positive', 'between');
    return length && { way: 'work-points', length };
  };
  const readings = givenAt(spot, spot.desk.words.job.ways.between, read);
  if (readings === undefined) return undefined;
  const [first, ...others] = readings;
  return others.length === 0 && first.way === 'work-points' ? first.length : { ways: readings };
}

/** A reading as a person wrote it: `faces 22-1/2in`, `straightedge 22-3/8in at 90deg`. */
export function betweenInWords(reading: BetweenReading, { job: { ways }, quantities }: Language): Said {
  const { way, length } = reading;
  if (way === 'work-points') return quantities.own(length);
  return way === 'straightedge' ? ways.straightedge(length, reading.at) : ways.along(way, length);
}

function waysOf(section: TubeSection | undefined): readonly Way<BetweenReading>[] {
  return [
    plainWay('faces'),
    {
      key: 'straightedge',
      companions: ['at'],
      read(fields) {
        const length = lengthAt(fields.at('straightedge'), 'positive', 'between');
        const station = stationAt(fields.at('at'), section);
        return length && station && { way: 'straightedge', length, at: station };
      },
    },
    plainWay('overall'),
    plainWay('seated'),
  ];
}

function plainWay(key: 'faces' | 'overall' | 'seated'): Way<BetweenReading> {
  return {
    key,
    read(fields) {
      const length = lengthAt(fields.at(key), 'positive', 'between');
      return length && { way: key, length };
    },
  };
}

/** A station: an angle, or where stations are mm round the outside such a length too. */
function stationAt(spot: Spot, section: TubeSection | undefined): Angle | Length | undefined {
  const word = wordOf(spot);
  const inMm = section && tubeFactsOf(section).outline().stations === 'mm';
  if (inMm && word !== undefined && readLength(word, spot.desk.bareUnit).ok) {
    return lengthAt(spot, 'any');
  }
  return angleAt(spot);
}
