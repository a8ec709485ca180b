/** Joints of round tube on round header, drawn at random from a seed, so that a failure can be drawn again. */
export interface RandomJoint {
  /** The tube's outside radius. */
  readonly tube: number;
  readonly wall: number;
  /** The header's outside radius. */
  readonly header: number;
  readonly angle: number;
  readonly clock: number;
  readonly offset: number;
}

export type Random = () => number;

/** The seed of this run: JOINT_SEED of the environment, else a fixed one, so that two runs say the same. */
export const SEED = Number(process.env.JOINT_SEED ?? 20_240_611);

/** Numbers from 0 to 1 (Mulberry32, a 32 bit generator in the public domain). */
export function randomFrom(seed: number): Random {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

export function between(random: Random, low: number, high: number): number {
  return low + (high - low) * random();
}

/** What a draw may hold: how it mixes is told by the tests, for each kind has its own trouble. */
export type JointKind = 'plain' | 'offset' | 'equal' | 'nearly-equal' | 'wider' | 'thick' | 'limit';

export const JOINT_KINDS: readonly JointKind[] = [
  'plain',
  'offset',
  'equal',
  'nearly-equal',
  'wider',
  'thick',
  'limit',
];

/**
 * One joint of a kind. Header radii run from 8 to 120 mm, angles from 15 to 165 degrees; `plain` has a larger header
 * and a small offset, `offset` may miss in part, `wider` has the tube larger than the header, `thick` has a wall of
 * up to nine tenths of the radius, on the `limit` the tube's side comes within 1e-1 to 1e-9 mm of the header's, to
 * either side.
 */
export function randomJoint(random: Random, kind: JointKind): RandomJoint {
  const header = between(random, 8, 120);
  const tube = tubeRadius(random, kind, header);
  const thick = kind === 'thick' ? between(random, 0.3, 0.9) : between(random, 0.03, 0.25);
  return {
    tube,
    wall: tube * thick,
    header,
    angle: (between(random, 15, 165) * Math.PI) / 180,
    clock: between(random, 0, 2 * Math.PI),
    offset: offsetFor(random, kind, header, tube),
  };
}

function offsetFor(random: Random, kind: JointKind, header: number, tube: number): number {
  const side = random() < 0.5 ? -1 : 1;
  if (kind === 'equal' || kind === 'nearly-equal') return 0;
  if (kind === 'plain') return side * random() * Math.max(0, header - tube);
  if (kind === 'limit')
    return side * (header - tube + (random() < 0.5 ? -1 : 1) * 10 ** between(random, -9, -1));
  return side * random() * 0.98 * (header + tube);
}

function tubeRadius(random: Random, kind: JointKind, header: number): number {
  if (kind === 'equal') return header;
  if (kind === 'nearly-equal') return header - 1e-7;
  if (kind === 'wider') return header * between(random, 1.01, 3);
  return header * between(random, 0.15, 0.98);
}

/** A joint in words that can be pasted into a test. */
export function spell(joint: RandomJoint): string {
  return JSON.stringify(joint);
}
