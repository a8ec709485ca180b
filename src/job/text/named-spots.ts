import { isMap, isScalar, isSeq } from 'yaml';
import { complain, complainOf, placeOf, type Spot } from './desk.ts';

/** A value of a map whose keys are names of the person's own. */
export interface NamedSpot {
  readonly name: string;
  readonly spot: Spot;
}

/** Takes such a map apart, complaining about keys that are no words or stand twice; `nameOf` says what a key as it is written is called. */
export function namedSpots(
  { desk, node, at, path }: Spot,
  nameOf: (written: string) => string,
): readonly NamedSpot[] {
  const { keyIsNoWord, keyTwice } = desk.words.job.text;
  const lines = new Map<string, number>();
  const items = isMap(node) ? node.items : [];
  return items.flatMap(({ key, value }): NamedSpot[] => {
    const begins = (isScalar(key) ? key.range?.[0] : undefined) ?? at;
    const written = isScalar(key) && typeof key.value === 'string' ? key.value : '';
    const name = nameOf(written);
    const own = isScalar(value) || isMap(value) || isSeq(value) ? value : null;
    const spot: Spot = { desk, path: `${path}.${name}`, key: written, node: own, at: begins, misread: false };
    if (name === '') return complainOf(desk, begins, { code: 'key', ...keyIsNoWord }) ?? [];
    const place = placeOf(desk.text.lines, begins);
    const before = lines.get(name);
    if (before !== undefined) return complain(spot, 'duplicate-key', keyTwice(name, before)) ?? [];
    lines.set(name, place.line);
    desk.places.set(spot.path, place);
    return [{ name, spot }];
  });
}
