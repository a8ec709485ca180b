import { isMap } from 'yaml';
import type { Said } from '../../measure/said.ts';
import {
  type Angle,
  type Length,
  type LengthUnit,
  type Mm,
  type Radians,
  radians,
} from '../../measure/units.ts';
import { decimalInches, millimetres, writeAngle } from '../../measure/write.ts';
import { type FoundNotch, notchFrom } from '../../space/notch/found-notch.ts';
import type { Notch } from '../../space/notch/notch.ts';
import { oddLengthOf } from '../../space/notch/odd-length.ts';
import type { Part, RoundHeader, TubeSection } from '../job.ts';
import { readHeader } from '../kinds.ts';
import { complain, type Desk, type Spot } from '../text/desk.ts';
import { type Fields, itemsOf } from '../text/fields.ts';
import { lengthAt, usualSize } from '../text/values.ts';
import { clockAt, isMark } from './clock.ts';

/** Fewer leave too little over to tell how sure the values are; more nobody measures. */
const COUNT = { least: 8, most: 120 };

/** How an end lies on its header. */
type Lie = Pick<Part, 'onto' | 'angle' | 'clock' | 'offset'>;

/** What of an end is told beside the lengths. */
type Told = Partial<Omit<Lie, 'onto'> & { readonly onto: RoundHeader }>;

/**
 * How an end lies on a round header, from lengths to the edge of the cope that it has: angle, and clock, offset and the header's size
 * where these are not told. Undefined where the lengths were misread or don't settle it, which is told.
 */
export function notchedAt(fields: Fields, spot: Spot, section: TubeSection | undefined): Lie | undefined {
  const told = toldAt(fields, section);
  const readings = readingsAt(spot);
  if (section && section.kind !== 'round') {
    return complain(spot, 'notch', fields.desk.words.job.ways.notch.ofRoundTube);
  }
  if (!section || !told || !readings) return undefined;
  const found = foundAt(spot, readings, section.od.mm / 2, told);
  return found && lieOf(fields.desk, found, told, readings.length);
}

function toldAt(fields: Fields, section: TubeSection | undefined): Told | undefined {
  const words = fields.desk.words.job.ways.notch;
  const [given, angle, clock, beside] = ['onto', 'angle', 'clock', 'offset'].map((key) => fields.get(key));
  if (angle) return complain(angle, 'two-ways', words.findsAngle);
  if (clock && isMark(clock)) return complain(clock, 'mark', words.noMark);
  const header = given && isEmptyMap(given) ? undefined : given;
  const onto = header && readHeader(header);
  const [turned, offset] = [clock && clockAt(clock, section), lengthAt(beside, 'any', 'offset')];
  if (onto && onto.kind !== 'round') return complain(header, 'notch', words.onRoundHeader);
  if ((header && !onto) || (clock && !turned) || (beside && !offset)) return undefined;
  return { ...(onto && { onto }), ...(turned && { clock: turned }), ...(offset && { offset }) };
}

/** A header of no size yet is to be found. */
function isEmptyMap({ node }: Spot): boolean {
  return isMap(node) && node.items.length === 0;
}

interface Reading {
  readonly spot: Spot;
  readonly length: Length;
}

function readingsAt(spot: Spot): readonly Reading[] | undefined {
  const words = spot.desk.words.job.ways.notch;
  const spots = itemsOf(spot, words.lengths);
  if (spots === undefined) return undefined;
  const { length: count } = spots;
  if (count < COUNT.least) return complain(spot, 'notch', words.tooFew(count));
  if (count > COUNT.most) return complain(spot, 'notch', words.tooMany(count, COUNT.most));
  const readings = spots.flatMap((each) => {
    const named = { ...each, key: spot.key };
    const length = lengthAt(named, 'positive');
    return length ? [{ spot: named, length }] : [];
  });
  if (readings.length < count) return undefined;
  const longest = readings.reduce((a, b) => (b.length.mm > a.length.mm ? b : a));
  return usualSize(longest.spot, longest.length, 'between') && readings;
}

/** Lengths that lie farther from a notch have one among them that is wrong, or are of none. */
const SCATTER = { odd: 0.7, none: 2 };

