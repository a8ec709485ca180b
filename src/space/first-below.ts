import type { Mm } from '../measure/units.ts';
import type { OverFace } from './end-face.ts';
import type { Landing } from './landing.ts';

/** A line of the wall of what lands on the header, at each height the header's own end. */
export interface LineDown {
  standing(z: Mm): OverFace;
  /** Under which of those that are convex it was cut away there. */
  under(z: Mm, among?: readonly Landing[]): readonly Landing[];
}

/** Where the header stands first and, where that is beyond a step of its end face, what stands at the last place before the step. */
export interface Found {
  readonly z: Mm;
  readonly before?: OverFace;
}

const LOOKS = 16;

/**
 * The first place on the way down from `top`, where nothing stands, to `bottom` at which the header stands: undefined where it
 * nowhere does above `above`. Its end face has edges and steps, beside which what stands may be as thin as it likes, and these are
 * found first.
 */
export function firstBelow({ standing, under }: LineDown, top: Mm, bottom: Mm, above: Mm): Found | undefined {
  const at = (look: number): Mm => top + ((bottom - top) * look) / LOOKS;
  let before: OverFace | undefined;
  for (let [look, from] = [0, top]; look < LOOKS && from > above; ) {
    const away = awayUntil(under, at, look);
    if (away > look) {
      [look, from, before] = [away, at(away), undefined];
      continue;
    }
    const to = at(++look);
    before ??= standing(from);
    const after = standing(to);
    for (let edge = 0; edge < LOOKS && before.face.patch !== after.face.patch; edge++) {
      const [near, far] = edgeBetween(standing, from, to, before.face.patch);
      const last = standing(near);
      if (last.above >= 0) return { z: rootBetween(standing, from, near) };
      [from, before] = [far, standing(far)];
      if (before.above >= 0) return { z: far, before: last };
    }
    if (after.above >= 0) return { z: rootBetween(standing, from, to) };
    [from, before] = [to, after];
  }
  return undefined;
}

/** The last look such that from this one on all was cut away by what is convex. */
function awayUntil(under: LineDown['under'], at: (look: number) => Mm, look: number): number {
  const over = under(at(look));
  if (over.length === 0) return look;
  let [away, further] = [look, LOOKS + 1];
  while (further - away > 1) {
    const middle = away === look ? away + 1 : Math.floor((away + further) / 2);
    if (under(at(middle), over).length > 0) away = middle;
    else further = middle;
  }
  return away;
}

/** Where the end face goes over to another patch: the last place on this one and the first beyond. */
function edgeBetween(
  standing: (z: Mm) => OverFace,
  from: Mm,
  to: Mm,
  patch: number,
): readonly [near: Mm, far: Mm] {
  let [near, far] = [from, to];
  while (Math.abs(far - near) > SHARP) {
    const middle = (near + far) / 2;
    // A line that runs all but along the header is so long that numbers lie farther apart than that.
    if (middle === near || middle === far) break;
    if (standing(middle).face.patch === patch) near = middle;
    else far = middle;
  }
  return [near, far];
}

const SHARP: Mm = 1e-11;

/** Regula falsi (Illinois), which is done at once where the face is a plane. */
function rootBetween(standing: (z: Mm) => OverFace, from: Mm, to: Mm): Mm {
  let [low, high] = [from, to];
  let [atLow, atHigh] = [standing(low).above, standing(high).above];
  for (let round = 0; round < 100 && Math.abs(high - low) > SHARP; round++) {
    const at = low + ((high - low) * atLow) / (atLow - atHigh);
    const here = standing(at).above;
    if (Math.abs(here) < 1e-12) return at;
    if (here >= 0) {
      [high, atHigh] = [at, here];
      atLow /= 2;
    } else {
      [low, atLow] = [at, here];
      atHigh /= 2;
    }
  }
  return high;
}
