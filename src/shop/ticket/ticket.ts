import { headersApart } from '../../fit/headers-apart.ts';
import type { CopedEnd, EndName, Part } from '../../job/job.ts';
import { tubeFactsOf, unitsOfTube } from '../../job/sections.ts';
import { type Fact, factOf } from '../../leaf/card/fact.ts';
import { headerFacts } from '../../leaf/card/header-facts.ts';
import { heelsPicture, linesAcross } from '../../leaf/picture/heels-picture.ts';
import { baseEdgeOf } from '../../leaf/wrap/base-edge.ts';
import { TAB } from '../../leaf/wrap/seam-edges.ts';
import { WASTE_ROOM } from '../../leaf/wrap/waste.ts';
import type { Said } from '../../measure/said.ts';
import { sawLength } from '../../measure/saw-length.ts';
import type { Cope } from '../../saddle/cope.ts';
import { sawnAt } from '../../saddle/sawn.ts';
import type { Hand, TubeSolution } from '../../saddle/solve.ts';
import type { Size } from '../../tiler/free-room.ts';
import type { Language } from '../../words/language.ts';
import { asWritten } from '../../words/said.ts';
import { bendJobOf, elbowsOf } from '../bend-pieces.ts';
import { type BlankKind, blanksOf } from '../blanks.ts';
import { lengthless } from '../lists/cut-list.ts';
import { handsOf, isMitred, type Piece, pieceOf } from '../piece.ts';
import { isMadeOnStock } from '../steps/bend-steps.ts';
import { hasSpine } from '../steps/spine-step.ts';
import type { Step } from '../steps/step.ts';
import { stepsOf } from '../steps/steps.ts';

/** What a person needs to make one tube, of both hands where it is a pair, from blank to fit. */
export interface Ticket {
  readonly number: number;
  readonly of: number;
  readonly name: Said;
  /** Its mark, where it is printed. */
  readonly mark?: Said;
  /** How many of what. */
  readonly make: Said;
  /** Of both hands together. */
  readonly copies: number;
  /** What both hands have alike: what is read from afar while the tube is cut, and what is read from near. */
  readonly saw: readonly Fact[];
  readonly tube: readonly Fact[];
  readonly ends: readonly TicketEnd[];
  readonly hands: readonly TicketHand[];
  /** Of a frame: where each tube that is this piece goes, and what lands on it. */
  readonly places: readonly (readonly Fact[])[];
  readonly steps: readonly Step[];
  readonly words: Language;
}

/** A coped end, and what is alike of it in both hands. */
export interface TicketEnd {
  readonly name: EndName;
  readonly cope: Cope;
  /** What its leaf takes of a sheet, where it has one. */
  readonly wrap?: Size;
  readonly facts: readonly Fact[];
}

/** One hand, and what it has otherwise than its twin. */
export interface TicketHand {
  readonly solution: TubeSolution;
  /** Only of a pair. */
  readonly hand?: Hand;
  readonly saw: readonly Fact[];
  readonly facts: readonly { readonly end: EndName; readonly fact: Fact }[];
}

/** What a frame tells of its pieces: where their tubes go, and whether a plain end goes on there in another tube. */
export interface InFrame {
  readonly placesOf: (solution: TubeSolution) => readonly (readonly Fact[])[];
  readonly goesOn: (solution: TubeSolution) => boolean;
}

const NO_FRAME: InFrame = { placesOf: () => [], goesOn: () => false };

/**
 * A ticket for each tube, in the order of the job; `first` says which end of each is cut first, `footprints`
 * whether they are printed too.
 */
export function ticketsOf(
  solutions: readonly TubeSolution[],
  first: ReadonlyMap<TubeSolution, EndName>,
  footprints: boolean,
  words: Language,
  { placesOf, goesOn }: InFrame = NO_FRAME,
): readonly Ticket[] {
  const tubes = handsTogether(solutions);
  return tubes.map(([drawn, ...twins], place) => {
    const all = [drawn, ...twins];
    const pieces = all.map((solution) =>
      pieceOf(solution, first.get(drawn), footprints, goesOn(solution), words),
    );
    const bend = bendJobOf(drawn);
    const { tube } = drawn;
    const saws = pieces.map(sawFacts);
    const ends = (['A', 'B'] as const).map((name) => ({
      name,
      own: pieces.map((each) => endFacts(each, name)),
    }));
    return {
      number: place + 1,
      of: tubes.length,
      name: asWritten(tube.name),
      make: words.ticket.make(
        tube.copies,
        twins.length > 0,
        bend ? words.ticket.piecesAndEnds(bend.pieces, bend.ends) : elbowPieces(drawn, words),
      ),
      copies: tube.copies * all.length,
      saw: alike(saws),
      tube: pieces.slice(0, 1).flatMap(tubeFacts),
      ends: ends.flatMap(({ name, own }): TicketEnd[] => {
        const cope = drawn.ends[name];
        if (cope?.kind !== 'coped') return [];
        const leaf = sawnAt(drawn, name) === undefined && { wrap: wrapSize(drawn, name, cope) };
        return [{ name, cope, ...leaf, facts: alike(own) }];
      }),
      hands: all.map((solution, i) => ({
        solution,
        ...(tube.pair && { hand: solution.hand }),
        saw: otherwise(saws, i),
        facts: ends.flatMap(({ name, own }) => otherwise(own, i).map((fact) => ({ end: name, fact }))),
      })),
      places: all.flatMap(placesOf),
      steps: stepsOfHands(pieces),
      words,
    };
  });
}

