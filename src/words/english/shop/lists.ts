import type { Said } from '../../../measure/said.ts';
import { sawLength, tapeLength } from '../../../measure/saw-length.ts';
import { type Length, MM_PER_INCH, type Mm, type Radians, type Units } from '../../../measure/units.ts';
import { inchFraction, millimetres } from '../../../measure/write.ts';
import { asWritten, joined, say } from '../../said.ts';
import { quantities } from '../quantities.ts';
import { ticket } from './ticket.ts';

type Hand = 'as-drawn' | 'opposite';
type Lengthless = 'marked' | 'unset';

const { angle, own, counted } = quantities;

/** A row of the cut list; what is not known is left out. Lengths in mm, angles in radians. */
type Row = {
  readonly tube: Said;
  readonly piece?: 'middle' | 'end';
  readonly hand: Hand;
  readonly pair: boolean;
  readonly copies: number;
  readonly size: Said;
  readonly wall?: Length;
  readonly blank?: Mm;
  readonly lengthless?: Lengthless;
  readonly overall?: Mm;
  readonly between?: Mm;
  readonly ends: { readonly A?: RowEnd; readonly B?: RowEnd };
  readonly twist?: Radians;
};

type RowEnd = {
  readonly angles: readonly { readonly rad: Radians }[];
  readonly mitred?: boolean;
};

const LENGTHS = [say`long points`, say`work points`] as const;
const ROTATION = say`rotation A to B`;
const LENGTHLESS = { marked: say`marked at the frame`, unset: say`not given` };
const NOTHING = say``;

/** The cells of a row from the right of its wall, aligned with `heads`; those of what is not known are empty. */
function cells(row: Row, units: Units): readonly Said[] {
  const { copies, overall, between, ends, twist } = row;
  return [
    say`${copies}`,
    blank(row, units),
    length(overall, units),
    length(between, units),
    angles(ends.A),
    angles(ends.B),
    twist === undefined ? NOTHING : quantities.twist(twist),
  ];
}

/** A length on a mark of the job's tape, without its unit: `512.5`, `20-5/32`. */
function length(mm: Mm | undefined, units: Units): Said {
  if (mm === undefined) return NOTHING;
  const marked = tapeLength(mm, units);
  return asWritten(units === 'mm' ? millimetres(marked) : inchFraction(marked));
}

/** A blank as it is sawn, never short: `512.5`; or why it has no length. */
function blank({ blank, lengthless }: Row, units: Units): Said {
  if (blank === undefined) return lengthless === 'marked' ? say`marked` : LENGTHLESS.unset;
  const sawn = sawLength(blank, units);
  return asWritten(units === 'mm' ? sawn.toFixed(1) : inchFraction(sawn));
}

/** `62°`; of several headers `62° + 48°`; of a mitre what the saw is set to, `mitre 11.25°`; `square` where it is cut so. */
function angles(end: RowEnd | undefined): Said {
  if (!end) return NOTHING;
  if (end.angles.length === 0) return say`square`;
  const saw = (rad: Radians): Said => (end.mitred ? say`mitre ${angle(Math.PI / 2 - rad)}` : angle(rad));
  return joined(
    end.angles.map(({ rad }) => saw(rad)),
    ' + ',
  );
}

/** A tube's name, and which of its pieces. */
function name(tube: Said, piece: 'middle' | 'end' | undefined): Said {
  return joined([tube, ...(piece ? [ticket.piece(piece)] : [])], ', ');
}

/** `31.75 mm (1-1/4 in, 1.250), wall 2.4 mm`. */
function size(section: Said, wall: Length | undefined): Said {
  return wall ? say`${section}, wall ${own(wall)}` : section;
}

const cut = {
  title: say`Cut list`,
  name,
  size,
  /** A blank in a row's cell. */
  blankOf: blank,
  /** Over the columns on paper. */
  heads: (units: Units): readonly [Said, Said] => [say`qty`, say`blank, ${asWritten(units)}`],
  /** In a terminal, over all columns and in them. */
  columns: [
    ...[say`tube`, say`hand`, say`qty`, say`size`, say`wall`, say`blank`],
    ...[...LENGTHS, say`A`, say`B`, ROTATION],
  ] as readonly Said[],
  line: (row: Row, units: Units): readonly Said[] => {
    const { tube, piece, hand, wall } = row;
    const [copies = NOTHING, ...others] = cells(row, units);
    const thick = wall && (units === 'mm' ? millimetres(wall.mm) : (wall.mm / MM_PER_INCH).toFixed(3));
    return [name(tube, piece), ticket.hand(hand), copies, row.size, asWritten(thick ?? ''), ...others];
  },
  /** How the list is read in a terminal. */
  lineNote: (units: Units, pairs: boolean): Said => {
    const lengths =
      units === 'mm'
        ? say`Lengths in mm; blanks rounded up to 0.5 mm.`
        : say`Lengths in inches; blanks rounded up to 1/32 in.`;
    return say`${lengths} ${pairs ? say`Quantities are of each hand; angles` : say`Angles`} are to the header.`;
  },
  /** And on paper. */
  note: (units: Units): Said =>
    units === 'mm'
      ? say`Blanks rounded up to 0.5 mm; the saw's kerf comes on top.`
      : say`Blanks rounded up to 1/32 in; the saw's kerf comes on top.`,
  /** What an end lands on, as that is said; a mitre is no header. */
  onto: (names: readonly Said[], mitred: boolean): Said =>
    mitred ? joined(names, ' and ') : say`onto ${joined(names, ' and ')}`,
  square: say`cut square`,
};

