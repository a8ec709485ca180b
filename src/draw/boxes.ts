import type { Mm } from '../measure/units.ts';
import type { Box, Point } from './drawing.ts';

/** A box's extent across, mm. */
export function across(box: Box): Mm {
  return box.right - box.left;
}

/** A box's extent up, mm. */
export function upright(box: Box): Mm {
  return box.top - box.bottom;
}

/** The box moved by `by`. */
export function moved(box: Box, by: Point): Box {
  return {
    left: box.left + by.x,
    bottom: box.bottom + by.y,
    right: box.right + by.x,
    top: box.top + by.y,
  };
}

/** The box with `by` mm more on every side. */
export function grown(box: Box, by: Mm): Box {
  return { left: box.left - by, bottom: box.bottom - by, right: box.right + by, top: box.top + by };
}

/** The box after quarter turns about the origin, counter-clockwise. */
export function turned(box: Box, turn: 0 | 1): Box {
  return turn === 0 ? box : { left: -box.top, bottom: box.left, right: -box.bottom, top: box.right };
}

/** Whether two boxes share more than an edge. */
export function overlapping(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.bottom < b.top && b.bottom < a.top;
}

/** Whether all of `inner` lies in `outer`, edges included. */
export function holds(outer: Box, inner: Box): boolean {
  return (
    outer.left <= inner.left &&
    outer.bottom <= inner.bottom &&
    outer.right >= inner.right &&
    outer.top >= inner.top
  );
}

/** Whether a point is in a box, or on its rim. */
export function isWithin({ x, y }: Point, { left, right, bottom, top }: Box): boolean {
  return x >= left && x <= right && y >= bottom && y <= top;
}

/** The smallest box round both. */
export function boxRoundBoth(a: Box, b: Box): Box {
  return {
    left: Math.min(a.left, b.left),
    bottom: Math.min(a.bottom, b.bottom),
    right: Math.max(a.right, b.right),
    top: Math.max(a.top, b.top),
  };
}

/** The box that points span: flat where they are in line; where there are none, one that joins any other without a trace. */
export function boundsOf(points: Iterable<Point>): Box {
  let [left, right] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  let [bottom, top] = [left, right];
  for (const { x, y } of points) {
    if (x < left) left = x;
    if (x > right) right = x;
    if (y < bottom) bottom = y;
    if (y > top) top = y;
  }
  return { left, bottom, right, top };
}
