import type { Said } from '../../measure/said.ts';
import type { Angle, Length, Mm, Radians, Units } from '../../measure/units.ts';
import { asWritten, say } from '../said.ts';
import { quantities } from './quantities.ts';

const { angle, sawn, writtenAngle } = quantities;

/** The card beside a leaf: what is known of the end and its tube, a label and a text each. */
export const card = {
  labels: {
    job: say`job`,
    tube: say`tube`,
    wall: say`wall`,
    header: say`header`,
    angle: say`angle`,
    cut: say`cut`,
    pieces: say`pieces`,
    clock: say`clocking`,
    offset: say`offset`,
    shift: say`shift`,
    rotation: say`rotation`,
    length: say`length`,
    twist: say`rotation`,
    workPoints: say`work points`,
    longPoints: say`long points`,
    blank: say`blank`,
    edge: say`edge`,
    dashes: say`dashes`,
    root: say`root gap`,
    weld: say`weld angle`,
    ticks: say`ticks`,
    date: say`date`,
    outline: say`outline`,
    lay: say`lay it`,
    scribe: say`scribe`,
    vent: say`vent`,
    clean: say`clean`,
  },
  /** Wrapped with its printed side in, a leaf cuts the opposite hand. */
  printedSideOut: say`wrap printed side out`,
  notOnTheLeaf: say`no room on the leaf for:`,
  item: (phrase: Said): Said => say`– ${phrase}`,
  /** By its place in the end's list, from 1. */
  headerName: (number: number): Said => say`header ${number}`,
  /** Names the header where an end has several. */
  ofHeader: (name: Said, phrase: Said): Said => say`${name}: ${phrase}`,

  twist: (twist: Radians): Said => say`A to B: ${quantities.twist(twist)}`,
  stock: (blank: Mm, units: Units): Said => say`${sawn(blank, units)} of stock`,
  root: (root: Length): Said => say`${quantities.sized(root)}, the same all round, square to the header`,
  ticks: say`short, at the cut: there it goes over to another face or past the header.`,

  edge: {
    /** `reachesOut`: its dashes would go with the waste of the paper. */
    bevel: (reachesOut: boolean, inner: Said, land: Length | undefined): Said =>
      say`bevel: ${reachesOut ? say`leave the dashes on the paper; cut to the solid line` : TO_THE_LINE}; ${inner}.${land ? say` Feather edges are left ${quantities.sized(land)} thick.` : say``}`,
    fromInside: (standOff: Mm, units: Units): Said =>
      say`square, torch held radially: ${TO_THE_LINE}. Stands off ${quantities.oneToATenth(standOff, units)}: fill with weld.`,
    square: say`square: cut to the middle of the solid line, square to the surface; fill the outer gap with weld.`,
    dashesOfSquare: say`where the outside edge alone would touch: weld fills from there.`,
  },

  offSquare: (tilt: Radians): Said => say`${angle(tilt)} off square`,
  angle: (written: Angle): Said => degreeSigns(writtenAngle(written)),
  degreeSigns,
  /** How long the pieces of a bend are on its centre line; `half` is an end piece's length. */
  pieces: (count: number, half: Mm, units: Units): Said => {
    const ends = say`an end piece is ${quantities.tape(half, units)} long on its centre line`;
    const middle = count > 2 ? say` a middle piece is ${quantities.tape(2 * half, units)},` : say``;
    return say`${count} pieces, this leaf for every mitred end:${middle} ${ends}`;
  },
  /** Which way round from the spine, the shorter way. */
  turned: (clock: Radians): Said => {
    const beyond = clock - Math.PI;
    if (Math.abs(beyond) < 1e-9) return say`opposite the spine`;
    return beyond < 0
      ? say`${angle(clock)} right of the spine`
      : say`${angle(2 * Math.PI - clock)} left of the spine`;
  },
  onTheSpine: say`on the spine`,
  /** An angle over 90° is read on the toe's side, and the heel is opposite. */
  obtuse: (written: Angle, toe: Said, heel: Said): Said =>
    say`${degreeSigns(writtenAngle(written))} is read ${toe}, so the heel is ${heel}, at ${angle(Math.PI - written.rad)}`,
  insideOfCorner: (where: Said): Said => say`the inside of the corner is ${where}`,
  passes: (offset: Length, way: Radians, datum: 'spine' | 'mark'): Said =>
    say`${quantities.unsigned(offset)}: header's centre on the ${angle(way)} side${datum === 'spine' ? say`` : say` from the mark`}`,
  moved: (shift: Length): Said =>
    say`${quantities.unsigned(shift)}: moved along the tube ${shift.mm > 0 ? say`towards` : say`away from`} its body`,

  rotationMark: (side: Said | undefined): Said =>
    say`marked with end A seated, where the header's centre line comes nearest the heel${side ?? say``}.`,
  lengthMark: (onRotationMark: boolean, how: Said): Said =>
    say`marked ${onRotationMark ? say`on the line of that mark` : say`on the line where the header's centre line comes nearest the heel`}: ${how}.`,
  /** A square joint has no heel: its mark may be on either side, and the offset tells which. */
  sideTaken: (offset: Mm, units: Units): Said =>
    offset === 0
      ? say`: either side, for at 90° both are alike`
      : say`: at 90° the side from which the header passes ${quantities.tape(Math.abs(offset), units)} to the ${offset > 0 ? say`right` : say`left`} with B up`,
};

const TO_THE_LINE = say`cut to the middle of the solid line`;

/** Angles with one sign for a degree, however they were written: `62deg` becomes `62°`. */
function degreeSigns(text: Said): Said {
  return asWritten(text.replace(/(\d)\s*deg(?:rees?|s)?\b/g, '$1°'));
}
