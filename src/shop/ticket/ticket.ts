import type { EndName } from '../../job/job.ts';
import { tubeFactsOf, unitsOfTube } from '../../job/sections.ts';
import type { Fact } from '../../leaf/card/fact.ts';
import { headerFacts } from '../../leaf/card/header-facts.ts';
import type { Said } from '../../measure/said.ts';
import type { Mm } from '../../measure/units.ts';
import type { Cope } from '../../saddle/cope.ts';
import type { Hand, TubeSolution } from '../../saddle/solve.ts';
import type { Language } from '../../words/language.ts';
import { asWritten } from '../../words/said.ts';
import { bendJobOf } from '../bend-pieces.ts';
import { blanksOf } from '../blanks.ts';
import { lengthless } from '../lists/cut-list.ts';
import { isMitred, type Piece, pieceOf } from '../piece.ts';
import { baseApart } from '../steps/cope-steps.ts';
import type { Step } from '../steps/step.ts';
import { stepsOf } from '../steps/steps.ts';

/** What a person needs to make one tube of one hand, from blank to fit. */
export interface Ticket {
  readonly solution: TubeSolution;
  readonly number: number;
  readonly of: number;
  readonly name: Said;
  /** Only of a pair. */
  readonly hand?: { readonly own: Hand; readonly twin: number };
  readonly copies: number;
  /** Of what each is put together, where that is several pieces. */
  readonly pieces?: Said;
  /** What is read from afar while the tube is cut. */
  readonly saw: readonly Fact[];
  readonly tube: readonly Fact[];
  readonly ends: readonly { readonly name: EndName; readonly facts: readonly Fact[]; readonly cope?: Cope }[];
  readonly steps: readonly Step[];
  readonly words: Language;
}

/**
 * A ticket for each tube of each hand, in the order of the job; `first` says which end of each is cut first, `footprints`
 * whether they are printed too.
 */
export function ticketsOf(
  solutions: readonly TubeSolution[],
  first: ReadonlyMap<TubeSolution, EndName>,
  footprints: boolean,
  words: Language,
): readonly Ticket[] {
  return solutions.map((solution, place) => {
    const { tube, hand } = solution;
    const piece = pieceOf(solution, first.get(solution), footprints, words);
    const bend = bendJobOf(solution);
    const twin = solutions.findIndex((other) => other.tube.name === tube.name && other.hand !== hand);
    return {
      solution,
      number: place + 1,
      of: solutions.length,
      name: asWritten(tube.name),
      ...(tube.pair && { hand: { own: hand, twin: twin + 1 } }),
      copies: tube.copies,
      ...(bend && { pieces: words.ticket.piecesAndEnds(bend.pieces, bend.ends) }),
      saw: sawFacts(piece),
      tube: tubeFacts(piece),
      ends: (['A', 'B'] as const).flatMap((name) => endFacts(piece, name)),
      steps: stepsOf(piece),
      words,
    };
  });
}

function sawFacts(piece: Piece): Fact[] {
  const { solution, first, second, units, words } = piece;
  const { labels } = words.ticket;
  const { twist } = solution;
  const apart = baseApart(piece);
  const square = solution.ends.A?.kind === 'plain' ? 'A' : 'B';
  const base = second ? labels.baseToBase : labels.baseToEnd(square);
  const mitred = [first, second].flatMap((end) => (end && isMitred(end) ? [end] : []));
  return [
    ...blankFacts(piece),
    ...(apart === undefined || apart < 0
      ? []
      : [{ fact: 'base-distance' as const, label: base, text: words.quantities.both(apart, units) }]),
    ...(twist === undefined
      ? []
      : [{ fact: 'twist' as const, label: labels.twist, text: words.quantities.twist(twist) }]),
    ...mitred.map(({ name, cope }) => ({
      fact: 'mitre' as const,
      label: labels.mitre(name),
      text: words.quantities.angle(Math.PI / 2 - cope.end.parts[0].angle.rad),
    })),
  ];
}

function blankFacts({ solution, units, words: { ticket, quantities } }: Piece): Fact[] {
  return blanksOf(solution).map(({ length, count, piece }) => ({
    fact: 'blank' as const,
    label: ticket.labels.blank(count, piece),
    text: ticket.times(count, quantities.sawn(length, units)),
  }));
}

function tubeFacts(piece: Piece): Fact[] {
  const { tube } = piece.solution;
  const { ticket, quantities } = piece.words;
  return [
    {
      fact: 'tube' as const,
      label: ticket.labels.tube,
      text: tubeFactsOf(tube.section).said(piece.words).words,
    },
    ...(tube.wall
      ? [{ fact: 'wall' as const, label: ticket.labels.wall, text: quantities.written(tube.wall) }]
      : []),
    ...lengthFacts(piece),
  ];
}

function lengthFacts({ solution, units, words: { ticket, lists, quantities } }: Piece): Fact[] {
  const both = (mm: Mm): Said => quantities.both(mm, units);
  const { lengths } = solution;
  const { labels } = ticket;
  const bend = bendJobOf(solution);
  if (bend) {
    return bend.pieces.map(({ kind, long, short }) => ({
      fact: 'long-points' as const,
      label: labels.piece(kind),
      text: ticket.sides(both(long), both(short)),
    }));
  }
  if (!lengths)
    return [{ fact: 'marks' as const, label: labels.length, text: lists.lengthless(lengthless(solution)) }];
  return [
    { fact: 'long-points' as const, label: labels.longPoints, text: both(lengths.overall) },
    { fact: 'work-points' as const, label: labels.workPoints, text: both(lengths.between) },
  ];
}

function endFacts({ solution, words }: Piece, name: EndName): Ticket['ends'] {
  const end = solution.tube.ends[name];
  const cope = solution.ends[name];
  const { labels, square, byItsMark } = words.ticket;
  if (!end) return [];
  if (end.kind === 'plain' || cope?.kind !== 'coped')
    return [{ name, facts: [{ fact: 'mitre' as const, label: labels.cut, text: square }] }];
  const { fitUp, root, preparation } = end;
  const facts = [
    ...headerFacts(end, unitsOfTube(solution.tube), words),
    ...(fitUp?.clock ? [{ fact: 'marks' as const, label: labels.rotation, text: byItsMark }] : []),
    ...(fitUp?.between ? [{ fact: 'marks' as const, label: labels.length, text: byItsMark }] : []),
    { fact: 'edge' as const, label: labels.edge, text: words.check.edge(preparation) },
    ...(root && root.mm > 0
      ? [{ fact: 'root' as const, label: labels.rootGap, text: words.quantities.written(root) }]
      : []),
  ];
  return [{ name, cope, facts }];
}
