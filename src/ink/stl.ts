import type { Mesh } from '../space/mesh.ts';

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
function normalOf([
  ax = 0,
  ay = 0,
  az = 0,
  bx = 0,
  by = 0,
  bz = 0,
  cx = 0,
  cy = 0,
  cz = 0,
]: readonly number[]) {
  const [ux, uy, uz, vx, vy, vz] = [bx - ax, by - ay, bz - az, cx - ax, cy - ay, cz - az];
  const [x, y, z] = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
  const length = Math.hypot(x, y, z) || 1;
  return [x / length, y / length, z / length];
}
