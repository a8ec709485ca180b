import type { Length, Mm } from '../measure/units.ts';
import { isMetric } from '../measure/write.ts';
import type { TubeSection } from './job.ts';
import type { TubeFacts, TubeSize } from './section.ts';
import { readRectangularTube, rectangularTubeFacts } from './sections/rectangular.ts';
import { readPipeTube, readRoundTube, roundTubeFacts } from './sections/round.ts';
import { complain, type Spot } from './text/desk.ts';
import type { Fields } from './text/fields.ts';
import { missing } from './text/values.ts';
import { readWall } from './wall.ts';

/** How each kind of tube is read, by the key that says its size, and with where its wall is given. */
const SECTIONS: Readonly<Record<string, (spot: Spot, wall: Spot | undefined) => TubeSize>> = {
  section: readRectangularTube,
  od: readRoundTube,
  pipe: readPipeTube,
};

/** The tube's size, by the one key that says it, and its wall. */
export function readSize(fields: Fields): TubeSize {
  const [kind, another] = Object.keys(SECTIONS).filter((key) => fields.has(key));
  const spot = fields.get(kind ?? '');
  const wall = fields.get('wall');
  const { words, say } = fields.desk;
  if (kind === undefined || !spot) {
    const section = missing(fields.spot, 'od', words.tubes.noSize(say.setting('pipe', 'NPS 1-1/2')));
    return { section, wall: readWall(wall, undefined) };
  }
  if (another === undefined) return SECTIONS[kind]?.(spot, wall) ?? UNCLEAR;
  complain(fields.at(another), 'size-twice', words.tubes.sizeTwice(say.key(kind)));
  return UNCLEAR;
}

const UNCLEAR: TubeSize = { section: undefined, wall: 'unclear' };

/** What is asked of a tube's section, by its kind. */
export function tubeFactsOf(section: TubeSection): TubeFacts {
  switch (section.kind) {
    case 'round':
      return roundTubeFacts(section);
    case 'rectangular':
      return rectangularTubeFacts(section);
  }
}

/** Whether a tube's wall is all of it: a round bar has no inside. */
export function isSolid({
  section,
  wall,
}: {
  readonly section: TubeSection;
  readonly wall?: Length;
}): boolean {
  const { radius } = tubeFactsOf(section);
  return radius !== undefined && wall !== undefined && wall.mm >= radius - 1e-9;
}

/** What a tape reads round a tube over its girth, where its diameter was read by one: it bends about its middle. */
export function tapeRound(section: TubeSection): Mm {
  return Math.PI * (tubeFactsOf(section).across.tape ?? 0);
}

/** The unit in which a tube's computed lengths are told: the one of those two that its size was written in or near. */
export function unitsOfTube({ section }: { readonly section: TubeSection }): 'mm' | 'in' {
  return isMetric(tubeFactsOf(section).across.unit) ? 'mm' : 'in';
}
