import type { Angle, Length } from '../measure/units.ts';
import type { End, Ends, Header, Part, Tube } from './job.ts';

/** The opposite hand of a tube: stations run the other way, so clock, offset, roll, centre and seam change sign. */
export function mirroredTube(tube: Tube): Tube {
  const { A, B } = tube.ends;
  const ends: Ends = { ...(A && { A: mirroredEnd(A) }), ...(B && { B: mirroredEnd(B) }) };
  return { ...tube, ends };
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

/** `35deg` becomes `-35deg`, and back. */
function mirroredWords(wrote: string): string {
  const unsigned = wrote.replace(/^[-+\u2010-\u2015\u2212\uFE58\uFE63\uFF0B\uFF0D]\s*/, '');
  const negative = unsigned !== wrote && !/^[+\uFF0B]/.test(wrote);
  return negative ? unsigned : `-${unsigned}`;
}
