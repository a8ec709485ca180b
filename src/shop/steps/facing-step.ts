import type { CopedEnd, EndName, Part, Tube } from '../../job/job.ts';
import { mirroredTube } from '../../job/opposite.ts';
import { sideNames } from '../../leaf/wrap/sides.ts';
import type { Radians } from '../../measure/units.ts';
import { writeAngle } from '../../measure/write.ts';
import { homeStation } from '../../saddle/peaks.ts';
import type { NamedEnd, Piece } from '../piece.ts';

/** The last look before the second end: most tubes are spoilt there. Of a pair it tells this hand from the other. */
export function facingStep({ solution, first }: Piece, end: NamedEnd): string {
  const { twist } = solution;
  const other = first ? ` away from end ${first.name}` : ' out at the end';
  const turned =
    twist === undefined || !first ? '' : `, and ${twistWords(twist, sideNames(end.cope.end.parts[0]).heel)}`;
  const held = end.cope.fitUp?.clock ? ', and hold the leaf up to the header' : turned;
  return `Check which way end ${end.name} faces before you cut: its arrow points${other}${held}.${handWords(solution)}`;
}

/** What tells this hand from its twin. */
function handWords({ tube, hand, twist }: Piece['solution']): string {
  if (!tube.pair) return '';
  const own = `This tube is ${hand === 'opposite' ? 'the opposite hand' : 'as drawn'}`;
  const sided = twist !== undefined && Math.abs(Math.sin(twist)) > 1e-9;
  if (sided) return ` ${own}.`;
  const [mine, its] = [marksOfHand(tube), marksOfHand(mirroredTube(tube))];
  const apart = mine.filter((mark, i) => mark !== its[i]);
  if (apart.length === 0) return ` ${own}; its twin comes out the same.`;
  return ` ${own}: with B up, ${apart.join(', and ')}.`;
}

/** What lies to one side, seen with end B up and the heel in front: of each header its offset, its roll and its bend. */
function marksOfHand({ ends }: Tube): string[] {
  return (['A', 'B'] as const).flatMap((name) => {
    const end = ends[name];
    return end?.kind === 'coped' ? end.parts.flatMap((part, i) => marksOf(name, end, part, i)) : [];
  });
}

function marksOf(name: EndName, { parts }: CopedEnd, part: Part, place: number): string[] {
  const { onto, offset, angle, clock } = part;
  const whose = `header${parts.length > 1 ? ` ${place + 1}` : ''} of end ${name}`;
  const { heel } = sideNames(part);
  const from = `of its ${heel}`;
  const way = angle.rad <= Math.PI / 2 ? 1 : -1;
  const side = (value: number): string => (value * way > 0 ? 'right' : 'left');
  const beside = homeStation(clock.rad - (parts[0].clock.rad ?? 0), 2 * Math.PI);
  return [
    ...(place > 0 && Math.abs(Math.sin(beside)) > 1e-9
      ? [`the ${whose} stands ${turnTo(beside)} of header 1`]
      : []),
    ...(offset.mm !== 0 ? [`the ${whose} passes to the ${side(offset.mm)} ${from}`] : []),
    ...(onto.kind === 'box' && Math.abs(Math.sin(2 * onto.roll.rad)) > 1e-9
      ? [
          `the ${whose} has its near face rolled ${writeAngle(Math.abs(onto.roll.rad))} to the ${side(onto.roll.rad)} ${from}`,
        ]
      : []),
    ...(onto.kind === 'bend' && Math.abs(Math.sin(onto.centre.rad)) > 1e-9
      ? [`the ${whose} bends to the ${side(Math.sin(onto.centre.rad))} ${from}`]
      : []),
  ];
}

function turnTo(turned: Radians): string {
  return turned < Math.PI
    ? `${writeAngle(turned)} to the right`
    : `${writeAngle(2 * Math.PI - turned)} to the left`;
}

function twistWords(twist: number, side: string): string {
  const names = `the ${side} of end B`;
  if (Math.abs(twist) < 1e-9) return `${names} is on one line with that of end A`;
  if (Math.abs(Math.abs(twist) - Math.PI) < 1e-9) return `${names} is opposite that of end A`;
  return `${names} stands ${writeAngle(Math.abs(twist))} to the ${twist > 0 ? 'right' : 'left'} of that of end A, with B up`;
}
