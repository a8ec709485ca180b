import type { CopedEnd, End, EndName, FitUp, Part, Tube } from '../job/job.ts';
import { headerFactsOf } from '../job/kinds.ts';
import { tapeRound, tubeFactsOf, unitsOfTube } from '../job/sections.ts';
import type { Said } from '../measure/said.ts';
import { sawLength } from '../measure/saw-length.ts';
import type { TubeSolution } from '../saddle/solve.ts';
import type { Language } from '../words/language.ts';
import { asWritten, joined } from '../words/said.ts';
import { endLines } from './end-lines.ts';
import { headersApart } from './headers-apart.ts';
import { measuredLines } from './measured-lines.ts';
import type { TubeReport } from './report.ts';
import { wrapped } from './wrapped.ts';

/**
 * The report of one tube as a person reads it: what was understood, what follows, what to watch; `warned` as where a job file
 * is edited, or as at the bench.
 */
export function checkReport(report: TubeReport, words: Language, warned: 'inFile' | 'text' = 'inFile'): Said {
  const { check } = words;
  const { tube, hand, bothHands } = report.solution;
  const isOpposite = hand === 'opposite';
  const headline = [check.headline(tube.name, bothHands ? 'both' : hand, tube.copies)];
  const sections = isOpposite
    ? [headline, mirrored(report.solution, words)]
    : [
        headline,
        [check.understood, ...understood(report.solution, words)],
        [check.follows, ...follows(report, words)],
        [check.watch, ...watch(report, warned, check)],
      ];
  return joined(
    sections.map((lines) => joined(lines, '\n')),
    '\n\n',
  );
}

/** Of the opposite hand only what differs from its twin, which was told just before. */
function mirrored({ tube, twist, ends }: TubeSolution, { check, quantities }: Language): Said[] {
  const turned = (['A', 'B'] as const).flatMap((name) => {
    const end = tube.ends[name];
    const cope = ends[name];
    if (end?.kind !== 'coped' || cope?.kind !== 'coped') return [];
    const places = end.parts.flatMap((part) => placesOf(part, end.fitUp, check));
    const shortPoint = check.shortPointAt(
      quantities.station(cope.throat.station, cope.joint.section.stations),
    );
    return check.lines(check.end(name), [joined([...places, shortPoint], ', ')]);
  });
  const rotation = twist === undefined || twist === 0 ? [] : [check.line(check.twist(twist))];
  return [check.line(check.mirrored), ...turned, ...rotation];
}

/** Where round the tube, and beside it, the header lies; nothing where it lies in the middle. */
function placesOf(
  { clock, offset, shift }: Part,
  fitUp: FitUp | undefined,
  check: Language['check'],
): readonly Said[] {
  return [
    ...(clock.rad === 0 || fitUp?.clock ? [] : [check.clocked(clock)]),
    ...(offset.mm === 0 ? [] : [check.offset(offset)]),
    ...(shift.mm === 0 ? [] : [check.shifted(shift)]),
  ];
}

function understood(solution: TubeSolution, words: Language): Said[] {
  const { tube, lengths } = solution;
  const { check, quantities } = words;
  const { between: asked } = tube;
  const between =
    asked && !('ways' in asked)
      ? quantities.written(asked)
      : lengths && quantities.bothToATenth(lengths.between, unitsOfTube(tube));
  const size = check.size(tubeFactsOf(tube.section).said(words).words, tube.wall);
  const ends = (['A', 'B'] as const).flatMap((name) => {
    const end = tube.ends[name];
    if (end?.kind === 'plain') return check.lines(check.end(name), [check.plain]);
    return end?.kind === 'coped' ? end.parts.flatMap((part) => landing(name, part, end, words)) : [];
  });
  return [
    ...check.lines(check.tube, [
      size,
      ...(between ? betweenLines(between, solution, check) : []),
      ...(tube.pair && tube.copies > 1 ? [check.ofBothHands(tube.copies)] : []),
    ]),
    ...ends,
    ...check.lines(check.read, measuredLines(solution, words)),
    ...check.lines(check.note, noteLines(tube, check)),
  ];
}

