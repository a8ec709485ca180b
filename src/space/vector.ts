/** A direction or a place in the end's frame: x towards the clock, y square to it (clock + 90), z the setback. */
export type Vector = readonly [x: number, y: number, z: number];

export function dot(a: Vector, b: Vector): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}
