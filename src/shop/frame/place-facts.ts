import type { EndName, Job } from '../../job/job.ts';
import type { Fact } from '../../leaf/card/fact.ts';
import type { LeafContext } from '../../leaf/draw-leaf.ts';
import type { Said } from '../../measure/said.ts';
import type { TubeSolution } from '../../saddle/solve.ts';
import { wrapStation } from '../../space/section.ts';
import { type StandingFrame, standingFrame } from '../../together/frame-notes.ts';
import { landingLine } from '../../together/frame-report.ts';
import { asWritten, joined } from '../../words/said.ts';

/** Where each tube that is this piece goes in its frame, and what lands on it. */
export function placeFacts(
  job: Job,
  frame: StandingFrame,
  { places = [], section }: TubeSolution,
): readonly (readonly Fact[])[] {
  const { words } = job;
  return places.flatMap(({ tube, spineAt, swapped }): Fact[][] => {
    const seat = frame.frame.seats[tube];
    if (!seat) return [];
    const name = asWritten(job.tubes[tube]?.name ?? '');
    const [from, to] = seat.along.map(asWritten);
    const ends = swapped ? [to, from] : [from, to];
    const station = words.quantities.station(wrapStation(spineAt, section.turn), section.stations);
    const plumb = Math.abs(seat.spine[2]) < 1e-9 && Math.abs(seat.axis[2]) > 0.99;
    const goes: Fact = {
      fact: 'place',
      label: name,
      text: words.frame.goes(ends[0] ?? name, ends[1] ?? name, station, plumb ? 'back' : 'up'),
    };
    const landed = landingFacts(job, frame, tube);
    return landed.length > 0 ? [[goes], landed] : [[goes]];
  });
}

/** What lands on a tube, a line each, measured from its own end A. */
function landingFacts(job: Job, { landings, standings }: StandingFrame, on: number): Fact[] {
  return landings
    .filter((landing) => landing.on === on)
    .map((landing) => ({
      fact: 'landing',
      label: job.words.frame.lands(asWritten(job.tubes[landing.tube]?.name ?? ''), landing.end),
      text: landingLine(job, landing, standings),
    }));
}

/** What the footprints of a frame say of their places; nothing of another job's. */
export function placesOnHeaders(job: Job): Pick<LeafContext, 'placeOf'> {
  const frame = standingFrame(job);
  return frame ? { placeOf: footprintPlaces(job, frame) } : {};
}

/** Where the centre of an end's footprint goes on its header, for each tube that is this piece. */
function footprintPlaces(
  job: Job,
  { landings, standings }: StandingFrame,
): (solution: TubeSolution, end: EndName, part: number) => Said | undefined {
  return ({ places = [] }, end, part) => {
    const said = places.slice(0, MOST).flatMap(({ tube, swapped }) => {
      const its: EndName = swapped === (end === 'A') ? 'B' : 'A';
      const header = standings[tube]?.seat.ends[its].headers[part];
      const landing = landings.find((each) => each.tube === tube && each.end === its && each.on === header);
      if (!landing || header === undefined) return [];
      const { tape, station } = job.words.quantities;
      const counts = standings[header]?.solution.section.stations ?? 'angles';
      const name = asWritten(job.tubes[header]?.name ?? '');
      const at = tape(landing.mark ?? landing.at, job.units);
      return [job.words.frame.centreOn(name, at, station(landing.station, counts))];
    });
    return said.length === 0 ? undefined : joined(said, '; ');
  };
}

/** More places than these stand on the tickets of what is landed on. */
const MOST = 2;