/** The person's own words, as its ticket has them. */
function noteLines({ note = [] }: Tube, check: Language['check']): readonly Said[] {
  return note.flatMap((lines) =>
    lines.map(({ of, says }, i) => {
      const text = of === undefined ? asWritten(says) : joined([asWritten(of), asWritten(says)], ': ');
      return i === 0 ? text : check.line(text);
    }),
  );
}

/** The length, and what it reaches to at an elbow; of one end alone nothing follows from it. */
function betweenLines(between: Said, { tube: { ends } }: TubeSolution, check: Language['check']): Said[] {
  const elbows = (['A', 'B'] as const).filter((name) => isElbow(ends[name]));
  if (!ends.A || !ends.B) return [check.noBetween(between, elbows.length > 0)];
  return [check.between(between), ...elbows.map(check.toFirstJoint)];
}

function isElbow(end: End | undefined): boolean {
  return end?.kind === 'coped' && end.parts.some(({ onto }) => onto.kind === 'mitre' && onto.segments);
}

/** One header as it was understood. */
function landing(name: EndName, part: Part, end: CopedEnd, words: Language): readonly Said[] {
  const { check } = words;
  const { onto, angle } = part;
  const acute = angle.rad > Math.PI / 2 + 1e-12 ? Math.PI - angle.rad : undefined;
  const where = [
    check.onto(headerFactsOf(onto).said(words).words, onto.kind === 'mitre' ? undefined : angle, acute),
    ...placesOf(part, end.fitUp, check),
    ...(end.fitUp?.clock ? [check.rotationMarked] : []),
    ...(end.fitUp?.between ? [check.lengthMarked] : []),
  ];
  const flat = end.toFlat ? [check.toFlat] : [];
  const root = end.root && end.root.mm > 0 ? [check.root(end.root)] : [];
  return check.lines(check.end(name), [check.asked(where, [check.edge(end.preparation), ...flat, ...root])]);
}

/** Past its work points by less than this, nobody would see that a tube is. */
const SEEN = 0.05;

function follows({ solution, ends }: TubeReport, words: Language): Said[] {
  const { lengths, twist, tube, section } = solution;
  const { check } = words;
  const units = unitsOfTube(tube);
  const lines: Said[] = solution.bothHands ? [check.bothHands(tube.copies)] : [];
  if (lengths) {
    const { blank, overall, between } = lengths;
    const sawn = sawLength(blank, units);
    lines.push(check.blank(sawn, overall, units));
    if (overall - between > SEEN) lines.push(check.reaches(overall - between, units));
    lines.push(check.spare(sawn - overall, units));
  }
  if (twist !== undefined) lines.push(check.twist(twist));
  const apart = solution.places ? undefined : headersApart(tube);
  if (apart !== undefined) lines.push(check.headersApart(apart));
  lines.push(check.girth(section.girth + tapeRound(tube.section), units));
  const isCoped = Object.values(solution.ends).some(({ kind }) => kind === 'coped');
  if (!tube.wall && isCoped) lines.push(check.noWall);
  return [...lines.map(check.line), ...endsFollow(ends, units, words)];
}

/** What follows for each end; two ends that come out alike are told once. */
function endsFollow(ends: TubeReport['ends'], units: 'mm' | 'in', words: Language): readonly Said[] {
  const { check } = words;
  const told = (['A', 'B'] as const).flatMap((name) => {
    const end = ends[name];
    if (!end || end === 'plain') return [];
    return [{ label: check.end(name), lines: endLines(end, units, words) }];
  });
  const [first, second] = told;
  const alike = first && second && first.lines.join() === second.lines.join();
  const shown = alike ? [{ ...first, label: check.bothEnds }] : told;
  return shown.flatMap(({ label, lines }) => check.lines(label, lines));
}

function watch(
  { warnings }: TubeReport,
  warned: 'inFile' | 'text',
  check: Language['check'],
): readonly Said[] {
  if (warnings.length === 0) return [check.line(check.noWarning)];
  return warnings.flatMap(({ code, end, [warned]: text }) =>
    check.warning(code, wrapped(end ? check.ofEnd(end, text) : text, 84)),
  );
}
