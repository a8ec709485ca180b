import type { BetweenReading, End, Ends, HeaderEnd, MeasuredBetween, Part, Tube } from './job.ts';
import { headerFactsOf } from './kinds.ts';
import { mirroredAngle, mirroredLength } from './mirrored.ts';

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
    onto: headerFactsOf(part.onto).mirrored,
    clock: mirroredAngle(part.clock),
    offset: mirroredLength(part.offset),
    ...(part.stops && { stops: mirroredStop(part.stops) }),
  };
}

function mirroredStop(stops: HeaderEnd): HeaderEnd {
  return { ...stops, end: mirroredEnd(stops.end), turn: -stops.turn };
}