function wrapSize(solution: TubeSolution, end: EndName, { longPoint, joint }: Cope): Size {
  const { setback } = baseEdgeOf(solution, end);
  return { width: joint.section.girth + TAB, height: setback - longPoint.setback + WASTE_ROOM };
}

/** What is made besides a tube that is the first piece of an elbow. */
function elbowPieces(solution: TubeSolution, { ticket }: Language): Said | undefined {
  const pieces = elbowsOf(solution).flatMap((elbow) => elbow.pieces);
  return pieces.length > 0 ? ticket.withPieces(pieces) : undefined;
}

/** Each tube with its opposite hand, where it has one. */
export function handsTogether(solutions: readonly TubeSolution[]): [TubeSolution, ...TubeSolution[]][] {
  const tubes: [TubeSolution, ...TubeSolution[]][] = [];
  for (const solution of solutions) {
    const last = tubes.at(-1);
    if (last && solution.hand === 'opposite') last.push(solution);
    else tubes.push([solution]);
  }
  return tubes;
}

/** The facts that every hand has in the same words. */
function alike(hands: readonly (readonly Fact[])[]): Fact[] {
  const [first = [], ...others] = hands;
  return first.filter((fact) => others.every((facts) => facts.some((other) => isSame(fact, other))));
}

/** Those that one hand has in words of its own. */
function otherwise(hands: readonly (readonly Fact[])[], place: number): Fact[] {
  const same = alike(hands);
  return (hands[place] ?? []).filter((fact) => !same.some((other) => isSame(fact, other)));
}

function isSame(one: Fact, other: Fact): boolean {
  return one.label === other.label && one.text === other.text;
}

/** The steps, once where all hands have them in the same words, else once for each hand. */
function stepsOfHands(pieces: readonly Piece[]): readonly Step[] {
  const [steps = [], ...others] = pieces.map(stepsOf);
  return steps.flatMap((step, i) => {
    const own = [step, ...others.flatMap((each) => each[i] ?? [])];
    const told = own.map(({ text, warnings }) => [text, ...warnings].join());
    if (told.every((text) => text === told[0])) return [step];
    return own.map((each, hand): Step => {
      const { hand: which } = pieces[hand]?.solution ?? {};
      const { words } = pieces[0] ?? {};
      return which && words ? { ...each, hand: which, text: words.ticket.ofHand(which, each.text) } : each;
    });
  });
}

function sawFacts(piece: Piece): Fact[] {
  const { solution, first, second, words } = piece;
  const { labels } = words.ticket;
  const { twist } = solution;
  const mitred = [first, second].flatMap((end) => (end && isMitred(end) ? [end] : []));
  return [
    ...blankFacts(piece),
    ...(twist === undefined || !second ? [] : [factOf('twist', labels.twist, words.quantities.twist(twist))]),
    ...mitred.map(({ name, cope }) => ({
      fact: 'mitre' as const,
      end: name,
      label: labels.mitre(name),
      text: words.quantities.angle(Math.PI / 2 - cope.end.parts[0].angle.rad),
    })),
  ];
}

/** The blanks that are sawn; of a pair both hands together. */
function blankFacts({ solution, units, words: { ticket, quantities } }: Piece): Fact[] {
  const hands = handsOf(solution.tube);
  return sawnOrNot(solution, true).map(({ length, count, piece }) =>
    factOf(
      'blank',
      ticket.labels.blank(hands * count, piece),
      ticket.times(hands * count, quantities.sawn(length, units)),
    ),
  );
}

