import type { Said } from '../../../measure/said.ts';
import { type Length, MM_PER_INCH, type Mm, type Radians } from '../../../measure/units.ts';
import { inchFraction } from '../../../measure/write.ts';
import { asWritten, joined, say } from '../../said.ts';
import { quantities } from '../quantities.ts';
import { bend } from './bend-steps.ts';
import { edge, fileToRod, innerEdge, spineExplained } from './step-parts.ts';

type EndName = 'A' | 'B';
type Units = 'mm' | 'in';

const { angle, one, own } = quantities;
const NOTHING = say``;

const blank = {
  /** Proves leaf, scale and tube before a blank is cut. */
  scrap: (end: EndName, girth: Said): Said =>
    say`Try the leaf (wrap template) of end ${end} on a scrap: its seam edges meet, a tape reads ${girth}.`,
  /** Of a tube whose length is marked at the frame. */
  marked: (copies: number): Said =>
    say`Cut ${blanks(copies)} long enough to reach past both headers: its length is marked at the frame.`,
  /** Of a tube whose length nobody gave. */
  unmeasured: (copies: number, depth: Mm, units: Units): Said =>
    say`Cut ${blanks(copies)} longer than the tube has to be: leave at least ${roundedUp(depth, units)} extra.`,
  square: (copies: number, length: Said): Said =>
    say`Cut ${blanks(copies)} square at both ends, ${length} long.`,
  exact: (copies: number, length: Said): Said =>
    say`Cut ${blanks(copies)} ${length} long, as long as the finished tube: nothing is over for a second try.`,
  over: (copies: number, length: Said, over: Said): Said =>
    say`Cut ${blanks(copies)} ${length} long: ${over} more than the finished tube, for a second try.`,
  squareEnd: (end: EndName): Said => say`Cut end ${end} square: the length is measured from it.`,
  /** Where a tube shows how it is turned, along what the spine runs. */
  spine: (along: Said | undefined): Said =>
    along
      ? say`Scribe the ${spineExplained} along ${along}.`
      : say`Scribe the ${spineExplained} from end to end, along an angle iron that sits on the tube.`,
};

/** Up to the next millimetre or sixteenth. */
function roundedUp(mm: Mm, units: Units): Said {
  const step = units === 'mm' ? 1 : MM_PER_INCH / 16;
  const up = Math.ceil(mm / step - 1e-6) * step;
  return units === 'mm' ? quantities.mm(up) : say`${asWritten(inchFraction(up))} in`;
}

function blanks(copies: number): Said {
  return copies > 1 ? say`${copies} blanks` : say`the blank`;
}

const lay = {
  first: (end: EndName, why: Said | undefined, spine: boolean, place: Said): Said => {
    const printed = why ? say` first. ${why}. Printed side out` : say` printed side out`;
    const turned = spine
      ? say`its spine on the scribed one`
      : say`its ${spineExplained} anywhere round the tube`;
    return say`Lay the leaf of end ${end}${printed}, ${turned}, ${place}. Wrap and tape it so that the ends of its base edge meet.`;
  },
  second: (end: EndName, place: Said): Said =>
    say`Lay the leaf of end ${end} ${place}. Wrap and tape it as before.`,
  /** Why an end comes before the other. */
  why: {
    seated: say`The other is marked with this one seated`,
    shallower: say`Its cut is shallower: a mistake there wastes less`,
    alike: say`Both ends are alike`,
    deep: say`Both cuts are equally deep`,
    header: (deep: boolean): Said =>
      deep ? say`Both cuts are equally deep; its header comes first` : say`Its header comes first`,
    order: say`The order of work has it so`,
  },
  atLongPoint: say`its long point just on the tube, so that you waste least`,
  fromEnd: (distance: Said, end: EndName): Said => say`its base edge ${distance} from end ${end} all round`,
  /** On marks or the spine; by a distance also from the base edge that was marked first, below nought where the leaves overlap. */
  after: (
    marks: { readonly rotation: boolean; readonly length: boolean },
    apart: { readonly mm: Mm; readonly from: EndName } | undefined,
    units: Units,
  ): Said => {
    const { rotation, length } = marks;
    if (rotation && length) return say`with its lines on the rotation mark and the length mark`;
    const turned = rotation ? say`with its line on the rotation mark` : say`with its spine on the spine`;
    if (length) return say`${turned} and its line on the length mark`;
    if (!apart) return turned;
    const marked = say`the one marked at end ${apart.from}`;
    return apart.mm >= 0
      ? say`${turned}, its base edge ${one(apart.mm, units)} from ${marked}`
      : say`${turned}, its base edge ${one(-apart.mm, units)} beyond ${marked}, over where that leaf lay`;
  },
};

