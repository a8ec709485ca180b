import type { Length } from '../measure/units.ts';
import { asWritten, millimetres } from '../measure/write.ts';
import { complain, type Desk, type Spot } from './desk.ts';
import { type OwnTube, readEnd } from './end.ts';
import { type Fields, fieldsOf } from './fields.ts';
import type { End, Ends, Preparation, Section, Tube } from './job.ts';
import { complainOfIdleAsk, readEdgeAsk, type Wall } from './preparation.ts';
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
  const section = readSection(desk, spot, fields);
  const wall = readWall(desk, fields, section);
  const between = lengthAt(desk, fields.get('between'), 'positive');
  const allowance = lengthAt(desk, fields.get('allowance'), 'zero-or-more') ?? TEN_MM;
  const pair = yesOrNoAt(desk, fields.get('pair')) ?? defaults.pair;
  const copies = copiesAt(desk, fields.get('copies')) ?? defaults.copies;
  const ends = readEnds(desk, spot, fields, { section, wall, edges: readEdgeAsk(desk, fields) });
  if (section === undefined || ends === undefined) return undefined;
  const known = typeof wall === 'string' ? {} : { wall };
  return { name, section, ...known, ...(between && { between }), allowance, pair, copies, ends };
}

const TEN_MM: Length = { mm: 10, wrote: '10 mm', unit: 'mm' };

function readSection(desk: Desk, spot: Spot, fields: Fields): Section | undefined {
  const od = fields.get('od');
  if (od === undefined) {
    return missing(
      desk,
      spot,
      'od',
      'the tube needs a size',
      'its outside diameter, as in 38.1mm or 1-1/2in',
    );
  }
  const length = lengthAt(desk, od, 'positive');
  return length && { kind: 'round', od: length };
}

function readWall(desk: Desk, fields: Fields, section: Section | undefined): Wall {
  const spot = fields.get('wall');
  if (spot === undefined) return 'none';
  const wall = lengthAt(desk, spot, 'positive');
  if (wall === undefined || section === undefined) return 'unclear';
  const radius = section.od.mm / 2;
  if (wall.mm < radius - 1e-9) return wall;
  const why = `the wall fills the tube: half of ${asWritten(section.od)} is ${millimetres(radius)} mm`;
  complain(desk, spot, 'wall', why, `a wall under ${millimetres(radius)} mm`);
  return 'unclear';
}

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
  if (preparations.length === 0 && !named.strange) {
    return complain(desk, spot, 'no-end', 'there is no end to cope', ENDS_EXAMPLE);
  }
  return { ...(A && { A }), ...(B && { B }) };
}

const ENDS_EXAMPLE = 'an end, as in `A: { onto: { od: 44.5mm }, angle: 60deg }`';

function preparationOf(end: End | undefined): Preparation[] {
  return end?.kind === 'coped' ? [end.preparation] : [];
}
