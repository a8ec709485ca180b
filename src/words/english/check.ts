import type { Said } from '../../measure/said.ts';
import {
  type Angle,
  type Length,
  MM_PER_INCH,
  type Mm,
  type Radians,
  type Units,
} from '../../measure/units.ts';
import { asWritten, inColumn, joined, say } from '../said.ts';
import { quantities } from './quantities.ts';

const { angle, bothToATenth: both, clocked, wholeAngle, written, writtenAngle } = quantities;

type End = 'A' | 'B';

type Edge =
  | { readonly edge: 'bevel'; readonly land?: Length }
  | { readonly edge: 'square'; readonly from: 'outside' | 'inside' };

/** A measurement, and what gap opens if it is off by a full step. */
type Slip = {
  readonly of: 'angle' | 'rotation' | 'offset' | 'scale';
  readonly mm: Mm;
};

const STEPS: Readonly<Record<Slip['of'] | 'inch-offset', Said>> = {
  'inch-offset': say`1/32 in in offset`,
  angle: say`1° in angle`,
  rotation: say`1° in rotation`,
  offset: say`1 mm in offset`,
  scale: say`1 % in print scale`,
};

const MEASURES: Readonly<Record<Slip['of'], Said>> = {
  angle: say`the angle`,
  rotation: say`the rotation`,
  offset: say`the offset`,
  scale: say`the bars on the sheet`,
};

/** Where on its line the length mark is made. */
const squareAcross = say`sight square across, from in front, to the header's side towards end A`;

function nearest(eitherSide: boolean): Said {
  const line = say`where the header's centre line comes nearest the heel`;
  return eitherSide ? say`${line}, on either side` : line;
}

