import { standOffOf } from '../fit/stand-off.ts';
import { headerInWords, sectionInWords } from '../job/shape.ts';
import type { Angle } from '../measure/units.ts';
import { angleAsWritten, writeAngle } from '../measure/write.ts';
import type { Cope } from '../saddle/cope.ts';
import { homeStation } from '../saddle/peaks.ts';
import type { TubeSolution } from '../saddle/solve.ts';
import { spelled } from './letters.ts';
import { inBoth, wrote } from './names.ts';

/** One line of the title block: what it is, and its value in words. */
export interface Fact {
  readonly label: string;
  readonly text: string;
}

/** What is known of one end and its tube, in the order in which it is needed. */
export function factsOf(
  solution: TubeSolution,
  cope: Cope,
  job: string | undefined,
  units: 'mm' | 'in',
): Fact[] {
  return [
    ...(job ? [{ label: 'job', text: spelled(job) }] : []),
    ...sizeFacts(solution, cope),
    ...turnFacts(solution, cope),
    ...lengthFacts(solution, units),
    { label: 'edge', text: edgeWords(cope, units) },
    ...(cope.end.root
      ? [{ label: 'root gap', text: `${wrote(cope.end.root)}, taken off along the tube` }]
      : []),
    { label: 'girth', text: girthWords(solution, units) },
  ];
}

function sizeFacts({ tube }: TubeSolution, { end }: Cope): Fact[] {
  return [
    { label: 'tube', text: spelled(sectionInWords(tube.section)) },
    ...(tube.wall ? [{ label: 'wall', text: wrote(tube.wall) }] : []),
    ...end.parts.flatMap(({ onto, angle, clock, offset }): Fact[] => [
      { label: 'header', text: spelled(headerInWords(onto)) },
      {
        label: 'angle',
        text: angleWords(angle),
      },
      ...(clock.rad === 0
        ? []
        : [
            {
              label: 'clock',
              text: `${writeAngle(homeStation(clock.rad, 2 * Math.PI))}, to the right of the spine`,
            },
          ]),
      ...(offset.mm === 0
        ? []
        : [
            {
              label: 'offset',
              text: `${wrote(offset)}: the header passes on the side of ${offsetWay(clock.rad, offset.mm)}`,
            },
          ]),
    ]),
  ];
}

/** With the angle that a bevel gauge laid on the tube's other side reads. */
function angleWords(angle: Angle): string {
  const wrote = spelled(angleAsWritten(angle));
  return angle.rad === Math.PI / 2
    ? wrote
    : `${wrote}; from the other side ${writeAngle(Math.PI - angle.rad)}`;
}

/** To which station's side the header's axis passes the tube's. */
function offsetWay(clock: number, offset: number): string {
  const station = homeStation(clock + (Math.sign(offset) * Math.PI) / 2, 2 * Math.PI);
  return `station ${writeAngle(station)}`;
}

function turnFacts({ twist, ends }: TubeSolution, cope: Cope): Fact[] {
  const other = cope === ends.A ? ends.B : ends.A;
  if (twist === undefined || other?.kind !== 'coped') return [];
  return [{ label: 'twist', text: `${writeAngle(twist)}, from heel A to heel B` }];
}

function lengthFacts({ lengths }: TubeSolution, units: 'mm' | 'in'): Fact[] {
  if (!lengths) return [];
  return [
    { label: 'work points', text: inBoth(lengths.between, units) },
    { label: 'long points', text: inBoth(lengths.overall, units) },
    { label: 'blank', text: `${inBoth(lengths.blank, units)} of stock` },
  ];
}

function girthWords({ section }: TubeSolution, units: 'mm' | 'in'): string {
  return `${inBoth(section.girth, units)} by tape. Seam open: tube larger than asked or print smaller; overlap: the reverse.`;
}

function edgeWords(cope: Cope, units: 'mm' | 'in'): string {
  const { preparation } = cope.end;
  const land = preparation.edge === 'bevel' && preparation.blunt;
  return `${preparationWords(cope, units)}${land ? ` A thin edge is left ${wrote(land)} thick.` : ''}`;
}

function preparationWords(cope: Cope, units: 'mm' | 'in'): string {
  const { preparation } = cope.end;
  if (preparation.edge === 'bevel') {
    return cope.other
      ? 'bevel: cut to the middle of the solid line, bevel the inner edge to the dashed one.'
      : 'bevel: cut to the middle of the solid line, bevel the inner edge until it seats.';
  }
  if (preparation.from === 'inside') {
    const off = inBoth(standOffOf(cope) ?? 0, units);
    return `square, torch held radially: cut to the middle of the solid line. Stands off ${off}: fill with weld.`;
  }
  return 'square: cut to the middle of the solid line, square to the surface; fill the outer gap with weld.';
}
