import type { Said } from '../../../measure/said.ts';
import type { Length, Mm, Radians, Units } from '../../../measure/units.ts';
import { joined, say } from '../../said.ts';
import { quantities } from '../quantities.ts';
import { bend } from './bend-steps.ts';
import {
  type Edge,
  fileToRod,
  innerEdge,
  markAndCut,
  reachesOut,
  spineExplained,
  spineExplainedMm,
} from './step-parts.ts';

type EndName = 'A' | 'B';
const { angle, own, tape } = quantities;
const NOTHING = say``;

const blank = {
  /** Proves leaf, scale and tube before a blank is cut. */
  scrap: (edges: readonly Edge[], folded: boolean): Said => {
    const outside = edges.some(reachesOut) ? say`, but outside any dashes in the waste` : NOTHING;
    const unless = say`if not, measure the bars, then ${folded ? say`the tube’s corners` : say`round the tube`}, and print again by that.`;
    return edges.length > 1
      ? say`Cut out the leaves (wrap templates) of these codes on the solid line${outside}. On a scrap their seam edges must meet: ${unless}`
      : say`Cut out the leaf (wrap template) of this code on the solid line${outside}. On a scrap its seam edges must meet: ${unless}`;
  },
  /** Of a leaf on several sheets. */
  tape: say`Put a leaf or footprint that is on several sheets together first: trim and tape them as their heads say.`,
  /** Of a tube whose length is marked at the frame. */
  marked: (blanks: number): Said => say`Cut ${theBlank(blanks)} long enough to reach past both headers.`,
  /** Of a tube whose length nobody gave. */
  /** `past`: how far its long point lies beyond the work point. */
  unmeasured: (blanks: number, end: EndName, past: Mm, units: Units): Said => {
    const more =
      past > 0
        ? say`and ${quantities.roundedUp(past, units)} more`
        : say`less ${quantities.roundedDown(-past, units)}`;
    return say`Cut ${theBlank(blanks)} at least as long as the tube is to be from the work point of end ${end}, ${more}, where its long point lies.`;
  },
  /** Of one that is sawn, and whose length nobody gave. */
  long: (blanks: number): Said => say`Cut ${theBlank(blanks)} longer than the tube has to be.`,
  square: (blanks: number, length: Said): Said =>
    say`Cut ${theBlank(blanks)} square at both ends, ${length} long.`,
  /** Of a piece too short to be held: the end it is parted off after, where it is not the last that is done. */
  onStock: (first: EndName | undefined): Said =>
    say`Keep the stock long: part the piece off ${first ? say`after end ${first}` : say`last`}.`,
  exact: (blanks: number): Said => say`Cut ${theBlank(blanks)}: nothing is over for a second try.`,
  over: (blanks: number, over: Said): Said =>
    say`Cut ${theBlank(blanks)}: ${over} ${blanks > 1 ? say`of each ` : NOTHING}is over, for a second try.`,
  /** `wide`: no saw takes it at once. */
  squareEnd: (end: EndName, wide: boolean): Said =>
    say`Cut end ${end} square${wide ? say`, along the edge of a straight strip of paper wrapped round it` : NOTHING}: the length is measured from it.`,
  /** Where a tube shows how it is turned, along what the spine runs. */
  spine: (along: Said | undefined): Said =>
    along
      ? say`Scribe the ${spineExplainedMm} along ${along}.`
      : say`Scribe the ${spineExplained} by an angle iron laid on it.`,
  /** `among` others that look alike, of a frame or in the person's own words; `paired` with another hand. */
  lettered: (spine: Said, among: boolean, paired: boolean): Said =>
    say`${spine} Write ${among ? say`name, ` : NOTHING}${paired ? say`hand, ` : NOTHING}A and B by it.`,
};

function theBlank(blanks: number): Said {
  return blanks > 1 ? say`the blanks` : say`the blank`;
}

