import { isScalar, isSeq } from 'yaml';
import { complain, type Spot } from '../job/text/desk.ts';
import { itemsOf, notA, wordOf } from '../job/text/fields.ts';
import { lengthAt } from '../job/text/values.ts';
import { unitOf, type Vector } from '../space/vector.ts';

/** x to the right, y away from the person who looks at the frame, z up. */
const WAYS: ReadonlyMap<string, Vector> = new Map([
  ['right', [1, 0, 0]],
  ['left', [-1, 0, 0]],
  ['back', [0, 1, 0]],
  ['front', [0, -1, 0]],
  ['up', [0, 0, 1]],
  ['down', [0, 0, -1]],
  ['x', [1, 0, 0]],
  ['y', [0, 1, 0]],
  ['z', [0, 0, 1]],
]);

/** A way in space, of length 1: a word for it, or three numbers. */
export function directionAt(spot: Spot | undefined): Vector | undefined {
  if (spot === undefined) return undefined;
  const { frame } = spot.desk.words.job;
  if (isSeq(spot.node)) {
    const place = placeAt(spot);
    return place && (unitOf(place) ?? complain(spot, 'way', frame.noWay));
  }
  if (!isScalar(spot.node)) return notA(spot, frame.aWay);
  return WAYS.get(wordOf(spot) ?? '') ?? complain(spot, 'way', frame.noWay);
}

/** A place, or a way from one, by its three lengths. */
export function placeAt(spot: Spot): Vector | undefined {
  const { frame } = spot.desk.words.job;
  const items = itemsOf(spot, frame.aPlace);
  if (items === undefined) return undefined;
  if (items.length !== 3) {
    return complain(spot, 'point', items.length > 3 ? frame.tooManyNumbers : frame.tooFewNumbers);
  }
  const [x, y, z] = items.map((item) => lengthAt({ ...item, key: spot.key }, 'any'));
  return x && y && z && [x.mm, y.mm, z.mm];
}
