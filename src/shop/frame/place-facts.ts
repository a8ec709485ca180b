import type { EndName, Job, TicketNote } from '../../job/job.ts';
import { headerFactsOf } from '../../job/kinds.ts';
import { isSolid } from '../../job/sections.ts';
import { type Fact, factOf } from '../../leaf/card/fact.ts';
import type { LeafContext } from '../../leaf/draw-leaf.ts';
import type { Said } from '../../measure/said.ts';
import type { TubeSolution } from '../../saddle/solve.ts';
import { dot } from '../../space/vector.ts';
import { endAsMade, headerThere } from '../../together/as-made.ts';
import { type StandingFrame, standingFrame } from '../../together/frame-notes.ts';
import { goesTo, landingLine, weldsFirst } from '../../together/frame-report.ts';
import { goesOn } from '../../together/goes-on.ts';
import { nameOfTube } from '../../together/in-space.ts';
import type { Language } from '../../words/language.ts';
import { asWritten } from '../../words/said.ts';
import { drillOf } from '../steps/finishing-steps.ts';
import type { InFrame } from '../ticket/ticket.ts';

/** What a job's frame tells on the tickets of its pieces. */
export function inFrameOf(job: Job): InFrame {
  const frame = standingFrame(job);
  return {
    placesOf: (piece) => placeFacts(job, piece),
    goesOn: (piece) => frame !== undefined && goesOn(piece, frame.standings, frame.placings),
  };
}

/** Where each tube that is this piece goes in its frame and what lands on it, and what the person wrote for its ticket: rows of lines. */
export function placeFacts(job: Job, piece: TubeSolution): readonly (readonly Fact[])[] {
  const frame = standingFrame(job);
  if (frame) return placesIn(job, frame, piece);
  return piece.hand === 'opposite' ? [] : noteFacts(job.words, piece.tube.note);
}

function placesIn(job: Job, frame: StandingFrame, piece: TubeSolution): readonly (readonly Fact[])[] {
  const { frame: words, leaf } = job.words;
  const {
    tube: { pair },
    hand,
    places = [],
  } = piece;
  return places.flatMap(({ tube }): (readonly Fact[])[] => {
    const text = goesTo(job, frame, tube, (end) => headersThere(job, frame, piece, end, tube));
    if (!text) return [];
    const goes: Fact = factOf(
      'place',
      nameOfTube(job, tube),
      pair ? words.ofHand(leaf.hands[hand], text) : text,
    );
    const landed = [
      ...landingFacts(job, frame, tube),
      ...weldFacts(job, frame, tube),
      ...ventFacts(job, frame, tube),
    ];
    return [[goes], ...(landed.length > 0 ? [landed] : []), ...noteFacts(job.words, job.tubes[tube]?.note)];
  });
}

/** A note's lines; those that hang under another are a row of their own, as what lands on a tube is. */
function noteFacts({ ticket }: Language, note: TicketNote = []): readonly (readonly Fact[])[] {
  return note.flatMap(([first, ...others]): Fact[][] => {
    const { of, says } = first;
    const own: Fact = of
      ? factOf('place', asWritten(of), asWritten(says))
      : factOf('note', ticket.labels.note, asWritten(says));
    const under = others.map(
      (each): Fact => factOf('landing', asWritten(each.of ?? ''), asWritten(each.says)),
    );
    return under.length > 0 ? [[own], under] : [[own]];
  });
}

/** The names of what an end lands on there, in the order of the piece's headers; a plate has none but its kind's. */
function headersThere(
  job: Job,
  { standings, placings }: StandingFrame,
  piece: TubeSolution,
  end: EndName,
  tube: number,
): readonly Said[] {
  const [cope, own] = [piece.ends[end], standings[tube]];
  if (cope?.kind !== 'coped' || !own) return [];
  return cope.end.parts.map(({ onto }, part) => {
    const there = headerThere(piece, end, part, own, placings);
    return there ? nameOfTube(job, there.on) : headerFactsOf(onto).said(job.words).name;
  });
}

/** What lands on a tube, a line each, measured from the end A of its piece. */
function landingFacts(job: Job, { marked, standings }: StandingFrame, on: number): Fact[] {
  return marked
    .filter((landing) => landing.on === on)
    .map((landing) =>
      factOf(
        'landing',
        job.words.frame.lands(nameOfTube(job, landing.tube), landing.end),
        landingLine(job, landing, standings),
      ),
    );
}

/** What is welded on a tube before something comes to lie over the weld. */
function weldFacts(job: Job, frame: StandingFrame, on: number): Fact[] {
  const label = job.words.frame.weld;
  return weldsFirst(job, frame, on).map((text) => factOf('landing', label, text));
}

/** Of tubes that would hold their air in together, the vent that is drilled in the first of them that has an inside. */
function ventFacts({ tubes, words }: Job, { warnings }: StandingFrame, tube: number): Fact[] {
  const isHollow = (each: number): boolean => tubes.slice(each, each + 1).some((own) => !isSolid(own));
  const isFirst = warnings.some((each) => each.code === 'sealed' && each.tubes.find(isHollow) === tube);
  return tubes.slice(tube, tube + 1).flatMap((own): Fact[] => {
    const text = words.frame.ventToOpen(drillOf(own, words));
    return isFirst ? [factOf('landing', words.frame.vent, text)] : [];
  });
}

/** What the footprints of a frame say of their places; nothing of another job's. */
export function placesOnHeaders(job: Job): Pick<LeafContext, 'placeOf'> {
  const frame = standingFrame(job);
  return frame ? { placeOf: footprintPlaces(job, frame) } : {};
}

/** Where the cross of an end's footprint goes on its header, a line for each tube that is this piece. */
function footprintPlaces(
  job: Job,
  { marked, standings, placings }: StandingFrame,
): (solution: TubeSolution, end: EndName, part: number) => readonly Fact[] {
  const { frame: words, quantities } = job.words;
  return (piece, end, part) => {
    const crosses = (piece.places ?? []).flatMap(({ tube }): Fact[] => {
      const own = standings[tube];
      const there = own && headerThere(piece, end, part, own, placings);
      const header = there && standings[there.on];
      const landing = marked.find((each) => each.tube === tube && each.end === end && each.on === there?.on);
      if (!landing || !header) return [];
      const at = quantities.tape(landing.mark ?? landing.at, job.units);
      const round = quantities.station(landing.station, header.solution.section.stations);
      const leansTo = dot(there.leans, header.seat.axis) > 0 ? 'B' : 'A';
      const text = words.cross(at, round, endAsMade(placings, header.tube, leansTo));
      return [factOf('footprint', nameOfTube(job, header.tube), text)];
    });
    if (crosses.length === 0) return [];
    return [factOf('footprint', job.words.footprint.cross, words.crossFrom), ...crosses];
  };
}