/** The report that `check` prints: what was understood, what follows, what to watch. */
export const checkWords = {
  headline: (name: string, hand: 'as-drawn' | 'opposite' | 'both', copies: number): Said => {
    const opposite = hand === 'opposite' ? [say`opposite hand`] : [];
    const whose = hand === 'both' ? say`for both hands` : say`of this hand`;
    const count = copies > 1 ? [say`${copies} ${whose}`] : [];
    return joined([asWritten(name.toUpperCase()), ...opposite, ...count], ', ');
  },
  understood: say`Understood`,
  follows: say`What follows`,
  watch: say`What to watch`,

  line: (text: Said): Said => say`  ${text}`,
  /** Lines about one thing, which is named before the first of them. */
  lines: (label: Said, lines: readonly Said[]): readonly Said[] =>
    lines.map((line, i) => say`  ${inColumn(i === 0 ? label : say``, 5)}  ${line}`),
  /** What is told of a whole frame, on a line of its own. */
  told: (code: string, text: Said): Said => say`${asWritten(code)}: ${text}`,
  /** A warning by its code. */
  warning: (code: string, lines: readonly Said[]): readonly Said[] =>
    lines.map((line, i) => say`  ${inColumn(i === 0 ? asWritten(code) : say``, 12)}${line}`),
  ofEnd: (end: End, text: Said): Said => say`end ${end}: ${text}`,
  noWarning: say`Nothing out of the ordinary.`,

  tube: say`tube`,
  end: (end: End): Said => say`end ${end}`,
  bothEnds: say`both`,
  read: say`read`,
  note: say`note`,

  size: (size: Said, wall: Length | undefined): Said =>
    wall ? say`${size}, wall ${written(wall)}` : say`${size}, wall not given`,
  between: (length: Said): Said => say`${length} from work point to work point`,
  /** So many of each hand. */
  ofBothHands: (each: number): Said =>
    say`${2 * each} tubes in all: ${each} of this hand and ${each} of the other`,
  /** At an end that begins an elbow of several pieces. */
  toFirstJoint: (end: End): Said =>
    say`at end ${end} to where its axis meets the elbow's first joint: the tube is its first piece, the others are cut besides`,
  noBetween: (length: Said, ofPieces: boolean): Said =>
    ofPieces
      ? say`${length} has no effect: with one end the tube stands for the elbow, whose pieces have lengths of their own`
      : say`${length} has no effect: with one end nothing is measured to the other`,
  plain: say`cut square at its work point`,
  /** A header, the angle to it, and if that is obtuse the acute one in its place. */
  onto: (header: Said, at: Angle | undefined, acute: Radians | undefined): Said => {
    const where = at ? say`onto ${header} at ${writtenAngle(at)}` : say`onto ${header}`;
    return acute === undefined
      ? where
      : say`${where} (the same as ${angle(acute)}, clocked 180° further round, offset reversed)`;
  },
  clocked,
  offset: (offset: Length): Said => say`offset ${written(offset)}`,
  shifted: (shift: Length): Said => say`shifted ${written(shift)} along the tube`,
  rotationMarked: say`rotation by its mark`,
  lengthMarked: say`length by its mark`,
  asked: (where: readonly Said[], edge: readonly Said[]): Said =>
    say`${joined(where, ', ')}; ${joined(edge, ', ')}`,
  /** `bevel`, `bevel, land 1.2 mm`, `square`, `square, from the inside`. */
  edge: (asked: Edge): Said => {
    if (asked.edge === 'bevel') return asked.land ? say`bevel, land ${written(asked.land)}` : say`bevel`;
    return asked.from === 'inside' ? say`square, from the inside` : say`square`;
  },
  toFlat: say`to the box's flat`,
  root: (gap: Length): Said => say`root gap ${written(gap)}`,

  reading: (of: string, reading: Said): Said => say`${asWritten(of)}: ${reading}`,
  endReading: (end: End, of: 'onto' | 'angle' | 'clock' | 'offset', reading: Said): Said =>
    say`end ${end} ${asWritten(of)}: ${reading}`,

  mirrored: say`The mirror image of its twin: the same lengths, angles, gaps and warnings.`,
  shortPointAt: (station: Said): Said => say`short point at ${station}`,

  bothHands: (copies: number): Said =>
    say`Its mirror image is the same piece: make ${copies}, and one leaf serves both hands.`,
  blank: (sawn: Mm, overall: Mm, units: Units): Said =>
    say`Cut the blank ${both(sawn, units)} long; it ends ${both(overall, units)} overall.`,
  reaches: (past: Mm, units: Units): Said =>
    say`It reaches ${both(past, units)} past its work points: centre to centre alone would be too short.`,
  spare: (spare: Mm, units: Units): Said =>
    say`That is ${both(spare, units)} to spare: a leaf can be slid so far for a second cut.`,
  /** From end A's heel to end B's, positive to the right. */
  twist: (twist: Radians): Said => say`Rotation A to B, heel to heel with B up: ${quantities.twist(twist)}.`,
  headersApart: (apart: Radians): Said =>
    apart < 1e-6 ? say`The two headers are parallel.` : say`The two headers stand ${angle(apart)} apart.`,
  noWall: say`Without the wall it is not looked at how far the inside edge has to be ground back, nor how far it would stand off if it is not.`,
  girth: (girth: Mm, units: Units): Said => say`A tape round the tube should read ${both(girth, units)}.`,

  /** Where the rotation is marked; with no heel on either side. */
  rotationMark: (eitherSide: boolean): Said =>
    say`seat end A, then mark the rotation on the tube ${nearest(eitherSide)}; stations count from that mark`,
  /** And the length, on the line of that mark or where it would be. */
  lengthMark: (on: 'rotation-mark' | 'either-side' | 'heel', toWorkPoint: Mm, units: Units): Said => {
    const line = on === 'rotation-mark' ? say`of that mark` : nearest(on === 'either-side');
    const beyond = toWorkPoint < 0 ? say`beyond` : say`short of`;
    return say`mark the length on the line ${line}: ${squareAcross}, ${both(Math.abs(toWorkPoint), units)} ${beyond} the work point`;
  },
  squareAcross,
  extremes: (shortPoint: Said, longPoint: Said): Said =>
    say`short point ${shortPoint}; long point ${longPoint}`,
  place: (setback: Mm, station: Said, units: Units): Said => say`${both(setback, units)} at ${station}`,
  surfaces: (least: Radians, most: Radians, weld: Said): Said =>
    say`the surfaces meet at ${wholeAngle(least)} to ${wholeAngle(most)}: ${weld}`,
  weld: (isOpen: boolean, isClosed: boolean, hasGap: boolean): Said => {
    const groove = isOpen ? [say`groove weld where it is open`] : [];
    const corner = isClosed ? [say`a filled corner at the heel`] : [];
    const legs = hasGap ? [say`its legs longer by the gap`] : [];
    return joined([...groove, say`fillet at the sides`, ...corner, ...legs], ', ');
  },
  gap: (gap: Mm, station: Said, units: Units): Said => say`a gap of ${both(gap, units)} stays at ${station}`,
  cornerGap: (gap: Mm, station: Said, units: Units): Said =>
    say`at the box's corner a gap of ${both(gap, units)} is left to be filled, at ${station}`,
  noGap: (misses: boolean): Said =>
    misses
      ? say`full contact where it touches: no gap stays there`
      : say`full contact with this edge: no gap stays`,
  evenRoot: (root: Length, misses: boolean): Said =>
    say`the root gap of ${written(root)} is the same ${misses ? say`wherever it reaches the header` : say`all round`}`,
  wideRoot: (root: Length, by: Mm, station: Said, units: Units): Said =>
    say`the root gap of ${written(root)} is wider by ${both(by, units)} at ${station}, ${both(root.mm + by, units)} in all`,
  wouldStandOff: (by: Mm, units: Units): Said =>
    say`cut square to the outside line by mistake, it would stand off ${both(by, units)}`,
  /** What a full step of each error opens, the worst first. */
  slips: (opens: readonly Slip[], units: Units): readonly Said[] => {
    const step = (of: Slip['of']): Said => STEPS[of === 'offset' && units === 'in' ? 'inch-offset' : of];
    const said = opens.map(({ of, mm }, i) =>
      i === 0
        ? say`an error of ${step(of)} opens ${opened(mm, units)}`
        : say`of ${step(of)}, ${opened(mm, units)}`,
    );
    return [joined(said, '; '), ...opens.slice(0, 1).map(({ of }) => say`measure ${MEASURES[of]} twice`)];
  },
};

/** To a tenth of a millimetre, or as near in inches, where most are less than a tape's marks. */
function opened(mm: Mm, units: Units): Said {
  if (units === 'mm') return quantities.mm(Math.round(mm * 10) / 10);
  return say`${Number((mm / MM_PER_INCH).toFixed(3)) + 0} in`;
}
