import type { CopedEnd, EndName, FitUp, Part, Preparation, Tube } from '../job/job.ts';
import { factsOf } from '../job/kinds.ts';
import { sectionInWords, unitsOf } from '../job/shape.ts';
import { sawLength } from '../measure/saw-length.ts';
import { degrees, type Mm, type Radians, radians } from '../measure/units.ts';
import { angleAsWritten, bothUnits, inchFraction, millimetres, writeAngle } from '../measure/write.ts';
import type { Place } from '../saddle/extremes.ts';
import type { TubeSolution } from '../saddle/solve.ts';
import { stationInWords } from '../saddle/station.ts';
import type { EndReport } from './end-report.ts';
import { fitUpAloud, measuredAloud } from './measured-aloud.ts';
import type { TubeReport } from './report.ts';
import type { Sensitivity } from './sensitivity.ts';

/** The report of one tube as a person reads it: what was understood, what follows, what to watch. */
export function readAloud(report: TubeReport): string {
  const { hand } = report.solution;
  const sections =
    hand === 'opposite'
      ? [[headline(report)], mirrored(report)]
      : [
          [headline(report)],
          ['Understood', ...understood(report.solution)],
          ['What follows', ...follows(report)],
          ['What to watch', ...watch(report)],
        ];
  return sections.map((lines) => lines.join('\n')).join('\n\n');
}

function headline({ solution: { tube, hand } }: TubeReport): string {
  const words = [tube.name.toUpperCase()];
  if (hand === 'opposite') words.push('opposite hand');
  if (tube.copies > 1) words.push(`${tube.copies} of this hand`);
  return words.join(', ');
}

/** Of the opposite hand only what differs from its twin, which was told just before. */
function mirrored({ solution }: TubeReport): string[] {
  const { tube, twist } = solution;
  const lines = ['  The mirror image of its twin: the same lengths, angles, gaps and warnings.'];
  for (const name of ['A', 'B'] as const) {
    const end = tube.ends[name];
    const cope = solution.ends[name];
    if (end?.kind !== 'coped' || cope?.kind !== 'coped') continue;
    const turned = end.parts.flatMap((part) => placeOf(part, end.fitUp));
    const throat = `throat at ${stationInWords(cope.throat.station, cope.joint.section)}`;
    lines.push(`  end ${name}  ${[...turned, throat].join(', ')}`);
  }
  if (twist !== undefined && twist !== 0) lines.push(`  ${twistInWords(twist)}`);
  return lines;
}

/** Where round the tube, and beside it, the header lies; nothing where it lies in the middle. */
function placeOf({ clock, offset, shift }: Part, fitUp?: FitUp): string[] {
  return [
    ...(clock.rad === 0 || fitUp?.clock ? [] : [`clock ${angleAsWritten(clock)}`]),
    ...(offset.mm === 0 ? [] : [`offset ${bothUnits(offset)}`]),
    ...(shift.mm === 0 ? [] : [`shifted ${bothUnits(shift)} along the tube`]),
  ];
}

function understood(solution: TubeSolution): string[] {
  const { tube, lengths } = solution;
  const wall = tube.wall ? `, wall ${bothUnits(tube.wall)}` : ', wall not given';
  const lines = [`  tube   ${sectionInWords(tube.section)}${wall}`];
  const between = tube.between && ('ways' in tube.between ? undefined : bothUnits(tube.between));
  const length = between ?? (lengths && sayer(tube)(lengths.between));
  if (length) lines.push(`         ${length} from work point to work point`);
  for (const name of ['A', 'B'] as const) {
    const end = tube.ends[name];
    if (end?.kind === 'plain') lines.push(`  end ${name}  cut square at its work point`);
    if (end?.kind === 'coped') lines.push(...end.parts.map((part) => landing(name, part, end)));
  }
  lines.push(...measuredAloud(solution));
  return lines;
}

/** One header as it was understood. */
function landing(name: EndName, part: Part, end: CopedEnd): string {
  const { onto, angle } = part;
  const said = [
    `  end ${name}  onto ${factsOf(onto).words}${onto.kind === 'mitre' ? '' : ` at ${angleAsWritten(angle)}`}`,
  ];
  const obtuse = angle.rad > Math.PI / 2 + 1e-12;
  if (obtuse) {
    said.push(` (the same as ${writeAngle(Math.PI - angle.rad)}, clock + 180°, offset reversed)`);
  }
  const marks = [
    ...(end.fitUp?.clock ? ['rotation by its mark'] : []),
    ...(end.fitUp?.between ? ['length by its mark'] : []),
  ];
  const root = end.root && end.root.mm > 0 ? `, root gap ${bothUnits(end.root)}` : '';
  return `${[said.join(''), ...placeOf(part, end.fitUp), ...marks].join(', ')}; ${preparationInWords(end.preparation)}${root}`;
}

/** How the edge is made, in shop words: `bevel`, `bevel, blunt 1.2 mm`, `square`, `square, from the inside`. */
export function preparationInWords(preparation: Preparation): string {
  if (preparation.edge === 'bevel') {
    return preparation.blunt ? `bevel, blunt ${bothUnits(preparation.blunt)}` : 'bevel';
  }
  return preparation.from === 'inside' ? 'square, from the inside' : 'square';
}

