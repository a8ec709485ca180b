import { isScalar } from 'yaml';
import { complain, isEmpty, type Spot } from '../job/text/desk.ts';
import { itemsOf, notA } from '../job/text/fields.ts';
import { nearest } from '../job/text/nearest.ts';
import { wordsAt } from '../job/text/values.ts';
import type { Said } from '../measure/said.ts';
import { asWritten } from '../words/said.ts';
import type { Named } from './asked.ts';

/** What stands after the name of an original in the name of its mirror image. */
const PRIME = "'";

export function primed(name: string): string {
  return `${name}${PRIME}`;
}

/** The name of a thing's mirror image, or of what it is one of; its own where there is neither. */
export function otherHalf(name: string, isThere: (name: string) => boolean): string {
  if (isThere(primed(name))) return primed(name);
  return isThere(unprimed(name)) ? unprimed(name) : name;
}

/** The name of what a mirror image is one of. */
export function unprimed(name: string): string {
  return name.endsWith(PRIME) ? name.slice(0, -PRIME.length) : name;
}

/** A name as it is compared: a typeset prime is a prime, and white space is one space. */
export function plainName(written: string): string {
  return written.normalize('NFC').replace(/[’′]/g, PRIME).replace(/\s+/g, ' ').trim();
}

/** The name that is written here; undefined where it can be none. */
export function nameAt(spot: Spot): Named | undefined {
  const written = wordsAt(spot);
  if (written === undefined) return undefined;
  if (written.includes(',')) return complain(spot, 'name', spot.desk.words.job.frame.commaInName);
  return { name: plainName(written), spot };
}

/** Names one by one, in a list or alone. */
export function namesAt(spot: Spot | undefined, wanted: Said): readonly Named[] {
  if (spot === undefined) return [];
  const spots = isScalar(spot.node) && !isEmpty(spot) ? [spot] : (itemsOf(spot, wanted) ?? []);
  if (spots.length === 0 && !isScalar(spot.node)) notA(spot, wanted);
  return spots.flatMap((each) => nameAt({ ...each, key: spot.key }) ?? []);
}

/** Complains of a name that nothing has, with the one that was probably meant. */
export function unknownName(
  { name, spot }: Named,
  kind: 'point' | 'tube',
  known: Iterable<string>,
): undefined {
  const meant = nearest(name, [...known]);
  const { frame } = spot.desk.words.job;
  return complain(spot, 'unknown-name', frame.unknown(asWritten(name), kind, meant));
}
