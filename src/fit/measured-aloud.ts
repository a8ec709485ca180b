import type { EndName, Header, Part } from '../job/job.ts';
import { unitsOf } from '../job/shape.ts';
import type { Length } from '../measure/units.ts';
import type { Cope } from '../saddle/cope.ts';
import { lengthsInWords } from '../saddle/readings-told.ts';
import type { TubeSolution } from '../saddle/solve.ts';

/** Each value that was measured in another way than as itself: what was read, and what it came to. */
export function measuredAloud({ tube, readings }: TubeSolution): string[] {
  const { section } = tube;
  const unit = unitsOf(tube);
  const told = [
    ...(section.kind === 'round' ? noted('od', section.od) : []),
    ...named('between', lengthsInWords(readings, unit)),
    ...(['A', 'B'] as const).flatMap((name) => {
      const end = tube.ends[name];
      return end?.kind === 'coped' ? end.parts.flatMap((part) => ofPart(name, part)) : [];
    }),
  ];
  return told.map((line, i) => `  ${i === 0 ? 'read ' : '     '}  ${line}`);
}

function ofPart(name: EndName, { onto, angle, clock }: Part): string[] {
  return [
    ...noted(`end ${name} onto`, diameterOf(onto)),
    ...noted(`end ${name} angle`, angle),
    ...noted(`end ${name} clock`, clock),
  ];
}

function diameterOf(onto: Header): Length | undefined {
  return onto.kind === 'round' || onto.kind === 'bend' ? onto.od : undefined;
}

function noted(name: string, value: { readonly readings?: readonly string[] } | undefined): string[] {
  return named(name, value?.readings ?? []);
}

function named(name: string, readings: readonly string[]): string[] {
  return readings.map((reading) => `${name}: ${reading}`);
}

/** Where on its line the length mark is made. */
export const LENGTH_MARK = 'where the line, moved square across, would meet the near side of the header';

/** What is marked on the tube at the frame for an end, and where. */
export function fitUpAloud({ fitUp, heel, end }: Cope, say: (mm: number) => string): string[] {
  if (!fitUp) return [];
  const either = heel !== undefined && end.parts[0].angle.rad === Math.PI / 2 ? ', on either side' : '';
  const line = `where the header's centre line comes nearest the heel${either}`;
  const lines = fitUp.clock
    ? [`with end A seated, mark the rotation on the tube ${line}: stations count from that mark`]
    : [];
  if (fitUp.lengthSetback === undefined) return lines;
  const on = fitUp.clock ? 'on the line of that mark' : `on the line ${line}`;
  const beyond = `${say(Math.abs(fitUp.lengthSetback))} ${fitUp.lengthSetback < 0 ? 'beyond' : 'short of'}`;
  return [...lines, `mark the length ${on}, ${LENGTH_MARK}: ${beyond} the work point`];
}
