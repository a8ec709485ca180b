import { isMap, isScalar, isSeq } from 'yaml';
import type { Angle, Length } from '../measure/units.ts';
import { writeAngle } from '../measure/write.ts';
import { isOntoBox, noFlat, toFlatAt } from './flat.ts';
import type { CopedEnd, End, EndName, Header, MitreHeader, Part, TubeSection } from './job.ts';
import { headerFactsOf, readHeader } from './kinds.ts';
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
export function readEnd(spot: Spot, tube: OwnTube, name: EndName): End | undefined {
  if (spot.misread) return undefined;
  const { node } = spot;
  if (isScalar(node) && typeof node.value === 'string' && node.value.trim().toLowerCase() === 'plain') {
    return { kind: 'plain' };
  }
  if (isSeq(node)) return readUnion(spot, tube);
  if (!isMap(node)) return notA(spot, spot.desk.words.job.ends.end);
  if (node.has('plain'))
    return complain(spot, 'plain', spot.desk.words.job.ends.plainAlone(spot.desk.say.setting(name, 'plain')));
  const fields = fieldsOf(spot, 'end');
  return fields && readCoped(fields, tube, name);
}

/** Several headers that the end lands on at once. How its edge is made, its tube says. */
function readUnion(spot: Spot, tube: OwnTube): End | undefined {
  const spots = itemsOf(spot, spot.desk.words.job.ends.list) ?? [];
  const parts = spots.map((item) => {
    const fields = fieldsOf(item, 'part');
    return fields && readPart(fields, tube, 'list');
  });
  const preparation = prepare({ unclear: false }, tube.edges, tube.wall);
  const [first, ...others] = parts.filter((part) => part !== undefined);
  if (spots.length === 0) return complain(spot, 'no-header', spot.desk.words.job.ends.emptyList);
  if (!first || !preparation || 1 + others.length < spots.length) return undefined;
  complainOfTightBend(spot, [first, ...others], tube.root);
  return { kind: 'coped', parts: [first, ...others], preparation, ...asTube(tube, [first, ...others]) };
}

/** What a tube asks for all its ends. */
function asTube({ root, toFlat }: OwnTube, parts: readonly Part[]): Pick<CopedEnd, 'root' | 'toFlat'> {
  return { ...(root && { root }), ...(toFlat && isOntoBox(parts) && { toFlat }) };
}

function readCoped(fields: Fields, tube: OwnTube, name: EndName): End | undefined {
  const part = readPart(fields, tube, name);
  const seam = readSeam(fields.get('seam'), tube.section);
  const root = fields.has('root') ? rootAt(fields.get('root')) : tube.root;
  const preparation = prepare(readEdgeAsk(fields), tube.edges, tube.wall);
  if (part === undefined || preparation === undefined) return undefined;
  const ownFlat = fields.get('to');
  if (ownFlat && !isOntoBox([part])) return noFlat(ownFlat);
  complainOfTightBend(fields.at('root'), [part], root);
  const fitUp = isMark(fields.get('clock')) && { clock: true, between: false };
  return {
    kind: 'coped',
    parts: [part],
    preparation,
    ...asTube(tube, [part]),
    ...(toFlatAt(fields) && { toFlat: true }),
    ...(root && { root }),
    ...(seam && { seam }),
    ...(fitUp && { fitUp }),
  };
}

/** A station, as this tube counts them. */
export function readSeam(
  spot: Spot | undefined,
  section: TubeSection | undefined,
): Angle | Length | undefined {
  return section && tubeFactsOf(section).outline().stations === 'mm' ? lengthAt(spot, 'any') : angleAt(spot);
}

function readPart(fields: Fields, tube: OwnTube, at: EndName | 'list'): Part | undefined {
  const words = fields.desk.words.job.ends;
  const notch = fields.get('notch');
  if (notch) return readNotched(fields, notch, tube.section);
  const header = fields.get('onto');
  if (header === undefined) missing(fields.spot, 'onto', words.noHeader);
  const onto = header && readHeader(header);
  const angle = readAngleOnto(fields, onto);
  const clock = readClock(fields, tube.section, angle, at);
  const offset = fields.has('offset')
    ? lengthAt(fields.get('offset'), 'any', 'offset')
    : noLength(fields.desk);
  const shift = fields.has('shift') ? lengthAt(fields.get('shift'), 'any') : noLength(fields.desk);
  const flat = onto?.kind === 'plate' || onto?.kind === 'mitre';
  if (flat && fields.has('offset') && offset?.mm !== 0) {
    return complain(fields.at('offset'), 'no-offset', words.noOffset(onto.kind));
  }
  if (onto && offset && tube.section) {
    complainOfMiss(fields.at('offset'), onto, offset, tube.section);
  }
  if (onto?.kind === 'mitre' && onto.segments && tube.section) {
    const { across } = tubeFactsOf(tube.section);
    const { radius } = onto.segments;
    const tight = fields.desk.words.headers.piecesTooTight(across, radius);
    if (radius.mm <= across.mm / 2) return complain(header ?? fields.spot, 'bend', tight);
  }
  return onto && angle && clock && offset && shift && { onto, angle, clock, offset, shift };
}

/** What the lengths to its edge make of an end that is cut already. */
function readNotched(fields: Fields, notch: Spot, section: TubeSection | undefined): Part | undefined {
  const lie = notchedAt(fields, notch, section);
  if (lie && section) complainOfMiss(fields.at('offset'), lie.onto, lie.offset, section);
  return lie && { ...lie, shift: noLength(fields.desk) };
}

/** The station of the header: told, measured, or marked on the tube at the frame. */
function readClock(
  fields: Fields,
  section: TubeSection | undefined,
  angle: Angle | undefined,
  at: EndName | 'list',
): Angle | undefined {
  const spot = fields.get('clock');
  if (spot === undefined) return NO_ANGLE;
  if (!isMark(spot)) return clockAt(spot, section);
  const refused = noMark(at, section, fields.desk.words);
  if (refused) return complain(spot, 'mark', refused);
  return angle && markedClock(angle);
}

/** The angle as asked; a mitre has none to ask for, since it halves the turn. */
function readAngleOnto(fields: Fields, onto: Header | undefined): Angle | undefined {
  const words = fields.desk.words.job.ends;
  if (onto?.kind === 'mitre') {
    if (!fields.has('angle')) return mitreAngle(onto);
    return complain(fields.at('angle'), 'no-angle', words.mitreHasItsAngle);
  }
  if (!fields.has('angle'))
    return isMitre(fields.get('onto')) ? undefined : missing(fields.spot, 'angle', words.noAngle);
  return jointAngleInWaysAt(fields.at('angle'));
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
function complainOfMiss(spot: Spot, onto: Header, offset: Length, section: TubeSection): void {
  const { words } = spot.desk;
  const [header, tube] = [headerFactsOf(onto), tubeFactsOf(section)];
  const reach = header.across + tube.outline().reach;
  if (Math.abs(offset.mm) < reach - 1e-9) return;
  const objection = words.job.ends.misses(
    tube.said(words).words,
    header.said(words).words,
    reach,
    spot.desk.bareUnit,
  );
  complain(spot, 'misses', objection);
}
