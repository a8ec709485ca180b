import type { EndName, Job } from '../job/job.ts';
import { tubeFactsOf } from '../job/sections.ts';
import type { Said } from '../measure/said.ts';
import type { Mm } from '../measure/units.ts';
import type { Vector } from '../space/vector.ts';
import type { Language } from '../words/language.ts';
import { asWritten, joined } from '../words/said.ts';
import { endAsMade, stationAsMade } from './as-made.ts';
import { rectanglesOf } from './diagonals.ts';
import { type Apart, feetOf } from './feet.ts';
import type { StandingFrame } from './frame-notes.ts';
import { nameOfTube, type StandingTube } from './in-space.ts';
import type { TubeLanding } from './landings.ts';
import { overallOf } from './overall.ts';

/** What `check` says of a frame as a whole, after its tubes: how large, how much tube, what lands where, what to watch. */
export function frameReport(job: Job, standing: StandingFrame): Said {
  const { check, frame: words } = job.words;
  const { labels } = words;
  const facts = [
    check.follows,
    ...check.lines(labels.size, [sizeOf(job, standing)]),
    ...check.lines(labels.tubes, totalsOf(job, standing)),
    ...check.lines(labels.square, diagonalsOf(job, standing)),
    ...check.lines(labels.feet, feetApart(job, standing)),
    ...openEnds(job, standing),
    ...landingTables(job, standing),
  ];
  const told = standing.warnings.flatMap(({ code, text }) => check.warning(code, [text]));
  const sections = [[words.headline], facts, ...(told.length > 0 ? [[check.watch, ...told]] : [])];
  return joined(
    sections.map((lines) => joined(lines, '\n')),
    '\n\n',
  );
}

/** What is measured on the whole before it is welded up: how large it is, its diagonals, how far its feet stand apart. */
export function measuresNote(job: Job, standing: StandingFrame): Said {
  return job.words.frame.toMeasure([
    sizeOf(job, standing),
    ...diagonalsOf(job, standing),
    ...feetApart(job, standing),
  ]);
}

function sizeOf({ words, units }: Job, standing: StandingFrame): Said {
  return words.frame.overall(overallOf(standing.listed).map((mm) => words.quantities.tape(mm, units)));
}

/** Length and mass of each size of tube. */
function totalsOf({ words, units }: Job, { listed, frame }: StandingFrame): readonly Said[] {
  const sizes = new Map<string, { said: Said; length: Mm; mass: number | undefined }>();
  for (const { solution } of listed) {
    const { tube, lengths } = solution;
    const size = words.check.size(tubeFactsOf(tube.section).said(words).brief, tube.wall);
    const before = sizes.get(size) ?? { said: size, length: 0, mass: 0 };
    const length = lengths?.overall ?? 0;
    const mass = massOf(solution, length, frame.density);
    sizes.set(size, {
      said: size,
      length: before.length + length,
      mass: mass === undefined || before.mass === undefined ? undefined : before.mass + mass,
    });
  }
  return [...sizes.values()].map(({ said, length, mass }) =>
    words.frame.total(
      said,
      words.quantities.tape(length, units),
      mass === undefined ? undefined : words.frame.kilograms(mass),
    ),
  );
}

/** What a tape reads from corner to corner where it is built square, of rectangles that these tubes have a side of. */
function diagonalsOf({ words, units }: Job, { frame, listed }: StandingFrame): readonly Said[] {
  const own = new Set(listed.flatMap(({ seat }) => seat.along));
  return rectanglesOf(frame)
    .filter(({ corners }) => corners.some((name) => own.has(name)))
    .map(({ corners, diagonal }) =>
      words.frame.square(corners.map(asWritten), words.quantities.tape(diagonal, units)),
    );
}

/** How far feet stand apart, so that a point with a sign lost is seen. */
function feetApart({ words, units }: Job, { listed }: StandingFrame): readonly Said[] {
  const { round, across } = feetOf(listed);
  const told = (many: readonly Apart[]): Said[] =>
    many.map(({ between: [a, b], is }) =>
      words.frame.apart(asWritten(a), asWritten(b), words.quantities.tape(is, units)),
    );
  return [
    ...(round.length > 0 ? [joined(told(round), ', ')] : []),
    ...(across.length > 0 ? [words.frame.across(told(across))] : []),
  ];
}

/** Kilograms: the wall's cross-section is its girth at half the wall, corners as they are, times the wall. */
function massOf(
  { tube, section }: StandingTube['solution'],
  length: Mm,
  density: number,
): number | undefined {
  if (!tube.wall) return undefined;
  const area = tube.wall.mm * (section.girth - Math.PI * tube.wall.mm);
  return area * length * density * 1e-6;
}

