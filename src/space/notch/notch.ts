import type { Mm, Radians } from '../../measure/units.ts';
import { exactCosine } from '../round.ts';

/** What lies behind a cope that exists: a round tube that was cut to a round header, on the outside line. */
export interface Notch {
  readonly angle: Radians;
  readonly clock: Radians;
  readonly offset: Mm;
  /** The header's radius. */
  readonly radius: Mm;
}

/**
 * A notch by numbers of about 1 each, in which its outside line is smooth as far as the tube is met all round: `ahead` and
 * `behind` are the square roots of how far the header reaches beyond the tube at clock + 90 and clock - 90 degrees, by the
 * tube's radius; negative where it falls short of it. As the square root of a length a line runs off beside a header, so in
 * these it does not.
 */
export interface Rooted {
  readonly angle: Radians;
  readonly clock: Radians;
  readonly ahead: number;
  readonly behind: number;
}

/** x |x|: the square that keeps its sign. */
export function signedSquare(root: number): number {
  return root * Math.abs(root);
}

export function signedRoot(square: number): number {
  return Math.sign(square) * Math.sqrt(Math.abs(square));
}

export function notchOf({ angle, clock, ahead, behind }: Rooted, tubeRadius: Mm): Notch {
  const [over, under] = [signedSquare(ahead), signedSquare(behind)];
  return {
    angle,
    clock,
    offset: (tubeRadius * (over - under)) / 2,
    radius: tubeRadius * (1 + (over + under) / 2),
  };
}

export function rootedOf({ angle, clock, offset, radius }: Notch, tubeRadius: Mm): Rooted {
  return {
    angle,
    clock,
    ahead: signedRoot((radius + offset) / tubeRadius - 1),
    behind: signedRoot((radius - offset) / tubeRadius - 1),
  };
}

/** How a setback hangs on a notch: on its angle and clock, and on the squares of `ahead` and `behind`. */
export interface Slopes {
  readonly angle: number;
  readonly clock: number;
  readonly over: number;
  readonly under: number;
}

/**
 * The setback of the outside line at a station, by the tube's radius, and its slopes. Where the header is missed it is that of the
 * plane through the header's axis.
 */
export function notchSetback(
  { angle, clock, ahead, behind }: Rooted,
  station: Radians,
): { readonly setback: number; readonly slopes: Slopes } {
  const [sin, cos] = [Math.sin(angle), exactCosine(angle)];
  const turn = station - clock;
  const [x, quarter] = [Math.cos(turn), Math.PI / 4 - turn / 2];
  // How far the header's edges are to either side of this line of the tube; 1 - y and 1 + y, without what the difference would lose.
  const right = 2 * Math.sin(quarter) ** 2 + signedSquare(ahead);
  const left = 2 * Math.cos(quarter) ** 2 + signedSquare(behind);
  const half = Math.sqrt(Math.max(0, right * left));
  const by = half > 0 ? 1 / (2 * half * sin) : 0;
  return {
    setback: (x * cos + half) / sin,
    slopes: {
      angle: -(x + half * cos) / (sin * sin),
      clock: (Math.sin(turn) * cos) / sin - x * (right - left) * by,
      over: left * by,
      under: right * by,
    },
  };
}
