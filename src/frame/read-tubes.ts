import { isMap, isScalar, isSeq } from 'yaml';
import { readSeam } from '../job/end.ts';
import { toFlatAt } from '../job/flat.ts';
import type { TubeSection } from '../job/job.ts';
import { readEdgeAsk } from '../job/preparation.ts';
import { rootAt } from '../job/root.ts';
import { readSize } from '../job/size.ts';
import { complain, type Desk, type Spot } from '../job/text/desk.ts';
import { type Fields, fieldsOf, itemsOf, notA } from '../job/text/fields.ts';
import { readNote } from '../job/text/note.ts';
import { lengthAt, missing, yesOrNoAt } from '../job/text/values.ts';
import { TEN_MM } from '../job/tube.ts';
import type { AskedEnd, AskedTube, CutAsk, PointAsk } from './asked.ts';
import { nameAt, namesAt } from './names.ts';
import { directionAt, placeAt } from './ways.ts';

/** The tubes of a frame in the order of the file, without those that could not be read. */
export function readFrameTubes(desk: Desk, list: Spot): readonly AskedTube[] {
  const { frame, noTubeInList, sameName } = desk.words.job;
  const spots = itemsOf(desk, list, frame.tubes);
  if (spots?.length === 0) complain(desk, list, 'no-tube', noTubeInList);
  const seen = new Set<string>();
  return (spots ?? []).flatMap((spot, i) => {
    const tube = readTubeOf(desk, spot, i + 1);
    if (tube === undefined) return [];
    if (seen.has(tube.name)) complain(desk, tube.spot, 'same-name', sameName);
    seen.add(tube.name);
    return [tube];
  });
}

function readTubeOf(desk: Desk, spot: Spot, position: number): AskedTube | undefined {
  const { frame, unnamed } = desk.words.job;
  const refused = ['between', 'pair', 'copies'].find((key) => isMap(spot.node) && spot.node.has(key));
  if (refused === 'between') return complain(desk, spot, 'frame-key', frame.noBetween);
  if (refused !== undefined) return complain(desk, spot, 'frame-key', frame.noCopies(refused));
  const fields = fieldsOf(desk, spot, 'frame-tube');
  if (fields === undefined) return undefined;
  const nameSpot = fields.get('name');
  const named = nameSpot ? nameAt(desk, nameSpot) : { name: unnamed(position), spot };
  const along = readAlong(desk, spot, fields);
  const { section, wall } = readSize(desk, spot, fields);
  const way = directionAt(desk, fields.get('face'));
  const allowance = lengthAt(desk, fields.get('allowance'), 'zero-or-more', 'allowance') ?? TEN_MM;
  const root = rootAt(desk, fields.get('root'));
  const toFlat = toFlatAt(desk, fields);
  const note = readNote(desk, fields.get('note'));
  const ends = readEnds(desk, spot, fields.get('ends'), section);
  const read = {
    edges: readEdgeAsk(desk, fields),
    through: yesOrNoAt(desk, fields.get('through')) ?? false,
    after: namesAt(desk, fields.get('after'), frame.names),
  };
  if (!named || !along || section === undefined || !ends) return undefined;
  return {
    ...named,
    along,
    section,
    wall,
    ...(way && { face: { way, spot: fields.get('face') ?? spot } }),
    ...read,
    ...(root && { root }),
    ...(toFlat && { toFlat }),
    allowance,
    ...(note && { note }),
    ends,
  };
}

function readAlong(desk: Desk, tube: Spot, fields: Fields): readonly [PointAsk, PointAsk] | undefined {
  const { frame } = desk.words.job;
  const spot = fields.get('along');
  if (spot === undefined) return missing(desk, tube, 'along', frame.noAlong);
  const items = itemsOf(desk, spot, frame.twoPoints);
  if (items === undefined) return undefined;
  if (items.length !== 2) return complain(desk, spot, 'along', frame.notTwoPoints);
  const [from, to] = items.map((item): PointAsk | undefined => {
    const at = { ...item, key: 'along' };
    if (!isSeq(item.node)) return nameAt(desk, at);
    const place = placeAt(desk, at);
    return place && { place, spot: at };
  });
  return from && to && [from, to];
}

function readEnds(
  desk: Desk,
  tube: Spot,
  spot: Spot | undefined,
  section: TubeSection | undefined,
): AskedTube['ends'] | undefined {
  const fields = spot && fieldsOf(desk, spot, 'ends');
  if (spot && !fields) return undefined;
  const read = (name: 'A' | 'B'): AskedEnd | undefined => {
    const at = fields?.get(name);
    return at
      ? readFrameEnd(desk, at, section)
      : { spot: tube, cut: { kind: 'found' }, edges: NOTHING_ASKED };
  };
  const [A, B] = [read('A'), read('B')];
  return A && B && { A, B };
}

const NOTHING_ASKED = { unclear: false };

function readFrameEnd(desk: Desk, spot: Spot, section: TubeSection | undefined): AskedEnd | undefined {
  if (isScalar(spot.node) && spot.node.value === 'plain') {
    return { spot, cut: { kind: 'plain' }, edges: NOTHING_ASKED };
  }
  const fields = fieldsOf(desk, spot, 'frame-end');
  if (fields === undefined) return undefined;
  const cut = readCut(desk, spot, fields);
  const root = rootAt(desk, fields.get('root'));
  const toFlat = toFlatAt(desk, fields);
  const seam = readSeam(desk, fields.get('seam'), section);
  const sleeve = fields.get('inside');
  const inside = sleeve && nameAt(desk, sleeve);
  const edges = readEdgeAsk(desk, fields);
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
function readCut(desk: Desk, spot: Spot, fields: Fields): CutAsk | undefined {
  const { frame } = desk.words.job;
  const plain = yesOrNoAt(desk, fields.get('plain')) ?? false;
  const mitre = yesOrNoAt(desk, fields.get('mitre'));
  const past = lengthAt(desk, fields.get('past'), 'any');
  const given = [...(plain ? ['plain'] : []), ...['onto', 'flat'].filter((key) => fields.has(key))];
  const [kind, another] = given;
  const second = another ?? (kind !== undefined && mitre === true ? 'mitre' : undefined);
  if (second !== undefined) return complain(desk, fields.get(second) ?? spot, 'cut-twice', frame.oneCut);
  const pastSpot = fields.get('past');
  if (pastSpot && kind !== undefined && kind !== 'plain')
    return complain(desk, pastSpot, 'past', frame.noPast);
  switch (kind) {
    case 'onto': {
      const onto = fields.get('onto');
      if (onto && isMap(onto.node)) return notA(desk, onto, frame.names);
      const names = namesAt(desk, onto, frame.names);
      return names.length > 0 ? { kind: 'onto', names } : undefined;
    }
    case 'flat': {
      const way = directionAt(desk, fields.get('flat'));
      return way && { kind: 'flat', way };
    }
    case 'plain':
      return { kind: 'plain', ...(past && { past }) };
    default:
      return { kind: 'found', ...(mitre !== undefined && { mitre }), ...(past && { past }) };
  }
}
