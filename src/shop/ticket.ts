import { preparationInWords } from '../fit/read-aloud.ts';
import type { EndName } from '../job/job.ts';
import { sectionInWords } from '../job/shape.ts';
import { unitsOf } from '../leaf/draw-leaf.ts';
import type { Fact } from '../leaf/fact.ts';
import { headerFacts } from '../leaf/header-facts.ts';
import { wrote } from '../leaf/names.ts';
import { writeAngle } from '../measure/write.ts';
import type { Cope } from '../saddle/cope.ts';
import type { TubeSolution } from '../saddle/solve.ts';
import { handInWords } from './cut-list.ts';
import { type Piece, pieceOf } from './piece.ts';
import { stepsOf } from './steps.ts';

/** What a person needs to make one tube of one hand, from blank to fit. */
export interface Ticket {
  readonly solution: TubeSolution;
  readonly number: number;
  readonly of: number;
  readonly name: string;
  /** Only of a pair. */
  readonly hand?: { readonly words: string; readonly twin: number };
  readonly copies: number;
  readonly tube: readonly Fact[];
  readonly ends: readonly { readonly name: EndName; readonly facts: readonly Fact[]; readonly cope?: Cope }[];
  readonly steps: readonly string[];
}

/** A ticket for each tube of each hand, in the order of the job; `first` says which end of each is cut first. */
export function ticketsOf(
  solutions: readonly TubeSolution[],
  first: ReadonlyMap<TubeSolution, EndName>,
): readonly Ticket[] {
  return solutions.map((solution, place) => {
    const { tube, hand } = solution;
    const piece = pieceOf(solution, first.get(solution));
    const twin = solutions.findIndex((other) => other.tube.name === tube.name && other.hand !== hand);
    return {
      solution,
      number: place + 1,
      of: solutions.length,
      name: tube.name,
      ...(tube.pair && { hand: { words: handInWords(hand), twin: twin + 1 } }),
      copies: tube.copies,
      tube: tubeFacts(piece),
      ends: (['A', 'B'] as const).flatMap((name) => endFacts(piece, name)),
      steps: stepsOf(piece),
    };
  });
}

function tubeFacts({ solution, say }: Piece): Fact[] {
  const { tube, lengths, twist } = solution;
  const known = lengths && [
    { label: 'blank', text: say(lengths.blank) },
    { label: 'long points', text: say(lengths.overall) },
    { label: 'work points', text: say(lengths.between) },
  ];
  return [
    { label: 'tube', text: sectionInWords(tube.section) },
    ...(tube.wall ? [{ label: 'wall', text: wrote(tube.wall) }] : []),
    ...(known ?? [{ label: 'length', text: lengthless(solution) }]),
    ...(twist === undefined ? [] : [{ label: 'twist', text: `${writeAngle(twist)}, from heel A to heel B` }]),
  ];
}

function lengthless({ ends }: TubeSolution): string {
  return ends.A && ends.B ? 'marked on the tube' : 'not in this job';
}

function endFacts({ solution }: Piece, name: EndName): Ticket['ends'] {
  const end = solution.tube.ends[name];
  const cope = solution.ends[name];
  if (!end) return [];
  if (end.kind === 'plain' || cope?.kind !== 'coped')
    return [{ name, facts: [{ label: 'cut', text: 'off square' }] }];
  const marks = [
    ...(end.fitUp?.clock ? [{ label: 'rotation', text: 'by its mark' }] : []),
    ...(end.fitUp?.between ? [{ label: 'length', text: 'by its mark' }] : []),
  ];
  const edge = { label: 'edge', text: preparationInWords(end.preparation) };
  const root = end.root && end.root.mm > 0 ? [{ label: 'root gap', text: wrote(end.root) }] : [];
  return [{ name, cope, facts: [...headerFacts(end, unitsOf(solution)), ...marks, edge, ...root] }];
}
