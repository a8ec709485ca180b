import type { Said } from '../../measure/said.ts';
import type { Mm, Units } from '../../measure/units.ts';
import { asWritten, say } from '../said.ts';
import { quantities } from './quantities.ts';

/** The outline that an end leaves on its header, as a sheet to lay on it. */
export const footprint = {
  /** What of it is laid on the place that is told. */
  cross: say`cross`,
  use: (vented: boolean): Said =>
    say`footprint: scribe by it, ${vented ? say`no hole but the vent` : say`cut no hole`}`,
  /** `header` names it where the end has several. */
  title: (leaf: Said, header: Said | undefined): Said =>
    say`${leaf}, footprint${header === undefined ? say`` : say` on ${header}`}`,
  /** Under the tube's name. */
  heading: (end: 'A' | 'B', hand: Said | undefined, header: Said | undefined): Said =>
    say`end ${end}${hand === undefined ? say`` : say`, ${hand}`}: footprint${header === undefined ? say`` : say` on ${header}`}`,
  scribe: say`cut the paper along the solid outline, the tube's outside, and scribe along its edge`,
  shortDashes: say`the short ones: the tube's inside`,
  clean: say`to the long dashes, 25 mm (1 in) outside`,
  ventHere: (place: Said): Said => say`vent here: ${place}`,
  /** Inside which line a vent is drilled; an open outline has ends to keep away from. */
  vent: (dashed: boolean, closed: boolean): Said => {
    const line = dashed ? say`the short dashes` : say`the solid outline`;
    if (!closed) return say`well inside, off the open ends`;
    return dashed ? say`inside ${line}` : say`well inside ${line}`;
  },
  long: {
    bent: (length: Mm, units: Units): Said =>
      say`about ${quantities.tape(length, units)}: a bend does not unroll`,
    closed: (length: Mm, units: Units): Said =>
      say`${quantities.tape(length, units)}, as long as the outside line on the tube`,
    open: (length: Mm, units: Units): Said =>
      say`${quantities.tape(length, units)} in all; open where the tube passes beside this header or meets another`,
  },
  lay: {
    onCross: say`round the header, words out: its cross lines on the cross, its arrow to the end that it names`,
    plane: say`flat, words up: its long line on the line that faces the tube, its cross line on the work point`,
    bent: say`round the bend, words out: its long line on the line that faces the tube, its cross line on the work point. Approximate: true round the header; along it, true only on the centre line of its bend`,
    bar: (folded: boolean): Said =>
      say`round the header, words out${folded ? say`, folded at the dashes and dots` : say``}: its long line on the line that faces the tube, its cross line on the work point`,
  },

  open: say`open here`,
  /** Where the tube goes over to another header of its end. */
  goesOn: (header: Said): Said => say`${header} from here`,
  meetsBehind: say`edges meet behind the header`,
  partOfRound: say`goes part way round`,
  facesTheTube: say`tube side`,
  workPoint: say`work point`,
  along: say`along the header`,
  fold: say`fold`,
  outside: say`cut paper here, scribe: tube's outside`,
  cleanTo: say`clean to here`,
  inside: say`tube's inside`,
  leansThisWay: say`tube leans`,
  towards: (station: Said): Said => say`to ${station}`,
  tubesStation: (station: Said): Said => say`tube's ${station}`,
  acuteSide: say`acute side`,
  obtuseSide: say`obtuse side`,
  side: (name: Said, station: Said): Said => say`${name}, ${station}`,
  /** Of an end that leaves its tube's own outline on a flat. */
  square: (tube: string, end: 'A' | 'B'): Said =>
    say`No footprint for ${asWritten(tube)}, end ${end}: it is square, so scribe round the tube itself.`,
  /** Of an end that leaves none. */
  none: (tube: string, end: 'A' | 'B', header: Said): Said =>
    say`No footprint for ${asWritten(tube)}, end ${end}: it lands on the cut end of ${header}, where there is no wall to scribe, vent or clean.`,
};
