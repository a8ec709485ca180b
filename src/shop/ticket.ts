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
import { baseApart } from './cope-steps.ts';
import { handInWords } from './cut-list.ts';
import { isMitred, type Piece, pieceOf } from './piece.ts';
import { type Step, stepsOf } from './steps.ts';

/** What a person needs to make one tube of one hand, from blank to fit. */
export interface Ticket {
  readonly solution: TubeSolution;
  readonly number: number;
  readonly of: number;
  readonly name: string;
  /** Only of a pair. */
  readonly hand?: { readonly words: string; readonly twin: number };
  readonly copies: number;
  /** What is read from afar while the tube is cut. */
  readonly saw: readonly Fact[];
  readonly tube: readonly Fact[];
  readonly ends: readonly { readonly name: EndName; readonly facts: readonly Fact[]; readonly cope?: Cope }[];
  readonly steps: readonly Step[];
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
      saw: sawFacts(piece),
      tube: tubeFacts(piece),
      ends: (['A', 'B'] as const).flatMap((name) => endFacts(piece, name)),
      steps: stepsOf(piece),
    };
  });
}

function sawFacts(piece: Piece): Fact[] {
  const { solution, first, second, say } = piece;
  const { lengths, tube, twist } = solution;
  const apart = baseApart(piece);
  const square = solution.ends.A?.kind === 'plain' ? 'A' : 'B';
  const base = second ? 'base edge to base edge' : `base edge to end ${square}`;
  const mitred = [first, second].flatMap((end) => (end && isMitred(end) ? [end] : []));
  return [
    ...(lengths
      ? [{ label: tube.copies > 1 ? 'blanks' : 'blank', text: many(tube.copies, say(lengths.blank)) }]
      : []),
    ...(apart === undefined || apart < 0 ? [] : [{ label: base, text: say(apart) }]),
    ...(twist === undefined ? [] : [{ label: 'twist, heel A to heel B', text: twistInWords(twist) }]),
    ...mitred.map(({ name, cope }) => ({
      label: `end ${name}, off square`,
      text: writeAngle(Math.PI / 2 - cope.end.parts[0].angle.rad),
    })),
  ];
}

function many(copies: number, text: string): string {
  return copies > 1 ? `${copies} x ${text}` : text;
}

function twistInWords(twist: number): string {
  const turned = Math.abs(twist);
  if (turned < 1e-9 || Math.PI - turned < 1e-9) return writeAngle(turned);
  return `${writeAngle(turned)} ${twist > 0 ? 'right' : 'left'}`;
}

function tubeFacts({ solution, say }: Piece): Fact[] {
  const { tube, lengths } = solution;
  const known = lengths && [
    { label: 'long points', text: say(lengths.overall) },
    { label: 'work points', text: say(lengths.between) },
  ];
  return [
    { label: 'tube', text: sectionInWords(tube.section) },
    ...(tube.wall ? [{ label: 'wall', text: wrote(tube.wall) }] : []),
    ...(known ?? [{ label: 'length', text: lengthless(solution) }]),
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
