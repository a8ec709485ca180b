import { isMap, isScalar, isSeq } from 'yaml';
import type { Angle, Length } from '../measure/units.ts';
import { writeAngle } from '../measure/write.ts';
import { isOntoBox, noFlat, toFlatAt } from './flat.ts';
import { readHeader } from './header.ts';
import type { CopedEnd, End, EndName, Header, MitreHeader, Part, TubeSection } from './job.ts';
import { headerFactsOf } from './kinds.ts';
import { markedClock, noMark } from './mark.ts';
import { type EdgeAsk, prepare, readEdgeAsk, type Wall } from './preparation.ts';
import { complainOfTightBend, rootAt } from './root.ts';
import { tubeFactsOf } from './sections.ts';
import { complain, type Desk, type Spot } from './text/desk.ts';
import { type Fields, fieldsOf, itemsOf, notA } from './text/fields.ts';
import { angleAt, lengthAt, missing, NO_ANGLE } from './text/values.ts';
import { jointAngleInWaysAt } from './ways/angle.ts';
import { clockAt, isMark } from './ways/clock.ts';
import { notchedAt } from './ways/notch.ts';

/** What an end has to know of its tube. */
export interface OwnTube {
  readonly section: TubeSection | undefined;
  readonly wall: Wall;
  readonly edges: EdgeAsk;
  readonly root?: Length;
  /** Where it lands on a box. */
  readonly toFlat?: true;
}

/** Reads one end: `plain`, or a map with `onto` and `angle`. */
export function readEnd(desk: Desk, spot: Spot, tube: OwnTube, name: EndName): End | undefined {
  if (spot.misread) return undefined;
  const { node } = spot;
  if (isScalar(node) && typeof node.value === 'string' && node.value.trim().toLowerCase() === 'plain') {
    return { kind: 'plain' };
  }
  if (isSeq(node)) return readUnion(desk, spot, tube);
  if (!isMap(node)) return notA(desk, spot, desk.words.job.ends.end);
  if (node.has('plain'))
    return complain(desk, spot, 'plain', desk.words.job.ends.plainAlone(desk.say.setting(name, 'plain')));
  const fields = fieldsOf(desk, spot, 'end');
  return fields && readCoped(desk, spot, fields, tube, name);
}

/** Several headers that the end lands on at once. How its edge is made, its tube says. */
function readUnion(desk: Desk, spot: Spot, tube: OwnTube): End | undefined {
  const spots = itemsOf(desk, spot, desk.words.job.ends.list) ?? [];
  const parts = spots.map((item) => {
    const fields = fieldsOf(desk, item, 'part');
    return fields && readPart(desk, item, fields, tube, 'list');
  });
  const preparation = prepare(desk, { unclear: false }, tube.edges, tube.wall);
  const [first, ...others] = parts.filter((part) => part !== undefined);
  if (spots.length === 0) return complain(desk, spot, 'no-header', desk.words.job.ends.emptyList);
  if (!first || !preparation || 1 + others.length < spots.length) return undefined;
  complainOfTightBend(desk, spot, [first, ...others], tube.root);
  return { kind: 'coped', parts: [first, ...others], preparation, ...asTube(tube, [first, ...others]) };
}

/** What a tube asks for all its ends. */
function asTube({ root, toFlat }: OwnTube, parts: readonly Part[]): Pick<CopedEnd, 'root' | 'toFlat'> {
  return { ...(root && { root }), ...(toFlat && isOntoBox(parts) && { toFlat }) };
}

function readCoped(desk: Desk, spot: Spot, fields: Fields, tube: OwnTube, name: EndName): End | undefined {
  const part = readPart(desk, spot, fields, tube, name);
  const seam = readSeam(desk, fields.get('seam'), tube.section);
  const root = fields.has('root') ? rootAt(desk, fields.get('root')) : tube.root;
  const preparation = prepare(desk, readEdgeAsk(desk, fields), tube.edges, tube.wall);
  if (part === undefined || preparation === undefined) return undefined;
  const ownFlat = fields.get('to');
  if (ownFlat && !isOntoBox([part])) return noFlat(desk, ownFlat);
  complainOfTightBend(desk, fields.get('root') ?? spot, [part], root);
  const fitUp = isMark(fields.get('clock')) && { clock: true, between: false };
  return {
    kind: 'coped',
    parts: [part],
    preparation,
    ...asTube(tube, [part]),
    ...(toFlatAt(desk, fields) && { toFlat: true }),
    ...(root && { root }),
    ...(seam && { seam }),
    ...(fitUp && { fitUp }),
  };
}

/** A station, as this tube counts them. */
export function readSeam(
  desk: Desk,
  spot: Spot | undefined,
  section: TubeSection | undefined,
): Angle | Length | undefined {
  return section && tubeFactsOf(section).outline().stations === 'mm'
    ? lengthAt(desk, spot, 'any')
    : angleAt(desk, spot);
}

