import type { CopedEnd, MitreHeader, Part } from '../job/job.ts';
import { factsOf } from '../job/kinds.ts';
import type { Angle, Radians } from '../measure/units.ts';
import { angleAsWritten, writeAngle } from '../measure/write.ts';
import { homeStation } from '../saddle/peaks.ts';
import type { Fact } from './fact.ts';
import { spelled } from './letters.ts';
import { inBoth, wrote } from './names.ts';

/** What an end lands on and how; several headers are numbered in the order of the job. */
export function headerFacts({ parts, fitUp }: CopedEnd, units: 'mm' | 'in'): Fact[] {
  const name = (i: number): string => (parts.length > 1 ? headerName(i) : 'header');
  return parts.flatMap((part, i) => partFacts(part, name(i), units, fitUp?.clock ? 'mark' : 'spine'));
}

/** One header of an end, under this name, its stations counted from the spine or from the rotation mark. */
export function partFacts(
  part: Part,
  name: string,
  units: 'mm' | 'in',
  datum: 'spine' | 'mark' = 'spine',
): Fact[] {
  return [
    { label: name, text: spelled(factsOf(part.onto).words) },
    ...angleFacts(part, units),
    ...placeFacts(part, datum),
  ];
}

/** `header 1`: by its place in the end's list. */
export function headerName(place: number): string {
  return `header ${place + 1}`;
}

function angleFacts({ onto, angle }: Part, units: 'mm' | 'in'): Fact[] {
  if (onto.kind !== 'mitre') return [{ label: 'angle', text: angleWords(angle) }];
  const tilt = { label: 'cut', text: `${writeAngle(Math.PI / 2 - angle.rad)} off square` };
  return onto.segments ? [tilt, { label: 'pieces', text: piecesWords(onto, onto.segments, units) }] : [tilt];
}

/**
 * How long the pieces of a bend are on its centre line. Each cut halves the turn of its two neighbours, T / (N - 1):
 * a middle piece is 2 R tan(T / (2N - 2)) long, an end piece half.
 */
function piecesWords({ turn }: MitreHeader, { pieces, radius }: Segments, units: 'mm' | 'in'): string {
  const half = radius.mm * Math.tan(turn.rad / (2 * pieces - 2));
  const leaf = `${pieces} pieces, this leaf for every mitred end`;
  const ends = `an end piece is ${inBoth(half, units)} long on its centre line`;
  return pieces > 2 ? `${leaf}: a middle piece is ${inBoth(2 * half, units)}, ${ends}` : `${leaf}: ${ends}`;
}

type Segments = NonNullable<MitreHeader['segments']>;

function placeFacts({ onto, clock, offset, shift }: Part, datum: 'spine' | 'mark'): Fact[] {
  const facts: Fact[] = [];
  const turned = turnedWords(homeStation(clock.rad, 2 * Math.PI));
  if (onto.kind === 'mitre') {
    facts.push({
      label: 'clock',
      text: `the inside of the corner is ${clock.rad === 0 ? 'on the spine' : turned}`,
    });
  } else if (clock.rad !== 0 && datum === 'spine') {
    facts.push({ label: 'clock', text: turned });
  }
  if (offset.mm !== 0) {
    const way = homeStation(clock.rad + (Math.sign(offset.mm) * Math.PI) / 2, 2 * Math.PI);
    const text = `${wrote(offset)}: the header passes on the side ${writeAngle(way)} round from the ${datum}`;
    facts.push({ label: 'offset', text });
  }
  if (shift.mm !== 0) {
    const text = `${wrote(shift)}: the header is moved along the tube ${shift.mm > 0 ? 'towards' : 'away from'} its body`;
    facts.push({ label: 'shift', text });
  }
  return facts;
}

/** Stations count to the right all round; beyond the far side the way from the left is shorter, and said too. */
function turnedWords(clock: Radians): string {
  const beyond = clock - Math.PI;
  if (Math.abs(beyond) < 1e-9) return `${writeAngle(clock)}, opposite the spine`;
  const left = beyond > 0 ? `, which is ${writeAngle(2 * Math.PI - clock)} to its left` : '';
  return `${writeAngle(clock)}, to the right of the spine${left}`;
}

/** With the angle that a bevel gauge laid on the tube's other side reads. */
function angleWords(angle: Angle): string {
  const words = spelled(angleAsWritten(angle));
  if (angle.rad === Math.PI / 2) return words;
  return `${words}; from the other side ${writeAngle(Math.PI - angle.rad)}`;
}
