import { spelled } from '../../draw/letters.ts';
import type { CopedEnd, Part } from '../../job/job.ts';
import { factsOf } from '../../job/kinds.ts';
import type { Angle, Radians } from '../../measure/units.ts';
import { angleAsWritten, writeAngle } from '../../measure/write.ts';
import { homeStation } from '../../saddle/peaks.ts';
import type { Language } from '../../words/language.ts';
import { endPieceLength, type Segmented } from '../bend-pieces.ts';
import { degreeSigns, inBoth, wrote } from '../names.ts';
import type { Fact } from './fact.ts';

/** What an end lands on and how; several headers are numbered in the order of the job. */
export function headerFacts({ parts, fitUp }: CopedEnd, units: 'mm' | 'in', words: Language): Fact[] {
  const name = (i: number): string => (parts.length > 1 ? headerName(i) : ONLY);
  return parts.flatMap((part, i) => partFacts(part, name(i), units, words, fitUp?.clock ? 'mark' : 'spine'));
}

/** One header of an end, under this name, its stations counted from the spine or from the rotation mark. */
export function partFacts(
  part: Part,
  name: string,
  units: 'mm' | 'in',
  words: Language,
  datum: 'spine' | 'mark' = 'spine',
): Fact[] {
  return [
    { label: name, text: degreeSigns(spelled(factsOf(part.onto).said(words).words)) },
    ...angleFacts(part, units),
    ...placeFacts(part, name === ONLY ? '' : `${name}: `, datum),
  ];
}

/** What an end's one header is called. */
const ONLY = 'header';

/** `header 1`: by its place in the end's list. */
export function headerName(place: number): string {
  return `header ${place + 1}`;
}

function angleFacts({ onto, angle }: Part, units: 'mm' | 'in'): Fact[] {
  if (onto.kind !== 'mitre') return [{ label: 'angle', text: angleWords(angle) }];
  const tilt = { label: 'cut', text: `${writeAngle(Math.PI / 2 - angle.rad)} off square` };
  const { segments } = onto;
  return segments ? [tilt, { label: 'pieces', text: piecesWords({ ...onto, segments }, units) }] : [tilt];
}

/** How long the pieces of a bend are on its centre line. */
function piecesWords(bend: Segmented, units: 'mm' | 'in'): string {
  const half = endPieceLength(bend);
  const { pieces } = bend.segments;
  const leaf = `${pieces} pieces, this leaf for every mitred end`;
  const ends = `an end piece is ${inBoth(half, units)} long on its centre line`;
  return pieces > 2 ? `${leaf}: a middle piece is ${inBoth(2 * half, units)}, ${ends}` : `${leaf}: ${ends}`;
}

/** `whose` names the header where an end has several: it stands before each of these. */
function placeFacts({ onto, clock, offset, shift }: Part, whose: string, datum: 'spine' | 'mark'): Fact[] {
  const facts: Fact[] = [];
  const turned = turnedWords(homeStation(clock.rad, 2 * Math.PI));
  if (onto.kind === 'mitre') {
    facts.push({
      label: 'clock',
      text: `the inside of the corner is ${clock.rad === 0 ? 'on the spine' : turned}`,
    });
  } else if (clock.rad !== 0 && datum === 'spine') {
    facts.push({ label: 'clock', text: `${whose}${turned}` });
  }
  if (offset.mm !== 0) {
    const way = homeStation(clock.rad + (Math.sign(offset.mm) * Math.PI) / 2, 2 * Math.PI);
    const text = `${whose}${wrote(offset)}: the header passes on the side ${writeAngle(way)} round from the ${datum}`;
    facts.push({ label: 'offset', text });
  }
  if (shift.mm !== 0) {
    const text = `${whose}${wrote(shift)}: the header is moved along the tube ${shift.mm > 0 ? 'towards' : 'away from'} its body`;
    facts.push({ label: 'shift', text });
  }
  return facts;
}

/** Which way round from the spine, the shorter way. */
function turnedWords(clock: Radians): string {
  const beyond = clock - Math.PI;
  if (Math.abs(beyond) < 1e-9) return 'opposite the spine, at 180°';
  if (beyond < 0) return `${writeAngle(clock)} to the right of the spine`;
  return `${writeAngle(2 * Math.PI - clock)} to the left of the spine, at ${writeAngle(clock)}`;
}

/** With the angle that a bevel gauge laid on the tube's other side reads. */
function angleWords(angle: Angle): string {
  const words = degreeSigns(spelled(angleAsWritten(angle)));
  if (angle.rad === Math.PI / 2) return words;
  return `${words}; from the other side ${writeAngle(Math.PI - angle.rad)}`;
}
