import { isMap, isScalar, isSeq } from 'yaml';
import { readSeam } from '../job/end.ts';
import { toFlatAt } from '../job/flat.ts';
import type { TubeSection } from '../job/job.ts';
import { readEdgeAsk } from '../job/preparation.ts';
import { rootAt } from '../job/root.ts';
import { complain, type Spot } from '../job/text/desk.ts';
import { type Fields, fieldsOf, itemsOf, notA } from '../job/text/fields.ts';
import { lengthAt, missing, yesOrNoAt } from '../job/text/values.ts';
import { readTubeAsk } from '../job/tube.ts';
import type { AskedEnd, AskedTube, CutAsk, PointAsk } from './asked.ts';
import { nameAt, namesAt } from './names.ts';
import { directionAt, placeAt } from './ways.ts';

/** The tubes of a frame in the order of the file, without those that could not be read. */
export function readFrameTubes(list: Spot): readonly AskedTube[] {
  const { frame, noTubeInList, sameName } = list.desk.words.job;
  const spots = itemsOf(list, frame.tubes);
  if (spots?.length === 0) complain(list, 'no-tube', noTubeInList);
  const seen = new Set<string>();
  return (spots ?? []).flatMap((spot, i) => {
    const tube = readTubeOf(spot, i + 1);
    if (tube === undefined) return [];
    if (seen.has(tube.name)) complain(tube.spot, 'same-name', sameName);
    seen.add(tube.name);
    return [tube];
  });
}

function readTubeOf(spot: Spot, position: number): AskedTube | undefined {
  const { frame, unnamed } = spot.desk.words.job;
  const refused = ['between', 'pair', 'copies'].find((key) => isMap(spot.node) && spot.node.has(key));
  if (refused === 'between') return complain(spot, 'frame-key', frame.noBetween);
  if (refused !== undefined) return complain(spot, 'frame-key', frame.noCopies(refused));
  const fields = fieldsOf(spot, 'frame-tube');
  if (fields === undefined) return undefined;
  const nameSpot = fields.get('name');
  const named = nameSpot ? nameAt(nameSpot) : { name: unnamed(position), spot };
  const along = readAlong(fields);
  const own = readTubeAsk(fields);
  const { section } = own;
  const way = directionAt(fields.get('face'));
  const ends = readEnds(spot, fields.get('ends'), section);
  const through = yesOrNoAt(fields.get('through')) ?? false;
  const after = namesAt(fields.get('after'), frame.names);
  if (!named || !along || section === undefined || !ends) return undefined;
  return {
    ...named,
    ...own,
    section,
    along,
    ...(way && { face: { way, spot: fields.at('face') } }),
    through,
    after,
    ends,
  };
}

function readAlong(fields: Fields): readonly [PointAsk, PointAsk] | undefined {
  const { frame } = fields.desk.words.job;
  const spot = fields.get('along');
  if (spot === undefined) return missing(fields.spot, 'along', frame.noAlong);
  const items = itemsOf(spot, frame.twoPoints);
  if (items === undefined) return undefined;
  if (items.length !== 2) return complain(spot, 'along', frame.notTwoPoints);
  const [from, to] = items.map((item): PointAsk | undefined => {
    const at = { ...item, key: 'along' };
    if (!isSeq(item.node)) return nameAt(at);
    const place = placeAt(at);
    return place && { place, spot: at };
  });
  return from && to && [from, to];
}

function readEnds(
  tube: Spot,
  spot: Spot | undefined,
  section: TubeSection | undefined,
): AskedTube['ends'] | undefined {
  const fields = spot && fieldsOf(spot, 'ends');
  if (spot && !fields) return undefined;
  const read = (name: 'A' | 'B'): AskedEnd | undefined => {
    const at = fields?.get(name);
    return at ? readFrameEnd(at, section) : { spot: tube, cut: { kind: 'found' }, edges: NOTHING_ASKED };
  };
  const [A, B] = [read('A'), read('B')];
  return A && B && { A, B };
}

const NOTHING_ASKED = { unclear: false };

function readFrameEnd(spot: Spot, section: TubeSection | undefined): AskedEnd | undefined {
  if (isScalar(spot.node) && spot.node.value === 'plain') {
    return { spot, cut: { kind: 'plain' }, edges: NOTHING_ASKED };
  }
  const fields = fieldsOf(spot, 'frame-end');
  if (fields === undefined) return undefined;
  const cut = readCut(fields);
  const root = rootAt(fields.get('root'));
  const toFlat = toFlatAt(fields);
  const seam = readSeam(fields.get('seam'), section);
  const sleeve = fields.get('inside');
  const inside = sleeve && nameAt(sleeve);
  const edges = readEdgeAsk(fields);
  return (
    cut && {
      spot,
      cut,
      edges,
      ...(root && { root }),
      ...(toFlat && { toFlat }),
      ...(seam && { seam }),
      ...(inside && { inside }),
    }
  );
}

/** Of the ways to say how an end is cut one is taken; how far it runs on is for a plain one. */
function readCut(fields: Fields): CutAsk | undefined {
  const { frame } = fields.desk.words.job;
  const plain = yesOrNoAt(fields.get('plain')) ?? false;
  const mitre = yesOrNoAt(fields.get('mitre'));
  const past = lengthAt(fields.get('past'), 'any');
  const given = [...(plain ? ['plain'] : []), ...['onto', 'flat'].filter((key) => fields.has(key))];
  const [kind, another] = given;
  const second = another ?? (kind !== undefined && mitre === true ? 'mitre' : undefined);
  if (second !== undefined) return complain(fields.at(second), 'cut-twice', frame.oneCut);
  const pastSpot = fields.get('past');
  if (pastSpot && kind !== undefined && kind !== 'plain') return complain(pastSpot, 'past', frame.noPast);
  switch (kind) {
    case 'onto': {
      const onto = fields.get('onto');
      if (onto && isMap(onto.node)) return notA(onto, frame.names);
      const names = namesAt(onto, frame.names);
      return names.length > 0 ? { kind: 'onto', names } : undefined;
    }
    case 'flat': {
      const way = directionAt(fields.get('flat'));
      return way && { kind: 'flat', way };
    }
    case 'plain':
      return { kind: 'plain', ...(past && { past }) };
    default:
      return { kind: 'found', ...(mitre !== undefined && { mitre }), ...(past && { past }) };
  }
}
