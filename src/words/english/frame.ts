import type { Said } from '../../measure/said.ts';
import type { Mm, Units } from '../../measure/units.ts';
import { asWritten, joined, say } from '../said.ts';
import { quantities } from './quantities.ts';

/** To a tenth of a millimetre, or as near in inches. */
function toATenth(mm: Mm, units: Units): Said {
  return quantities.amount(Math.round(mm * 10) / 10, units);
}

type AlongAxis = { readonly axis: number; readonly by: Mm };

/** `10 mm below`: how something lies to something else, by the frame's axes. */
function lies(axis: number, by: Mm, units: Units): Said {
  const [right, left] = [
    [say`to the right of`, say`to the left of`],
    [say`behind`, say`in front of`],
    [say`above`, say`below`],
  ][axis] ?? [say``, say``];
  return say`${toATenth(Math.abs(by), units)} ${(by > 0 ? right : left) ?? say``}`;
}

/** What is told of a whole frame. */
export const frameWords = {
  joined: (name: Said, to: Said): Said =>
    say`${name} lies nearer to ${to} than the snap: they are one point, where ${to} is.`,
  near: (end: 'A' | 'B', tube: Said, header: Said): Said =>
    say`End ${end} of ${tube} ends inside ${header}, beside its axis: it is coped onto it there.`,
  clash: (one: Said, other: Said, depth: Mm, crossing: boolean, units: Units): Said =>
    say`${one} and ${other} are in one another's way, ${toATenth(depth, units)} deep. ${
      crossing
        ? say`Make one of them two tubes that end there.`
        : say`Move a point, or let the end of one land on the other.`
    }`,
  overEnd: (tube: Said, end: 'A' | 'B', header: Said, by: Mm, units: Units): Said =>
    say`End ${end} of ${tube} lands ${toATenth(by, units)} over the end of ${header}: lengthen ${header}, or move the point.`,
  /** A tube that leans, between points as far from the ends of two tubes that are written opposite ways. */
  otherSense: (
    leans: Said,
    [one, other]: readonly { readonly point: Said; readonly from: Said; readonly tube: Said }[],
    at: Mm,
    units: Units,
  ): Said =>
    one && other
      ? say`${leans} leans: ${one.point} is ${quantities.amount(at, units)} from ${one.from} on ${one.tube}, ${other.point} as far from ${other.from} on ${other.tube}, which is written the other way.`
      : say``,
  /** Two mitred tubes that all but run straight on: their point, and their other ends. */
  kink: (point: Said, [from, to]: readonly Said[], off: Mm, units: Units): Said =>
    say`${point} is ${toATenth(off, units)} off the line from ${from ?? say``} to ${to ?? say``}: the two tubes are nearly in line there. Move ${point} onto the line, or leave it if the kink is meant.`,
  swapped: (tube: Said, upright: Said, point: Said): Said =>
    say`${tube} leans over 60°; with two of the three lengths of ${point} changed round it would stand as ${upright} does. Were they?`,

  /** A tube that runs from one point to the other all but along the frame's axes. */
  outOfTrue: (
    tube: Said,
    [from, to]: readonly (Said | undefined)[],
    { axis, by }: AlongAxis,
    units: Units,
  ): Said =>
    say`${tube} is a little out of true: ${to ?? say``} lies ${lies(axis, by, units)} ${from ?? say``}. Leave it if that is meant.`,
  besidePlane: (point: Said, { axis, by }: AlongAxis, units: Units): Said =>
    say`${point} lies ${lies(axis, by, units)} all the other points, which are in one plane. Leave it if that is meant.`,
  uneven: (low: readonly Said[], high: readonly Said[], by: Mm, units: Units): Said =>
    say`The feet stand at two heights: ${joined(low, ', ')} ${low.length > 1 ? say`are` : say`is`} ${toATenth(by, units)} lower than ${joined(high, ', ')}.`,
  shortOf: (tube: Said, end: 'A' | 'B', other: Said, by: Mm, units: Units): Said =>
    say`End ${end} of ${tube} stops ${toATenth(by, units)} short of ${other}. If it is to land there, move its point onto ${other}.`,

  sealed: (names: readonly Said[], more: number): Said =>
    say`Welded up, no air gets out of ${joined(names, ', ')}${
      more > 0 ? say` and ${more} more` : say``
    }: drill a vent to the open in one of them first. Sealed, it would burst.`,

  headline: say`FRAME`,
  /** What a whole frame comes to. */
  overall: ([x, y, z]: readonly Said[]): Said =>
    say`${x ?? say``} to the right, ${y ?? say``} back, ${z ?? say``} up over all`,
  /** On paper, in a row. */
  toMeasure: (each: readonly Said[]): Said => say`Measure it before you weld it up: ${joined(each, '; ')}.`,
  total: (size: Said, length: Said, mass: Said | undefined): Said =>
    say`${size}: ${length}${mass ? say`, ${mass}` : say``}`,
  kilograms: (kg: number): Said => say`${asWritten(kg.toFixed(1))} kg`,
  open: (ends: readonly Said[]): Said =>
    say`left open, to cap or plug (drill a vent before you weld a cap on): ${joined(ends, ', ')}`,
  openEnds: (open: Said): Said => say`Ends ${open}.`,
  endOf: (tube: Said, end: 'A' | 'B'): Said => say`${tube} ${end}`,
  /** The diagonals of a rectangle, its corners once round. */
  square: ([a, b, c, d]: readonly Said[], length: Said): Said =>
    say`${a ?? say``} to ${c ?? say``} and ${b ?? say``} to ${d ?? say``}: ${length} each`,
  apart: (one: Said, other: Said, length: Said): Said => say`${one} to ${other} ${length}`,
  across: (each: readonly Said[]): Said => say`across: ${joined(each, ', ')}`,
  labels: {
    size: say`size`,
    tubes: say`tubes`,
    square: say`square`,
    feet: say`feet`,
    open: say`ends`,
    landing: say`lands`,
  },
  /** Where a tube's landings are, from a stop held against its end A. */
  landings: (header: Said, goes: Said): Said =>
    say`On ${header} (${goes}), from a stop square against its end A:`,
  /** Of a line that stands under no heading. */
  fromStop: (mark: Said): Said => say`${mark} from a stop at end A`,
  /** `beside`: its centre line comes out where it does not touch, for there it meets another tube. */
  landing: (
    mark: Said | undefined,
    beside: boolean,
    station: Said,
    side: Said | undefined,
    from: Said,
    to: Said,
  ): Said => {
    const centre = mark && say`${beside ? say`centre line` : say`centre`} ${mark}, `;
    const covers = beside ? say`touches only` : say`covers`;
    return say`${centre ?? say``}station ${station}${side ? say` (${side})` : say``}, ${covers} ${from} to ${to}`;
  },
  weld: say`weld`,
  /** Of an end that is welded where other tubes come to lie over the weld. */
  weldFirst: (end: Said, over: readonly Said[]): Said =>
    over.length === 1
      ? say`${end} before ${joined(over, '')} goes on, which lies over that weld`
      : say`${end} before ${joined(over, ' and ')} go on, which lie over that weld`,

  /** Of a tube where it stands in its frame: x to the right, y away, z up. */
  sides: {
    top: say`on top`,
    underside: say`underneath`,
    front: say`at the front`,
    back: say`at the back`,
    left: say`on the left`,
    right: say`on the right`,
  },

  /** The sheet of views. */
  views: (title: string | undefined): Said => (title === undefined ? say`The frame` : asWritten(title)),
  twins: say`a name with ' is its twin across the mirror`,
  from: {
    front: say`from the front`,
    side: say`from the right`,
    above: say`from above, the front below`,
    angle: say`at an angle`,
  },
  /** Where an end is, what it lands on there in the order of its headers, or what it is spliced to or mitred with. */
  at: (point: Said, headers: readonly Said[], other: Said | undefined): Said => {
    if (other) return say`${point} (meets ${other})`;
    if (headers.length < 2) return headers.length === 0 ? point : say`${point} (on ${headers[0] ?? say``})`;
    const numbered = headers.map((header, i) => say`${i + 1} ${header}`);
    return say`${point} (headers ${joined(numbered, ', ')})`;
  },
  /** Where a tube goes: its ends' points, and which of its lines faces up or back. */
  goes: (a: Said, b: Said, station: Said, way: 'up' | 'back'): Said =>
    say`A at ${a}, B at ${b}, station ${station} faces ${way === 'up' ? say`up` : say`back`}`,
  ofHand: (hand: Said, goes: Said): Said => say`${hand}: ${goes}`,
  /** Of tubes that would hold their air in together. */
  vent: say`vent`,
  ventToOpen: (drill: Said): Said =>
    say`drill ${drill}, to the open, before it is welded up: with what it is joined to it would be sealed, and burst`,
  lands: (tube: Said, end: 'A' | 'B'): Said => say`${tube} ${end} lands`,
  /** Where the cross of a footprint goes on a header. */
  crossFrom: say`measured from a stop at the header's end A`,
  cross: (at: Said, station: Said, arrow: 'A' | 'B'): Said =>
    say`${at}, station ${station}, arrow to ${arrow}`,
};
