import { isMap, isScalar, isSeq } from 'yaml';
import type { Angle, Length } from '../measure/units.ts';
import { asWritten, millimetres } from '../measure/write.ts';
import { complain, type Desk, type Spot } from './desk.ts';
import { type Fields, fieldsOf, notA } from './fields.ts';
import { readHeader } from './header.ts';
import type { End, Header, Part, Section } from './job.ts';
import { type EdgeAsk, prepare, readEdgeAsk, type Wall } from './preparation.ts';
import { rootAt } from './root.ts';
import { angleAt, jointAngleAt, lengthAt, missing } from './values.ts';

/** What an end has to know of its tube. */
export interface OwnTube {
  readonly section: Section | undefined;
  readonly wall: Wall;
  readonly edges: EdgeAsk;
  readonly root?: Length;
}

const WANTED = '`plain`, or a map with `onto` and `angle`';

/** Reads one end: `plain`, or a map with `onto` and `angle`. */
export function readEnd(desk: Desk, spot: Spot, tube: OwnTube): End | undefined {
  if (spot.spoilt) return undefined;
  const { node } = spot;
  if (isScalar(node) && typeof node.value === 'string' && node.value.trim().toLowerCase() === 'plain') {
    return { kind: 'plain' };
  }
  if (isSeq(node)) return complain(desk, spot, 'shape', 'an end lands on one header', WANTED);
  if (!isMap(node)) return notA(desk, spot, WANTED);
  const fields = fieldsOf(desk, spot, 'end');
  return fields && readCoped(desk, spot, fields, tube);
}

function readCoped(desk: Desk, spot: Spot, fields: Fields, tube: OwnTube): End | undefined {
  const part = readPart(desk, spot, fields, tube);
  const seam = angleAt(desk, fields.get('seam'));
  const root = fields.has('root') ? rootAt(desk, fields.get('root')) : tube.root;
  const preparation = prepare(desk, readEdgeAsk(desk, fields), tube.edges, tube.wall);
  if (part === undefined || preparation === undefined) return undefined;
  return { kind: 'coped', parts: [part], preparation, ...(root && { root }), ...(seam && { seam }) };
}

function readPart(desk: Desk, spot: Spot, fields: Fields, tube: OwnTube): Part | undefined {
  const header = fields.get('onto');
  if (header === undefined) {
    missing(
      desk,
      spot,
      'onto',
      'a coped end lands on something',
      'the header it lands on, or `plain` for a square cut',
    );
  }
  if (!fields.has('angle')) {
    missing(
      desk,
      spot,
      'angle',
      'the joint needs its angle',
      'the angle between tube and header, as in 60deg',
    );
  }
  const onto = header && readHeader(desk, header);
  const angle = jointAngleAt(desk, fields.get('angle'));
  const clock = fields.has('clock') ? angleAt(desk, fields.get('clock')) : NO_ANGLE;
  const offset = fields.has('offset') ? lengthAt(desk, fields.get('offset'), 'any') : noLength(desk);
  if (onto && offset && tube.section)
    complainOfMiss(desk, fields.get('offset') ?? spot, onto, offset, tube.section);
  return onto && angle && clock && offset && { onto, angle, clock, offset };
}

const NO_ANGLE: Angle = { rad: 0, wrote: '0', unit: 'deg' };

function noLength(desk: Desk): Length {
  return { mm: 0, wrote: '0', unit: desk.bareUnit };
}

/** A tube whose whole width passes beside the header meets nothing. */
function complainOfMiss(desk: Desk, spot: Spot, onto: Header, offset: Length, section: Section): void {
  const reach = (onto.od.mm + section.od.mm) / 2;
  if (Math.abs(offset.mm) < reach - 1e-9) return;
  const why = `the tube, ${asWritten(section.od)}, passes beside the header, ${asWritten(onto.od)}, and misses it`;
  complain(desk, spot, 'misses', why, `an offset under ${millimetres(reach)} mm to either side`);
}
