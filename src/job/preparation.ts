import type { Length } from '../measure/units.ts';
import type { Preparation } from './job.ts';
import { complain, type Spot } from './text/desk.ts';
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

export function readEdgeAsk(fields: Fields): EdgeAsk {
  const edge = asked(fields.get('edge'), (spot) => choiceAt(spot, ['bevel', 'square']));
  const land = asked(fields.get('land'), (spot) => lengthAt(spot, 'positive'));
  const from = asked(fields.get('from'), (spot) => choiceAt(spot, ['outside', 'inside']));
  const given = ['edge', 'land', 'from'].filter((key) => fields.has(key)).length;
  const read = [edge, land, from].filter((each) => each !== undefined).length;
  return { ...(edge && { edge }), ...(land && { land }), ...(from && { from }), unclear: read < given };
}

function asked<Value>(
  spot: Spot | undefined,
  read: (spot: Spot) => Value | undefined,
): Asked<Value> | undefined {
  const value = spot && read(spot);
  return spot && value !== undefined ? { spot, value } : undefined;
}

/** What an end's own words and its tube's come to; undefined where they contradict each other or the wall. */
export function prepare(own: EdgeAsk, tube: EdgeAsk, wall: Wall): Preparation | undefined {
  if (own.unclear || tube.unclear) return undefined;
  const edge = own.edge ?? tube.edge;
  return edge?.value === 'square' ? square(edge.spot, own, tube, wall) : bevel(own, tube, wall);
}

function square(edge: Spot, own: EdgeAsk, tube: EdgeAsk, wall: Wall): Preparation | undefined {
  if (own.land) return landIsForBevel(own.land.spot);
  if (wall === 'none') {
    const { key, setting } = edge.desk.say;
    const objection = edge.desk.words.job.ends.squareNeedsWall(key('wall'), setting('edge', 'bevel'));
    return complain(edge, 'no-wall', objection);
  }
  return { edge: 'square', from: (own.from ?? tube.from)?.value ?? 'outside' };
}

function bevel(own: EdgeAsk, tube: EdgeAsk, wall: Wall): Preparation | undefined {
  if (own.from?.value === 'inside') return insideIsForSquare(own.from.spot);
  const land = own.land ?? tube.land;
  if (land === undefined) return { edge: 'bevel' };
  const {
    words: {
      job: { ends },
    },
    say,
  } = land.spot.desk;
  if (wall === 'none') {
    return complain(land.spot, 'no-wall', ends.landNeedsWall(say.key('wall')));
  }
  if (typeof wall !== 'string' && land.value.mm > wall.mm) {
    return complain(land.spot, 'land', ends.landOverWall(wall));
  }
  return { edge: 'bevel', land: land.value };
}

/** Complains of what a tube asks for and none of its coped ends can take up. */
export function complainOfIdleAsk(tube: EdgeAsk, ends: readonly Preparation[]): void {
  if (ends.length === 0) return;
  if (tube.land && ends.every((end) => end.edge === 'square')) landIsForBevel(tube.land.spot);
  if (tube.from?.value === 'inside' && ends.every((end) => end.edge === 'bevel'))
    insideIsForSquare(tube.from.spot);
}

function landIsForBevel(spot: Spot): undefined {
  const { words, say } = spot.desk;
  const objection = words.job.ends.landIsForBevel(say.setting('edge', 'bevel'), say.key('land'));
  return complain(spot, 'land', objection);
}

function insideIsForSquare(spot: Spot): undefined {
  const { words, say } = spot.desk;
  const objection = words.job.ends.insideIsForSquare(say.setting('edge', 'square'), say.key('from'));
  return complain(spot, 'from', objection);
}
