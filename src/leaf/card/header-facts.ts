import { spelled } from '../../draw/letters.ts';
import type { Part } from '../../job/job.ts';
import { headerFactsOf } from '../../job/kinds.ts';
import type { Said } from '../../measure/said.ts';
import type { Cope } from '../../saddle/cope.ts';
import { wrapStation } from '../../space/section.ts';
import type { Language } from '../../words/language.ts';
import { endPieceLength } from '../bend-pieces.ts';
import { type HeaderSide, sideOfPart } from '../wrap/sides.ts';
import { type Fact, factOf } from './fact.ts';

/** What an end lands on and how; several headers are numbered in the order of the job. */
export function headerFacts(cope: Cope, units: 'mm' | 'in', words: Language): Fact[] {
  const { parts, fitUp } = cope.end;
  const name = (i: number): Said | undefined => (parts.length > 1 ? words.card.headerName(i + 1) : undefined);
  const datum = fitUp?.clock ? 'mark' : 'spine';
  return parts.flatMap((part, i) =>
    partFacts(part, name(i), sideOfPart(cope, i), units, words, datum).map((fact) =>
      parts.length > 1 ? { ...fact, part: i } : fact,
    ),
  );
}

/** One header of an end, named where the end has several, its stations counted from the spine or from the rotation mark. */
export function partFacts(
  part: Part,
  name: Said | undefined,
  side: HeaderSide | undefined,
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
    ...angleFacts(part, side === -1, units, words),
    ...placeFacts(part, ofHeader, name === undefined ? undefined : (side ?? 1), datum, words),
  ];
}

/** `behind` where it is told on the side of the tube that its clock does not have: there a gauge is held. */
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

/** `ofHeader` names the header where an end has several, each told on a side of its own. */
function placeFacts(
  part: Part,
  ofHeader: (phrase: Said) => Said,
  told: HeaderSide | undefined,
  datum: 'spine' | 'mark',
  { card }: Language,
): Fact[] {
  const { onto, angle, clock, offset, shift } = part;
  const { labels } = card;
  const facts: Fact[] = [];
  const side = wrapStation(clock.rad + (told === -1 ? Math.PI : 0), 2 * Math.PI);
  const turned = card.turned(side);
  if (onto.kind === 'mitre') {
    const where = clock.rad === 0 ? card.onTheSpine : turned;
    facts.push(factOf('clocking', labels.clock, card.insideOfCorner(where)));
  } else if (!told && angle.rad > SQUARE && datum === 'spine') {
    const where = clock.rad === 0 ? card.onTheSpine : turned;
    const heel = wrapStation(clock.rad + Math.PI, 2 * Math.PI);
    const text = card.obtuse(angle, where, heel === 0 ? card.onTheSpine : card.turned(heel));
    facts.push(factOf('clocking', labels.clock, spelled(text)));
  } else if ((clock.rad !== 0 || told) && datum === 'spine') {
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