const lay = {
  first: (end: EndName, why: Said, spine: boolean, folded: boolean, place: Said): Said => {
    const crease = folded
      ? say`Crease the leaf along each line of dashes and dots: the middle of a corner lies there. Its mm count round the tube from the spine. `
      : NOTHING;
    const turned = spine
      ? say`its spine on the scribed one`
      : say`its ${spineExplained} anywhere round the tube`;
    return say`${crease}Lay leaf ${end}${why}, printed side out, ${turned}, ${place}. Tape it so that the ends of its base edge meet.`;
  },
  /** Of two ends, and of an end B why. */
  isFirst: {
    alone: NOTHING,
    asNamed: say` first`,
    shallower: say` first (its cut is shallower: a mistake there wastes less)`,
    inOrder: say` first (its header comes first in the order of work)`,
  },
  second: (end: EndName, marked: boolean, place: Said): Said =>
    say`${marked ? say`Take the tube out, and lay` : say`Lay`} leaf ${end} ${place}. Tape it as before.`,
  atLongPoint: say`its long point just on the tube`,
  fromEnd: (end: EndName): Said => say`its base edge as far from end ${end} as the leaf says`,
  /** On marks or the spine; by the leaf's distance also from the base edge that was marked first. */
  after: (
    marks: { readonly rotation: boolean; readonly length: boolean },
    from: EndName | undefined,
  ): Said => {
    const { rotation, length } = marks;
    const turned = rotation ? say`with its rotation line on the rotation mark` : say`spine on spine`;
    if (length) return say`${turned}, its length line on the length mark`;
    return from
      ? say`${turned}, its base edge as far from the one marked at end ${from} as the leaf says`
      : turned;
  },
};

const cut = {
  /** `base` where the other leaf is laid by the base edge of this one. */
  end: (end: EndName, base: boolean, how: Edge): Said =>
    markAndCut(say`end ${end}`, base ? say` and the base edge` : NOTHING, how),
  /** Of a tube whose length is not told: what its leaf's distance is for. */
  lengthFrom: say` The tube’s length is measured from the base edge: the leaf says how far from there the work point is.`,
  alike: (end: EndName, first: EndName): Said => say`Mark and cut end ${end} as you did end ${first}.`,
  innerEdge,
};

const seat = {
  /** Knife edges and burrs come off before the last seating, or the proven fit opens again. */
  deburred: (end: EndName, hollow: boolean, seated: Said): Said =>
    say`Deburr end ${end}${hollow ? say` inside and out` : NOTHING}. ${seated}`,
  hold: (on: Said, root: Length): Said =>
    say`Hold it at ${on} with a root gap of ${own(root)} all round; file where it is less.`,
  /** Where the end is known to touch. */
  touching: (on: Said, touch: Said): Said => say`Seat it on ${on}: ${touch}.`,
  file: (on: Said, how: Said): Said => say`Seat it on ${on}: file until ${how}.`,
  itTouches: say`it touches`,
  asPictured: say`its headers, turned as the picture from end A has them`,
  noRod: (where: 'anywhere' | 'touching', units: Units): Said => fileToRod(where, units),
  alike: (on: Said, first: EndName): Said => say`Seat it on ${on}: file as at ${first}.`,
  /** Of an end that does not sit on its header's middle. */
  beside: (by: Said): Said =>
    say` It sits ${by} beside the header’s middle, as its picture shows: don’t file that away.`,
  touches: {
    outer: say`its outside edge touches all round`,
    inner: say`its inside edge touches all round`,
    either: say`everywhere its outside or its inside edge touches`,
    face: say`its face touches all round`,
  },
};

/** What may disappoint, boxed in the step where it bites, with what to do. */
const warnings = {
  short: (left: Said): Said =>
    say`Only ${left} is left between the short points, less than the tube's diameter: use one solid piece.`,
  small: (first: EndName, second: EndName | undefined): Said =>
    say`Too short to hold by hand: cope end ${first} on long stock. ${second ? say`For end ${second} clamp` : say`Clamp`} it in a vise or V-block.`,
  smallPieces: say`Pieces this short are never held by hand: clamp the stock in a vise or V-block, and part each piece off last.`,
  misses: (past: Said | undefined): Said =>
    say`Its edge passes ${past ? say`up to ${past} ` : NOTHING}beside the header and touches nothing there: close that with a plate.`,
  wider: (by: Said, than: 'header' | 'flat'): Said =>
    say`The tube is ${by} wider than ${than === 'flat' ? say`the flat of the box's face` : say`the header`}: flatten the end until it touches all round.`,
  /** Cut on the dashed line by mistake; or on the inside line by intent. */
  dashed: (off: Said): Said => say`Not on the dashed line: there it would stand off ${off}.`,
  heldOff: (off: Said): Said =>
    say`Its outside edge holds it off ${off} along the tube: grind that edge back until it seats.`,
  feather: (thin: Radians, land: 'half-the-wall' | 'rod' | 'none'): Said => {
    const off = {
      'half-the-wall': say`grind its tips off until they are about half the wall thick`,
      rod: say`grind its tips off until they are ${quantities.rod} thick at most`,
      none: say`file it until it cuts no more`,
    }[land];
    return say`It runs out to a feather edge of ${angle(thin)}: ${off}. It cuts fingers, and a disc snatches on it: clamp the tube, guard and side handle on, and grind from the body towards the point.`;
  },
  /** One that is too wide to fill is not welded over: AWS D1.1, from memory. */
  gap: (gap: Said, at: Said, units: Units, tooWide: boolean): Said => {
    const stays = say`A gap of ${gap} stays outside, widest ${at}`;
    return tooWide
      ? say`${stays}. Over ${units === 'mm' ? say`5 mm` : say`3/16 in`} is too wide to fill (AWS D1.1 for steel, from memory): grind back the edge that touches, and refit.`
      : say`${stays}: make the leg of the weld there longer by as much.`;
  },
  heel: (end: EndName): Said =>
    say`End ${end} is under 30°, where a weld at the heel can hardly be made sound (AISC 360 table K2.1A, secondary): open the angle before you cut, if you can.`,
};

