import type { Mm } from '../measure/units.ts';

export type MeshPlace = readonly [x: Mm, y: Mm, z: Mm];

/** Triangles: nine numbers each, corner by corner. */
export type Mesh = readonly number[];

/** The surface between two lines of as many points. */
export function meshStrip(one: readonly MeshPlace[], other: readonly MeshPlace[]): Mesh {
  return one.slice(1).flatMap((c, i) => {
    const [a, b, d] = [one[i], other[i], other[i + 1]];
    return a && b && d ? [...a, ...c, ...b, ...b, ...c, ...d] : [];
  });
}

/** The surface through rings of as many points each, one after the other. */
export function tubeOf(rings: readonly (readonly MeshPlace[])[]): Mesh {
  return rings.slice(1).flatMap((ring, i) => meshStrip(rings[i] ?? ring, ring));
}
