import type { BetweenReading, Tube } from '../job/job.ts';
import { type Reading, refused, taken } from '../measure/reading.ts';
import type { Angle, Length, Mm } from '../measure/units.ts';
import type { Section } from '../space/section.ts';
import type { Language } from '../words/language.ts';
import type { Cope, EndSolution } from './cope.ts';
import { lengthMarkOf } from './fit-up.ts';

/** Why a reading comes to no length: what it was measured along passes beside a header, or is not known yet. */
export type NoLength = keyof Language['job']['ways']['noLength'];

/** One way in which a tube's length was measured, and what it comes to from work point to work point. */
export interface ReadLength {
  readonly reading: BetweenReading;
  readonly came: Reading<Mm, NoLength>;
}

/** Every measured length of a tube whose two ends are solved, in the order of the job; the first is taken. */
export function readLengths(
  { between }: Tube,
  A: EndSolution,
  B: EndSolution,
  section: Section,
): readonly ReadLength[] {
  if (between === undefined) return [];
  const ways = 'ways' in between ? between.ways : [{ way: 'work-points', length: between } as const];
  return ways.map((reading) => {
    const beyond = beyondReading(reading, A, B, section);
    const came =
      typeof beyond === 'number' ? taken(reading.length.mm + beyond) : refused(reading.length.wrote, beyond);
    return { reading, came };
  });
}

/** How far the work points lie beyond what was measured, at both ends together. */
function beyondReading(
  reading: BetweenReading,
  A: EndSolution,
  B: EndSolution,
  section: Section,
): Mm | NoLength {
  switch (reading.way) {
    case 'work-points':
      return 0;
    case 'faces':
      return atBoth(A, B, axisSetback, axisSetback, 'axis-beside');
    case 'straightedge': {
      if (B.kind === 'coped' && B.fitUp?.clock) return 'still-turns';
      const touched = outsideAt(stationOf(reading.at, section));
      return atBoth(A, B, touched, touched, 'line-beside');
    }
    case 'overall':
      return atBoth(A, B, reach, reach, 'line-beside');
    case 'seated':
      return atBoth(A, B, edgeOnSpine, lengthMarkOf, 'mark-beside');
  }
}

type Setback = (cope: Cope) => Mm | undefined;

/** The setbacks of both ends together; a square cut is at its work point. */
function atBoth(A: EndSolution, B: EndSolution, ofA: Setback, ofB: Setback, beside: NoLength): Mm | NoLength {
  const atA = A.kind === 'plain' ? 0 : ofA(A);
  const atB = B.kind === 'plain' ? 0 : ofB(B);
  return atA === undefined || atB === undefined ? beside : atA + atB;
}

/** Where the tube's axis itself meets the header; undefined where it passes beside or only grazes it. */
function axisSetback({ joint }: Cope): Mm | undefined {
  const met = joint.landings.flatMap(({ solid, shift }) => {
    const entry = solid.enter(0, 0);
    return entry && entry.nz > 0 ? [entry.z + shift] : [];
  });
  return met.length > 0 ? Math.max(...met) : undefined;
}

/** Where the outside meets the header on one line along the tube; undefined where it passes beside. */
function outsideAt(station: number): Setback {
  return ({ touching }) => {
    const { setback, contact } = touching(station);
    return contact ? setback : undefined;
  };
}

function reach({ longPoint }: Cope): Mm {
  return longPoint.setback;
}

/** Where the cut edge of a seated end crosses the spine. */
function edgeOnSpine({ cut }: Cope): Mm {
  return cut(0).setback;
}

function stationOf(at: Angle | Length, section: Section): number {
  return 'rad' in at ? section.towards(at.rad) : at.mm;
}
