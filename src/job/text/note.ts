import { isMap, isSeq } from 'yaml';
import type { Job, NoteLine, TicketNote } from '../job.ts';
import { complain, type Spot } from './desk.ts';
import { itemsOf } from './fields.ts';
import { namedSpots } from './named-spots.ts';
import { oneLine, wordsAt } from './values.ts';

/** As long as any value of a job may be. */
const LONGEST = 200;
/** As many as any list of a job may have. */
const MOST_LINES = 2000;

/**
 * What a person wrote for a tube's ticket: one line, or a list of lines; `name: words` sets off what a line is about, and further names
 * beside it are lines that hang under it.
 */
export function readNote(spot: Spot | undefined): TicketNote | undefined {
  if (spot === undefined || spot.misread) return undefined;
  const items = isSeq(spot.node) ? (itemsOf(spot, spot.desk.words.job.values.note) ?? []) : [spot];
  const groups = items.map((item) => linesAt({ ...item, key: spot.key }));
  const count = groups.reduce((sum, lines) => sum + lines.length, 0);
  const { tooManyItems } = spot.desk.words.job.text;
  if (count > MOST_LINES) return complain(spot, 'too-many', tooManyItems(count, MOST_LINES));
  const read = groups.flatMap(([first, ...others]) => (first ? [[first, ...others] as const] : []));
  return read.length > 0 ? read : undefined;
}

/** All of a job that its sheets print as the person wrote it, one after the other. */
export function ownWordsOf({ title = '', tubes }: Job): string {
  const ofTubes = tubes.flatMap(({ name, note = [] }) => [
    name,
    ...note.flat().flatMap(({ of = '', says }) => [of, says]),
  ]);
  return [title, ...ofTubes].join('');
}

function linesAt(spot: Spot): readonly NoteLine[] {
  if (!isMap(spot.node)) {
    const says = wordsAt(spot, LONGEST);
    return says === undefined ? [] : [{ says }];
  }
  return namedSpots(spot, (written) => written.trim()).flatMap(({ name, spot: line }): NoteLine[] => {
    const [of, says] = [oneLine(line, name, LONGEST), wordsAt(line, LONGEST)];
    return of === undefined || says === undefined ? [] : [{ of, says }];
  });
}
