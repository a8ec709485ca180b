import type { Length } from '../measure/units.ts';
import { type OwnTube, readEnd } from './end.ts';
import { isOntoBox, noFlat, toFlatAt } from './flat.ts';
import type { Ends, MeasuredBetween, Tube, TubeSection } from './job.ts';
import { withLengthMark } from './mark.ts';
import { complainOfIdleAsk, readEdgeAsk } from './preparation.ts';
import { rootAt } from './root.ts';
import { readSize } from './size.ts';
import { complain, type Desk, type Spot } from './text/desk.ts';
import { type Fields, fieldsOf } from './text/fields.ts';
import { readNote } from './text/note.ts';
import { copiesAt, lengthAt, missing, wordsAt, yesOrNoAt } from './text/values.ts';
import { betweenAt } from './ways/between.ts';
import { isMark } from './ways/clock.ts';

/** What the head of the file sets for every tube. */
export interface TubeDefaults {
  readonly pair: boolean;
  readonly copies: number;
}

/** Reads one tube; `position`, from 1, names it where it has no name. */
export function readTube(desk: Desk, spot: Spot, position: number, defaults: TubeDefaults): Tube | undefined {
  const fields = fieldsOf(desk, spot, 'tube');
  if (fields === undefined) return undefined;
  const name = wordsAt(desk, fields.get('name')) ?? desk.words.job.unnamed(position);
  const { section, wall } = readSize(desk, spot, fields);
  const between = readBetween(desk, fields, section);
  const allowance = lengthAt(desk, fields.get('allowance'), 'zero-or-more', 'allowance') ?? TEN_MM;
  const pair = yesOrNoAt(desk, fields.get('pair')) ?? defaults.pair;
  const copies = copiesAt(desk, fields.get('copies')) ?? defaults.copies;
  const root = rootAt(desk, fields.get('root'));
  const toFlat = toFlatAt(desk, fields);
  const note = readNote(desk, fields.get('note'));
  const edges = readEdgeAsk(desk, fields);
  const own = { section, wall, edges, ...(root && { root }), ...(toFlat && { toFlat }) };
  const ends = readEnds(desk, spot, fields, own, between);
  if (section === undefined || ends === undefined) return undefined;
  const known = typeof wall === 'string' ? {} : { wall };
  return {
    name,
    section,
    ...known,
    ...(between && { between }),
    allowance,
    pair,
    copies,
    ...(note && { note }),
    ends,
  };
}

/** The length, as told or measured; none where it is marked at the frame. */
function readBetween(
  desk: Desk,
  fields: Fields,
  section: TubeSection | undefined,
): Length | MeasuredBetween | undefined {
  const spot = fields.get('between');
  return spot && !isMark(spot) ? betweenAt(desk, spot, section) : undefined;
}

export const TEN_MM: Length = { mm: 10, wrote: '10 mm', unit: 'mm' };

function readEnds(
  desk: Desk,
  tube: Spot,
  fields: Fields,
  own: OwnTube,
  between: Length | MeasuredBetween | undefined,
): Ends | undefined {
  const spot = fields.get('ends');
  if (spot === undefined) return missing(desk, tube, 'ends', desk.words.job.ends.noEnd);
  const named = fieldsOf(desk, spot, 'ends');
  if (named === undefined) return undefined;
  const [a, b] = [named.get('A'), named.get('B')];
  if (a && b && !fields.has('between')) {
    missing(desk, tube, 'between', desk.words.job.ends.noLengthBetween);
  }
  const A = a && readEnd(desk, a, own, 'A');
  const asRead = b && readEnd(desk, b, own, 'B');
  if ((a && !A) || (b && !asRead)) return undefined;
  const lengthAsk = fields.get('between');
  const marked = lengthAsk !== undefined && isMark(lengthAsk);
  const B = marked ? withLengthMark(desk, lengthAsk, asRead) : asRead;
  if (marked && !B) return undefined;
  if (lengthAsk && between && 'ways' in between && !(A && B) && !named.strange) {
    complain(desk, lengthAsk, 'one-end', desk.words.job.ends.lengthOfOneEnd);
  }
  const coped = [A, B].flatMap((end) => (end?.kind === 'coped' ? [end] : []));
  const preparations = coped.map(({ preparation }) => preparation);
  complainOfIdleAsk(desk, own.edges, preparations);
  const flatAsk = fields.get('to');
  if (flatAsk && !named.strange && !coped.some(({ parts }) => isOntoBox(parts))) noFlat(desk, flatAsk);
  // With nothing to cope and both ends named it is a blank, which is cut to length all the same.
  if (preparations.length === 0 && !(A && B) && !named.strange) {
    return complain(desk, spot, 'no-end', desk.words.job.ends.noEnd);
  }
  return { ...(A && { A }), ...(B && { B }) };
}
