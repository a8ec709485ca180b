import { angleOffSquare, angleOfRise, angleOfTriangle } from '../../measure/found-angle.ts';
import { type Angle, degrees, type Length, type Radians } from '../../measure/units.ts';
import { angleAsWritten, lengthAsWritten } from '../../measure/write.ts';
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
  return agreed(desk, spot, givenAt(desk, spot, WANTED, read), comparedAngles(false));
}

const WANTED = 'an angle such as 60deg, or what was measured, as in { rise: 7in, run: 12in }';

const WAYS: readonly Way<Angle>[] = [
  { key: 'off-square', example: '{ off-square: 28deg }', read: offSquare },
  { key: 'rise', companions: ['run'], example: '{ rise: 7in, run: 12in }', read: riseAndRun },
  { key: 'triangle', example: '{ triangle: [200mm, 200mm, 208mm] }', read: triangle },
  { key: 'acute', companions: ['read-at'], example: '{ acute: 62deg, read-at: heel }', read: acute },
];

function measured(rad: Radians, wrote: string): Angle {
  return { rad, wrote, unit: 'deg', byName: true };
}

type At = (key: string) => Spot;

function offSquare(desk: Desk, at: At): Angle | undefined {
  const spot = at('off-square');
  const lean = angleAt(desk, spot);
  if (lean === undefined) return undefined;
  const angle = measured(angleOffSquare(lean.rad), `${angleAsWritten(lean)} off square`);
  if (Math.abs(degrees(lean.rad)) < 90 - 1e-9) return angle;
  const why = 'a tube that leans by 90 degrees from square runs along the header';
  return complain(desk, spot, 'angle-range', why, 'a lean between -90 and 90 degrees, such as 28deg');
}

function riseAndRun(desk: Desk, at: At): Angle | undefined {
  const rise = lengthAt(desk, at('rise'), 'positive');
  const run = lengthAt(desk, at('run'), 'any');
  if (!rise || !run) return undefined;
  const angle = measured(
    angleOfRise(rise.mm, run.mm),
    `rise ${lengthAsWritten(rise)}, run ${lengthAsWritten(run)}`,
  );
  return inJointRange(desk, at('rise'), angle);
}

function triangle(desk: Desk, at: At): Angle | undefined {
  const spot = at('triangle');
  const spots = itemsOf(desk, spot, THREE_SIDES);
  if (spots === undefined) return undefined;
  if (spots.length !== 3) {
    const why = `it has three sides, and there ${spots.length === 1 ? 'is 1' : `are ${spots.length}`}`;
    return complain(desk, spot, 'triangle', why, THREE_SIDES);
  }
  const sides = spots.map((side) => lengthAt(desk, { ...side, key: spot.key }, 'positive'));
  const [tube, header, marks] = sides;
  if (!tube || !header || !marks) return undefined;
  const rad = angleOfTriangle(tube.mm, header.mm, marks.mm);
  if (rad === undefined) return noTriangle(desk, spot, tube, header, marks);
  const words = `triangle ${lengthAsWritten(tube)}, ${lengthAsWritten(header)}, ${lengthAsWritten(marks)}`;
  return inJointRange(desk, spot, measured(rad, words));
}

const THREE_SIDES =
  'three lengths: along the tube and along the header from where their centre lines cross, and between the marks';

function noTriangle(desk: Desk, spot: Spot, tube: Length, header: Length, marks: Length): undefined {
  const far = marks.mm >= tube.mm + header.mm;
  const bound = far ? 'not less than the two other sides together' : 'not more than the two others differ by';
  const why = `${lengthAsWritten(marks)} between the marks is ${bound}`;
  return complain(desk, spot, 'triangle', why, THREE_SIDES);
}

function acute(desk: Desk, at: At): Angle | undefined {
  const spot = at('acute');
  const angle = angleAt(desk, spot);
  const side = choiceAt(desk, at('read-at'), ['heel', 'toe']);
  if (!angle || !side) return undefined;
  const size = degrees(angle.rad);
  if (!(size > 1e-9 && size <= 90 + 1e-9)) {
    const why = 'an acute angle is over 0 and not over 90 degrees';
    return complain(desk, spot, 'angle-range', why, 'the acute angle, such as 62deg');
  }
  const rad = side === 'heel' ? angle.rad : Math.PI - angle.rad;
  return measured(rad, `${angleAsWritten(angle)} acute, read at the ${side}`);
}
