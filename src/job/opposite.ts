import type { Angle, Length } from '../measure/units.ts';
import type { BetweenReading, End, Ends, Header, MeasuredBetween, Part, Tube } from './job.ts';

/** The opposite hand of a tube: stations run the other way, so clock, offset, roll, centre and seam change sign. */
export function mirroredTube(tube: Tube): Tube {
  const { A, B } = tube.ends;
  const ends: Ends = { ...(A && { A: mirroredEnd(A) }), ...(B && { B: mirroredEnd(B) }) };
  const { between } = tube;
  return { ...tube, ends, ...(between && 'ways' in between && { between: mirroredBetween(between) }) };
}

function mirroredBetween({ ways: [first, ...others] }: MeasuredBetween): MeasuredBetween {
  return { ways: [mirroredReading(first), ...others.map(mirroredReading)] };
}

function mirroredReading(reading: BetweenReading): BetweenReading {
  if (reading.way !== 'straightedge') return reading;
  const { at } = reading;
  return { ...reading, at: 'rad' in at ? mirroredAngle(at) : mirroredLength(at) };
}

function mirroredEnd(end: End): End {
  if (end.kind === 'plain') return end;
  const [first, ...rest] = end.parts;
  return {
    ...end,
    parts: [mirroredPart(first), ...rest.map(mirroredPart)],
    ...(end.seam && { seam: 'rad' in end.seam ? mirroredAngle(end.seam) : mirroredLength(end.seam) }),
  };
}

function mirroredPart(part: Part): Part {
  return {
    ...part,
    onto: mirroredHeader(part.onto),
    clock: mirroredAngle(part.clock),
    offset: mirroredLength(part.offset),
  };
}

function mirroredHeader(header: Header): Header {
  if (header.kind === 'box') return { ...header, roll: mirroredAngle(header.roll) };
  if (header.kind === 'bend') return { ...header, centre: mirroredAngle(header.centre) };
  return header;
}

function mirroredAngle(angle: Angle): Angle {
  return angle.rad === 0 ? angle : { ...angle, rad: -angle.rad, wrote: mirroredWords(angle.wrote) };
}

function mirroredLength(length: Length): Length {
  return length.mm === 0 ? length : { ...length, mm: -length.mm, wrote: mirroredWords(length.wrote) };
}

/** `35deg` becomes `-35deg`, and back; `arc 9.7mm` becomes `arc -9.7mm`. What a mark is called has no sign. */
function mirroredWords(wrote: string): string {
  if (wrote === 'mark') return wrote;
  const [, name = '', size = ''] = /^((?:arc )?)(.*)$/s.exec(wrote) ?? [];
  const unsigned = size.replace(/^[-+\u2010-\u2015\u2212\uFE58\uFE63\uFF0B\uFF0D]\s*/, '');
  const negative = unsigned !== size && !/^[+\uFF0B]/.test(size);
  return `${name}${negative ? '' : '-'}${unsigned}`;
}
