/** A direction or a place in space: in the frame of an end x towards the clock, y square to it (clock + 90), z the setback. */
export type Vector = readonly [x: number, y: number, z: number];

export function dot(a: Vector, b: Vector): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

export function crossProduct(a: Vector, b: Vector): Vector {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

/** The first, and so many times the second. */
export function plusTimes(a: Vector, times: number, b: Vector): Vector {
  return [a[0] + times * b[0], a[1] + times * b[1], a[2] + times * b[2]];
}

/** So many times the first, and so many times the second. */
export function timesPlusTimes(x: number, a: Vector, y: number, b: Vector): Vector {
  return [x * a[0] + y * b[0], x * a[1] + y * b[1], x * a[2] + y * b[2]];
}

/** The way from the first place to the second. */
export function wayTo(from: Vector, to: Vector): Vector {
  return plusTimes(to, -1, from);
}

/** How far along a line through a place a point lies, and the way to it from there, square to the line. `axis` has length 1. */
export function byLine(
  from: Vector,
  axis: Vector,
  point: Vector,
): { readonly along: number; readonly off: Vector } {
  const along = dot(wayTo(from, point), axis);
  return { along, off: wayTo(plusTimes(from, along, axis), point) };
}

/** How far along each of two lines that are not parallel the foot of their common perpendicular lies. Axes have length 1. */
export function nearestFeet(
  a: { readonly from: Vector; readonly axis: Vector },
  b: { readonly from: Vector; readonly axis: Vector },
): readonly [onA: number, onB: number] {
  const gap = wayTo(a.from, b.from);
  const across = dot(a.axis, b.axis);
  const [alongA, alongB] = [dot(gap, a.axis), dot(gap, b.axis)];
  const square = 1 - across * across;
  return [(alongA - across * alongB) / square, (across * alongA - alongB) / square];
}

export function scaledBy(a: Vector, by: number): Vector {
  return [a[0] * by, a[1] * by, a[2] * by];
}

export function norm(a: Vector): number {
  // Not Math.hypot, whose last bits differ between engines: the page prints what the command prints.
  return Math.sqrt(dot(a, a));
}

/** Of length 1; undefined where it has none to speak of. */
export function unitOf(a: Vector): Vector | undefined {
  const size = norm(a);
  return size > 1e-12 ? scaledBy(a, 1 / size) : undefined;
}

/** What of a direction is square to another, of length 1; undefined where it is parallel to it. */
export function squareTo(axis: Vector, direction: Vector): Vector | undefined {
  const left = plusTimes(direction, -dot(direction, axis), axis);
  return norm(left) > 1e-9 * norm(direction) ? unitOf(left) : undefined;
}