const cut = {
  first: (end: EndName, base: boolean, how: Said): Said =>
    say`Mark the line${base ? say` and the base edge` : NOTHING}, take the leaf off and cut end ${end} ${how}.`,
  second: (end: EndName, how: Said): Said => say`Mark the line, take the leaf off and cut end ${end} ${how}.`,
  secondAlike: (end: EndName, first: EndName): Said =>
    say`Mark the line, take the leaf off and cut end ${end}; edge as at end ${first}.`,
  edge,
  innerEdge,
};

const seat = {
  hold: (end: EndName, on: Said, root: Length): Said =>
    say`Hold end ${end} at ${on} with a root gap of ${own(root)} all round; file where it is less.`,
  /** Where the end is known to touch, and the gap that stays. */
  touching: (end: EndName, on: Said, touch: Said, gap: Said | undefined): Said =>
    say`Seat end ${end} on ${on}: ${touch}.${gap ?? NOTHING}`,
  file: (end: EndName, on: Said, gap: Said | undefined): Said =>
    gap
      ? say`Seat end ${end} on ${on}: file until it touches.${gap}`
      : say`Seat end ${end} on ${on}: ${fileToRod}.`,
  alike: (end: EndName, on: Said, first: EndName): Said =>
    say`Seat end ${end} on ${on}: file as at end ${first}.`,
  heldOff: (off: Said): Said => say`its outside edge touches first and holds it off by ${off} along the tube`,
  touches: {
    outer: say`its outside edge touches all round`,
    inner: say`its inside edge touches all round`,
    either: say`its outside edge touches where the dashes run on the line, its inside edge elsewhere`,
    face: say`its face touches all round`,
  },
  /** One that is too wide to fill is not welded over. */
  gap: (gap: Said, at: readonly Said[], tooWide: boolean): Said => {
    const stays = say` A gap of up to ${gap} stays outside, widest at ${at.length > 1 ? say`stations` : say`station`} ${joined(at, ' and ')}`;
    return tooWide
      ? say`${stays}: over 5 mm (3/16 in) is too wide to fill: grind back the edge that touches, and refit.`
      : say`${stays}: make the legs of the weld longer by as much.`;
  },
};

/** The marks of a fit-up. */
const marks = {
  line: (end: EndName, first: EndName, rotation: boolean, heel: Said): Said => {
    const held = say`With end ${first} seated, hold the tube close beside end ${end}’s header, along where it is to go`;
    return rotation ? say`${held}. Scribe the rotation mark along ${heel}.` : say`${held}, and find ${heel}.`;
  },
  heel: say`the middle of its heel side, which faces the acute corner`,
  squareSide: (which: Said): Said => say`the middle of a side that faces along the header${which}`,
  length: (where: Said): Said => say`On that line mark the length: ${where}.`,
};