/** Nearer than this a tape does not tell two places apart. */
const ONE_PLACE: Mm = 0.25;

/** Places round an end, so far to the right of what they are told from, seen with B up, or to its left. */
function roundTheEnd(places: readonly Mm[], girth: Mm, from: Said, units: Units): Said {
  const [one = 0, other] = places;
  const isOpposite = Math.abs(one) > girth / 2 - ONE_PLACE;
  if (Math.abs(one) < ONE_PLACE || isOpposite)
    return say`${isOpposite ? say`opposite` : say`at`} the ${from}`;
  if (other !== undefined && Math.abs(one + other) < ONE_PLACE)
    return say`${tape(Math.abs(one), units)} round from the ${from} on both sides`;
  const said = places.map(
    (mm) => say`${tape(Math.abs(mm), units)} to the ${mm > 0 ? say`right` : say`left`}`,
  );
  return say`${joined(said, ' and ')} of the ${from}, round the tube`;
}

/** The marks of a fit-up. */
const marks = {
  /** Moved without a turn, the tube has its length and rotation still, though what lies in the way lifts it off its seat. */
  line: (end: EndName, first: EndName, rotation: boolean, heel: Said): Said => {
    const held = say`Seat end ${first}, then bring the tube straight out, not turned, as far at both ends, until it passes in front of end ${end}’s header. Clamp it there`;
    return rotation
      ? say`${held}. Scribe the rotation mark along ${heel}.`
      : say`${held}. Find ${heel}, and scribe a line along it.`;
  },
  heel: say`the middle of its heel side, which faces the acute corner`,
  squareSide: (which: Said): Said => say`the middle of a side that faces along the header${which}`,
  length: (where: Said): Said => say`On that line make the length mark: ${where}.`,
};

const picture = (paired: boolean): Said => (paired ? say`this hand’s picture` : say`the picture`);

const facing = {
  /** The last look before the second end: most tubes are spoilt there. */
  check: (end: EndName, first: EndName | undefined, held: Said | undefined): Said =>
    say`Before you cut: the arrow of leaf ${end} points ${first ? say`away from end ${first}` : say`out at the end`}.${held ?? NOTHING}`,
  /** `line`: what its header's line is called in the picture, which stands over the steps; of a pair each hand has its own. */
  picture: (end: EndName, side: Said, line: Said, paired: boolean): Said =>
    say` Look at the tube from end A with the spine up: the ${side} of leaf ${end} lies at line ${line} of ${picture(paired)}.`,
  /** Of several headers, each of which the leaf names at its stretch of the cut. */
  stretches: (end: EndName, pictured: boolean, paired: boolean): Said =>
    say` Hold leaf ${end} up to its headers${pictured ? say`, turned as ${picture(paired)} has them` : NOTHING}: each stretch of its cut lies at the header that it names.`,
  leafHeld: (end: EndName, square: boolean): Said =>
    say` Hold leaf ${end} up to its header: ${square ? say`its cut lies as the header runs` : say`its heel faces the acute corner`}.`,
};

/** Paper does not go round a header that another one is welded to. */
const BEFORE_JOINED = say`, before these headers are joined to one another`;

/** Places on a header are told from there. */
const END_A_FIRST = say` Cut that header’s end A first: its places are measured from there.`;

/** `placed` where its card tells where its cross comes to lie. */
function asPrinted(placed: boolean, several: boolean): Said {
  const point = several
    ? say`their work points where all centre lines cross`
    : say`its work point where the centre lines cross`;
  return placed ? say`printed side out` : say`printed side out, ${point}`;
}

