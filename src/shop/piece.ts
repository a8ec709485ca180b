import type { EndName, Tube } from '../job/job.ts';
import { headerFactsOf } from '../job/kinds.ts';
import { isSolid, unitsOfTube } from '../job/sections.ts';
import type { Said } from '../measure/said.ts';
import type { Cope } from '../saddle/cope.ts';
import { sawnAt } from '../saddle/sawn.ts';
import type { TubeSolution } from '../saddle/solve.ts';
import type { Language } from '../words/language.ts';

/** One coped end and its letter. */
export interface NamedEnd {
  readonly name: EndName;
  readonly cope: Cope;
}

/** A tube as it is worked on: the ends that have a leaf, in the order they are cut, and those that land and are sawn square. */
export interface Piece {
  readonly solution: TubeSolution;
  readonly first?: NamedEnd;
  readonly second?: NamedEnd;
  readonly sawn: readonly NamedEnd[];
  /** Of a frame: whether an end that is cut square goes on in another tube wherever it stands. */
  readonly goesOn: boolean;
  /** Whether what its ends leave on their headers is printed too. */
  readonly footprints: boolean;
  /** The unit of the tube's size. */
  readonly units: 'mm' | 'in';
  /** A bar has no inside to deburr, clean or vent. */
  readonly hollow: boolean;
  /** How many blanks are cut for it, of both hands. */
  readonly blanks: number;
  readonly words: Language;
}

/** `first` is the end that comes first in the order of work. */
export function pieceOf(
  solution: TubeSolution,
  first: EndName | undefined,
  footprints: boolean,
  goesOn: boolean,
  words: Language,
): Piece {
  const units = unitsOfTube(solution.tube);
  const names = first === 'B' ? (['B', 'A'] as const) : (['A', 'B'] as const);
  const coped = names.flatMap((name): NamedEnd[] => {
    const cope = solution.ends[name];
    return cope?.kind === 'coped' ? [{ name, cope }] : [];
  });
  const isSawn = ({ name }: NamedEnd): boolean => sawnAt(solution, name) !== undefined;
  const [one, two] = coped.filter((end) => !isSawn(end));
  return {
    solution,
    ...(one && { first: one }),
    ...(two && { second: two }),
    sawn: coped.filter(isSawn),
    goesOn,
    footprints,
    units,
    hollow: !isSolid(solution.tube),
    blanks: solution.tube.copies * handsOf(solution.tube),
    words,
  };
}

/** What an end lands on, in few words: `the 38.1 mm header`. */
export function landingName({ cope }: NamedEnd, words: Language): Said {
  const { parts } = cope.end;
  return parts.length > 1 ? words.steps.itsHeaders : headerFactsOf(parts[0].onto).said(words).name;
}

/** The end that is cut off square, the first of two. */
export function plainEnd({ ends }: TubeSolution): EndName | undefined {
  return (['A', 'B'] as const).find((name) => ends[name]?.kind === 'plain');
}

/** All ends that land somewhere, A before B. */
export function copedEnds({ first, second, sawn }: Piece): readonly NamedEnd[] {
  return [first, second, ...sawn].flatMap((end) => end ?? []).toSorted((a, b) => (a.name < b.name ? -1 : 1));
}

/** How many hands of a tube are made. */
export function handsOf({ pair }: Tube): number {
  return pair ? 2 : 1;
}

/** Whether an end meets another end of the same tube and no header. */
export function isMitred({ cope }: NamedEnd): boolean {
  return cope.end.parts.every(({ onto }) => onto.kind === 'mitre');
}
