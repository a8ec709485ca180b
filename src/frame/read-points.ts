import { isMap } from 'yaml';
import { complain, type Spot } from '../job/text/desk.ts';
import { type Fields, fieldsOf, itemsOf, notA, textOf } from '../job/text/fields.ts';
import { namedSpots } from '../job/text/named-spots.ts';
import { lengthAt, missing } from '../job/text/values.ts';
import { asWritten } from '../words/said.ts';
import type { AskedPoint, Named, PointWay } from './asked.ts';
import { nameAt, plainName } from './names.ts';
import { directionAt, placeAt } from './ways.ts';

/** The points of a frame in the order of the file. */
export function readPoints(spot: Spot): readonly AskedPoint[] {
  const { frame } = spot.desk.words.job;
  if (!isMap(spot.node)) return notA(spot, frame.points) ?? [];
  return namedSpots(spot, plainName).flatMap(({ name, spot: point }) => {
    if (name.includes(',')) return complain(point, 'name', frame.commaInName) ?? [];
    const way = readWay(point);
    return way ? [{ name, spot: point, way }] : [];
  });
}

function readWay(point: Spot): PointWay | undefined {
  if (!isMap(point.node)) {
    const place = placeAt(point);
    return place && { kind: 'at', place };
  }
  const fields = fieldsOf(point, 'point');
  if (fields === undefined) return undefined;
  const { frame } = point.desk.words.job;
  const later = ['tapes', 'fixed', 'side'].map((key) => fields.get(key)).find((each) => each !== undefined);
  if (later) return complain(later, 'not-yet', frame.notYet);
  const ways = (['on', 'middle', 'from'] as const).filter((key) => fields.has(key));
  const [kind, another] = ways;
  if (kind === undefined) return fields.strange ? undefined : complain(point, 'point', frame.noPoint);
  if (another !== undefined) return complain(fields.at(another), 'point', frame.oneWay);
  return { on: onTube, middle: between, from: fromPoint }[kind](fields);
}

function named(fields: Fields, key: string): Named | undefined {
  const spot = fields.get(key);
  return spot && nameAt(spot);
}

function onTube(fields: Fields): PointWay | undefined {
  const tube = named(fields, 'on');
  const { frame } = fields.desk.words.job;
  if (!fields.has('at')) return missing(fields.spot, 'at', frame.noAt);
  const at = lengthAt(fields.get('at'), 'zero-or-more');
  const out = directionAt(fields.get('out'));
  if (!tube || !at || (fields.has('out') && !out)) return undefined;
  return { kind: 'on', tube, at, ...(out && { out }) };
}

function between(fields: Fields): PointWay | undefined {
  const { frame } = fields.desk.words.job;
  const spot = fields.at('middle');
  const items = itemsOf(spot, frame.twoPoints);
  if (items === undefined) return undefined;
  if (items.length !== 2) return complain(spot, 'point', frame.notTwoPoints);
  const [from, to] = items.map((item) => nameAt({ ...item, key: spot.key }));
  const share = fields.has('share') ? shareAt(fields.at('share')) : 0.5;
  return from && to && share !== undefined ? { kind: 'between', of: [from, to], share } : undefined;
}

function shareAt(spot: Spot): number | undefined {
  const { frame } = spot.desk.words.job;
  const text = textOf(spot, frame.aShare)?.trim();
  if (text === undefined) return undefined;
  const share = /^[-.\d]+$/.test(text) ? Number(text) : Number.NaN;
  return Math.abs(share) <= 10 ? share : complain(spot, 'share', frame.noShare);
}

function fromPoint(fields: Fields): PointWay | undefined {
  const from = named(fields, 'from');
  const spot = fields.get('by');
  if (!spot) return missing(fields.spot, 'by', fields.desk.words.job.frame.noBy(asWritten(from?.name ?? '')));
  const by = placeAt(spot);
  return from && by && { kind: 'from', from, by };
}
