import type { Said } from '../../measure/said.ts';
import type { InBoth } from '../../measure/sizes/pipe.ts';
import {
  type Angle,
  type Length,
  MM_PER_INCH,
  type Mm,
  type Radians,
  type Units,
} from '../../measure/units.ts';
import { asWritten, say } from '../said.ts';
import { quantities } from './quantities.ts';

const { amount, angle, own, writtenAngle } = quantities;

/** In what a tube is asked for: among others by its numbers, or in a frame by points. */
type File = 'tubes' | 'frame';

/** What a person at the bench reads; and where a job file is edited, with the key that mends it. */
type Told = { readonly text: Said; readonly inFile: Said };

function told(text: Said, key?: Said): Told {
  return { text, inFile: key === undefined ? text : say`${text} In a job file: ${key}.` };
}

const ITS_POINTS = say`the points that it runs \`along\``;

const WITH_ITS_UNIT = say`the number with its unit if it is meant`;

function unitOf({ unit }: Pick<Length, 'unit'>): Units {
  return unit === 'in' || unit === 'ft' ? 'in' : 'mm';
}

/** Inches in decimals, no more of them than there are. */
function decimal(mm: Mm): string {
  return `${Number((mm / MM_PER_INCH).toFixed(3))}`;
}

function nth(place: number): Said {
  return [say`first`, say`second`, say`third`][place - 1] ?? say`${place}th`;
}

function widerAmongTubes(named: boolean): Said {
  return named
    ? say`\`od\` is a diameter; the way round is \`{ girth: ... }\``
    : say`a box's \`wide\` lies across the tube, its \`deep\` along it`;
}

/** Of two that end at a point the one that comes first there is landed on; one that runs through always is. */
function widerInFrame(
  named: boolean,
  { own, first }: { readonly own: string; readonly first: string | undefined },
): Said | undefined {
  if (first !== undefined) {
    const [tube, header] = [asWritten(own), asWritten(first)];
    return say`${header} comes before ${tube}, so ${tube} is coped onto it; \`after: [${tube}]\` at ${header} turns that round`;
  }
  return named ? undefined : say`\`face\` of the box: the way in which its wide face looks`;
}

