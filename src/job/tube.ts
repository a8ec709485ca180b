import type { Length } from '../measure/units.ts';
import { complain, type Desk, type Spot } from './desk.ts';
import { type OwnTube, readEnd } from './end.ts';
import { type Fields, fieldsOf } from './fields.ts';
import type { End, Ends, Preparation, Tube } from './job.ts';
import { complainOfIdleAsk, readEdgeAsk } from './preparation.ts';
import { rootAt } from './root.ts';
import { readSize } from './size.ts';
import { copiesAt, lengthAt, missing, wordsAt, yesOrNoAt } from './values.ts';

/** What the head of the file sets for every tube. */
export interface TubeDefaults {
  readonly pair: boolean;
  readonly copies: number;
}

/** Reads one tube; `position`, from 1, names it where it has no name. */
export function readTube(desk: Desk, spot: Spot, position: number, defaults: TubeDefaults): Tube | undefined {
  const fields = fieldsOf(desk, spot, 'tube');
  if (fields === undefined) return undefined;
  const name = wordsAt(desk, fields.get('name')) ?? `tube ${position}`;
  const { section, wall } = readSize(desk, spot, fields);
  const between = lengthAt(desk, fields.get('between'), 'positive');
  const allowance = lengthAt(desk, fields.get('allowance'), 'zero-or-more') ?? TEN_MM;
  const pair = yesOrNoAt(desk, fields.get('pair')) ?? defaults.pair;
  const copies = copiesAt(desk, fields.get('copies')) ?? defaults.copies;
  const root = rootAt(desk, fields.get('root'));
  const ends = readEnds(desk, spot, fields, {
    section,
    wall,
    edges: readEdgeAsk(desk, fields),
    ...(root && { root }),
  });
  if (section === undefined || ends === undefined) return undefined;
  const known = typeof wall === 'string' ? {} : { wall };
  return { name, section, ...known, ...(between && { between }), allowance, pair, copies, ends };
}

const TEN_MM: Length = { mm: 10, wrote: '10 mm', unit: 'mm' };

function readEnds(desk: Desk, tube: Spot, fields: Fields, own: OwnTube): Ends | undefined {
  const spot = fields.get('ends');
  if (spot === undefined) return missing(desk, tube, 'ends', 'there is no end to cope', ENDS_EXAMPLE);
  const named = fieldsOf(desk, spot, 'ends');
  if (named === undefined) return undefined;
  const [a, b] = [named.get('A'), named.get('B')];
  if (a && b && !fields.has('between')) {
    const why = 'a tube with two ends has a length between their work points';
    missing(desk, tube, 'between', why, 'its length, as in 600mm, or one end alone');
  }
  const [A, B] = [a && readEnd(desk, a, own), b && readEnd(desk, b, own)];
  if ((a && !A) || (b && !B)) return undefined;
  const preparations = [A, B].flatMap(preparationOf);
  complainOfIdleAsk(desk, own.edges, preparations);
  // With nothing to cope and both ends named it is a blank, which is cut to length all the same.
  if (preparations.length === 0 && !(A && B) && !named.strange) {
    return complain(desk, spot, 'no-end', 'there is no end to cope', ENDS_EXAMPLE);
  }
  return { ...(A && { A }), ...(B && { B }) };
}

const ENDS_EXAMPLE = 'an end, as in `A: { onto: { od: 44.5mm }, angle: 60deg }`';

function preparationOf(end: End | undefined): Preparation[] {
  return end?.kind === 'coped' ? [end.preparation] : [];
}
