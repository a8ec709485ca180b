import type { Said } from '../../../measure/said.ts';
import type { Mm, Radians } from '../../../measure/units.ts';
import { say } from '../../said.ts';
import { quantities } from '../quantities.ts';
import { type Edge, fileToRod, markAndCut, spineExplained } from './step-parts.ts';
import { ticket } from './ticket.ts';

type Units = 'mm' | 'in';

/** One kind of the pieces of a bend. */
type Pieces = readonly { readonly kind: 'middle' | 'end'; readonly count: number }[];

const { angle, tape } = quantities;

/** The steps of a bend that is made of straight pieces with one leaf: what each is cut to stands over them. */
export const bend = {
  blanks: say`Cut the blanks: what is over is room for the leaf and for a second try.`,
  line: say`Scribe a line along each blank from end to end, the inside of the bend, along an angle iron that sits on the tube.`,
  /** `marked`: the spine is not on the inside, so another station is marked there; `middles`: there are middle pieces. */
  firstEnds: (pieces: number, marked: boolean, middles: boolean, how: Edge): Said => {
    const line = marked ? say`station that is marked inside` : spineExplained;
    const base = middles ? say` (on a middle piece the base edge too)` : say``;
    return say`Lay the leaf on one end of each of the ${pieces} blanks, printed side out, its ${line} on the scribed line, its long point just on the tube. Tape it so that the ends of its base edge meet. ${markAndCut(say`it`, base, how)}`;
  },
  secondEnds: (where: Said): Said =>
    say`Then the other end of each middle piece: lay the leaf on the same scribed line, the insides of both cuts on ONE line, ${where}. Cut it likewise.`,
  /** From the base edge that was marked first, below nought where the leaves overlap. */
  byBase: (apart: Mm, units: Units): Said =>
    apart >= 0
      ? say`its base edge ${tape(apart, units)} from the one marked`
      : say`its base edge ${tape(-apart, units)} nearer to the first cut than the one marked: the leaves overlap`,
  byInside: (short: Mm, units: Units): Said =>
    say`where its line crosses the scribed one ${tape(short, units)} from the first cut`,
  squareEnds: (after: boolean): Said =>
    say`Cut the other end of each end piece square${after ? say`, not before its mitre: the leaf is longer than the piece` : say``}.`,
  deburr: say`Deburr every piece inside and out.`,
  together: (pieces: Pieces, root: boolean, turn: Radians, units: Units): Said => {
    const fit = root ? say`the root gap is even` : fileToRod('anywhere', units);
    return say`Lay the ${ticket.pieces(pieces)} together on a flat steel plate, not on wood, the end pieces outermost, all scribed lines to the inside: file until ${fit}. Tack, and check that it turns ${angle(turn)}. Watch for fire 30 minutes after the last hot work.`;
  },
};
