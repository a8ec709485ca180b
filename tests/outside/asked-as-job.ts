import { PAPERS, type Paper } from '../../src/job/paper/paper.ts';
import { readJob } from '../../src/job/read-job.ts';
import type { Cope } from '../../src/saddle/cope.ts';
import type { Line } from '../../src/saddle/line.ts';
import { solveTube } from '../../src/saddle/solve.ts';
import { ENGLISH } from '../../src/words/english.ts';
import type { AskedEnd, AskedPart, AskedTube, Onto } from './asked-in-degrees.ts';
import { between, type Random } from './random-joints.ts';

/** A job file that asks for this end. */
export function jobFileOf({ tube, wall, end, parts }: AskedEnd): string {
  const ends = parts.length === 1 ? partInWords(parts[0], false) : listInWords(parts);
  const size = 'od' in tube ? `od: ${tube.od}mm` : `section: ${map(tube)}`;
  return `copeleaf: 1\nunits: mm\ntube:\n  ${size}\n  wall: ${wall}mm\n  ends:\n    ${end}: ${ends}\n`;
}

function listInWords(parts: readonly AskedPart[]): string {
  return `[${parts.map((part) => partInWords(part, true)).join(', ')}]`;
}

function partInWords({ onto, angle, clock, offset, shift }: AskedPart, inList: boolean): string {
  const flat = onto.kind === 'plate' || onto.kind === 'mitre';
  return map({
    onto: ontoInWords(onto),
    ...(onto.kind !== 'mitre' && { angle: `${angle}deg` }),
    clock: `${clock}deg`,
    ...(!flat && { offset }),
    ...(inList && { shift }),
  });
}

function ontoInWords(onto: Onto): string {
  switch (onto.kind) {
    case 'round':
      return map({ od: onto.od });
    case 'plate':
      return '{ plate: {} }';
    case 'mitre':
      return `{ mitre: ${map({ turn: `${onto.turn}deg`, ...onto.elbow })} }`;
    case 'box': {
      const { wide, deep, corner, roll } = onto;
      return `{ box: ${map({ wide, deep, corner, roll: `${roll}deg` })} }`;
    }
    case 'bend': {
      const { od, radius, centre } = onto;
      return `{ bend: ${map({ od, radius, centre: `${centre}deg` })} }`;
    }
  }
}

function map(values: Readonly<Record<string, string | number>>): string {
  return `{ ${Object.entries(values)
    .map(([key, value]) => `${key}: ${value}${typeof value === 'number' && key !== 'pieces' ? 'mm' : ''}`)
    .join(', ')} }`;
}

/** The program's cope of one end, through the job file; or through another that asks for the same end. */
export function copeOf(ask: AskedEnd, text = jobFileOf(ask)): Cope {
  const job = readJob(text, 'joint.yaml', { words: ENGLISH, paper: anyPaper() });
  const [tube] = job.tubes;
  const solved = tube && solveTube(tube).ends[ask.end];
  if (solved?.kind !== 'coped') throw new Error(`end ${ask.end} was not coped`);
  return solved;
}

/** The three lines of an end that has a wall. */
export function linesOf(ask: AskedEnd, text?: string): { outside: Line; inside: Line; square: Line } {
  const { outside, inside, square } = copeOf(ask, text);
  if (!inside || !square) throw new Error('a tube with a wall has three lines');
  return { outside, inside, square };
}

function anyPaper(): Paper {
  const [paper] = PAPERS;
  if (!paper) throw new Error('there is a paper');
  return paper;
}

/** What random ends are drawn of. */
type AskKind = 'plate' | 'mitre' | 'sharp box' | 'round box' | 'bend' | 'union';

/** A random end of a kind; numbers have at most six decimals, so that the job file holds them exactly. */
export function randomEnd(random: Random, kind: AskKind): AskedEnd {
  const tube = randomTube(random);
  const half = 'od' in tube ? tube.od / 2 : Math.min(tube.wide, tube.deep) / 2;
  const end = random() < 0.5 ? 'A' : 'B';
  const wall = short(half * between(random, 0.04, 0.4));
  const first = randomPart(random, kind === 'union' ? anyKind(random) : kind, half, kind === 'union');
  if (kind !== 'union') return { tube, wall, end, parts: [first] };
  const second = randomPart(random, anyKind(random), half, true);
  const third = random() < 0.4 ? [randomPart(random, anyKind(random), half, true)] : [];
  return { tube, wall, end, parts: [first, second, ...third] };
}

function randomTube(random: Random): AskedTube {
  if (random() < 0.5) return { od: short(between(random, 12, 80)) };
  const [wide, deep] = [short(between(random, 12, 80)), short(between(random, 12, 80))];
  return {
    wide,
    deep,
    corner: random() < 0.3 ? 0 : short(between(random, 0.05, 0.49) * Math.min(wide, deep)),
  };
}

type PartKind = Exclude<AskKind, 'union'> | 'round';
const PART_KINDS: readonly PartKind[] = ['round', 'plate', 'sharp box', 'round box', 'bend'];

function anyKind(random: Random): PartKind {
  return PART_KINDS[Math.floor(random() * PART_KINDS.length)] ?? 'round';
}

function randomPart(random: Random, kind: PartKind, half: number, inUnion: boolean): AskedPart {
  const onto = randomOnto(random, kind, half);
  const sideways = onto.kind === 'plate' || onto.kind === 'mitre' ? 0 : 0.9 * (half + halfOf(onto));
  const middle = random() < 0.3 ? 0 : 1;
  return {
    onto,
    angle: onto.kind === 'mitre' ? 90 - onto.turn / 2 : short(between(random, 25, 155)),
    clock: short(between(random, 0, 359)),
    offset: short(middle * between(random, -1, 1) * sideways),
    shift: inUnion ? short(between(random, -1, 1) * half) : 0,
  };
}

function halfOf(onto: Onto): number {
  if (onto.kind === 'box') return Math.min(onto.wide, onto.deep) / 2;
  return onto.kind === 'round' || onto.kind === 'bend' ? onto.od / 2 : 0;
}

function randomOnto(random: Random, kind: PartKind, half: number): Onto {
  const od = short(half * between(random, 1, 5));
  switch (kind) {
    case 'round':
      return { kind: 'round', od };
    case 'plate':
      return { kind: 'plate' };
    case 'mitre':
      return { kind: 'mitre', turn: short(between(random, 5, 140)) };
    case 'bend':
      return {
        kind: 'bend',
        od,
        radius: short(od * between(random, 1.5, 4) + 3 * half),
        centre: short(between(random, -180, 180)),
      };
    case 'sharp box':
    case 'round box': {
      const deep = short(half * between(random, 1, 5));
      const corner = kind === 'sharp box' ? 0 : short(Math.min(od, deep) * between(random, 0.02, 0.49));
      const roll = random() < 0.3 ? 0 : short(between(random, -180, 180));
      return { kind: 'box', wide: od, deep, corner, roll };
    }
  }
}

function short(value: number): number {
  return Number(value.toFixed(6));
}
