import type { EndName, Job, Tube } from '../../src/job/job.ts';
import { mirroredTube } from '../../src/job/opposite.ts';
import { drawLeaf } from '../../src/leaf/draw-leaf.ts';
import type { CardedLeaf } from '../../src/leaf/leaf.ts';
import { type Angle, type Length, radians } from '../../src/measure/units.ts';
import type { Cope } from '../../src/saddle/cope.ts';
import { solveTube, type TubeSolution } from '../../src/saddle/solve.ts';
import { ENGLISH } from '../../src/words/english.ts';

/** A tube as the tests ask for it: sizes in mm, angles in degrees. */
export interface Ask {
  readonly name?: string;
  readonly od: number;
  readonly wall?: number;
  readonly between?: number;
  readonly pair?: boolean;
  readonly copies?: number;
  readonly edge?: 'bevel' | 'square' | 'inside' | 'land';
  readonly inches?: boolean;
  readonly A?: EndAsk;
  readonly B?: EndAsk;
}

export interface EndAsk {
  readonly header: number;
  readonly angle: number;
  readonly clock?: number;
  readonly offset?: number;
  readonly seam?: number;
}

export const PAPER = 0.1;

export function length(mm: number, inches = false): Length {
  return inches
    ? { mm, wrote: `${Number((mm / 25.4).toFixed(4))}in`, unit: 'in' }
    : { mm, wrote: `${mm}mm`, unit: 'mm' };
}

export function angle(deg: number): Angle {
  return { rad: radians(deg), wrote: `${deg}deg`, unit: 'deg' };
}

export function tubeOf(ask: Ask): Tube {
  const { A, B } = ask;
  return {
    name: ask.name ?? 'bunk stay',
    section: { kind: 'round', od: length(ask.od, ask.inches) },
    ...(ask.wall && { wall: length(ask.wall, ask.inches) }),
    ...(ask.between && { between: length(ask.between, ask.inches) }),
    allowance: length(10),
    pair: ask.pair ?? false,
    copies: ask.copies ?? 1,
    ends: { ...(A && { A: endOf(ask, A) }), ...(B && { B: endOf(ask, B) }) },
  };
}

function endOf(ask: Ask, end: EndAsk): Job['tubes'][number]['ends']['A'] & { kind: 'coped' } {
  const preparations = {
    bevel: { edge: 'bevel' },
    land: { edge: 'bevel', land: length((ask.wall ?? 1) / 2) },
    square: { edge: 'square', from: 'outside' },
    inside: { edge: 'square', from: 'inside' },
  } as const;
  return {
    kind: 'coped',
    parts: [
      {
        onto: { kind: 'round', od: length(end.header, ask.inches) },
        angle: angle(end.angle),
        clock: angle(end.clock ?? 0),
        offset: length(end.offset ?? 0, ask.inches),
        shift: length(0),
      },
    ],
    preparation: preparations[ask.edge ?? 'bevel'],
    ...(end.seam !== undefined && { seam: angle(end.seam) }),
  };
}

/** One leaf with all it was drawn from. */
export interface Case {
  readonly ask: Ask;
  readonly solution: TubeSolution;
  readonly cope: Cope;
  readonly end: EndName;
  readonly leaf: CardedLeaf;
}

export function casesOf(ask: Ask, job?: string): Case[] {
  const tube = tubeOf(ask);
  const solutions = [solveTube(tube), ...(ask.pair ? [solveTube(mirroredTube(tube), 'opposite')] : [])];
  return solutions.flatMap((solution) =>
    (['A', 'B'] as const).flatMap((end) => {
      const cope = solution.ends[end];
      if (cope?.kind !== 'coped') return [];
      const leaf = drawLeaf(solution, end, { ...(job && { job }), words: ENGLISH, paperThickness: PAPER });
      return [{ ask, solution, cope, end, leaf }];
    }),
  );
}

/** Numbers from 0 to 1 that are the same for the same seed (mulberry32). */
export function dice(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t = (t + Math.imul(t ^ (t >>> 7), t | 61)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

const NAMES = [
  'rung',
  'bunk stay',
  'forward cross-member of the upper kayak bunk, port side, between mast foot and winch post',
  'Querträger vorne oben Überrollschutzbügelhalterungsverstärkung',
  'поперечина прицепа, правая сторона',
  'εγκάρσιος σωλήνας στήριξης',
  'カヤック台 2',
  'x'.repeat(70),
];

/** A tube of 10 to 220 mm with one or two ends at 15 to 165 degrees, as likely as not offset, turned, or missed. */
export function randomAsk(roll: () => number): Ask {
  const between = (low: number, high: number): number => low + (high - low) * roll();
  const round = (value: number): number => Math.round(value * 100) / 100;
  const od = round(10 * 22 ** roll());
  const end = (): EndAsk => {
    const header = round(od * between(0.6, 2.5));
    const most = (header + od) / 2;
    return {
      header,
      angle: roll() < 0.2 ? 90 : round(between(15, 165)),
      clock: roll() < 0.4 ? 0 : round(between(0, 360)),
      offset: roll() < 0.5 ? 0 : round(between(-0.7, 0.7) * most),
    };
  };
  const edges = ['bevel', 'square', 'inside', 'land'] as const;
  const two = roll() < 0.7;
  const walled = roll() < 0.85;
  const pick = <T>(list: readonly [T, ...T[]]): T => list[Math.floor(roll() * list.length)] ?? list[0];
  return {
    name: pick([NAMES[0] ?? '', ...NAMES.slice(1)]),
    od,
    ...(walled && { wall: round(od * between(0.03, 0.2)) }),
    edge: walled ? pick(edges) : 'bevel',
    inches: roll() < 0.5,
    pair: roll() < 0.3,
    copies: roll() < 0.3 ? 4 : 1,
    A: end(),
    ...(two && { B: end(), between: round(between(2, 20) * od + 100) }),
  };
}
