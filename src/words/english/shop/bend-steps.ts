import type { Said } from '../../../measure/said.ts';
import type { Mm, Radians, Units } from '../../../measure/units.ts';
import { joined, say } from '../../said.ts';
import { quantities } from '../quantities.ts';
import { type Edge, fileToRod, markAndCut, spineExplained } from './step-parts.ts';
import { ticket } from './ticket.ts';

/** One kind of the pieces of a bend. */
type Pieces = readonly { readonly kind: 'middle' | 'end'; readonly count: number }[];

type ElbowPiece = Pieces[number] & { readonly long: Mm; readonly short: Mm };

const { angle, tape } = quantities;

const BASES = {
  apart: say`its base edge as far from the one marked as the leaf says`,
  overlap: say`its base edge past the one marked, towards the first cut, by what the leaf says`,
  past: say`its base edge past the first cut by what the leaf says`,
};

function sides(long: Mm, short: Mm, units: Units): Said {
  return say`${tape(long, units)} long on the outside of the bend, ${tape(short, units)} on the inside`;
}

/** The steps of a bend that is made of straight pieces with one leaf: what each is cut to stands over them. */
export const bend = {
  blanks: say`Cut the blanks: what is over is room for the leaf and for a second try.`,
  /** Of pieces too short to be held. */
  onStock: say`Keep the stock long and make one piece after the other: none takes more of it than is told above.`,
  line: (onStock: boolean): Said =>
    say`Scribe a line along ${onStock ? say`the stock` : say`each blank`} from end to end, the inside of the bend, along an angle iron that sits on the tube.`,
  /** `marked`: the spine is not on the inside, so another station is marked there. */
  firstEnds: (pieces: number, marked: boolean, onStock: boolean): Said => {
    const line = marked ? say`station that is marked inside` : spineExplained;
    const where = onStock
      ? say`For each of the ${pieces} pieces lay the leaf on the end of the stock`
      : say`Lay the leaf on one end of each of the ${pieces} blanks`;
    return say`${where}, printed side out, its ${line} on the scribed line, its long point just on the tube. Tape it so that the ends of its base edge meet.`;
  },
  firstCuts: (middles: boolean, how: Edge): Said =>
    markAndCut(say`each`, middles ? say` (on a middle piece the base edge too)` : say``, how),
  /** How its base edge lies to the one marked, or past the first cut. */
  secondEnds: (base: keyof typeof BASES, onStock: boolean, long: Mm, short: Mm, units: Units): Said =>
    say`Then the other end of each middle piece: turn the leaf end for end, printed side still out, so that its arrow points out there. Lay its line on the same scribed line, ${BASES[base]}. Mark and cut it likewise${onStock ? say`: that parts the piece off` : say``}. The piece is then ${sides(long, short, units)}.`,
  squareEnds: (after: boolean, long: Mm, short: Mm, units: Units): Said =>
    say`Cut the other end of each end piece square${after ? say`, not before its mitre, for the leaf is longer than the piece` : say``}: ${sides(long, short, units)}.`,
  /** The other pieces of an elbow that the tube itself is the first piece of. */
  elbow: (end: 'A' | 'B', pieces: readonly ElbowPiece[], units: Units): Said => {
    const each = pieces.map(({ kind, count, long, short }) =>
      kind === 'middle'
        ? say`A middle piece is cut by it at both ends, the insides of both cuts on ONE line, ${sides(long, short, units)}.`
        : say`${count > 1 ? say`An` : say`The`} end piece is cut by it at one end and square at the other, ${sides(long, short, units)}.`,
    );
    return say`For the elbow at end ${end} cut also ${ticket.pieces(pieces)} with leaf ${end}. ${joined(each, ' ')}`;
  },
  deburr: say`Deburr every piece inside and out.`,
  together: (pieces: Pieces, root: boolean, turn: Radians, units: Units): Said => {
    const fit = root ? say`the root gap is even` : fileToRod('anywhere', units);
    return say`Lay the ${ticket.pieces(pieces)} together on a flat steel plate, not on wood, the end pieces outermost, all scribed lines to the inside: file until ${fit}. Tack, and check that it turns ${angle(turn)}. Watch for fire 30 minutes after the last hot work.`;
  },
};
