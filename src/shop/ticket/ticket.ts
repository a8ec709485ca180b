import type { EndName } from '../../job/job.ts';
import { tubeFactsOf, unitsOf } from '../../job/sections.ts';
import type { Fact } from '../../leaf/card/fact.ts';
import { headerFacts } from '../../leaf/card/header-facts.ts';
import { twistInWords } from '../../leaf/card/twist-words.ts';
import { sawWords, wrote } from '../../leaf/names.ts';
import { writeAngle } from '../../measure/write.ts';
import type { Cope } from '../../saddle/cope.ts';
import type { TubeSolution } from '../../saddle/solve.ts';
import { check } from '../../words/english/check.ts';
import { bendJobOf, piecesInWords } from '../bend-pieces.ts';
import { blanksOf } from '../blanks.ts';
import { handInWords, lengthless } from '../lists/cut-list.ts';
import { isMitred, type Piece, pieceOf } from '../piece.ts';
import { baseApart } from '../steps/cope-steps.ts';
import type { Step } from '../steps/step.ts';
import { stepsOf } from '../steps/steps.ts';

/** What a person needs to make one tube of one hand, from blank to fit. */
export interface Ticket {
  readonly solution: TubeSolution;
  readonly number: number;
  readonly of: number;
  readonly name: string;
  /** Only of a pair. */
  readonly hand?: { readonly words: string; readonly twin: number };
  readonly copies: number;
  /** Of what each is put together, where that is several pieces. */
  readonly pieces?: string;
  /** What is read from afar while the tube is cut. */
  readonly saw: readonly Fact[];
  readonly tube: readonly Fact[];
  readonly ends: readonly { readonly name: EndName; readonly facts: readonly Fact[]; readonly cope?: Cope }[];
  readonly steps: readonly Step[];
}

/**
 * A ticket for each tube of each hand, in the order of the job; `first` says which end of each is cut first, `footprints`
 * whether they are printed too.
 */
export function ticketsOf(
  solutions: readonly TubeSolution[],
  first: ReadonlyMap<TubeSolution, EndName>,
  footprints = false,
): readonly Ticket[] {
  return solutions.map((solution, place) => {
    const { tube, hand } = solution;
    const piece = pieceOf(solution, first.get(solution), footprints);
    const bend = bendJobOf(solution);
    const twin = solutions.findIndex((other) => other.tube.name === tube.name && other.hand !== hand);
    return {
      solution,
      number: place + 1,
      of: solutions.length,
      name: tube.name,
      ...(tube.pair && { hand: { words: handInWords(hand), twin: twin + 1 } }),
      copies: tube.copies,
      ...(bend && { pieces: `${piecesInWords(bend)}, ${bend.ends} mitred ends` }),
      saw: sawFacts(piece),
      tube: tubeFacts(piece),
      ends: (['A', 'B'] as const).flatMap((name) => endFacts(piece, name)),
      steps: stepsOf(piece),
    };
  });
}

function sawFacts(piece: Piece): Fact[] {
  const { solution, first, second, say } = piece;
  const { twist } = solution;
  const apart = baseApart(piece);
  const square = solution.ends.A?.kind === 'plain' ? 'A' : 'B';
  const base = second ? 'base edge to base edge' : `base edge to end ${square}`;
  const mitred = [first, second].flatMap((end) => (end && isMitred(end) ? [end] : []));
  return [
    ...blankFacts(piece),
    ...(apart === undefined || apart < 0 ? [] : [{ label: base, text: say(apart) }]),
    ...(twist === undefined ? [] : [{ label: 'twist, heel A to heel B', text: twistInWords(twist) }]),
    ...mitred.map(({ name, cope }) => ({
      label: `end ${name}, mitre off square`,
      text: writeAngle(Math.PI / 2 - cope.end.parts[0].angle.rad),
    })),
  ];
}

function blankFacts({ solution, units }: Piece): Fact[] {
  return blanksOf(solution).map(({ length, count, piece }) => {
    const blank = count > 1 ? 'blanks' : 'blank';
    const text = `${count > 1 ? `${count} x ` : ''}${sawWords(length, units)}`;
    return { label: piece ? `${blank} for ${piece}${count > 1 ? 's' : ''}` : blank, text };
  });
}

function tubeFacts({ solution, say }: Piece): Fact[] {
  const { tube } = solution;
  return [
    { label: 'tube', text: tubeFactsOf(tube.section).words },
    ...(tube.wall ? [{ label: 'wall', text: wrote(tube.wall) }] : []),
    ...lengthFacts(solution, say),
  ];
}

function lengthFacts(solution: TubeSolution, say: Piece['say']): Fact[] {
  const { lengths } = solution;
  const bend = bendJobOf(solution);
  if (bend) {
    return bend.pieces.map(({ name, long, short }) => ({
      label: name === 'end piece' ? 'end' : 'middle',
      text: `${say(long)} on the outside, ${say(short)} on the inside`,
    }));
  }
  if (!lengths) return [{ label: 'length', text: lengthless(solution) }];
  return [
    { label: 'long points', text: say(lengths.overall) },
    { label: 'work points', text: say(lengths.between) },
  ];
}

function endFacts({ solution }: Piece, name: EndName): Ticket['ends'] {
  const end = solution.tube.ends[name];
  const cope = solution.ends[name];
  if (!end) return [];
  if (end.kind === 'plain' || cope?.kind !== 'coped')
    return [{ name, facts: [{ label: 'cut', text: 'square' }] }];
  const marks = [
    ...(end.fitUp?.clock ? [{ label: 'rotation', text: 'by its mark' }] : []),
    ...(end.fitUp?.between ? [{ label: 'length', text: 'by its mark' }] : []),
  ];
  const edge = { label: 'edge', text: check.edge(end.preparation) };
  const root = end.root && end.root.mm > 0 ? [{ label: 'root gap', text: wrote(end.root) }] : [];
  return [{ name, cope, facts: [...headerFacts(end, unitsOf(solution.tube)), ...marks, edge, ...root] }];
}