function follows({ solution, ends }: TubeReport): string[] {
  const { lengths, twist, tube, section } = solution;
  const say = sayer(tube);
  const lines: string[] = [];
  if (lengths) {
    const sawn = sawLength(lengths.blank, unitsOf(tube));
    lines.push(`  Cut the blank ${say(sawn)} long; it ends ${say(lengths.overall)} overall.`);
    const past = lengths.overall - lengths.between;
    if (past > 0.05) {
      lines.push(
        `  It reaches ${say(past)} past its work points: centre to centre alone would be too short.`,
      );
    }
    const spare = sawn - lengths.overall;
    lines.push(`  That is ${say(spare)} to spare: a leaf can be slid so far for a second cut.`);
  }
  if (twist !== undefined) lines.push(`  ${twistInWords(twist)}`);
  lines.push(`  A tape round the tube should read ${say(section.girth)}.`);
  return [...lines, ...endsFollow(ends, tube)];
}

function twistInWords(twist: Radians): string {
  const size = Math.round(Math.abs(degrees(twist)) * 100) / 100;
  if (size === 0) return "End B's heel is in line with end A's.";
  const side = size === 180 ? 'opposite' : `${size}° to the ${twist > 0 ? 'right' : 'left'} of`;
  return `End B's heel stands ${side} end A's, with B up.`;
}

/** What follows for each end; two ends that come out alike are told once. */
function endsFollow(ends: TubeReport['ends'], tube: Tube): string[] {
  const told = (['A', 'B'] as const).flatMap((name) => {
    const end = ends[name];
    return end && end !== 'plain' ? [{ name: `end ${name}`, lines: endFollows(end, tube) }] : [];
  });
  const [first, second] = told;
  const alike = first && second && first.lines.join() === second.lines.join();
  const shown = alike ? [{ name: 'both ', lines: first.lines }] : told;
  return shown.flatMap(({ name, lines }) => lines.map((line, i) => `  ${i === 0 ? name : '     '}  ${line}`));
}

function endFollows(report: EndReport, tube: Tube): string[] {
  const { cope, gap, standOff, dihedrals, sensitivity } = report;
  const say = sayer(tube);
  const placed = ({ setback, station }: Place): string =>
    `${say(setback)} at ${stationInWords(station, cope.joint.section)}`;
  const lines = [
    ...fitUpAloud(cope, say).flatMap((line) => wrapped(line, 90)),
    `throat ${placed(cope.throat)}; long point ${placed(cope.longPoint)}`,
  ];
  if (dihedrals) {
    const range = `${writeWhole(dihedrals.least.angle)} to ${writeWhole(dihedrals.most.angle)}`;
    lines.push(`the surfaces meet at ${range}: ${weldInWords(report)}`);
  }
  if (gap.mm >= 0.05)
    lines.push(`a gap of ${say(gap.mm)} stays at ${stationInWords(gap.station, cope.joint.section)}`);
  else lines.push('full contact with this edge: no gap stays');
  if (standOff !== undefined && standOff >= 0.05 && cope.end.preparation.edge === 'bevel') {
    lines.push(`cut square to the outside line by mistake, it would stand off ${say(standOff)}`);
  }
  return [...lines, ...sensitivityInWords(sensitivity)];
}

/** The weld that the corner and the gap ask for, named and not designed: dihedral ranges are common practice. */
function weldInWords({ gap, dihedrals }: EndReport): string {
  if (!dihedrals) return 'no weld';
  const kinds: string[] = [];
  if (dihedrals.most.angle > radians(120)) kinds.push('groove weld where it is open');
  kinds.push('fillet at the sides');
  if (dihedrals.least.angle < radians(60)) kinds.push('a filled corner at the heel');
  return `${kinds.join(', ')}${gap.mm > 0.005 ? ', its legs longer by the gap' : ''}`;
}

/** What a full step of each error opens, the worst named first. */
function sensitivityInWords(opens: Sensitivity): string[] {
  const steps = [
    { step: '1° of angle', measure: 'the angle', mm: opens.angle },
    { step: '1° of rotation', measure: 'the rotation', mm: opens.clock },
    { step: '1 mm of offset', measure: 'the offset', mm: opens.offset },
    { step: '1 % of print scale', measure: 'the bars on the sheet', mm: opens.scale },
  ].sort((a, b) => b.mm - a.mm);
  const worst = steps[0]?.measure ?? '';
  const list = steps.map(({ step, mm }) => `${step} ${mm.toFixed(1)}`).join(', ');
  return [`a slip opens, in mm: ${list}`, `so take ${worst} twice`];
}

function watch({ warnings }: TubeReport): string[] {
  if (warnings.length === 0) return ['  Nothing out of the ordinary.'];
  return warnings.flatMap(({ code, end, text }) => {
    const [first = '', ...rest] = wrapped(`${end ? `end ${end}: ` : ''}${text}`, 84);
    return [`  ${code.padEnd(12)}${first}`, ...rest.map((line) => `${' '.repeat(14)}${line}`)];
  });
}

function wrapped(text: string, width: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const line = lines.at(-1);
    if (line !== undefined && line.length + 1 + word.length <= width)
      lines[lines.length - 1] = `${line} ${word}`;
    else lines.push(word);
  }
  return lines;
}

/** Says lengths to a tenth of a millimetre and the nearest mark of a tape, the person's own units first. */
function sayer(tube: Tube): (mm: Mm) => string {
  const metric = unitsOf(tube) === 'mm';
  return (mm) => {
    const millimetre = `${millimetres(Math.round(mm * 10) / 10)} mm`;
    const inch = `${inchFraction(mm)} in`;
    return metric ? `${millimetre} (${inch})` : `${inch} (${millimetre})`;
  };
}

function writeWhole(angle: number): string {
  return `${Math.round(degrees(angle))}°`;
}