function openEnds(job: Job, standing: StandingFrame): readonly Said[] {
  const open = openNote(job, standing);
  return open === undefined ? [] : job.words.check.lines(job.words.frame.labels.open, [open]);
}

/** Which ends are left open; undefined where none is. */
export function openNote(job: Job, { listed, placings }: StandingFrame): Said | undefined {
  const { words } = job;
  const open = listed.flatMap(({ seat, tube }) =>
    (['A', 'B'] as const)
      .filter((end) => seat.ends[end].open)
      .map((end) => endAsMade(placings, tube, end))
      .sort()
      .map((end) => words.frame.endOf(nameOfTube(job, tube), end)),
  );
  return open.length === 0 ? undefined : words.frame.open(open);
}

function landingTables(job: Job, whole: StandingFrame): readonly Said[] {
  const { marked, standings } = whole;
  const { check, frame: words } = job.words;
  const on = [...new Set(marked.map((landing) => landing.on))];
  const lines = on.flatMap((header) => [
    words.landings(nameOfTube(job, header), goesTo(job, whole, header) ?? nameOfTube(job, header)),
    ...marked
      .filter((landing) => landing.on === header)
      .map((landing) =>
        joined(
          [
            words.endOf(nameOfTube(job, landing.tube), landing.end),
            landingLine(job, landing, standings, true),
          ],
          ': ',
        ),
      ),
    ...weldsFirst(job, whole, header).map((line) => joined([words.weld, line], ' ')),
  ]);
  return lines.length === 0 ? [] : check.lines(words.labels.landing, lines);
}

/** Which welds on a tube are made before what lies over them is put on, a line each. */
export function weldsFirst(job: Job, { covered, placings }: StandingFrame, header: number): readonly Said[] {
  return covered.flatMap(({ on, tube, end, under }) => {
    if (on !== header) return [];
    const own = job.words.frame.endOf(nameOfTube(job, tube), endAsMade(placings, tube, end));
    return [
      job.words.frame.weldFirst(
        own,
        under.map((each) => nameOfTube(job, each)),
      ),
    ];
  });
}

/** Where the piece that a tube is goes: at which point each end of it, and which of its stations looks up or back. */
export function goesTo(
  job: Job,
  { frame, standings, placings, splices }: StandingFrame,
  tube: number,
  headersOf: (end: EndName) => readonly Said[] = () => [],
): Said | undefined {
  const { words } = job;
  const standing = standings[tube];
  const seat = frame.seats[tube];
  if (!standing || !seat) return undefined;
  const [from, to] = seat.along.map(asWritten);
  if (from === undefined || to === undefined) return undefined;
  const [a, b] = endAsMade(placings, tube, 'A') === 'A' ? [from, to] : [to, from];
  const at = (end: EndName, point: Said): Said => {
    const own = endAsMade(placings, tube, end);
    const cope = standing.solution.ends[own];
    const isMitred = cope?.kind === 'coped' && cope.joint.landings.every(({ mitred }) => mitred);
    const to = isMitred
      ? seat.ends[own].headers[0]
      : splices.find((each) => each.tube === tube && each.end === own)?.to;
    return words.frame.at(point, headersOf(end), to === undefined ? undefined : nameOfTube(job, to));
  };
  const { station } = words.quantities;
  const spine = station(stationAsMade(placings, standing, 0), standing.solution.section.stations);
  const plumb = Math.abs(seat.spine[2]) < 1e-9 && Math.abs(seat.axis[2]) > 0.99;
  return words.frame.goes(at('A', a), at('B', b), spine, plumb ? 'back' : 'up');
}

/** So far to one side that nobody takes it for the next: within 30 degrees of it. */
const SQUARELY = Math.cos(Math.PI / 6);

function sideOf([x, y, z]: Vector): keyof Language['frame']['sides'] | undefined {
  if (Math.abs(z) > SQUARELY) return z > 0 ? 'top' : 'underside';
  if (Math.abs(y) > SQUARELY) return y > 0 ? 'back' : 'front';
  if (Math.abs(x) > SQUARELY) return x > 0 ? 'right' : 'left';
  return undefined;
}

/** A landing as a person marks it out; `headed` where what stands over it says from where that is measured. */
export function landingLine(
  { words, units }: Job,
  landing: TubeLanding,
  standings: readonly StandingTube[],
  headed = false,
): Said {
  const { tape, station } = words.quantities;
  const { mark, from, to, on } = landing;
  const counts = standings[on]?.solution.section.stations ?? 'angles';
  const side = sideOf(landing.way);
  const at = mark === undefined ? undefined : tape(mark, units);
  return words.frame.landing(
    at && (headed ? at : words.frame.fromStop(at)),
    mark !== undefined && (mark < from || mark > to),
    station(landing.station, counts),
    side && words.frame.sides[side],
    tape(from, units),
    tape(to, units),
  );
}
