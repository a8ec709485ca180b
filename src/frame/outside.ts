import { dot, plusTimes, type Vector } from '../space/vector.ts';
import { bodyOf, type StoodEnd } from './stood.ts';

const SAME = 1e-6;

/** Whether two ends at one point have one outside: of rectangular tube, each section the other's image in the plane that halves their bodies. */
export function isSameOutside(one: StoodEnd, other: StoodEnd): boolean {
  const [a, b] = [one.tube.asked.section, other.tube.asked.section];
  if (a.kind === 'round' || b.kind === 'round') {
    return a.kind === 'round' && b.kind === 'round' && Math.abs(a.od.mm - b.od.mm) < SAME;
  }
  const sizes = [
    [a.wide.mm, b.wide.mm],
    [a.deep.mm, b.deep.mm],
    [a.corner.mm, b.corner.mm],
  ];
  const image = imageOf(one.tube.spine, one, other);
  const along = Math.abs(dot(image, other.tube.spine));
  const isSquare = Math.abs(a.wide.mm - a.deep.mm) < SAME;
  return (
    sizes.every(([own = 0, its = 0]) => Math.abs(own - its) < SAME) &&
    (along > 1 - SAME || (isSquare && along < SAME))
  );
}

/** A way in the plane that halves two bodies, as a mirror. */
function imageOf(way: Vector, one: StoodEnd, other: StoodEnd): Vector {
  const normal = plusTimes(bodyOf(one), -1, bodyOf(other));
  const square = dot(normal, normal);
  return square < SAME * SAME ? way : plusTimes(way, (-2 * dot(way, normal)) / square, normal);
}
