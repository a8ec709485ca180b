import { isMap } from 'yaml';
import { complain, type Desk, type Spot } from '../job/text/desk.ts';
import { type Fields, fieldsOf, itemsOf, notA, textOf } from '../job/text/fields.ts';
import { namedSpots } from '../job/text/named-spots.ts';
import { lengthAt, missing } from '../job/text/values.ts';
import { asWritten } from '../words/said.ts';
import type { AskedPoint, Named, PointWay } from './asked.ts';
import { nameAt, plainName } from './names.ts';
import { directionAt, placeAt } from './ways.ts';

/** The points of a frame in the order of the file. */
export function readPoints(desk: Desk, spot: Spot): readonly AskedPoint[] {
  const { frame } = desk.words.job;
  if (!isMap(spot.node)) return notA(desk, spot, frame.points) ?? [];
  return namedSpots(desk, spot, plainName).flatMap(({ name, spot: point }) => {
    if (name.includes(',')) return complain(desk, point, 'name', frame.commaInName) ?? [];
    const way = readWay(desk, point);
    return way ? [{ name, spot: point, way }] : [];
  });
}

function readWay(desk: Desk, point: Spot): PointWay | undefined {
  if (!isMap(point.node)) {
    const place = placeAt(desk, point);
    return place && { kind: 'at', place };
  }
  const fields = fieldsOf(desk, point, 'point');
  if (fields === undefined) return undefined;
  const { frame } = desk.words.job;
  const later = ['tapes', 'fixed', 'side'].map((key) => fields.get(key)).find((each) => each !== undefined);
  if (later) return complain(desk, later, 'not-yet', frame.notYet);
  const ways = (['on', 'middle', 'from'] as const).filter((key) => fields.has(key));
  const [kind, another] = ways;
  if (kind === undefined) return fields.strange ? undefined : complain(desk, point, 'point', frame.noPoint);
  if (another !== undefined) return complain(desk, fields.get(another) ?? point, 'point', frame.oneWay);
  return { on: onTube, middle: between, from: fromPoint }[kind](desk, point, fields);
}

function named(desk: Desk, fields: Fields, key: string): Named | undefined {
  const spot = fields.get(key);
  return spot && nameAt(desk, spot);
}

function onTube(desk: Desk, point: Spot, fields: Fields): PointWay | undefined {
  const tube = named(desk, fields, 'on');
  const { frame } = desk.words.job;
  if (!fields.has('at')) return missing(desk, point, 'at', frame.noAt);
  const at = lengthAt(desk, fields.get('at'), 'zero-or-more');
  const out = directionAt(desk, fields.get('out'));
  if (!tube || !at || (fields.has('out') && !out)) return undefined;
  return { kind: 'on', tube, at, ...(out && { out }) };
}

function between(desk: Desk, point: Spot, fields: Fields): PointWay | undefined {
  const { frame } = desk.words.job;
  const spot = fields.get('middle') ?? point;
  const items = itemsOf(desk, spot, frame.twoPoints);
  if (items === undefined) return undefined;
  if (items.length !== 2) return complain(desk, spot, 'point', frame.notTwoPoints);
  const [from, to] = items.map((item) => nameAt(desk, { ...item, key: spot.key }));
  const share = fields.has('share') ? shareAt(desk, fields.get('share') ?? point) : 0.5;
  return from && to && share !== undefined ? { kind: 'between', of: [from, to], share } : undefined;
}

function shareAt(desk: Desk, spot: Spot): number | undefined {
  const { frame } = desk.words.job;
  const text = textOf(desk, spot, frame.aShare)?.trim();
  if (text === undefined) return undefined;
  const share = /^[-.\d]+$/.test(text) ? Number(text) : Number.NaN;
  return Math.abs(share) <= 10 ? share : complain(desk, spot, 'share', frame.noShare);
}

function fromPoint(desk: Desk, point: Spot, fields: Fields): PointWay | undefined {
  const from = named(desk, fields, 'from');
  const spot = fields.get('by');
  if (!spot) return missing(desk, point, 'by', desk.words.job.frame.noBy(asWritten(from?.name ?? '')));
  const by = placeAt(desk, spot);
  return from && by && { kind: 'from', from, by };
}
