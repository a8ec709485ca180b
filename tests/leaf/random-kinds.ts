import type { EndName, Header, Part, Tube, TubeSection } from '../../src/job/job.ts';
import { drawLeaf } from '../../src/leaf/draw-leaf.ts';
import { drawFootprint, landings } from '../../src/leaf/footprint/leaf.ts';
import type { CardedLeaf } from '../../src/leaf/leaf.ts';
import type { Cope } from '../../src/saddle/cope.ts';
import { solveTube, type TubeSolution } from '../../src/saddle/solve.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { angle, length, PAPER } from './random-tubes.ts';

/** One coped end of any kind, its leaf and the leaf of each of its footprints. */
export interface KindCase {
  readonly tube: Tube;
  readonly solution: TubeSolution;
  readonly cope: Cope;
  readonly end: EndName;
  readonly leaf: CardedLeaf;
  readonly footprints: readonly CardedLeaf[];
}

export function kindCasesOf(tube: Tube): KindCase[] {
  const solution = solveTube(tube);
  const context = { words: ENGLISH, job: 'kayak trailer', paperThickness: PAPER };
  return (['A', 'B'] as const).flatMap((end) => {
    const cope = solution.ends[end];
    if (cope?.kind !== 'coped') return [];
    const footprints = landings(cope).map((part) => drawFootprint(solution, end, part, context));
    return [{ tube, solution, cope, end, leaf: drawLeaf(solution, end, context), footprints }];
  });
}

export function partOf(onto: Header, degrees: number, clock = 0, offset = 0, shift = 0): Part {
  return { onto, angle: angle(degrees), clock: angle(clock), offset: length(offset), shift: length(shift) };
}

/** A tube with one end at A, or at B. */
export function tubeOnto(
  section: TubeSection,
  parts: readonly [Part, ...Part[]],
  wall?: number,
  end: EndName = 'A',
): Tube {
  const coped = { kind: 'coped', parts, preparation: { edge: 'bevel' } } as const;
  return {
    name: 'gusset',
    section,
    ...(wall !== undefined && { wall: length(wall) }),
    allowance: length(10),
    pair: false,
    copies: 1,
    ends: end === 'A' ? { A: coped } : { B: coped },
  };
}

export function round(od: number): TubeSection {
  return { kind: 'round', od: length(od) };
}

export function rectangle(wide: number, deep: number, corner: number): TubeSection {
  return { kind: 'rectangular', wide: length(wide), deep: length(deep), corner: length(corner) };
}

/** Round or rectangular, 10 to 160 mm, onto one to three headers of any kind, offset, turned, or missed in part. */
export function randomKind(roll: () => number): Tube {
  const between = (low: number, high: number): number =>
    Math.round((low + (high - low) * roll()) * 100) / 100;
  const wide = between(10, 10 * 16 ** roll());
  const deep = wide * between(0.5, 1.5);
  const least = Math.min(wide, deep);
  const rectangular = roll() < 0.5;
  const section = rectangular
    ? rectangle(wide, deep, roll() < 0.2 ? 0 : least * between(0.05, 0.4))
    : round(wide);
  const count = roll() < 0.3 ? (roll() < 0.5 ? 2 : 3) : 1;
  const others = Array.from({ length: count - 1 }, () => randomPart(between, roll, wide));
  const wall = roll() < 0.85 ? least * between(0.03, 0.12) : undefined;
  const end = roll() < 0.5 ? 'A' : 'B';
  const tube = tubeOnto(section, [randomPart(between, roll, wide), ...others], wall, end);
  return { ...tube, name: roll() < 0.5 ? 'gusset' : 'Querträger vorne oben, Überrollschutz, поперечина 漢' };
}

type Between = (low: number, high: number) => number;

function randomPart(between: Between, roll: () => number, size: number): Part {
  const onto = randomHeader(between, roll, size);
  const clock = roll() < 0.3 ? 0 : between(0, 360);
  if (onto.kind === 'mitre') return partOf(onto, 90 - (onto.turn.rad * 90) / Math.PI, clock);
  const degrees = roll() < 0.2 ? 90 : between(20, 160);
  if (onto.kind === 'plate') return partOf(onto, degrees, clock);
  const offset = roll() < 0.5 ? 0 : between(-0.6, 0.6) * size;
  return partOf(onto, degrees, clock, offset, roll() < 0.5 ? 0 : between(-0.3, 0.3) * size);
}

function randomHeader(between: Between, roll: () => number, size: number): Header {
  const across = size * between(0.8, 2.5);
  const kind = Math.floor(roll() * 5);
  if (kind === 0) return { kind: 'plate' };
  if (kind === 1) {
    const turn = angle(between(10, 120));
    return {
      kind: 'mitre',
      turn,
      ...(roll() < 0.5 && { segments: { pieces: 5, radius: length(3 * size) } }),
    };
  }
  if (kind === 2) {
    const deep = across * between(0.5, 1.5);
    const corner = length(roll() < 0.3 ? 0 : Math.min(across, deep) * between(0.05, 0.4));
    const roll_ = angle(roll() < 0.5 ? 0 : between(-180, 180));
    return { kind: 'box', wide: length(across), deep: length(deep), corner, roll: roll_ };
  }
  if (kind === 3) {
    const radius = length(across * between(4, 12));
    return { kind: 'bend', od: length(across), radius, centre: angle(between(90, 270)) };
  }
  return { kind: 'round', od: length(across) };
}