/** `placed` where the ticket of what it lands on says where along that. */
function held(placed: boolean): Said {
  return say`Hold the tube in place${placed ? say`, centred where its header’s ticket says,` : NOTHING} and`;
}

const finish = {
  scribeBoth: (placed: boolean): Said => say`${held(placed)} scribe both footprints round it.`,
  /** `end` where the other one's is scribed by its print. */
  scribe: (on: Said, end: EndName | undefined, placed: boolean): Said =>
    say`${held(placed)} scribe ${end ? say`round its end ${end}` : say`its footprint`} on ${on}.`,
  /** By printed footprints, of which one may be flat; `several` headers of one end are not joined yet. */
  footprints: (flat: boolean, several: boolean, placed: boolean): Said =>
    say`${flat ? say`Lay or wrap` : say`Wrap`} each ${several ? NOTHING : say`end’s `}footprint ${flat ? say`on` : say`round`} its header, ${asPrinted(placed, false)}, and scribe by it${several ? BEFORE_JOINED : NOTHING}.${placed ? END_A_FIRST : NOTHING}`,
  footprintsOf: (end: EndName, on: Said, flat: boolean, several: boolean, placed: boolean): Said => {
    const [lay, at] = flat ? [say`Lay`, say`on`] : [say`Wrap`, say`round`];
    const laid = say`${at} ${on}, ${asPrinted(placed, several)},`;
    const done = several
      ? say`${lay} the footprints of end ${end} ${laid} and scribe by them${BEFORE_JOINED}.`
      : say`${lay} the footprint of end ${end} ${laid} and scribe by it.`;
    return say`${done}${placed ? END_A_FIRST : NOTHING}`;
  },
  /** Common practice, no source. */
  drill: (small: boolean, units: Units): Said =>
    units === 'mm' ? say`${small ? 3 : 5} mm` : small ? say`1/8 in` : say`3/16 in`,
  ventTube: (drill: Said): Said => say`Drill one ${drill} vent, in the tube itself: sealed, it would burst.`,
  /** Into a header, numbered where the end has several. */
  ventInside: (drill: Said, end: EndName, number: number | undefined): Said => {
    const wall = number === undefined ? say`the header’s wall` : say`the wall of header ${number}`;
    return say`one ${drill} vent, well inside end ${end}’s footprint, through ${wall}: sealed, it would burst. Check that the header is open or vented too.`;
  },
  vent: (inside: Said): Said => say`Drill ${inside}`,
  /** Of an end that the job does not tell, before the other one covers the place. */
  ventNow: (end: EndName, inside: Said): Said =>
    say`If end ${end} will be welded shut too, now drill ${inside}`,
  ventUntold: (drill: Said, end: EndName): Said =>
    say`If end ${end} will be welded shut too, drill a ${drill} vent in the tube first: sealed, it would burst.`,
  ventRail: (drill: Said): Said => say`If both its ends are capped later, drill a ${drill} vent before that.`,
  ventLater: (drill: Said, end: EndName): Said =>
    say`If end ${end} is capped later, drill a ${drill} vent in the tube or the cap before that.`,
  clean: (footprints: number, hollow: boolean, units: Units): Said => {
    const each = footprints > 1 ? say`each` : say`its`;
    const back = units === 'mm' ? say`25 mm` : say`1 in`;
    return say`Clean bright ${back} back from the edges${footprints > 0 ? say` and round ${each} footprint` : NOTHING}: no zinc, plating or paint${hollow ? say`, inside and out` : NOTHING}.`;
  },
  setBetween: say`Set it in by hand: do not spring the frame. Tack, and check again.`,
  set: (angles: readonly { readonly rad: Radians; readonly to: Said }[]): Said => {
    const said = angles.map(({ rad, to }) =>
      rad === Math.PI / 2 ? say`square to ${to}` : say`at ${angle(rad)} to ${to}`,
    );
    return say`Set it ${joined(said, ' and ')}. Tack, check the angle, and set it again where the tack has drawn it.`;
  },
  /** Half an hour: 29 CFR 1910.252(a)(2)(iii)(B), from memory. */
  watched: (set: Said): Said => say`${set} Watch for fire 30 minutes after the last hot work.`,
  header: (number: number): Said => say`header ${number}`,
};

/** What is done to one tube: its ticket's steps, in the order of the trade. */
export const stepWords = {
  blank,
  lay,
  cut,
  seat,
  warnings,
  marks,
  facing,
  finish,
  bend,
  /** What an end with several headers lands on. */
  itsHeaders: say`its headers`,
  spine: say`spine`,
  roundTheEnd,
};