const order = {
  title: say`Order of work`,
  /** `framed`: the tubes land on one another. */
  note: (many: boolean, down: boolean, framed: boolean): Said => {
    const all = say`With the blanks cut, work by header: all ends for one header together, so that the saw or the cutter is set once; the steps are on the tickets.${framed ? say` Cut all ends before you seat any: an end’s header may come later in this list.` : NOTHING}`;
    const boxes = say`A box for each end: tick it when it is cut${many ? say`; one for all where there are many` : say``}.`;
    return say`${all} ${boxes}${down ? say` Read each group down, then across.` : say``}`;
  },
  setting: (number: number, name: Said): Said => say`${number}. ${name}`,
  /** One end of a tube, or the mitred ends of a bend. */
  task: (end: 'A' | 'B' | 'mitred', tube: Said, ends: number, on: number): Said => {
    const which = end === 'mitred' ? say`mitred ends` : say`end ${end}`;
    const times = ends > 1 ? say` (${ends})` : say``;
    return say`${which} of ${tube}${times}, ticket ${on}`;
  },
};

/** Alike blanks, and how long each is as it is sawn. */
type Pieces = {
  readonly name: Said;
  readonly length: Mm;
  readonly count: number;
};

const stock = {
  title: say`Stock`,
  /** Over the plan in a terminal. */
  heading: (kerf: Mm, units: Units): Said => say`Stock, ${short(kerf, units)} lost at every cut`,
  /** `In stock: 3m x 2, 1.2m.`; it may be there for each size of tube. */
  rack: (
    rack: readonly { readonly length: Length; readonly count: number }[],
    sizes: number,
    kerf?: Length,
  ): Said => {
    const lengths = rack.map(({ length, count }) =>
      count > 1 ? say`${own(length)} x ${count}` : own(length),
    );
    const whose = sizes > 1 ? say`, all of these for each size of tube` : say``;
    const lost = kerf ? say` Each cut takes ${own(kerf)} (the saw's kerf).` : NOTHING;
    return say`In stock: ${joined(lengths, ', ')}${whose}.${lost}`;
  },
  /** `6m no. 2`: written on the steel. */
  bar: (length: Length | undefined, number: number): Said =>
    say`${length ? own(length) : NOTHING} no. ${number}`,
  offcut: (number: number): Said => say`offcut ${number}`,
  /** What is cut from one bar: `2 x bunk stay 629.1 mm; offcut 1: 812 mm`. Without a name what is left is scrap. */
  cuts: (pieces: readonly Pieces[], left: Mm, units: Units, offcut?: Said): Said => {
    if (left <= 0) return say`${listed(pieces, units)}; nothing left`;
    return say`${listed(pieces, units)}; ${offcut ?? say`scrap`}: ${short(left, units)}`;
  },
  /** In a terminal, under the size of tube. */
  under: (line: Said): Said => say`  ${line}`,
  named: (bar: Said, cuts: Said): Said => say`  ${bar}: ${cuts}`,
  /** How the nesting stands against the lower bound, where there is one. */
  bound: (bars: number, total: Mm, units: Units, left: boolean, lowerBound?: Mm): Said => {
    const taken = say`${counted(bars, say`length`, say`lengths`)}, ${short(total, units)} in all`;
    if (left) return say`${taken}; not every blank has found stock.`;
    if (lowerBound === undefined) return say`${taken}.`;
    return total - lowerBound < 1e-6
      ? say`${taken}: it can't be done with less.`
      : say`${taken}; it can't be done with less than ${short(lowerBound, units)}.`;
  },
  /** What found no stock, and how long it is together. */
  left: (pieces: readonly Pieces[], sum: Mm, units: Units): Said =>
    say`No stock for: ${listed(pieces, units)}. That takes ${short(sum, units)} more, and what the cuts lose.`,
  lengthless: (tube: Said, why: Lengthless): Said =>
    say`${tube}: its length is ${LENGTHLESS[why]}, so it is cut from none of these.`,
  allLengthless: (tubes: readonly { readonly name: Said; readonly why: Lengthless }[]): Said =>
    say`Without a length, so cut from none of these: ${joined(
      tubes.map(({ name, why }) => say`${name} (${LENGTHLESS[why]})`),
      ', ',
    )}.`,
};

function listed(pieces: readonly Pieces[], units: Units): Said {
  const said = pieces.map(({ name, length, count }) =>
    ticket.times(count, say`${name} ${short(length, units)}`),
  );
  return joined(said, ', ');
}

function short(mm: Mm, units: Units): Said {
  return units === 'mm' ? say`${Math.round(mm * 10) / 10} mm` : quantities.inOne(mm, 'in');
}

/** The pages before the tickets: cautions, cut list, order of work and stock. */
export const lists = {
  cautions: {
    title: say`Before you begin`,
    // Half an hour of watching: 29 CFR 1910.252(a)(2)(iii)(B), from memory. 25 mm of bare steel: common practice, no source.
    note: (units: Units): Said =>
      say`Measure the bars of a sheet before you cut by it. Guard eyes, ears, hands and lungs; cut edges are sharp. Hot work sets things alight: clear away what burns, and stay at least 30 minutes after the last of it, longer where your rules ask it. Fumes of zinc and plating are poisonous: strip both ${units === 'mm' ? say`25 mm` : say`1 in`} back from the weld, inside and out, outdoors or with extraction and a respirator; never heat cadmium plating. Vent a sealed tube before you weld it. What carries people or loads (cages, trailers, pressure, lifting) follows the governing rules and local code. It is designed by those licensed and welded by those qualified for it: a paper template proves neither strength nor weld.`,
  },
  cut,
  order,
  stock,
  /** Why a tube has no length: it is marked at the frame, or the job does not give one. */
  lengthless: (why: Lengthless): Said => LENGTHLESS[why],
};
