import type { Length } from '../measure/units.ts';
import type { Preparation } from './job.ts';
import { complain, type Desk, type Spot } from './text/desk.ts';
import type { Fields } from './text/fields.ts';
import { choiceAt, lengthAt } from './text/values.ts';

/** How the edge is asked to be made, on a tube (for all its ends) or on one end. */
export interface EdgeAsk {
  readonly edge?: Asked<'bevel' | 'square'>;
  readonly land?: Asked<Length>;
  readonly from?: Asked<'outside' | 'inside'>;
  /** One of them could not be read, so that what they come to is not known. */
  readonly unclear: boolean;
}

interface Asked<Value> {
  readonly value: Value;
  readonly spot: Spot;
}

/** The tube's wall; `unclear` where it is given but could not be read. */
export type Wall = Length | 'none' | 'unclear';

export function readEdgeAsk(desk: Desk, fields: Fields): EdgeAsk {
  const edge = asked<'bevel' | 'square'>(
    fields.get('edge'),
    choiceAt(desk, fields.get('edge'), ['bevel', 'square']),
  );
  const land = asked(fields.get('land'), lengthAt(desk, fields.get('land'), 'positive'));
  const from = asked<'outside' | 'inside'>(
    fields.get('from'),
    choiceAt(desk, fields.get('from'), ['outside', 'inside']),
  );
  const given = ['edge', 'land', 'from'].filter((key) => fields.has(key)).length;
  const read = [edge, land, from].filter((each) => each !== undefined).length;
  return { ...(edge && { edge }), ...(land && { land }), ...(from && { from }), unclear: read < given };
}

function asked<Value>(spot: Spot | undefined, value: Value | undefined): Asked<Value> | undefined {
  return spot === undefined || value === undefined ? undefined : { spot, value };
}

/** What an end's own words and its tube's come to; undefined where they contradict each other or the wall. */
export function prepare(desk: Desk, own: EdgeAsk, tube: EdgeAsk, wall: Wall): Preparation | undefined {
  if (own.unclear || tube.unclear) return undefined;
  const edge = own.edge ?? tube.edge;
  return edge?.value === 'square' ? square(desk, edge.spot, own, tube, wall) : bevel(desk, own, tube, wall);
}

function square(desk: Desk, edge: Spot, own: EdgeAsk, tube: EdgeAsk, wall: Wall): Preparation | undefined {
  if (own.land) return landIsForBevel(desk, own.land.spot);
  if (wall === 'none') {
    const { key, setting } = desk.say;
    const objection = desk.words.job.ends.squareNeedsWall(key('wall'), setting('edge', 'bevel'));
    return complain(desk, edge, 'no-wall', objection);
  }
  return { edge: 'square', from: (own.from ?? tube.from)?.value ?? 'outside' };
}

function bevel(desk: Desk, own: EdgeAsk, tube: EdgeAsk, wall: Wall): Preparation | undefined {
  if (own.from?.value === 'inside') return insideIsForSquare(desk, own.from.spot);
  const words = desk.words.job.ends;
  const land = own.land ?? tube.land;
  if (land === undefined) return { edge: 'bevel' };
  if (wall === 'none') {
    return complain(desk, land.spot, 'no-wall', words.landNeedsWall(desk.say.key('wall')));
  }
  if (typeof wall !== 'string' && land.value.mm > wall.mm) {
    return complain(desk, land.spot, 'land', words.landOverWall(wall));
  }
  return { edge: 'bevel', land: land.value };
}

/** Complains of what a tube asks for and none of its coped ends can take up. */
export function complainOfIdleAsk(desk: Desk, tube: EdgeAsk, ends: readonly Preparation[]): void {
  if (ends.length === 0) return;
  if (tube.land && ends.every((end) => end.edge === 'square')) landIsForBevel(desk, tube.land.spot);
  if (tube.from?.value === 'inside' && ends.every((end) => end.edge === 'bevel'))
    insideIsForSquare(desk, tube.from.spot);
}

function landIsForBevel(desk: Desk, spot: Spot): undefined {
  const { key, setting } = desk.say;
  return complain(
    desk,
    spot,
    'land',
    desk.words.job.ends.landIsForBevel(setting('edge', 'bevel'), key('land')),
  );
}

function insideIsForSquare(desk: Desk, spot: Spot): undefined {
  const { key, setting } = desk.say;
  return complain(
    desk,
    spot,
    'from',
    desk.words.job.ends.insideIsForSquare(setting('edge', 'square'), key('from')),
  );
}
