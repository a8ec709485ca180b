import { degrees, type Length } from '../measure/units.ts';
import { asWritten } from '../measure/write.ts';
import { complain, type Desk, type Spot } from './desk.ts';
import { diameterAt } from './diameter.ts';
import { type Fields, fieldsOf, textOf } from './fields.ts';
import type { Header } from './job.ts';
import type { KeyPlace } from './keys.ts';
import { needed, readRectangle } from './rectangle.ts';
import { pipeAt } from './size.ts';
import { angleAt, lengthAt, missing, NO_ANGLE } from './values.ts';

/** The kinds of header, each by the key that says which it is. */
const KINDS: Readonly<Record<string, (desk: Desk, spot: Spot) => Header | undefined>> = {
  od: (desk, spot) => round(diameterAt(desk, spot, 'header')),
  pipe: (desk, spot) => round(pipeAt(desk, spot)?.od),
  plate: (desk, spot) => inMap(desk, spot, 'plate', () => ({ kind: 'plate' })),
  mitre: (desk, spot) => inMap(desk, spot, 'mitre', (fields) => readMitre(desk, spot, fields)),
  box: (desk, spot) => inMap(desk, spot, 'box', (fields) => readBox(desk, spot, fields)),
  bend: (desk, spot) => inMap(desk, spot, 'bend', (fields) => readBend(desk, spot, fields)),
};

/** Reads what an end lands on. */
export function readHeader(desk: Desk, spot: Spot): Header | undefined {
  const fields = fieldsOf(desk, spot, 'onto');
  if (fields === undefined) return undefined;
  const [kind, another] = Object.keys(KINDS).filter((key) => fields.has(key));
  if (another !== undefined) {
    const why = `${desk.say.key(kind ?? '')} says what the header is already`;
    return complain(desk, fields.get(another) ?? spot, 'size-twice', why, 'one of the two');
  }
  const chosen = kind === undefined ? undefined : fields.get(kind);
  if (kind !== undefined && chosen) return KINDS[kind]?.(desk, chosen);
  if (fields.strange) return undefined;
  const instead = `the outside diameter of the header, as in ${desk.say.setting('od', '44.5mm')}`;
  return missing(desk, spot, 'od', 'the header needs a size', instead);
}

function round(od: Length | undefined): Header | undefined {
  return od && { kind: 'round', od };
}

function inMap(
  desk: Desk,
  spot: Spot,
  place: KeyPlace,
  read: (fields: Fields) => Header | undefined,
): Header | undefined {
  const fields = fieldsOf(desk, spot, place);
  return fields && read(fields);
}

function readMitre(desk: Desk, spot: Spot, fields: Fields): Header | undefined {
  const turn = needed(desk, spot, fields, 'turn', (at) => angleAt(desk, at), '90deg');
  if (turn && !(degrees(turn.rad) > 1e-9 && degrees(turn.rad) < 180 - 1e-9)) {
    const why = 'a corner turns by more than 0 and less than 180 degrees';
    return complain(desk, fields.get('turn') ?? spot, 'angle-range', why, 'a turn such as 90deg');
  }
  const [pieces, radius] = [fields.get('pieces'), fields.get('radius')];
  if (!turn || (!pieces && !radius)) return turn && { kind: 'mitre', turn };
  if (!pieces || !radius) {
    const [has, lacks] = pieces ? ['pieces', 'radius'] : ['radius', 'pieces'];
    return missing(desk, spot, lacks, `${desk.say.key(has)} needs it too`, 'both, or neither');
  }
  const count = piecesAt(desk, pieces);
  const length = lengthAt(desk, radius, 'positive');
  if (count === undefined || length === undefined) return undefined;
  return { kind: 'mitre', turn, segments: { pieces: count, radius: length } };
}

function piecesAt(desk: Desk, spot: Spot): number | undefined {
  const text = textOf(desk, spot, 'a whole number, 2 or more')?.trim();
  if (text === undefined) return undefined;
  const count = /^\d{1,3}$/.test(text) ? Number(text) : 0;
  if (count >= 2 && count <= 100) return count;
  return complain(desk, spot, 'pieces', 'a bend is made of 2 to 100 pieces', 'a whole number such as 5');
}

function readBox(desk: Desk, spot: Spot, fields: Fields): Header | undefined {
  const size = readRectangle(desk, spot, fields, wallOf(desk, fields));
  const roll = fields.has('roll') ? angleAt(desk, fields.get('roll')) : NO_ANGLE;
  return size && roll && { kind: 'box', ...size, roll };
}

function wallOf(desk: Desk, fields: Fields): Length | undefined {
  return lengthAt(desk, fields.get('wall'), 'positive');
}

function readBend(desk: Desk, spot: Spot, fields: Fields): Header | undefined {
  const od = fields.has('pipe')
    ? pipeAt(desk, fields.get('pipe'))?.od
    : needed(desk, spot, fields, 'od', (at) => diameterAt(desk, at, 'header'), '44.5mm');
  const radius = needed(desk, spot, fields, 'radius', (at) => lengthAt(desk, at, 'positive'), '150mm');
  const centre = fields.has('centre') ? angleAt(desk, fields.get('centre')) : NO_ANGLE;
  if (!od || !radius || !centre) return undefined;
  if (radius.mm > od.mm / 2) return { kind: 'bend', od, radius, centre };
  const why = `a tube of ${asWritten(od)} can not be bent round a centre line of ${asWritten(radius)}`;
  return complain(desk, fields.get('radius') ?? spot, 'bend', why, 'a radius over half the diameter');
}
