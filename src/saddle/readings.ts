import type { BetweenReading, Tube } from '../job/job.ts';
import { betweenInWords } from '../job/ways/between.ts';
import { type Reading, refused, taken } from '../measure/misreading.ts';
import type { Angle, Length, Mm } from '../measure/units.ts';
import type { Section } from '../space/section.ts';
import type { Cope, EndSolution } from './cope.ts';
import { lengthMarkOf } from './fit-up.ts';

/** One way in which a tube's length was measured, and what it comes to from work point to work point. */
export interface ReadLength {
  readonly reading: BetweenReading;
  readonly came: Reading<Mm>;
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
      typeof beyond === 'number'
        ? taken(reading.length.mm + beyond)
        : refused<Mm>(betweenInWords(reading), ...beyond);
    return { reading, came };
  });
}

/** Why a reading comes to nothing, and what to measure instead. */
type Why = readonly [why: string, instead: string];

/** How far the work points lie beyond what was measured, at both ends together. */
function beyondReading(reading: BetweenReading, A: EndSolution, B: EndSolution, section: Section): Mm | Why {
  switch (reading.way) {
    case 'work-points':
      return 0;
    case 'faces':
      return atBoth(A, B, axisSetback, axisSetback, BESIDE_THE_AXIS);
    case 'straightedge': {
      if (B.kind === 'coped' && B.fitUp?.clock) return STILL_TURNS;
      const touched = outsideAt(stationOf(reading.at, section));
      return atBoth(A, B, touched, touched, BESIDE_THE_EDGE);
    }
    case 'overall':
      return atBoth(A, B, reach, reach, BESIDE_THE_EDGE);
    case 'seated':
      return atBoth(A, B, edgeOnSpine, lengthMarkOf, BESIDE_THE_MARK);
  }
}

const BESIDE_THE_AXIS: Why = [
  "the tube's axis passes beside a header, so there is no face to measure to along it",
  '`straightedge`, along a line of the tube that meets both headers',
];
const BESIDE_THE_EDGE: Why = [
  'on that line the tube passes beside a header, so a straight edge meets nothing there',
  'another station for `at`, whose line meets both headers',
];
const STILL_TURNS: Why = [
  "end B's rotation is only marked, so what a line of the tube meets there is not known",
  '`faces`, along the axis, or `overall`',
];
const BESIDE_THE_MARK: Why = [
  'the line of the length mark passes beside the header',
  'what was measured from work point to work point, or `overall`',
];

type Setback = (cope: Cope) => Mm | undefined;

/** The setbacks of both ends together; a square cut is at its work point. */
function atBoth(A: EndSolution, B: EndSolution, ofA: Setback, ofB: Setback, beside: Why): Mm | Why {
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
  return ({ outside }) => {
    const { setback, contact } = outside(station);
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
