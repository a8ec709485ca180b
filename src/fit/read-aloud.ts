import type { CopedEnd, EndName, Part, Preparation, Tube } from '../job/job.ts';
import { degrees, type Mm, radians } from '../measure/units.ts';
import { angleAsWritten, bothUnits, inchFraction, millimetres, writeAngle } from '../measure/write.ts';
import type { Place } from '../saddle/extremes.ts';
import type { EndReport } from './end-report.ts';
import type { TubeReport } from './report.ts';
import type { Sensitivity } from './sensitivity.ts';

/** The report of one tube as a person reads it: what was understood, what follows, what to watch. */
export function readAloud(report: TubeReport): string {
  const { tube, hand } = report.solution;
  const sections = [
    [headline(tube, hand === 'opposite')],
    ['Understood', ...understood(tube)],
    ['What follows', ...follows(report)],
    ['What to watch', ...watch(report)],
  ];
  return sections.map((lines) => lines.join('\n')).join('\n\n');
}

function headline({ name, copies }: Tube, opposite: boolean): string {
  return `${name.toUpperCase()}${opposite ? ', opposite hand' : ''}${copies > 1 ? `, ${copies} of this hand` : ''}`;
}

function understood(tube: Tube): string[] {
  const wall = tube.wall ? `, wall ${bothUnits(tube.wall)}` : ', wall not given';
  const lines = [`  tube   ${bothUnits(tube.section.od)}${wall}`];
  if (tube.between) lines.push(`         ${bothUnits(tube.between)} from work point to work point`);
  for (const name of ['A', 'B'] as const) {
    const end = tube.ends[name];
    if (end?.kind === 'plain') lines.push(`  end ${name}  cut off square at its work point`);
    if (end?.kind === 'coped') lines.push(...end.parts.map((part) => landing(name, part, end)));
  }
  return lines;
}

function landing(name: EndName, part: Part, end: CopedEnd): string {
  const { onto, angle, clock, offset } = part;
  const said = [`  end ${name}  onto ${bothUnits(onto.od)} at ${angleAsWritten(angle)}`];
  const obtuse = angle.rad > Math.PI / 2;
  if (obtuse) {
    said.push(` (the same as ${writeAngle(Math.PI - angle.rad)}, clock + 180°, offset reversed)`);
  }
  if (clock.rad !== 0) said.push(`, clock ${angleAsWritten(clock)}`);
  if (offset.mm !== 0) said.push(`, offset ${bothUnits(offset)}`);
  return `${said.join('')}; ${preparationInWords(end.preparation)}`;
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
  const lines: string[] = [];
  if (lengths) {
    lines.push(`  Cut the blank ${both(lengths.blank)} long; it ends ${both(lengths.overall)} overall.`);
    const past = lengths.overall - lengths.between;
    if (past > 0.005) {
      lines.push(
        `  It reaches ${both(past)} past its work points: centre to centre alone would be too short.`,
      );
    }
    const spare = lengths.blank - lengths.overall;
    lines.push(`  The blank has ${both(spare)} to spare: a leaf can be slid that far for a second cut.`);
  }
  if (twist !== undefined) lines.push(`  End B's heel stands ${turnInWords(degrees(twist))} end A's.`);
  lines.push(`  A tape round the tube should read ${both(section.girth)}.`);
  for (const name of ['A', 'B'] as const) {
    const end = ends[name];
    if (end && end !== 'plain') lines.push(...endFollows(name, end, tube));
  }
  return lines;
}

function turnInWords(twist: number): string {
  const size = Math.round(Math.abs(twist) * 100) / 100;
  if (size === 0) return 'in line with';
  return `${size}° to the ${twist > 0 ? 'right' : 'left'} of (B up)`;
}

function endFollows(name: EndName, report: EndReport, tube: Tube): string[] {
  const { cope, gap, standOff, dihedrals } = report;
  const lines = [
    `  end ${name}  throat ${placed(cope.throat)}; long point ${placed(cope.longPoint)}`,
    ...(dihedrals
      ? [
          `         the surfaces meet at ${writeWhole(dihedrals.least.angle)} to ${writeWhole(dihedrals.most.angle)}: ${weldInWords(report)}`,
        ]
      : []),
    `         ${gapInWords(gap.mm, gap.station, tube)}`,
  ];
  if (standOff !== undefined && standOff >= 0.05) {
    lines.push(`         left square on the outside line it would stand off ${both(standOff)}`);
  }
  lines.push(...sensitivityInWords(report.sensitivity).map((line) => `         ${line}`));
  return lines;
}

function placed({ station, setback }: Place): string {
  return `${both(setback)} at ${writeWhole(station)}`;
}

function gapInWords(gap: Mm, station: number, tube: Tube): string {
  if (gap < 0.005)
    return tube.wall ? 'full contact with this edge: no gap stays' : 'no gap at the outer edge';
  return `a gap of ${both(gap)} stays at ${writeWhole(station)}`;
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
  return warnings.map(({ code, end, text }) => `  ${code}${end ? `, end ${end}` : ''}: ${text}`);
}

function both(length: Mm): string {
  return `${millimetres(length)} mm (${inchFraction(length)} in)`;
}

function writeWhole(angle: number): string {
  return `${Math.round(degrees(angle))}°`;
}