function readPart(
  desk: Desk,
  spot: Spot,
  fields: Fields,
  tube: OwnTube,
  at: EndName | 'list',
): Part | undefined {
  const words = desk.words.job.ends;
  const notch = fields.get('notch');
  if (notch) return readNotched(desk, spot, fields, notch, tube.section);
  const header = fields.get('onto');
  if (header === undefined) missing(desk, spot, 'onto', words.noHeader);
  const onto = header && readHeader(desk, header);
  const angle = readAngleOnto(desk, spot, fields, onto);
  const clock = readClock(desk, fields, tube.section, angle, at);
  const offset = fields.has('offset')
    ? lengthAt(desk, fields.get('offset'), 'any', 'offset')
    : noLength(desk);
  const shift = fields.has('shift') ? lengthAt(desk, fields.get('shift'), 'any') : noLength(desk);
  const flat = onto?.kind === 'plate' || onto?.kind === 'mitre';
  if (flat && fields.has('offset') && offset?.mm !== 0) {
    return complain(desk, fields.get('offset') ?? spot, 'no-offset', words.noOffset(onto.kind));
  }
  if (onto && offset && tube.section) {
    complainOfMiss(desk, fields.get('offset') ?? spot, onto, offset, tube.section);
  }
  if (onto?.kind === 'mitre' && onto.segments && tube.section) {
    const { across } = tubeFactsOf(tube.section);
    const { radius } = onto.segments;
    const tight = desk.words.headers.piecesTooTight(across, radius);
    if (radius.mm <= across.mm / 2) return complain(desk, header ?? spot, 'bend', tight);
  }
  return onto && angle && clock && offset && shift && { onto, angle, clock, offset, shift };
}

/** What the lengths to its edge make of an end that is cut already. */
function readNotched(
  desk: Desk,
  spot: Spot,
  fields: Fields,
  notch: Spot,
  section: TubeSection | undefined,
): Part | undefined {
  const lie = notchedAt(desk, fields, notch, section);
  if (lie && section) complainOfMiss(desk, fields.get('offset') ?? spot, lie.onto, lie.offset, section);
  return lie && { ...lie, shift: noLength(desk) };
}

/** The station of the header: told, measured, or marked on the tube at the frame. */
function readClock(
  desk: Desk,
  fields: Fields,
  section: TubeSection | undefined,
  angle: Angle | undefined,
  at: EndName | 'list',
): Angle | undefined {
  const spot = fields.get('clock');
  if (spot === undefined) return NO_ANGLE;
  if (!isMark(spot)) return clockAt(desk, spot, section);
  const refused = noMark(at, section, desk.words);
  if (refused) return complain(desk, spot, 'mark', refused);
  return angle && markedClock(angle);
}

/** The angle as asked; a mitre has none to ask for, since it halves the turn. */
function readAngleOnto(desk: Desk, spot: Spot, fields: Fields, onto: Header | undefined): Angle | undefined {
  const words = desk.words.job.ends;
  if (onto?.kind === 'mitre') {
    if (!fields.has('angle')) return mitreAngle(onto);
    return complain(desk, fields.get('angle') ?? spot, 'no-angle', words.mitreHasItsAngle);
  }
  if (!fields.has('angle'))
    return isMitre(fields.get('onto')) ? undefined : missing(desk, spot, 'angle', words.noAngle);
  return jointAngleInWaysAt(desk, fields.get('angle') ?? spot);
}

/** Whether a mitre is meant, however much of it is lacking. */
function isMitre(onto: Spot | undefined): boolean {
  return isMap(onto?.node) && onto.node.has('mitre');
}

/**
 * Two tubes that turn by T are each cut on a plane at 90 - T/2 degrees; in a bend of N pieces each of N - 1 joints
 * turns its share (NAVEDTRA 14119, Hull Technician: mitre angle T / (2N - 2)).
 */
function mitreAngle({ turn, segments }: MitreHeader): Angle {
  const joints = (segments?.pieces ?? 2) - 1;
  const rad = Math.PI / 2 - turn.rad / (2 * joints);
  return { rad, wrote: writeAngle(rad), unit: 'deg' };
}

function noLength(desk: Desk): Length {
  return { mm: 0, wrote: '0', unit: desk.bareUnit };
}

/** A tube whose whole width passes beside the header meets nothing. */
function complainOfMiss(desk: Desk, spot: Spot, onto: Header, offset: Length, section: TubeSection): void {
  const { words } = desk;
  const [header, tube] = [headerFactsOf(onto), tubeFactsOf(section)];
  const reach = header.across + tube.outline().reach;
  if (Math.abs(offset.mm) < reach - 1e-9) return;
  const objection = words.job.ends.misses(
    tube.said(words).words,
    header.said(words).words,
    reach,
    desk.bareUnit,
  );
  complain(desk, spot, 'misses', objection);
}
