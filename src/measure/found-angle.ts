import type { Mm, Radians } from './units.ts';

/** The angle of a tube that leans by this from square to its header: 90 degrees less it. */
export function angleOffSquare(lean: Radians): Radians {
  return Math.PI / 2 - lean;
}

/** The angle of a tube that rises so far from its header while it runs so far along it. */
export function angleOfRise(rise: Mm, run: Mm): Radians {
  return Math.atan2(rise, run);
}

/**
 * The angle between two sides of a triangle, from its three sides: the law of cosines as half-angles, which keeps its
 * digits in slim triangles. Undefined where no triangle has these sides.
 */
export function angleOfTriangle(first: Mm, second: Mm, across: Mm): Radians | undefined {
  const uneven = Math.abs(first - second);
  if (across >= first + second || across <= uneven) return undefined;
  const facing = (across - uneven) * (across + uneven);
  const beside = (first + second + across) * (first + second - across);
  return 2 * Math.atan2(Math.sqrt(facing), Math.sqrt(beside));
}
