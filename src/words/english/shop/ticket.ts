import type { Said } from '../../../measure/said.ts';
import { joined, say } from '../../said.ts';

type Pieces = readonly { readonly kind: 'middle' | 'end'; readonly count: number }[];

/** The page for one tube: what stands over its steps. */
export const ticket = {
  /** Under a tube's name: which ticket, how many of what, and where its twin is. */
  about: (at: {
    readonly number: number;
    readonly of: number;
    readonly copies: number;
    readonly pieces?: Said;
    readonly hand?: { readonly twin: number };
  }): Said => {
    const { number, of, copies, pieces, hand } = at;
    const what = pieces ? say`: ${pieces}${copies > 1 ? say` each` : say``}` : say``;
    return joined(
      [
        say`Ticket ${number} of ${of}`,
        say`make ${copies}${what}`,
        ...(hand ? [say`its twin, the other hand, is ticket ${hand.twin}`] : []),
      ],
      '  ·  ',
    );
  },
  hand: (hand: 'as-drawn' | 'opposite'): Said => (hand === 'opposite' ? say`opposite hand` : say`as drawn`),
  /** One kind of the pieces of a bend, without their number. */
  piece: (kind: 'middle' | 'end', count = 1): Said => pieceName(kind, count),
  /** `3 middle pieces and 2 end pieces`. */
  pieces: (pieces: Pieces): Said => allPieces(pieces),
  /** The same, and how many ends are cut with the leaf. */
  piecesAndEnds: (pieces: Pieces, ends: number): Said => say`${allPieces(pieces)}, ${ends} mitred ends`,
  /** `2 x bunk stay`. */
  times: (count: number, what: Said): Said => (count > 1 ? say`${count} x ${what}` : what),
  /** Over the facts of the tube, and of an end. */
  tube: say`Tube`,
  end: (end: 'A' | 'B'): Said => say`End ${end}`,
  labels: {
    tube: say`tube`,
    wall: say`wall`,
    length: say`length`,
    longPoints: say`long points`,
    workPoints: say`work points`,
    cut: say`cut`,
    rotation: say`rotation`,
    edge: say`edge`,
    rootGap: say`root gap`,
    twist: say`rotation A to B`,
    baseToBase: say`base edge to base edge`,
    baseToEnd: (end: 'A' | 'B'): Said => say`base edge to end ${end}`,
    mitre: (end: 'A' | 'B'): Said => say`end ${end}, mitre off square`,
    /** Of a bend the blanks of one kind of its pieces. */
    blank: (count: number, kind?: 'middle' | 'end'): Said =>
      say`${count > 1 ? say`blanks` : say`blank`}${kind ? say` for ${pieceName(kind, count)}` : say``}`,
    piece: (kind: 'middle' | 'end'): Said => (kind === 'end' ? say`end` : say`middle`),
  },
  square: say`square`,
  byItsMark: say`by its mark`,
  /** How long a piece of a bend is. */
  sides: (long: Said, short: Said): Said => say`${long} on the outside, ${short} on the inside`,
  /** Under the picture of both heels, and in it. */
  heels: say`heels, from end A, spine up`,
  spineUp: say`spine up`,
  heel: (...ends: readonly ('A' | 'B')[]): Said =>
    joined(
      ends.map((end) => say`${end}`),
      ', ',
    ),
};

function pieceName(kind: 'middle' | 'end', count: number): Said {
  const piece = count > 1 ? say`pieces` : say`piece`;
  return kind === 'middle' ? say`middle ${piece}` : say`end ${piece}`;
}

function allPieces(pieces: Pieces): Said {
  return joined(
    pieces.map(({ kind, count }) => say`${count} ${pieceName(kind, count)}`),
    ' and ',
  );
}
