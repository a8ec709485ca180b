import type { Frame, Job } from '../job/job.ts';
import type { Said } from '../measure/said.ts';
import type { Mm } from '../measure/units.ts';
import { dot, nearestFeet, norm, plusTimes, type Vector, wayTo } from '../space/vector.ts';
import { asWritten } from '../words/said.ts';
import { asMade, type Placings, placingsOf } from './as-made.ts';
import { type Clash, clashesIn } from './clashes.ts';
import { type CoveredWeld, coveredWelds } from './covered-welds.ts';
import { nameOfTube, type StandingTube, standingsIn } from './in-space.ts';
import { alongTheirHeaders, landingsIn, type TubeLanding } from './landings.ts';
import { type NearlyInLine, nearlyInLineIn } from './nearly-in-line.ts';
import { oncePerJob } from './once.ts';
import { piecesOfFrame, solveStanding } from './rows.ts';
import { sealedIn } from './sealed.ts';
import { type ShortOf, shortOfIn } from './short-of.ts';
import { type Splice, splicesIn } from './splices.ts';
import { type Swapped, swappedIn } from './swapped.ts';
import { type UnevenFeet, unevenFeetIn } from './uneven-feet.ts';

/** A whole frame, solved: its tubes where they stand, what lands where, and what to know. */
export interface StandingFrame {
  readonly frame: Frame;
  /** Every tube, by its place in the job. */
  readonly standings: readonly StandingTube[];
  /** Those of which it is told: all, or what was asked for. */
  readonly listed: readonly StandingTube[];
  readonly landings: readonly TubeLanding[];
  /** The same as they are marked out, which is what is printed and said. */
  readonly marked: readonly TubeLanding[];
  readonly placings: Placings;
  readonly splices: readonly Splice[];
  readonly covered: readonly CoveredWeld[];
  readonly warnings: readonly FrameWarning[];
}

/** What is told of tubes together, by their places in the job. */
export interface FrameWarning {
  readonly code:
    | 'clash'
    | 'over-end'
    | 'kink'
    | 'swapped'
    | 'near'
    | 'joined'
    | 'sense'
    | 'askew'
    | 'uneven'
    | 'short-of'
    | 'sealed';
  readonly tubes: readonly number[];
  readonly at?: Vector;
  readonly depth?: Mm;
  readonly text: Said;
}

/** What follows of a job's frame; undefined of a job that is none. Throws `Refusal` as `solveStanding` does. */
export const standingFrame = oncePerJob((job): StandingFrame | undefined => {
  const { frame } = job;
  if (!frame) return undefined;
  const standings = standingsIn(frame, solveStanding(job));
  const splices = splicesIn(standings);
  const landings = landingsIn(standings, splices);
  const pieces = piecesOfFrame(job);
  const placings = placingsOf(pieces);
  const marked = alongTheirHeaders(landings.map((landing) => asMade(landing, standings, placings)));
  const warnings = [
    ...clashesIn(standings).map((clash) => clashWarning(job, standings, clash)),
    ...landings.flatMap((landing) => overEnd(job, landing)),
    ...nearlyInLineIn(standings).map((two) => kink(job, two)),
    ...swappedIn(standings).map((leg) => swapped(job, leg)),
    ...frame.notes,
    ...uneven(job, unevenFeetIn(standings)),
    ...shortOfIn(standings).map((end) => shortOf(job, end)),
    ...sealedIn(standings, pieces, placings, splices).map((tubes) => sealed(job, tubes)),
  ];
  return {
    frame,
    standings,
    listed: standings,
    landings,
    marked,
    placings,
    splices,
    covered: coveredWelds(standings, splices),
    warnings,
  };
});

/** Whether what is told is something to mend. */
export function isWarning({ code }: FrameWarning): boolean {
  return ['clash', 'over-end', 'kink', 'swapped'].includes(code);
}

function clashWarning(
  job: Job,
  standings: readonly StandingTube[],
  { tubes, at, depth }: Clash,
): FrameWarning {
  const [one, other] = tubes;
  const [a, b] = [standings[one]?.seat, standings[other]?.seat];
  const crossing = a !== undefined && b !== undefined && cross(a, b);
  const text = job.words.frame.clash(
    nameOfTube(job, one),
    nameOfTube(job, other),
    depth,
    crossing,
    job.units,
  );
  return { code: 'clash', tubes, at, depth, text };
}

type Seats = StandingTube['seat'];

/** Whether two axes pass through one point, or nearly so, well inside both. */
function cross(a: Seats, b: Seats): boolean {
  if (1 - dot(a.axis, b.axis) ** 2 < 1e-6) return false;
  const [s, t] = nearestFeet(a, b);
  const between = norm(wayTo(plusTimes(a.from, s, a.axis), plusTimes(b.from, t, b.axis)));
  return between < 1 && s > 1 && s < a.length - 1 && t > 1 && t < b.length - 1;
}

/** A footprint that lies over the end by less than can be marked is on it. */
const OVER: Mm = 0.05;

function overEnd(job: Job, { tube, end, on, over }: TubeLanding): FrameWarning[] {
  if (over <= OVER) return [];
  const text = job.words.frame.overEnd(nameOfTube(job, tube), end, nameOfTube(job, on), over, job.units);
  return [{ code: 'over-end', tubes: [tube, on], text }];
}

function kink({ words, units }: Job, { tubes, point, ends, off }: NearlyInLine): FrameWarning {
  return { code: 'kink', tubes, text: words.frame.kink(asWritten(point), ends.map(asWritten), off, units) };
}

function swapped(job: Job, { tube, upright, point }: Swapped): FrameWarning {
  const text = job.words.frame.swapped(nameOfTube(job, tube), nameOfTube(job, upright), asWritten(point));
  return { code: 'swapped', tubes: [tube, upright], text };
}

function uneven({ words, units }: Job, feet: UnevenFeet | undefined): FrameWarning[] {
  if (!feet) return [];
  const { tubes, low, high, by } = feet;
  return [
    { code: 'uneven', tubes, text: words.frame.uneven(low.map(asWritten), high.map(asWritten), by, units) },
  ];
}

function shortOf(job: Job, { tube, end, of, by }: ShortOf): FrameWarning {
  const text = job.words.frame.shortOf(nameOfTube(job, tube), end, nameOfTube(job, of), by, job.units);
  return { code: 'short-of', tubes: [tube, of], text };
}

/** Names beyond these are told by their number. */
const MOST_NAMES = 6;

function sealed(job: Job, tubes: readonly number[]): FrameWarning {
  const names = tubes.slice(0, MOST_NAMES).map((tube) => nameOfTube(job, tube));
  return { code: 'sealed', tubes, text: job.words.frame.sealed(names, tubes.length - names.length) };
}