/** What can be cut as asked but may disappoint: the number, where it is, and what to do about it. */
export const warnings = {
  short: (left: Mm, across: Mm, file: File, units: Units): Told =>
    told(
      say`Only ${amount(left, units)} of tube is left between the two short points, less than its own diameter of ${amount(across, units)}. Check the length, or use one solid piece.`,
      file === 'frame' ? ITS_POINTS : say`\`between\``,
    ),
  misses: (past: Mm | undefined, units: Units): Told =>
    told(
      say`${past === undefined ? say`The tube reaches` : say`The tube reaches ${amount(past, units)}`} past the side of the header there, so part of the edge touches nothing. It is trimmed level with the middle of the header: close it with a plate, or use a smaller tube or less offset.`,
    ),
  boxOnBox: (by: Mm, flat: Mm, header: Said, file: File, units: Units): Told =>
    told(
      say`The tube is ${amount(by, units)} wider than the flat of ${header}, which is ${amount(flat, units)}: along the header's corners its lips come out as thin as knives. Cut it to the flat and fill the corners, or choose a smaller tube.`,
      file === 'frame'
        ? say`\`face\` of the box, if another of its faces is to lie there; else \`to: flat\``
        : say`\`to: flat\``,
    ),
  /** `named`: the header's name is its width. `first`: of a frame, the header's name where the tube is coped because that comes first. */
  wider: (
    by: Mm,
    than: { readonly mm: Mm; readonly of: 'header' | 'flat'; readonly named: boolean },
    header: Said,
    mends: { readonly file: File; readonly own: string; readonly first: string | undefined },
    units: Units,
  ): Told => {
    const what = than.of === 'flat' ? say`the flat of ${header}` : header;
    const wide = than.named ? what : say`${what}, which is ${amount(than.mm, units)}`;
    return told(
      say`The tube is ${amount(by, units)} wider than ${wide}. Flatten the end or choose a smaller tube if the edge must touch all round.`,
      mends.file === 'frame' ? widerInFrame(than.named, mends) : widerAmongTubes(than.named),
    );
  },
  heelAngle: (acute: Radians, file: File): Told =>
    told(
      say`The acute angle is ${angle(acute)}: under 30° a weld at the heel can hardly be made sound (AISC 360 table K2.1A, secondary). Open the angle if you can.`,
      file === 'frame' ? ITS_POINTS : say`\`off-square\` if it was read from square`,
    ),
  feather: (thin: Radians, where: Said, land: 'half-the-wall' | 'rod' | 'none'): Told => {
    const edge = say`The edge runs out to a feather edge of ${angle(thin)} at station ${where}. It cuts fingers and burns away under the arc`;
    if (land === 'none') return told(say`${edge}: file it until it cuts no more.`);
    const left = land === 'rod' ? say`${quantities.rod} at most` : say`about half the wall`;
    return told(say`${edge}: leave a land of ${left}.`, say`\`land\``);
  },
  standsOff: (by: Mm, units: Units): Told =>
    told(
      say`Cut to the inside line, the end stands off by ${amount(by, units)} on its outside edge: grind that back until it seats.`,
    ),
  cornerGap: (gap: Mm, where: Said, units: Units): Told =>
    told(
      say`Cut to the flat, a gap of ${amount(gap, units)} stays at the box's corner, widest at station ${where}: fill it, and add it to the leg of the fillet; over 5 mm (3/16 in), lay a strip in it (AWS D1.1 for steel, from memory).`,
    ),
  /** What was mostly meant otherwise than it was understood. */
  asMeant: {
    girthAcross: (od: Length, across: Mm): Told =>
      told(
        say`${own(od)} is no usual size; ${amount(across, unitOf(od))} is, and measures that round. Was it taped?`,
        say`\`{ girth: ${asWritten(od.wrote)} }\`, or the number with its unit if it is meant`,
      ),
    acrossRound: (girth: Mm, across: Mm, units: Units): Told =>
      told(
        say`${amount(girth, units)} round is ${amount(across, units)} across, no usual size; ${amount(girth, units)} across is one. Was it taped?`,
        say`\`od\` without \`girth\`, or the number with its unit if it is meant`,
      ),
    bore: (od: Length, outside: Length, wall: Mm): Told =>
      told(
        say`${own(od)} is no usual size; the ${own(outside)} that stands beside it measures that inside, with a wall of ${amount(wall, unitOf(od))}. Was it measured inside?`,
        WITH_ITS_UNIT,
      ),
    /** `likely` as a number in the same unit. */
    digits: (od: Length, likely: string): Told =>
      told(
        say`${own(od)} is no usual size; ${asWritten(likely)} is. Were two figures changed round?`,
        WITH_ITS_UNIT,
      ),
    /** `pipe` by its name, so much across. */
    nominal: (od: Length, wall: Length, pipe: string, across: InBoth): Told =>
      told(
        say`A wall of ${own(wall)} is that of the pipe ${asWritten(pipe)}, which is ${quantities.inOne(across[unitOf(od)], unitOf(od))} across and not ${own(od)}.`,
        say`\`pipe: ${asWritten(pipe)}\` if that is meant`,
      ),
    alsoPipe: (od: Length, pipe: string, across: InBoth): Told =>
      told(
        say`The header is ${own(od)} across; the pipe ${asWritten(pipe)}, which the job has too, is ${quantities.inOne(across[unitOf(od)], unitOf(od))}. Are they the same?`,
        say`\`pipe: ${asWritten(pipe)}\` if they are, else the diameter in decimals`,
      ),
    alsoDn: (od: Length, pipe: Length): Told =>
      told(
        say`The header is ${own(od)} across; DN ${asWritten(od.wrote)} is the pipe of ${amount(pipe.mm, 'mm')} that the other end lands on. Are they the same?`,
        say`\`od: ${amount(pipe.mm, 'mm')}\` if they are, else the number with its unit`,
      ),
    /** Two offsets that are equal, to two sides. */
    onTwoSides: (offset: Length): Told =>
      told(
        say`The two headers are ${amount(2 * Math.abs(offset.mm), unitOf(offset))} out of line: one lies to the right of the tube, the other as far to its left. Does the tube lie flush with both?`,
        say`\`offset\` at end B with its sign turned if it does`,
      ),
    turnedOverTwice: (obtuse: Angle, acute: Angle): Told =>
      told(
        say`${writtenAngle(obtuse)} turns the joint over, and the clocking of 180° turns it back: both together are ${writtenAngle(acute)} at 0°, and the headers are not parallel. Was it turned twice?`,
        say`\`angle: ${asWritten(acute.wrote)}\` if it was`,
      ),
    boxTurnedTwice: told(
      say`Its width and depth are changed round against end A, and it is rolled by 90° as well: that is the box as it was. Was it turned twice?`,
      say`one of the two if it was`,
    ),
    mirrorOfItself: (copies: number): Told =>
      told(
        say`Its mirror image is the same piece: ${2 * copies} are made, ${copies} for each hand.`,
        say`\`copies: ${copies}\` without \`pair\` if no more are meant`,
      ),
    oClock: (hour: number): Told =>
      told(
        say`The heel is clocked ${hour}° from the spine; ${hour} o'clock would be ${(hour % 12) * 30}°.`,
        say`\`${hour}deg\` or \`${(hour % 12) * 30}deg\`, whichever is meant`,
      ),
    lengthOfOneEnd: (between: Length, lacking: 'A' | 'B'): Told =>
      told(
        say`End ${lacking} is not given: its cut is not drawn, and the length of ${own(between)} is not used.`,
        say`\`${lacking}: plain\` if it is cut square, else what it lands on`,
      ),
    inFeet: (wrote: string, mm: Mm, feet: number, inches: number): Told =>
      told(
        say`${asWritten(wrote)} is ${asWritten(decimal(mm))} in; ${feet} ft ${inches} in is ${12 * feet + inches} in.`,
        say`\`${asWritten(decimal(mm))}in\` or \`${feet}ft ${inches}in\`, whichever is meant`,
      ),
    inName: (od: Length): Told =>
      told(
        say`By its name it is square or rectangular, and it is drawn as a round tube of ${own(od)}.`,
        say`\`section: { wide: ..., deep: ... }\` in place of \`od\` if it has corners`,
      ),
    /** A header by its place in the list, from 1. */
    idle: (place: number): Told =>
      told(
        say`The ${nth(place)} header takes nothing off: the others lie before it all the way round. Check on which side it is, its angle and its work point.`,
        say`\`clock\`, \`angle\`, \`shift\``,
      ),
    /** `count` corners that each turn so far make half a ring. */
    openRing: (count: number, turn: Radians): Told =>
      told(
        say`${count} corners of ${angle(turn)} turn 180° in all and close no ring; ${count} of ${angle(2 * turn)} do. A saw set to ${angle(turn)} cuts a corner of ${angle(2 * turn)}.`,
        say`\`turn: ${angle(2 * turn)}\` if they are to close`,
      ),
    turnOfOneJoint: (turn: Radians, pieces: number, middle: Mm, unit: Length['unit']): Told =>
      told(
        say`The whole elbow turns ${angle(turn)}, ${angle(turn / (pieces - 1))} at a joint: its middle pieces are ${amount(middle, unitOf({ unit }))} long. Is ${angle(turn)} one joint's?`,
        say`\`turn: ${angle(turn * (pieces - 1))}\` if it is`,
      ),
    unlikePair: (other: string): Told =>
      told(
        say`It is no mirror image of ${asWritten(other)}: some of what is turned to the other side there is not here.`,
        say`\`pair: true\` makes both of one`,
      ),
    tightBend: (od: Length, radius: Length): Told =>
      told(
        say`Round a centre line of ${own(radius)} hardly a tube of ${own(od)} is bent. Measure to the centre line: to the inside is ${amount(od.mm / 2, unitOf(od))} less.`,
        WITH_ITS_UNIT,
      ),
  },
  /** A gap that is `gap` wider than the root gap. */
  gap: (gap: Mm, root: Mm, where: Said, bevelled: boolean, units: Units): Told => {
    const stays =
      root > 0
        ? say`The root gap of ${amount(root, units)} opens to ${amount(root + gap, units)} at station ${where}`
        : say`A gap of ${amount(gap, units)} stays at station ${where}: a ${quantities.rod} filler rod goes in`;
    const thinner = root > 0 ? say`Leave a thinner land` : say`Leave a land no thicker than that`;
    return told(
      say`${stays}. ${bevelled ? thinner : say`Bevel the inside edge instead`}, or add the gap to the leg of the fillet; over 5 mm (3/16 in), refit (AWS D1.1 for steel, from memory).`,
      bevelled ? say`\`land\`` : say`\`edge: bevel\``,
    );
  },
};
