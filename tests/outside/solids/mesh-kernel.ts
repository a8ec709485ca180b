import loadModule, { type Manifold, type ManifoldToplevel } from 'manifold-3d';
import type { HeaderFrame, Point } from './implicit-solids.ts';

/** The mesh kernel (manifold, Apache-2.0) as far as a joint needs it: bars of n flats each, inscribed. Lengths in mm. */
export interface MeshKernel {
  /** A bar along z from `low` to `high`. */
  uprightBar(radius: number, low: number, high: number, flats: number): Manifold;
  /** A bar along a header's axis, this long, half on each side of the foot of the offset. */
  headerBar(frame: HeaderFrame, radius: number, length: number, flats: number): Manifold;
}

export async function loadMeshKernel(): Promise<MeshKernel> {
  const module = await loadModule();
  module.setup();
  return {
    uprightBar: (radius, low, high, flats) =>
      module.Manifold.cylinder(high - low, radius, radius, flats).translate(0, 0, low),
    headerBar: (frame, radius, length, flats) => headerBar(module, frame, radius, length, flats),
  };
}

function headerBar(
  { Manifold }: ManifoldToplevel,
  { origin, along, aside, up }: HeaderFrame,
  radius: number,
  length: number,
  flats: number,
): Manifold {
  const rightHanded = determinant(aside, up, along) > 0 ? aside : negative(aside);
  return Manifold.cylinder(length, radius, radius, flats, true).transform([
    ...rightHanded,
    0,
    ...up,
    0,
    ...along,
    0,
    ...origin,
    1,
  ]);
}

function determinant(a: Point, b: Point, c: Point): number {
  return (
    a[0] * (b[1] * c[2] - b[2] * c[1]) -
    a[1] * (b[0] * c[2] - b[2] * c[0]) +
    a[2] * (b[0] * c[1] - b[1] * c[0])
  );
}

function negative(a: Point): Point {
  return [-a[0], -a[1], -a[2]];
}