function foundAt(
  spot: Spot,
  readings: readonly Reading[],
  tubeRadius: Mm,
  { onto, clock, offset }: Told,
): FoundNotch | undefined {
  const words = spot.desk.words.job.ways.notch;
  const lengths = readings.map(({ length }) => length.mm);
  const given: Partial<Notch> = {
    ...(onto && { radius: onto.od.mm / 2 }),
    ...(clock && { clock: clock.rad }),
    ...(offset && { offset: offset.mm }),
  };
  const found = notchFrom(lengths, tubeRadius, given);
  const odd = found.scatter > SCATTER.odd ? oddLengthOf(lengths, tubeRadius, given) : undefined;
  if (odd) {
    const station = (odd.place * 2 * Math.PI) / lengths.length;
    const objection = words.odd(odd.place + 1, station, odd.instead, spot.desk.bareUnit);
    return complain(readings[odd.place]?.spot ?? spot, 'odd-length', objection);
  }
  const open = unsettledOf(spot.desk, found);
  if (open.length > 0 && isClosedTwice(spot.desk, lengths, tubeRadius, given)) {
    return complain(spot, 'unsettled', words.closedTwice(lengths.length - 1));
  }
  if (found.scatter > SCATTER.none) {
    return complain(spot, 'no-notch', words.noNotch(found.scatter, spot.desk.bareUnit));
  }
  return open.length > 0 ? complain(spot, 'unsettled', words.unsettled(open)) : found;
}

/** Whether the last length is the first again, back where they began, and the others settle what all of them do not. */
function isClosedTwice(desk: Desk, lengths: readonly Mm[], tubeRadius: Mm, given: Partial<Notch>): boolean {
  const [first = 0, last = 0] = [lengths[0], lengths.at(-1)];
  if (Math.abs(first - last) > 1 || lengths.length <= COUNT.least) return false;
  const once = notchFrom(lengths.slice(0, -1), tubeRadius, given);
  return once.scatter <= SCATTER.odd && unsettledOf(desk, once).length === 0;
}

/** A value that may be farther off is no reading of it. */
const SETTLED = {
  offset: 1,
  clock: radians(3),
  angle: Number.MAX_VALUE,
  radius: Number.MAX_VALUE,
} as const satisfies Notch;

const KEY_OF = { offset: 'offset', clock: 'clock', angle: 'angle', radius: 'onto' } as const;

function unsettledOf(desk: Desk, { within }: FoundNotch): readonly Said[] {
  const { quantities, job } = desk.words;
  const { offBy, within: about } = job.ways.notch;
  return (['offset', 'clock', 'angle', 'radius'] as const).flatMap((name) => {
    const off = within[name] ?? 0;
    if (off <= SETTLED[name]) return [];
    const said = name === 'offset' ? about(off, desk.bareUnit) : quantities.angle(off);
    return [offBy(desk.say.key(KEY_OF[name]), Number.isFinite(off) ? said : undefined)];
  });
}

/** The values that were found, each with what it may be off by; those that were told, as they are. */
function lieOf(desk: Desk, found: FoundNotch, told: Told, count: number): Lie {
  const { quantities } = desk.words;
  const { found: said, within: about } = desk.words.job.ways.notch;
  const { within } = found;
  const angle = (rad: Radians, off = 0): Angle => ({
    rad,
    wrote: writeAngle(rad),
    unit: 'deg',
    readings: [said(count, quantities.angle(rad), quantities.angle(off))],
    within: off,
  });
  const length = (mm: Mm, off = 0): Length => ({
    ...written(mm, desk.bareUnit),
    readings: [said(count, quantities.inOne(mm, desk.bareUnit), about(off, desk.bareUnit))],
    within: off,
  });
  return {
    onto: told.onto ?? { kind: 'round', od: length(2 * found.radius, 2 * (within.radius ?? 0)) },
    angle: angle(found.angle, within.angle),
    clock: told.clock ?? angle(found.clock, within.clock),
    offset: told.offset ?? length(found.offset, within.offset),
  };
}

function written(mm: Mm, unit: LengthUnit): Pick<Length, 'mm' | 'wrote' | 'unit'> {
  return { mm, wrote: unit === 'in' ? decimalInches(mm) : millimetres(mm), unit };
}
