import { angleOffSquare, angleOfRise, angleOfTriangle } from '../../measure/found-angle.ts';
import type { Said } from '../../measure/said.ts';
import { type Angle, degrees, type Length, type Radians } from '../../measure/units.ts';
import { complain, type Desk, type Spot } from '../text/desk.ts';
import { isMapAt, itemsOf } from '../text/fields.ts';
import { angleAt, choiceAt, inJointRange, jointAngleAt, lengthAt } from '../text/values.ts';
import { comparedAngles } from './agreement.ts';
import { agreed } from './several.ts';
import { givenAt, measuredAt, type Way } from './ways.ts';

/** The angle of a joint: plain, measured in another way, or a list of such that has to agree. */
export function jointAngleInWaysAt(desk: Desk, spot: Spot): Angle | undefined {
  const read = (way: Spot): Angle | undefined =>
    isMapAt(way) ? measuredAt(desk, way, 'angle', WAYS) : jointAngleAt(desk, way);
  return agreed(
    desk,
    spot,
    givenAt(desk, spot, desk.words.job.ways.angle, read),
    comparedAngles(false, desk.words),
  );
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

type At = (key: string) => Spot;

function offSquare(desk: Desk, at: At): Angle | undefined {
  const spot = at('off-square');
  const lean = angleAt(desk, spot);
  if (lean === undefined) return undefined;
  const words = desk.words.job.ways;
  const angle = measured(angleOffSquare(lean.rad), words.offSquare(lean));
  if (Math.abs(degrees(lean.rad)) < 90 - 1e-9) return angle;
  return complain(desk, spot, 'angle-range', words.leanTooFar);
}

function riseAndRun(desk: Desk, at: At): Angle | undefined {
  const rise = lengthAt(desk, at('rise'), 'positive');
  const run = lengthAt(desk, at('run'), 'any');
  if (!rise || !run) return undefined;
  if (isBesideAUnit(rise, run)) return askBeside(desk, at('rise'), rise, run);
  if (isBesideAUnit(run, rise)) return askBeside(desk, at('run'), run, rise);
  const angle = measured(angleOfRise(rise.mm, run.mm), desk.words.job.ways.riseAndRun(rise, run));
  return inJointRange(desk, at('rise'), angle);
}

/** Whether a length lacks its unit where another of the same measurement has one that is not the file's. */
function isBesideAUnit(bare: Length, other: Length): boolean {
  return bare.bare === true && bare.mm !== 0 && other.bare !== true && other.unit !== bare.unit;
}

function askBeside(desk: Desk, spot: Spot, bare: Length, other: Length): undefined {
  return complain(desk, spot, 'which-unit', desk.words.job.values.besideAUnit(bare, other));
}

function triangle(desk: Desk, at: At): Angle | undefined {
  const spot = at('triangle');
  const words = desk.words.job.ways;
  const spots = itemsOf(desk, spot, words.threeSides);
  if (spots === undefined) return undefined;
  if (spots.length !== 3) return complain(desk, spot, 'triangle', words.notThreeSides(spots.length));
  const sides = spots.map((side) => lengthAt(desk, { ...side, key: spot.key }, 'positive'));
  const [tube, header, marks] = sides;
  if (!tube || !header || !marks) return undefined;
  const named = [tube, header, marks].find(({ bare }) => bare !== true);
  const lacking = named && [tube, header, marks].find((side) => isBesideAUnit(side, named));
  if (named && lacking) return askBeside(desk, spot, lacking, named);
  const rad = angleOfTriangle(tube.mm, header.mm, marks.mm);
  if (rad !== undefined) return inJointRange(desk, spot, measured(rad, words.triangle(tube, header, marks)));
  const isFar = marks.mm >= tube.mm + header.mm;
  return complain(desk, spot, 'triangle', words.noTriangle(marks, isFar));
}

function acute(desk: Desk, at: At): Angle | undefined {
  const spot = at('acute');
  const angle = angleAt(desk, spot);
  const side = choiceAt(desk, at('read-at'), ['heel', 'toe']);
  if (!angle || !side) return undefined;
  const size = degrees(angle.rad);
  if (!(size > 1e-9 && size <= 90 + 1e-9)) {
    return complain(desk, spot, 'angle-range', desk.words.job.ways.notAcute);
  }
  const rad = side === 'heel' ? angle.rad : Math.PI - angle.rad;
  return measured(rad, desk.words.job.ways.acute(angle, side));
}
