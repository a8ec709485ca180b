import type { Part } from '../../job/job.ts';
import { landingOf } from '../../job/landing.ts';
import type { Mm } from '../../measure/units.ts';
import { entryOn, type Landing, whatCounts } from '../../space/landing.ts';
import { placeWithin } from '../../space/section.ts';
import type { Stood } from '../stood.ts';

const LOOKS = 720;

/** Which of these headers, each where it stands, the wall of a tube comes to: one that lies behind another is not met. */
export function metOf(tube: Stood, parts: readonly Part[]): readonly boolean[] {
  const landings = parts.map((part) => landingOf(part, 0, false));
  const { wall } = tube.asked;
  const thick = typeof wall === 'string' ? 0 : wall.mm;
  const met = parts.map(() => false);
  for (const depth of thick > 0 ? [0, thick / 2, thick] : [0]) {
    for (let look = 0; look < LOOKS; look++) {
      const { x, y } = placeWithin(tube.outline.at((look * tube.outline.turn) / LOOKS), depth);
      const first = firstMet(landings, x, y);
      if (first !== undefined) met[first] = true;
    }
    if (met.every(Boolean)) break;
  }
  return met;
}

function firstMet(landings: readonly Landing[], x: Mm, y: Mm): number | undefined {
  const first = whatCounts(landings, { x, y }, (landing, part, floor) => {
    const entry = entryOn(landing, x, y, floor);
    const setback = entry ? entry.z + landing.shift : Number.NEGATIVE_INFINITY;
    return { contact: entry !== undefined, setback, part };
  });
  return first?.contact ? first.part : undefined;
}
