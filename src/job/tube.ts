import type { Length } from '../measure/units.ts';
import { type OwnTube, readEnd } from './end.ts';
import { isOntoBox, noFlat, toFlatAt } from './flat.ts';
import type { Ends, MeasuredBetween, Tube, TubeSection } from './job.ts';
import { withLengthMark } from './mark.ts';
import { complainOfIdleAsk, readEdgeAsk } from './preparation.ts';
import { rootAt } from './root.ts';
import { readSize } from './sections.ts';
import { complain, type Spot } from './text/desk.ts';
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
export function readTube(spot: Spot, position: number, defaults: TubeDefaults): Tube | undefined {
  const fields = fieldsOf(spot, 'tube');
  if (fields === undefined) return undefined;
  const name = wordsAt(fields.get('name')) ?? spot.desk.words.job.unnamed(position);
  const own = readTubeAsk(fields);
  const { section, wall, allowance, note } = own;
  const between = readBetween(fields, section);
  const pair = yesOrNoAt(fields.get('pair')) ?? defaults.pair;
  const copies = copiesAt(fields.get('copies')) ?? defaults.copies;
  const ends = readEnds(fields, own, between);
  if (section === undefined || ends === undefined) return undefined;
  return {
    name,
    section,
    ...(typeof wall !== 'string' && { wall }),
    ...(between && { between }),
    allowance,
    pair,
    copies,
    ...(note && { note }),
    ends,
  };
}

/** The length, as told or measured; none where it is marked at the frame. */
function readBetween(fields: Fields, section: TubeSection | undefined): Length | MeasuredBetween | undefined {
  const spot = fields.get('between');
  return spot && !isMark(spot) ? betweenAt(spot, section) : undefined;
}

/** What is asked alike of a tube by itself and of one in a frame. */
export interface TubeAsk extends OwnTube, Pick<Tube, 'allowance' | 'note'> {}

export function readTubeAsk(fields: Fields): TubeAsk {
  const allowance = lengthAt(fields.get('allowance'), 'zero-or-more', 'allowance') ?? TEN_MM;
  const root = rootAt(fields.get('root'));
  const toFlat = toFlatAt(fields);
  const note = readNote(fields.get('note'));
  return {
    ...readSize(fields),
    edges: readEdgeAsk(fields),
    ...(root && { root }),
    ...(toFlat && { toFlat }),
    allowance,
    ...(note && { note }),
  };
}

const TEN_MM: Length = { mm: 10, wrote: '10 mm', unit: 'mm' };

function readEnds(
  fields: Fields,
  own: OwnTube,
  between: Length | MeasuredBetween | undefined,
): Ends | undefined {
  const spot = fields.get('ends');
  if (spot === undefined) return missing(fields.spot, 'ends', fields.desk.words.job.ends.noEnd);
  const named = fieldsOf(spot, 'ends');
  if (named === undefined) return undefined;
  const [a, b] = [named.get('A'), named.get('B')];
  if (a && b && !fields.has('between')) {
    missing(fields.spot, 'between', fields.desk.words.job.ends.noLengthBetween);
  }
  const A = a && readEnd(a, own, 'A');
  const asRead = b && readEnd(b, own, 'B');
  if ((a && !A) || (b && !asRead)) return undefined;
  const lengthAsk = fields.get('between');
  const marked = lengthAsk !== undefined && isMark(lengthAsk);
  const B = marked ? withLengthMark(lengthAsk, asRead) : asRead;
  if (marked && !B) return undefined;
  if (lengthAsk && between && 'ways' in between && !(A && B) && !named.strange) {
    complain(lengthAsk, 'one-end', fields.desk.words.job.ends.lengthOfOneEnd);
  }
  const coped = [A, B].flatMap((end) => (end?.kind === 'coped' ? [end] : []));
  const preparations = coped.map(({ preparation }) => preparation);
  complainOfIdleAsk(own.edges, preparations);
  const flatAsk = fields.get('to');
  if (flatAsk && !named.strange && !coped.some(({ parts }) => isOntoBox(parts))) noFlat(flatAsk);
  // With nothing to cope and both ends named it is a blank, which is cut to length all the same.
  if (preparations.length === 0 && !(A && B) && !named.strange) {
    return complain(spot, 'no-end', fields.desk.words.job.ends.noEnd);
  }
  return { ...(A && { A }), ...(B && { B }) };
}
