import type { Part } from '../../job/job.ts';
import { complain } from '../../job/text/desk.ts';
import { degrees } from '../../measure/units.ts';
import { crossProduct, dot, norm, squareTo, type Vector } from '../../space/vector.ts';
import { asWritten } from '../../words/said.ts';
import { angleOf, lengthOf } from '../meeting.ts';
import type { Node } from '../nodes.ts';
import { isSameOutside } from '../outside.ts';
import { stationAngle } from '../places.ts';
import { askedEnd, bodyOf, type StoodEnd } from '../stood.ts';
import { type CutEnd, endOf, LEAST } from './cut-end.ts';

/** The least that two bodies make which are mitred without being asked. */
const SHARPEST = Math.cos(Math.PI / 3);

/** The end with which this one is mitred, if it is. */
export function partnerOf({ passing, ending }: Node, own: StoodEnd): StoodEnd | undefined {
  const [first, second] = ending;
  if (!first || !second || passing.length > 0) return undefined;
  const isOwn = (end: StoodEnd): boolean => end.tube === own.tube && end.end === own.end;
  if (!isOwn(first) && !isOwn(second)) return undefined;
  const asks = [first, second].map((end) => askedEnd(end).cut);
  const found = asks.flatMap((cut) => (cut.kind === 'found' ? [cut.mitre] : []));
  if (found.length < 2 || found.includes(false)) return undefined;
  const told =
    first.tube.asked.through || second.tube.asked.after.some(({ name }) => name === first.tube.name);
  const isWide = dot(bodyOf(first), bodyOf(second)) <= SHARPEST + 1e-12;
  const isAsked = found.includes(true);
  if (!isSameOutside(first, second) || (!isAsked && (told || !isWide))) return undefined;
  return isOwn(first) ? second : first;
}

export function mitred(own: StoodEnd, other: StoodEnd): CutEnd | undefined {
  const [body, its] = [bodyOf(own), bodyOf(other)];
  const between = Math.atan2(norm(crossProduct(body, its)), dot(body, its));
  const u = squareTo(own.tube.axis, its) ?? own.tube.spine;
  const { bareUnit } = askedEnd(own).spot.desk;
  const part: Part = {
    onto: { kind: 'mitre', turn: angleOf(Math.PI - between) },
    angle: angleOf(between / 2),
    clock: angleOf(clockTo(own, u)),
    offset: lengthOf(0, bareUnit),
    shift: lengthOf(0, bareUnit),
  };
  return endOf(own, [part], [other.tube], 0);
}

export function flat(own: StoodEnd, normal: Vector): CutEnd | undefined {
  const { spot } = askedEnd(own);
  const { words, bareUnit } = spot.desk;
  const body = bodyOf(own);
  const angle = Math.asin(Math.min(1, Math.abs(dot(normal, body))));
  if (angle < LEAST)
    return complain(
      spot,
      'flat',
      words.job.frame.flatAlong(asWritten(own.tube.name), degrees(angle), acrossAxis(body)),
    );
  // The plane's steepest line, towards the body.
  const steep = squareTo(normal, body);
  const u = steep && squareTo(own.tube.axis, steep);
  const part: Part = {
    onto: { kind: 'plate' },
    angle: angleOf(u ? angle : Math.PI / 2),
    clock: angleOf(u ? clockTo(own, u) : 0),
    offset: lengthOf(0, bareUnit),
    shift: lengthOf(0, bareUnit),
  };
  return endOf(own, [part], [], 0);
}

/** A station in [0, 360); a hair below a whole turn is none. */
function clockTo({ tube }: StoodEnd, u: Vector): number {
  const turned = stationAngle(tube.axis, tube.spine, u);
  return turned < -1e-9 ? turned + 2 * Math.PI : Math.max(0, turned);
}

/** The axis of space that a body nearly runs along, within 30 degrees, so that a plane square to it cuts the tube nearly square. */
function acrossAxis(body: Vector): 'x' | 'y' | 'z' | undefined {
  return (['x', 'y', 'z'] as const).find((_, i) => Math.abs(body[i] ?? 0) > Math.cos(Math.PI / 6));
}
