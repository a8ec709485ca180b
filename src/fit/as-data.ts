import type { FitUp, Job, Part, SeatEnd, TicketNote, TubeSection } from '../job/job.ts';
import { tubeFactsOf } from '../job/sections.ts';
import { degrees, type Radians } from '../measure/units.ts';
import type { Placing, TubeSolution } from '../saddle/solve.ts';
import type { Section as SpaceSection } from '../space/section.ts';
import type { EndReport } from './end-report.ts';
import type { TubeReport } from './report.ts';

/**
 * The reports as `check --as json` gives them: millimetres, and degrees as resolved, with clock and phi in [0, 360).
 * What has no value is left out.
 */
export function reportsAsData(reports: readonly TubeReport[], job?: Job): { units: 'mm'; tubes: object[] } {
  return { units: 'mm', tubes: reports.map((report) => tubeAsData(report, job)) };
}

function tubeAsData({ solution, ends, warnings }: TubeReport, job: Job | undefined): object {
  const { tube, hand, lengths, twist, places } = solution;
  const seat = job?.frame?.seats[places?.[0]?.tube ?? -1];
  return {
    name: tube.name,
    hand,
    copies: tube.copies,
    ...(tube.note && { note: tube.note.map(noteAsData) }),
    ...sizeAsData(tube.section),
    ...(lengths && { between: lengths.between, overall: lengths.overall, blank: lengths.blank }),
    ...(twist !== undefined && { twist: degreesOf(twist) }),
    ends: {
      ...(ends.A && { A: endAsData(ends.A, seat?.ends.A) }),
      ...(ends.B && { B: endAsData(ends.B, seat?.ends.B) }),
    },
    ...(places && job?.frame && { places: places.map((placing) => placeAsData(placing, solution, job)) }),
    warnings: warnings.map(({ code, end, inFile }) => ({ code, text: inFile, ...(end && { end }) })),
  };
}

/** A line as the job file has it: its words, or what each line is about with its words. */
function noteAsData(lines: TicketNote[number]): string | object {
  const [{ of, says }] = lines;
  return of === undefined ? says : Object.fromEntries(lines.map((line) => [line.of, line.says]));
}

function sizeAsData(section: TubeSection): object {
  const { lengths, under } = tubeFactsOf(section);
  const sizes = Object.fromEntries(Object.entries(lengths).map(([key, { mm }]) => [key, mm]));
  return under === undefined ? sizes : { [under]: sizes };
}

/** A tube of a frame that is this piece: its points, and how it is turned on it. */
function placeAsData({ tube, spineAt, swapped }: Placing, { section }: TubeSolution, job: Job): object {
  const turn = swapped ? spineAt : 0 - spineAt;
  return {
    name: job.tubes[tube]?.name,
    along: job.frame?.seats[tube]?.along,
    swap: swapped,
    turn: section.stations === 'angles' ? around(turn) : turn,
  };
}

function endAsData(report: EndReport | 'plain', seat: SeatEnd | undefined): object {
  if (report === 'plain') {
    const { past, open } = seat ?? {};
    return { plain: true, ...(past !== undefined && { past: past + 0 }), ...(open && { open }) };
  }
  const { cope, gap, standOff, dihedrals, sensitivity } = report;
  const at = (station: number): object => stationAsData(station, cope.joint.section);
  const union = cope.end.parts.length > 1;
  const [part, ...others] = cope.end.parts.map(({ onto, angle, clock, offset, shift, stops }) => ({
    angle: degreesOf(angle.rad),
    ...(!cope.fitUp?.clock && { clock: around(clock.rad) }),
    offset: offset.mm + 0,
    ...(union && { shift: shift.mm + 0 }),
    ...(stops && { stops: true }),
    ...foundAsData({ onto, angle, clock, offset }),
  }));
  return {
    longPoint: { ...at(cope.longPoint.station), setback: cope.longPoint.setback },
    throat: { ...at(cope.throat.station), setback: cope.throat.setback },
    ...(others.length > 0 ? { parts: [part, ...others] } : part),
    ...(cope.fitUp && { fitUp: markedKeys(cope.fitUp) }),
    ...(standOff !== undefined && { standOff }),
    gap: { ...at(gap.station), mm: gap.mm },
    ...(dihedrals && {
      dihedral: { least: degreesOf(dihedrals.least.angle), most: degreesOf(dihedrals.most.angle) },
    }),
    sensitivity,
  };
}

/** Of what was found from the lengths of a notch: the header's diameter, and how far off each value may be, with 95 % confidence. */
function foundAsData({
  onto,
  angle,
  clock,
  offset,
}: Pick<Part, 'onto' | 'angle' | 'clock' | 'offset'>): object {
  const od = onto.kind === 'round' && onto.od.within !== undefined ? onto.od : undefined;
  const within = {
    ...(od && { od: od.within }),
    ...(angle.within !== undefined && { angle: degreesOf(angle.within) }),
    ...(clock.within !== undefined && { clock: degreesOf(clock.within) }),
    ...(offset.within !== undefined && { offset: offset.within }),
  };
  return { ...(od && { onto: { od: od.mm } }), ...(Object.keys(within).length > 0 && { within }) };
}

/** What is marked at the frame and has no number yet. */
function markedKeys({ clock, between }: FitUp): readonly string[] {
  return [...(clock ? ['clock'] : []), ...(between ? ['between'] : [])];
}

/** `phi` in degrees, or where stations are mm round the outside `s`. */
function stationAsData(station: number, section: SpaceSection): object {
  return section.stations === 'angles' ? { phi: around(station) } : { s: station };
}

/** Degrees rid of the last bits that the way through radians leaves: 62, not 62.00000000000001. */
export function degreesOf(angle: Radians): number {
  return Number(degrees(angle).toFixed(10)) + 0;
}

/** Degrees in [0, 360). */
export function around(angle: Radians): number {
  const home = ((degreesOf(angle) % 360) + 360) % 360;
  return home + 0;
}
