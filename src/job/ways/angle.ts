import { angleOffSquare, angleOfRise, angleOfTriangle } from '../../measure/found-angle.ts';
import type { Said } from '../../measure/said.ts';
import { type Angle, degrees, type Length, type Radians } from '../../measure/units.ts';
import { complain, type Spot } from '../text/desk.ts';
import { type Fields, isMapAt, itemsOf } from '../text/fields.ts';
import { angleAt, choiceAt, inJointRange, jointAngleAt, lengthAt } from '../text/values.ts';
import { comparedAngles } from './agreement.ts';
import { agreed } from './several.ts';
import { givenAt, measuredAt, type Way } from './ways.ts';

/** The angle of a joint: plain, measured in another way, or a list of such that has to agree. */
export function jointAngleInWaysAt(spot: Spot): Angle | undefined {
  const read = (way: Spot): Angle | undefined =>
    isMapAt(way) ? measuredAt(way, 'angle', WAYS) : jointAngleAt(way);
  const { words } = spot.desk;
  return agreed(spot, givenAt(spot, words.job.ways.angle, read), comparedAngles(false, words));
}

const WAYS: readonly Way<Angle>[] = [
  { key: 'off-square', read: offSquare },
  { key: 'rise', companions: ['run'], read: riseAndRun },
  { key: 'triangle', read: triangle },
  { key: 'acute', companions: ['read-at'], read: acute },
];

function measured(rad: Radians, wrote: Said): Angle {
  return { rad, wrote, unit: 'deg', byName: true };
}

function offSquare(fields: Fields): Angle | undefined {
  const spot = fields.at('off-square');
  const lean = angleAt(spot);
  if (lean === undefined) return undefined;
  const words = fields.desk.words.job.ways;
  const angle = measured(angleOffSquare(lean.rad), words.offSquare(lean));
  if (Math.abs(degrees(lean.rad)) < 90 - 1e-9) return angle;
  return complain(spot, 'angle-range', words.leanTooFar);
}

function riseAndRun(fields: Fields): Angle | undefined {
  const rise = lengthAt(fields.at('rise'), 'positive');
  const run = lengthAt(fields.at('run'), 'any');
  if (!rise || !run) return undefined;
  if (isBesideAUnit(rise, run)) return askBeside(fields.at('rise'), rise, run);
  if (isBesideAUnit(run, rise)) return askBeside(fields.at('run'), run, rise);
  const angle = measured(angleOfRise(rise.mm, run.mm), fields.desk.words.job.ways.riseAndRun(rise, run));
  return inJointRange(fields.at('rise'), angle);
}

/** Whether a length lacks its unit where another of the same measurement has one that is not the file's. */
function isBesideAUnit(bare: Length, other: Length): boolean {
  return bare.bare === true && bare.mm !== 0 && other.bare !== true && other.unit !== bare.unit;
}

function askBeside(spot: Spot, bare: Length, other: Length): undefined {
  return complain(spot, 'which-unit', spot.desk.words.job.values.besideAUnit(bare, other));
}

function triangle(fields: Fields): Angle | undefined {
  const spot = fields.at('triangle');
  const words = fields.desk.words.job.ways;
  const spots = itemsOf(spot, words.threeSides);
  if (spots === undefined) return undefined;
  if (spots.length !== 3) return complain(spot, 'triangle', words.notThreeSides(spots.length));
  const sides = spots.map((side) => lengthAt({ ...side, key: spot.key }, 'positive'));
  const [tube, header, marks] = sides;
  if (!tube || !header || !marks) return undefined;
  const named = [tube, header, marks].find(({ bare }) => bare !== true);
  const lacking = named && [tube, header, marks].find((side) => isBesideAUnit(side, named));
  if (named && lacking) return askBeside(spot, lacking, named);
  const rad = angleOfTriangle(tube.mm, header.mm, marks.mm);
  if (rad !== undefined) return inJointRange(spot, measured(rad, words.triangle(tube, header, marks)));
  const isFar = marks.mm >= tube.mm + header.mm;
  return complain(spot, 'triangle', words.noTriangle(marks, isFar));
}

function acute(fields: Fields): Angle | undefined {
  const spot = fields.at('acute');
  const angle = angleAt(spot);
  const side = choiceAt(fields.at('read-at'), ['heel', 'toe']);
  if (!angle || !side) return undefined;
  const size = degrees(angle.rad);
  if (!(size > 1e-9 && size <= 90 + 1e-9)) {
    return complain(spot, 'angle-range', fields.desk.words.job.ways.notAcute);
  }
  const rad = side === 'heel' ? angle.rad : Math.PI - angle.rad;
  return measured(rad, fields.desk.words.job.ways.acute(angle, side));
}
