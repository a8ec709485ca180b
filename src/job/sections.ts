import type { Length, Mm } from '../measure/units.ts';
import { isMetric } from '../measure/write.ts';
import type { TubeSection } from './job.ts';
import type { TubeFacts, TubeSize } from './section.ts';
import { readRectangularTube, rectangularTubeFacts } from './sections/rectangular.ts';
import { readPipeTube, readRoundTube, roundTubeFacts } from './sections/round.ts';
import type { Desk, Spot } from './text/desk.ts';

/** How each kind of tube is read, by the key that says its size, and with where its wall is given. */
export const SECTIONS: Readonly<
  Record<string, (desk: Desk, spot: Spot, wall: Spot | undefined) => TubeSize>
> = {
  section: readRectangularTube,
  od: readRoundTube,
  pipe: readPipeTube,
};

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
