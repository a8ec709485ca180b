import { spelled } from '../../draw/letters.ts';
import type { CopedEnd, Part } from '../../job/job.ts';
import { headerFactsOf } from '../../job/kinds.ts';
import type { Said } from '../../measure/said.ts';
import { wrapStation } from '../../space/section.ts';
import type { Language } from '../../words/language.ts';
import { endPieceLength } from '../bend-pieces.ts';
import { sideOfStop } from '../wrap/sides.ts';
import { type Fact, factOf } from './fact.ts';

/** What an end lands on and how; several headers are numbered in the order of the job. */
export function headerFacts({ parts, fitUp }: CopedEnd, units: 'mm' | 'in', words: Language): Fact[] {
  const name = (i: number): Said | undefined => (parts.length > 1 ? words.card.headerName(i + 1) : undefined);
  const datum = fitUp?.clock ? 'mark' : 'spine';
  return parts.flatMap((part, i) =>
    partFacts(part, name(i), units, words, datum).map((fact) =>
      parts.length > 1 ? { ...fact, part: i } : fact,
    ),
  );
}

/** One header of an end, named where the end has several, its stations counted from the spine or from the rotation mark. */
export function partFacts(
  part: Part,
  name: Said | undefined,
  units: 'mm' | 'in',
  words: Language,
  datum: 'spine' | 'mark' = 'spine',
): Fact[] {
  const { card } = words;
  const ofHeader = (phrase: Said): Said => (name === undefined ? phrase : card.ofHeader(name, phrase));
  return [
    factOf(
      'header',
      name ?? card.labels.header,
      card.degreeSigns(spelled(headerFactsOf(part.onto).said(words).brief)),
    ),
    ...angleFacts(part, standsBehind(part, name !== undefined), units, words),
    ...placeFacts(part, ofHeader, name !== undefined, datum, words),
  ];
}

/** Whether a header ends at the joint and stands where the heel is not: it is told and drawn on its own side, where a gauge is held. */
function standsBehind(part: Part, several: boolean): boolean {
  return sideOfStop(part, several) === -1;
}

function angleFacts(
  { onto, angle }: Part,
  behind: boolean,
  units: 'mm' | 'in',
  { card, quantities }: Language,
): Fact[] {
  if (onto.kind !== 'mitre') {
    const text = behind ? quantities.angle(Math.PI - angle.rad) : card.angle(angle);
    return [factOf('angle', card.labels.angle, spelled(text))];
  }
  const tilt = factOf('mitre', card.labels.cut, card.offSquare(Math.PI / 2 - angle.rad));
  const { segments } = onto;
  if (!segments) return [tilt];
  const half = endPieceLength({ ...onto, segments });
  return [tilt, factOf('pieces', card.labels.pieces, card.pieces(segments.pieces, half, units))];
}

/** An angle this little over 90 degrees is square. */
const SQUARE = Math.PI / 2 + 1e-9;

/** `ofHeader` names the header where an end has several. */
function placeFacts(
  part: Part,
  ofHeader: (phrase: Said) => Said,
  several: boolean,
  datum: 'spine' | 'mark',
  { card }: Language,
): Fact[] {
  const { onto, angle, clock, offset, shift } = part;
  const { labels } = card;
  const facts: Fact[] = [];
  const stands = standsBehind(part, several) ? Math.PI : 0;
  const side = wrapStation(clock.rad + stands, 2 * Math.PI);
  const turned = card.turned(side);
  if (onto.kind === 'mitre') {
    const where = clock.rad === 0 ? card.onTheSpine : turned;
    facts.push(factOf('clocking', labels.clock, card.insideOfCorner(where)));
  } else if (!several && angle.rad > SQUARE && datum === 'spine') {
    const where = clock.rad === 0 ? card.onTheSpine : turned;
    const heel = wrapStation(clock.rad + Math.PI, 2 * Math.PI);
    const text = card.obtuse(angle, where, heel === 0 ? card.onTheSpine : card.turned(heel));
    facts.push(factOf('clocking', labels.clock, spelled(text)));
  } else if ((clock.rad !== 0 || several) && datum === 'spine') {
    const where = side === 0 ? card.onTheSpine : turned;
    facts.push(factOf('clocking', labels.clock, ofHeader(where)));
  }
  if (offset.mm !== 0) {
    const way = wrapStation(clock.rad + (Math.sign(offset.mm) * Math.PI) / 2, 2 * Math.PI);
    facts.push(factOf('offset', labels.offset, spelled(ofHeader(card.passes(offset, way, datum)))));
  }
  if (shift.mm !== 0) facts.push(factOf('shift', labels.shift, spelled(ofHeader(card.moved(shift)))));
  return facts;
}
