import type { Part } from './job.ts';
import { complain, type Spot } from './text/desk.ts';
import type { Fields } from './text/fields.ts';
import { choiceAt } from './text/values.ts';

/** Whether a tube or an end is cut to the flat of the box that it lands on: `to: flat`. */
export function toFlatAt(fields: Fields): true | undefined {
  return choiceAt(fields.get('to'), ['flat']) && true;
}

/** Only a box has a flat with corners beside it. */
export function isOntoBox(parts: readonly Part[]): boolean {
  return parts.some(({ onto }) => onto.kind === 'box');
}

/** Complains of an end that is to be cut to a flat and lands on no box. */
export function noFlat(spot: Spot): undefined {
  return complain(spot, 'no-flat', spot.desk.words.headers.noFlat(spot.desk.say.setting('to', 'flat')));
}
