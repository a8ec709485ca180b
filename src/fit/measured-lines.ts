import type { EndName, Header, Part } from '../job/job.ts';
import { tubeFactsOf, unitsOfTube } from '../job/sections.ts';
import type { Said } from '../measure/said.ts';
import type { Length } from '../measure/units.ts';
import { lengthsInWords } from '../saddle/readings-told.ts';
import type { TubeSolution } from '../saddle/solve.ts';
import type { Language } from '../words/language.ts';

/** Each value that was measured in another way than as itself: what was read, and what it came to. */
export function measuredLines({ tube, readings }: TubeSolution, words: Language): readonly Said[] {
  const { check } = words;
  const { section, ends } = tube;
  const { lengths } = tubeFactsOf(section);
  return [
    ...Object.entries(lengths).flatMap(([key, { readings: read = [] }]) =>
      read.map((reading) => check.reading(key, reading)),
    ),
    ...lengthsInWords(readings, unitsOfTube(tube), words).map((reading) => check.reading('between', reading)),
    ...(['A', 'B'] as const).flatMap((name) => {
      const end = ends[name];
      return end?.kind === 'coped' ? end.parts.flatMap((part) => ofPart(name, part, check)) : [];
    }),
  ];
}

function ofPart(
  name: EndName,
  { onto, angle, clock, offset }: Part,
  check: Language['check'],
): readonly Said[] {
  const values = { onto: diameterOf(onto), angle, clock, offset };
  return (['onto', 'angle', 'clock', 'offset'] as const).flatMap((key) =>
    (values[key]?.readings ?? []).map((reading) => check.endReading(name, key, reading)),
  );
}

function diameterOf(onto: Header): Length | undefined {
  return onto.kind === 'round' || onto.kind === 'bend' ? onto.od : undefined;
}
