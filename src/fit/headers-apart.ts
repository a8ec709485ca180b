import type { End, Part, Tube } from '../job/job.ts';
import type { Radians } from '../measure/units.ts';

/** Closer to one plane than this nobody could lay it. */
const IN_PLANE = 1e-9;

/**
 * The acute angle between the lines of the two straight headers of a tube that lie in one plane with it, 0 where they are parallel;
 * undefined of any others.
 */
export function headersApart({ ends }: Tube): Radians | undefined {
  const [a, b] = [straightAt(ends.A), straightAt(ends.B)];
  if (!a || !b) return undefined;
  const turn = b.clock.rad - a.clock.rad;
  if (Math.abs(Math.sin(turn)) > IN_PLANE) return undefined;
  // With both heels on one side the angles of a triangle make half a turn; with one on the other, a header is crossed as by parallels.
  const between = Math.cos(turn) > 0 ? Math.PI - a.angle.rad - b.angle.rad : a.angle.rad - b.angle.rad;
  const apart = Math.abs(between);
  return Math.min(apart, Math.PI - apart);
}

function straightAt(end: End | undefined): Part | undefined {
  const part = onlyPart(end);
  return part?.onto.kind === 'round' || part?.onto.kind === 'box' ? part : undefined;
}

/** The one header of an end; none of several, nor where its rotation is only marked. */
export function onlyPart(end: End | undefined): Part | undefined {
  return end?.kind === 'coped' && end.parts.length === 1 && !end.fitUp?.clock ? end.parts[0] : undefined;
}
