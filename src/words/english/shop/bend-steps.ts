import type { Said } from '../../../measure/said.ts';
import { sawLength } from '../../../measure/saw-length.ts';
import type { Mm, Radians } from '../../../measure/units.ts';
import { joined, say } from '../../said.ts';
import { quantities } from '../quantities.ts';
import { fileToRod, spineExplained } from './step-parts.ts';
import { ticket } from './ticket.ts';

type Units = 'mm' | 'in';

/** One kind of the pieces of a bend, and how long each of them and its blank is. */
type Pieces = {
  readonly kind: 'middle' | 'end';
  readonly count: number;
  readonly blank: Mm;
  readonly long: Mm;
  readonly short: Mm;
};

const { angle, one } = quantities;

/** The steps of a bend that is made of straight pieces with one leaf. */
export const bend = {
  blanks: (pieces: readonly Pieces[], units: Units): Said => {
    const cut = pieces.map(({ kind, count, blank }) => {
      const all = say`${count} ${count > 1 ? say`blanks` : say`blank`}`;
      return say`${all} ${one(sawLength(blank, units), units)} long for the ${ticket.piece(kind, count)}`;
    });
    const long = pieces.map((each) => one(each.long, units));
    return say`Cut ${joined(cut, ' and ')}. Finished they are ${joined(long, ' and ')} long on the outside of the bend: what is over is room for the leaf and for a second try.`;
  },
  line: say`Scribe a line along each blank from end to end, the inside of the bend, with an angle iron that sits on the tube.`,
  /** `marked`: the spine is not on the inside, so another station is marked there; `middles`: there are middle pieces. */
  firstEnds: (pieces: number, marked: boolean, middles: boolean, edge: Said): Said => {
    const line = marked ? say`station that is marked inside` : spineExplained;
    const mark = middles ? say`Mark the line, and on a middle piece the base edge` : say`Mark the line`;
    return say`On one end of each of the ${pieces} blanks lay the leaf, printed side out, its ${line} on the scribed line, slid out until the long point just stays on the tube; wrap and tape it so that the ends of its base edge meet. ${mark}, take the leaf off and cut ${edge}.`;
  },
  secondEnds: (where: Said, { long, short }: Pieces, units: Units): Said =>
    say`Then the other end of each middle piece: lay the leaf on the same scribed line, so that the insides of both cuts are on ONE line, ${where}. Cut it likewise: the piece is ${one(long, units)} long on the outside, ${one(short, units)} on the scribed line.`,
  /** From the base edge that was marked first, below nought where the leaves overlap. */
  byBase: (apart: Mm, units: Units): Said =>
    apart >= 0
      ? say`its base edge ${one(apart, units)} from the one marked`
      : say`its base edge ${one(-apart, units)} nearer to the first cut than the one marked, for the two leaves would overlap by that much`,
  byInside: (short: Mm, units: Units): Said =>
    say`where its line crosses the scribed one ${one(short, units)} from the first cut`,
  squareEnds: ({ long, short }: Pieces, after: boolean, units: Units): Said =>
    say`Cut the other end of each end piece square, ${one(long, units)} from the long point along the outside, ${one(short, units)} along the scribed line${after ? say`, and not before its mitre: the leaf is longer than the piece` : say``}.`,
  deburr: say`Deburr every piece inside and out.`,
  together: (pieces: readonly Pieces[], root: boolean, turn: Radians): Said => {
    const fit = root ? say`file until the root gap is even` : fileToRod;
    return say`Lay the ${ticket.pieces(pieces)} together on a flat steel plate, not on wood, the end pieces outermost, all scribed lines to the inside: ${fit}. Tack, and check that it turns ${angle(turn)}.`;
  },
};
