import { descended, type Fit, type NotchSearch } from './descent.ts';
import { type Notch, notchOf, rootedOf } from './notch.ts';

/** How near the bound has to be found, as a share of it. */
const NEAR = 0.02;
const MOST_TRIES = 14;
const ROUNDS = 15;
/** The first step: of an angle in radians, of a size by the tube's radius. */
const FIRST = 2e-3;
/** So far off, in radii of the tube, a size is not known at all. */
const ENDLESS = 40;

/**
 * How far one value can be off to one side until the best that all others can make of it leaves a sum of squares over `limit`: the
 * bound of its profile likelihood, which holds where the lengths hang on a value crookedly as a covariance does not. Infinity where
 * nothing bounds it.
 */
export function profileBound(
  search: NotchSearch,
  best: Fit,
  name: keyof Notch,
  side: 1 | -1,
  limit: number,
): number {
  const { tubeRadius, given } = search;
  const found = notchOf(best.rooted, tubeRadius);
  const most = mostOf(found, name, side, tubeRadius);
  const isSize = name === 'offset' || name === 'radius';
  let fit = best;
  let [within, beyond] = [0, Number.POSITIVE_INFINITY];
  let step = Math.min(FIRST * (isSize ? tubeRadius : 1), most);
  for (let i = 0; i < MOST_TRIES; i++) {
    const fixed = { [name]: found[name] + side * step };
    const from = rootedOf({ ...notchOf(fit.rooted, tubeRadius), ...fixed }, tubeRadius);
    fit = descended({ ...search, given: { ...given, ...fixed } }, from, ROUNDS);
    const share = Math.sqrt(Math.max(0, fit.error - best.error) / (limit - best.error));
    if (Math.abs(share - 1) < NEAR) return step;
    if (share < 1 && step >= most) return Number.POSITIVE_INFINITY;
    [within, beyond] = share < 1 ? [step, beyond] : [within, step];
    step = nextStep(step, share, within, beyond, most);
  }
  return step;
}

/** The share grows about as the step does; where that leads out of what is known, halfway. */
function nextStep(step: number, share: number, within: number, beyond: number, most: number): number {
  const aim = Math.min(share > 0 ? step / share : Number.POSITIVE_INFINITY, step * 8, most);
  if (aim > within && aim < beyond) return aim;
  return beyond === Number.POSITIVE_INFINITY ? Math.min(within * 4, most) : (within + beyond) / 2;
}

/** How far a value can go at all. */
function mostOf({ angle, radius }: Notch, name: keyof Notch, side: 1 | -1, tubeRadius: number): number {
  const room = {
    angle: (side > 0 ? Math.PI - angle : angle) - FIRST,
    clock: Math.PI,
    offset: ENDLESS * tubeRadius,
    radius: side > 0 ? ENDLESS * tubeRadius : radius * 0.9,
  };
  return Math.max(room[name], 0);
}

/** The 97.5 % point of Student's t by Cornish and Fisher's expansion (Abramowitz and Stegun, 26.7.5): within 0.03 from 3 degrees of freedom up. */
export function studentAt95(free: number): number {
  const z = 1.959964;
  const [z3, z5, z7] = [z ** 3, z ** 5, z ** 7];
  return (
    z +
    (z3 + z) / (4 * free) +
    (5 * z5 + 16 * z3 + 3 * z) / (96 * free ** 2) +
    (3 * z7 + 19 * z5 + 17 * z3 - 15 * z) / (384 * free ** 3)
  );
}
