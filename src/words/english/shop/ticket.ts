import type { Said } from '../../../measure/said.ts';
import type { Mm, Radians } from '../../../measure/units.ts';
import { joined, say } from '../../said.ts';
import { quantities } from '../quantities.ts';

/** What of an end lies on these sheets, in their order. */
type PrintedOn = {
  readonly place: 'leaf' | 'footprint';
  readonly end: 'A' | 'B';
  readonly on: readonly number[];
};

type Pieces = readonly { readonly kind: 'middle' | 'end'; readonly count: number }[];

/** The page for one tube: what stands over its steps. */
export const ticket = {
  /** Beside a tube's name: which ticket, how many of what, and on which sheets each of its leaves and footprints lies. */
  about: (
    number: number,
    of: number,
    make: Said,
    mark: Said | undefined,
    printed: readonly PrintedOn[],
  ): Said => {
    const which = of > 1 ? say`Ticket ${number} of ${of}` : say`Ticket`;
    const named = mark ? [say`${which} (${mark})`] : of > 1 ? [which] : [];
    const [first, ...others] = [...placesOn('leaf', printed), ...placesOn('footprint', printed)];
    return joined([...named, make, ...(first ? [say`sheets: ${first}`, ...others] : [])], '  ·  ');
  },
  make: (copies: number, pair: boolean, pieces: Said | undefined): Said => {
    const what = pieces ? say`: ${pieces}${copies > 1 ? say` each` : say``}` : say``;
    return say`make ${copies}${pair ? say` of each hand` : say``}${what}`;
  },
  hand: (hand: 'as-drawn' | 'opposite'): Said => (hand === 'opposite' ? say`opposite hand` : say`as drawn`),
  /** Whose the boxes of a pair are. */
  ticks: say`Boxes to tick: black at the left is as drawn, at the right the opposite hand.`,
  /** One kind of the pieces of a bend, without their number. */
  piece: (kind: 'middle' | 'end', count = 1): Said => pieceName(kind, count),
  /** `3 middle pieces and 2 end pieces`. */
  pieces: (pieces: Pieces): Said => allPieces(pieces),
  /** The same, and how many ends are cut with the leaf. */
  piecesAndEnds: (pieces: Pieces, ends: number): Said => say`${allPieces(pieces)}, ${ends} mitred ends`,
  /** Besides the tube itself. */
  withPieces: (pieces: Pieces): Said => say`with ${allPieces(pieces)}`,
  /** `2 x bunk stay`. */
  times: (count: number, what: Said): Said => (count > 1 ? say`${count} x ${what}` : what),
  /** Over the picture of an end. */
  end: (end: 'A' | 'B'): Said => say`End ${end}`,
  named: (tube: Said): Said => say`ticket of ${tube}`,
  labels: {
    note: say`note`,
    /** Of an end's leaf, then of its footprints. */
    mark: say`code`,
    tube: say`tube`,
    wall: say`wall`,
    length: say`length`,
    longPoints: say`long points`,
    workPoints: say`work points`,
    edge: say`edge`,
    headers: say`headers`,
    rootGap: say`root gap`,
    twist: say`rotation A to B`,
    mitre: (end: 'A' | 'B'): Said => say`end ${end}, mitre off square`,
    /** Of one kind of a bend's pieces. */
    blank: (count: number, kind?: 'middle' | 'end'): Said => {
      const blank = count > 1 ? say`blanks` : say`blank`;
      return kind ? say`${blank} for ${pieceName(kind, count)}` : blank;
    },
    stock: say`stock`,
  },
  /** What one kind of a bend's pieces takes of long stock, from which it is not sawn off first. */
  ofStock: (count: number, kind: 'middle' | 'end', length: Said): Said =>
    say`${count} x ${length} for the ${pieceName(kind, count)}`,
  footprintMarks: (marks: readonly Said[]): Said =>
    say`${marks.length > 1 ? say`footprints` : say`footprint`} ${joined(marks, ', ')}`,
  /** What all pieces take, of one length that is held. */
  longStock: (all: Said, each: readonly Said[]): Said =>
    say`one length, ${all} and what the vise holds besides: ${joined(each, ', ')}`,
  headersApart: (apart: Radians): Said =>
    apart < 1e-6 ? say`parallel` : say`${quantities.angle(apart)} apart`,
  /** Under the picture of both ends. */
  seenFromA: say`from end A, spine up`,
  /** Under a view along a header, B up; of a pair it stands with its hand. */
  alongHeader: (end: 'A' | 'B' | undefined, side: Said, offset: Mm): Said => {
    const from = end ? say`${end}, from its ${side}` : say`from its ${side}`;
    return offset === 0 ? from : say`${from}: header to the ${offset > 0 ? say`right` : say`left`}`;
  },
  /** What one end has, and one hand. */
  ofEnd: (end: 'A' | 'B', label: Said): Said => say`${end} ${label}`,
  ofHand: (hand: 'as-drawn' | 'opposite', step: Said): Said =>
    say`${hand === 'opposite' ? say`Opposite hand` : say`As drawn`}: ${step}`,
};

/** `leaf A 16; B 26`, where there is one. */
function placesOn(place: PrintedOn['place'], printed: readonly PrintedOn[]): Said[] {
  const own = printed.filter((each) => each.place === place);
  const many = own.length > 1 || own.some(({ on }) => on.length > 1);
  const which = place === 'leaf' ? say`leaf` : many ? say`footprints` : say`footprint`;
  const places = own.map(({ end, on }) => say`${end} ${runsOf(on)}`);
  return own.length > 0 ? [say`${which} ${joined(places, '; ')}`] : [];
}

/** `16–19, 23`: of three and more that follow one another the first and the last. */
function runsOf(numbers: readonly number[]): Said {
  const runs: number[][] = [];
  for (const number of numbers) {
    const run = runs.at(-1);
    if (run?.at(-1) === number - 1) run.push(number);
    else runs.push([number]);
  }
  const said = runs.map((run) => {
    const [first = 0, ...others] = run;
    return others.length > 1
      ? say`${first}–${others.at(-1) ?? first}`
      : joined(
          run.map((each) => say`${each}`),
          ', ',
        );
  });
  return joined(said, ', ');
}

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
