import type { Mesh } from '../space/mesh.ts';
import { crossProduct, unitOf, type Vector, wayTo } from '../space/vector.ts';

const HEAD = 84;
const TRIANGLE = 50;

/** Finer than a tube is made, and coarse enough that what is one point is one. */
const GRID = 1e4;

/**
 * Closed surfaces as binary STL, in the unit that they are in: a head of 80 bytes, the number of triangles, then for each its normal,
 * its three corners and two bytes of nothing. Triangles that have come to nothing are left out.
 */
export function inkStl(surfaces: Iterable<Mesh>): Uint8Array<ArrayBuffer> {
  const chunks: Uint8Array[] = [];
  for (const surface of surfaces) chunks.push(trianglesOf(surface));
  const length = chunks.reduce((sum, chunk) => sum + chunk.length, HEAD);
  const bytes = new Uint8Array(length);
  bytes.set(new TextEncoder().encode('binary STL, millimetres'));
  new DataView(bytes.buffer).setUint32(80, (length - HEAD) / TRIANGLE, true);
  let at = HEAD;
  for (const chunk of chunks) {
    bytes.set(chunk, at);
    at += chunk.length;
  }
  return bytes;
}

function trianglesOf(surface: Mesh): Uint8Array {
  const bytes = new Uint8Array((surface.length / 9) * TRIANGLE);
  const view = new DataView(bytes.buffer);
  let at = 0;
  for (let i = 0; i < surface.length; i += 9) {
    const corners = surface.slice(i, i + 9).map((mm) => Math.fround(Math.round(mm * GRID) / GRID) + 0);
    if (isNothing(corners)) continue;
    for (const [place, value] of [...normalOf(corners), ...corners].entries())
      view.setFloat32(at + 4 * place, value, true);
    at += TRIANGLE;
  }
  return bytes.subarray(0, at);
}

/** Whether two of three corners are one. */
function isNothing(corners: readonly number[]): boolean {
  return [0, 3, 6].some((one) => {
    const other = (one + 3) % 9;
    return [0, 1, 2].every((axis) => corners[one + axis] === corners[other + axis]);
  });
}

/** Of length 1; nought where the corners lie on one line. */
function normalOf(corners: readonly number[]): Vector {
  const corner = (at: number): Vector => [corners[at] ?? 0, corners[at + 1] ?? 0, corners[at + 2] ?? 0];
  const [a, b, c] = [corner(0), corner(3), corner(6)];
  return unitOf(crossProduct(wayTo(a, b), wayTo(a, c))) ?? [0, 0, 0];
}