/** What pieces take of long stock: no length to saw, so not among what is read from afar. */
function stockFacts({ solution, units, words: { ticket, quantities } }: Piece): Fact[] {
  const hands = handsOf(solution.tube);
  const taken = sawnOrNot(solution, false).flatMap(({ length, count, piece }) =>
    piece ? [{ count: hands * count, piece, length }] : [],
  );
  if (taken.length === 0) return [];
  const all = taken.reduce((sum, { count, length }) => sum + count * sawLength(length, units), 0);
  const each = taken.map(({ count, piece, length }) =>
    ticket.ofStock(count, piece, quantities.sawn(length, units)),
  );
  return [factOf('pieces', ticket.labels.stock, ticket.longStock(quantities.sawn(all, units), each))];
}

function sawnOrNot(solution: TubeSolution, sawn: boolean): readonly BlankKind[] {
  const onStock = isMadeOnStock(solution);
  return blanksOf(solution).filter(({ piece }) => sawn !== (piece !== undefined && onStock));
}

function tubeFacts(piece: Piece): Fact[] {
  const { tube } = piece.solution;
  const { ticket, quantities } = piece.words;
  return [
    factOf('tube', ticket.labels.tube, tubeFactsOf(tube.section).said(piece.words).words),
    ...(tube.wall ? [factOf('wall', ticket.labels.wall, quantities.sized(tube.wall))] : []),
    ...lengthFacts(piece),
    ...apartFacts(piece),
    ...stockFacts(piece),
  ];
}

function lengthFacts({ solution, units, words: { ticket, lists, quantities } }: Piece): Fact[] {
  const { lengths } = solution;
  const { labels } = ticket;
  // A bend's pieces have theirs where they are cut.
  if (bendJobOf(solution)) return [];
  if (!lengths) return [factOf('long-points', labels.length, lists.lengthless(lengthless(solution)))];
  return [
    factOf('long-points', labels.longPoints, quantities.tape(lengths.overall, units)),
    factOf('work-points', labels.workPoints, quantities.tape(lengths.between, units)),
  ];
}

/** How two headers in one plane stand to one another: a wrong angle shows there. */
function apartFacts({ solution, words: { ticket } }: Piece): Fact[] {
  const apart = headersApart(solution.tube);
  return apart === undefined ? [] : [factOf('header', ticket.labels.headers, ticket.headersApart(apart))];
}

/** Whether where an end's heel lies is the tube's rotation, which is told: end A's lies on the spine. */
function isRotation({ solution: { tube, twist }, second }: Piece, name: EndName): boolean {
  const a = tube.ends.A;
  const isOnSpine = a?.kind === 'coped' && a.parts.length === 1 && a.parts[0].clock.rad === 0;
  return name === 'B' && twist !== undefined && second !== undefined && isOnSpine;
}

/**
 * Whether the picture of both ends shows how a header is turned as exactly as words would: by quarters; of an angle over 90 degrees
 * there is more to tell.
 */
function isPictured(
  { solution, words }: Piece,
  name: EndName,
  { parts }: CopedEnd,
  { clock, angle }: Part,
): boolean {
  const isOnQuarter = Math.abs(Math.sin(2 * clock.rad)) < 1e-9;
  const isPlain = parts.length > 1 || angle.rad < Math.PI / 2 + 1e-9;
  if (!isOnQuarter || !isPlain || !heelsPicture(solution, words)) return false;
  return linesAcross(solution, words).filter(({ end }) => end === name).length === parts.length;
}

/**
 * The angle of a mitre stands with the numbers for the saw and how far it turns in its picture, a bend's pieces with its lengths, which of its lines is inside in a step, and where a heel lies is nothing to one whose spine may lie anywhere;
 * how an edge is made, with its cut.
 */
function endFacts(piece: Piece, name: EndName): Fact[] {
  const { solution, words } = piece;
  const cope = solution.ends[name];
  const { labels } = words.ticket;
  if (cope?.kind !== 'coped') return [];
  const { root, parts, toFlat } = cope.end;
  const single = parts.length === 1;
  const freelyTurned = bendJobOf(solution) !== undefined || !(hasSpine(piece) || solution.tube.pair);
  const isTold = freelyTurned || isRotation(piece, name);
  const shown = ({ fact, part = 0 }: Fact): boolean => {
    const own = parts[part] ?? parts[0];
    if (fact === 'clocking') return (single && isTold) || isPictured(piece, name, cope.end, own);
    if (fact === 'header') return single && own.onto.kind === 'mitre' && !own.onto.segments;
    return single && (fact === 'mitre' || fact === 'pieces');
  };
  return [
    ...headerFacts(cope, unitsOfTube(solution.tube), words).filter((each) => !shown(each)),
    ...(toFlat ? [factOf('edge', labels.edge, words.check.toFlat)] : []),
    ...(root && root.mm > 0 ? [factOf('root', labels.rootGap, words.quantities.own(root))] : []),
  ];
}