const facing = {
  /** `twin` tells this hand from the other. */
  check: (end: EndName, first: EndName | undefined, turned: Said, twin: Said): Said => {
    const away = first ? say`away from end ${first}` : say`out at the end`;
    return say`Check which way end ${end} faces before you cut: its arrow points ${away}${turned}.${twin}`;
  },
  unturned: NOTHING,
  leafHeld: say`, and hold the leaf up to the header`,
  /** How the heel of end B stands to that of end A, or at mitres the inside. */
  turned: (twist: Radians, side: Said): Said => {
    const turned = Math.abs(twist);
    if (turned < 1e-9) return say`, and the ${side} of end B is on one line with that of end A`;
    if (Math.abs(turned - Math.PI) < 1e-9) return say`, and the ${side} of end B is opposite that of end A`;
    return say`, and the ${side} of end B stands ${angle(turned)} to the ${way(twist > 0)} of that of end A, with B up`;
  },
  single: NOTHING,
  hand: (hand: 'as-drawn' | 'opposite'): Said => say` ${thisHand(hand)}.`,
  /** Of a pair whose heels lie alike in both hands: what lies to one side, if anything does. */
  handBy: (hand: 'as-drawn' | 'opposite', marks: readonly Said[]): Said =>
    marks.length === 0
      ? say` ${thisHand(hand)}; its twin comes out the same.`
      : say` ${thisHand(hand)}: with B up, ${joined(marks, ', and ')}.`,
  /** One header of an end; numbered where the end has several. */
  header: (end: EndName, number: number | undefined): Said =>
    number === undefined ? say`the header of end ${end}` : say`the header ${number} of end ${end}`,
  /** Its turn from the first one, between 0 and a full turn. */
  stands: (header: Said, turn: Radians): Said =>
    say`${header} stands ${angle(turn < Math.PI ? turn : 2 * Math.PI - turn)} to the ${way(turn < Math.PI)} of header 1`,
  passes: (header: Said, right: boolean, side: Said): Said =>
    say`${header} passes to the ${way(right)} of its ${side}`,
  rolled: (header: Said, roll: Radians, right: boolean, side: Said): Said =>
    say`${header} has its near face rolled ${angle(Math.abs(roll))} to the ${way(right)} of its ${side}`,
  bends: (header: Said, right: boolean, side: Said): Said =>
    say`${header} bends to the ${way(right)} of its ${side}`,
};

function way(right: boolean): Said {
  return right ? say`right` : say`left`;
}

function thisHand(hand: 'as-drawn' | 'opposite'): Said {
  return say`This tube is ${hand === 'opposite' ? say`the opposite hand` : say`as drawn`}`;
}

const finish = {
  deburr: (ends: 1 | 2): Said => say`Deburr ${ends === 2 ? say`both ends` : say`the end`} inside and out.`,
  knife: (ends: readonly EndName[]): Said =>
    say`Take the feather edges off ${joined(
      ends.map((end) => say`end ${end}`),
      ' and ',
    )} to about half the wall: they cut fingers and burn away.`,
  scribeBoth: say`Hold the tube in place and scribe both footprints round it.`,
  scribe: (on: Said): Said => say`Hold the tube in place and scribe its footprint round it, on ${on}.`,
  /** By printed footprints, of which one may be flat. */
  footprints: (flat: boolean): Said =>
    say`${flat ? say`Lay` : say`Wrap`} each end’s footprint ${flat ? say`on` : say`round`} its header, as its card says, and scribe by it.`,
  footprintsOf: (end: EndName, on: Said, flat: boolean, several: boolean): Said => {
    const [lay, at] = flat ? [say`Lay`, say`on`] : [say`Wrap`, say`round`];
    return several
      ? say`${lay} the footprints of end ${end} ${at} ${on}, as their cards say, and scribe by them.`
      : say`${lay} the footprint of end ${end} ${at} ${on}, as its card says, and scribe by it.`;
  },
  ventTube: say`Drill one vent, in the tube itself: sealed, it would burst.`,
  /** Into a header, numbered where the end has several. */
  vent: (end: EndName, number: number | undefined): Said => {
    const wall = number === undefined ? say`the header’s wall` : say`the wall of header ${number}`;
    return say`Drill one vent, inside end ${end}’s footprint, through ${wall}: sealed, it would burst.`;
  },
  clean: (footprints: number): Said => {
    const each = footprints > 1 ? say`each` : say`its`;
    return say`Clean bright 25 mm (1 in) back from the edges${footprints > 0 ? say` and round ${each} footprint` : NOTHING}.`;
  },
  setBetween: say`Set it in by hand: do not spring the frame to make it fit. Tack, and check again.`,
  set: (angles: readonly { readonly rad: Radians; readonly to: Said }[]): Said => {
    const said = angles.map(({ rad, to }) =>
      rad === Math.PI / 2 ? say`square to ${to}` : say`at ${angle(rad)} to ${to}`,
    );
    return say`Set it ${joined(said, ' and ')}. Tack, check the angle, and set it again where the tack has drawn it.`;
  },
  header: (number: number): Said => say`header ${number}`,
};

/** What is done to one tube: its ticket's steps, in the order of the trade. */
export const stepWords = {
  blank,
  lay,
  cut,
  seat,
  marks,
  facing,
  finish,
  bend,
  /** What an end with several headers lands on. */
  itsHeaders: say`its headers`,
};
