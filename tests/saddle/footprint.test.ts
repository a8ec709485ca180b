import { describe, expect, it } from 'vitest';
import { jobFromFlags } from '../../src/job/flags.ts';
import { PAPERS } from '../../src/job/paper/paper.ts';
import type { Cope } from '../../src/saddle/cope.ts';
import { developedWay } from '../../src/saddle/developed-way.ts';
import { footprintLength, footprintOf, type OutlinePiece } from '../../src/saddle/footprint.ts';
import { solveTube } from '../../src/saddle/solve.ts';
import { stretchesOf } from '../../src/saddle/stretches.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { copeUnderTest } from '../outside/end-under-test.ts';
import { between, randomFrom, SEED } from '../outside/random-joints.ts';

interface Ask {
  readonly r: number;
  readonly R: number;
  readonly theta: number;
  readonly e: number;
}

function copeOf({ r, R, theta, e }: Ask): Cope {
  const flags = { od: `${2 * r}`, wall: `${r / 8}`, onto: `${2 * R}`, angle: `${theta}`, offset: `${e}` };
  const [paper] = PAPERS;
  const tube = paper && jobFromFlags(flags, { words: ENGLISH, paper }).tubes[0];
  const end = tube && solveTube(tube).ends.A;
  if (end?.kind !== 'coped') throw new Error('the flags give one coped end');
  return end;
}

/** A place on the unrolled header, wrapped round it again: how far from the tube's axis, by the definition of psi and q. */
function fromTubeAxis({ R, theta, e }: Ask, round: number, along: number): number {
  const t = (theta * Math.PI) / 180;
  const psi = round / R;
  const x = along * Math.sin(t) - R * Math.cos(psi) * Math.cos(t);
  const y = e + R * Math.sin(psi);
  return Math.hypot(x, y);
}

/** The tube's outside line, by the closed form of its setback, measured as chords halved until they stand. */
function lengthOnTube({ r, R, theta, e }: Ask): number {
  const t = (theta * Math.PI) / 180;
  const at = (phi: number): readonly [number, number, number] => {
    const [x, y] = [r * Math.cos(phi), r * Math.sin(phi)];
    return [x, y, (x * Math.cos(t) + Math.sqrt(R * R - (y - e) ** 2)) / Math.sin(t)];
  };
  const chords = (n: number): number => {
    let sum = 0;
    for (let i = 0; i < n; i++) {
      const [a, b] = [at((2 * Math.PI * i) / n), at((2 * Math.PI * (i + 1)) / n)];
      sum += Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
    }
    return sum;
  };
  // Chords fall short by the square of their number: two counts give the limit.
  return (4 * chords(20_000) - chords(10_000)) / 3;
}

function pointsOf(piece: OutlinePiece): { round: number; along: number }[] {
  return [0, 0.2, 0.4, 0.6, 0.8, 1].map((t) => {
    const u = 1 - t;
    const mix = (key: 'round' | 'along'): number =>
      u ** 3 * piece[0][key] +
      3 * u * u * t * piece[1][key] +
      3 * u * t * t * piece[2][key] +
      t ** 3 * piece[3][key];
    return { round: mix('round'), along: mix('along') };
  });
}

const random = randomFrom(SEED);
const JOINTS: readonly Ask[] = Array.from({ length: 60 }, () => {
  const r = between(random, 6, 60);
  const R = r * between(random, 1.02, 4);
  return { r, R, theta: between(random, 20, 160), e: between(random, -0.97, 0.97) * (R - r) };
});

describe(`the footprint on the header, seed ${SEED}`, () => {
  it('wraps round the header so that every point lies on the tube too', () => {
    for (const ask of JOINTS) {
      const cope = copeOf(ask);
      const outline = footprintOf(cope, 0, 0);
      expect(outline.closed).toBe(true);
      for (const piece of outline.runs.flat()) {
        for (const end of [piece[0], piece[3]]) {
          expect(Math.abs(fromTubeAxis(ask, end.round, end.along) - ask.r)).toBeLessThan(1e-9);
        }
        for (const { round, along } of pointsOf(piece)) {
          expect(Math.abs(fromTubeAxis(ask, round, along) - ask.r)).toBeLessThan(0.002);
        }
      }
    }
  });

  // A rule of the old sheet-metal pattern books (their text seen); the line is the closed form that the program uses too.
  it("is as long as the outside line on the tube: the pattern books' rule of the girth round the hole", () => {
    for (const ask of JOINTS) {
      const cope = copeOf(ask);
      const length = footprintLength(cope, 0, 0);
      expect(Math.abs(length - lengthOnTube(ask)), JSON.stringify(ask)).toBeLessThan(1e-6);
    }
  });

  // Derived by a second, independent program; printed to 1e-5 mm.
  it.each([
    [{ R: 30, r: 20, theta: 90, e: 0 }, 130.12891],
    [{ R: 30, r: 20, theta: 60, e: 0 }, 140.33302],
    [{ R: 30, r: 20, theta: 60, e: 8 }, 147.90843],
    [{ R: 25.4, r: 19.05, theta: 45, e: 0 }, 152.36078],
  ])('%j is %f mm long', (ask, length) => {
    const cope = copeOf(ask);
    expect(Math.abs(footprintLength(cope, 0, 0) - length)).toBeLessThan(0.5e-5);
  });

  it('is open where the tube passes beside the header, in as many runs as it touches', () => {
    const wide = copeOf({ r: 30, R: 20, theta: 70, e: 4 });
    const twoSided = footprintOf(wide, 0, 0);
    expect(twoSided.closed).toBe(false);
    expect(twoSided.runs.length).toBe(2);
    const beside = { r: 20, R: 30, theta: 70, e: 15 };
    const oneSided = copeOf(beside);
    const outline = footprintOf(oneSided, 0, 0);
    expect(outline.closed).toBe(false);
    // It runs out at the header's side, a quarter of a turn from the body.
    const rounds = outline.runs.flat().flatMap((piece) => [piece[0].round, piece[3].round]);
    expect(Math.min(...rounds) / beside.R).toBeCloseTo(-Math.PI / 2, 4);
  });
});

// A rectangle 3 mm inside one of 40 x 20: 2 (34 + 14). No bend of less than 3 mm outside leaves any radius within.
it.each([0, 1, 2.5, 3])('inside corners of %d mm a wall of 3 mm has sharp ones', (corner) => {
  const tube = { kind: 'rectangular', wide: 40, deep: 20, corner } as const;
  const plate = { header: { kind: 'plate' }, angle: Math.PI / 2, clock: 0, offset: 0, shift: 0 } as const;
  const cope = copeUnderTest({ tube, wall: 3, parts: [plate] });
  expect(footprintLength(cope, 3, 0)).toBeCloseTo(96, 6);
  expect(footprintOf(cope, 3, 0).closed).toBe(true);
});

// One face of the tube lies along the side of the header: over a billionth of a mm it but touches.
it('a footprint that ends beside its header is drawn in few pieces', () => {
  const tube = { kind: 'rectangular', wide: 16.98, deep: 11.2068, corner: 0 } as const;
  const header = { kind: 'round', radius: 12.2256 } as const;
  const angle = (140.15 * Math.PI) / 180;
  const cope = copeUnderTest({
    tube,
    wall: 0.784476,
    parts: [{ header, angle, clock: 0, offset: -4.5846, shift: 4.0752 }],
  });
  const pieces = footprintOf(cope, 0, 0).runs.flat();
  expect(pieces.length).toBeLessThan(60);
  for (const point of pieces.flat()) expect(Number.isFinite(point.round + point.along)).toBe(true);
});

// The tube leans so far along the bend that its wall comes down on the bend's far side too.
describe('a footprint goes straight on over the far side of a bend', () => {
  const wide = { kind: 'rectangular', wide: 11.14, deep: 16.0416, corner: 1.114 } as const;
  const deep = { kind: 'rectangular', wide: 14.79, deep: 19.01, corner: 1 } as const;
  const thin = { kind: 'round', radius: 6.63 } as const;
  const cases = [
    { tube: wide, radius: 7.0739, bendRadius: 122.52, centre: 3.56902, angle: 153.65, offset: 3.5648 },
    // Two whose outline would begin at the body and lie further than half a turn from there.
    { tube: deep, radius: 6.809, bendRadius: 92.99, centre: -2.816, angle: 146.23, offset: 2.18 },
    { tube: thin, radius: 9.595, bendRadius: 84.85, centre: -0.0446, angle: 150.58, offset: -1.672 },
  ].map(({ tube, angle, offset, ...bend }) => {
    const header = { kind: 'bend', ...bend } as const;
    const part = { header, angle: (angle * Math.PI) / 180, clock: 0, offset, shift: 0 };
    return { half: Math.PI * bend.radius, cope: copeUnderTest({ tube, wall: 0.557, parts: [part] }) };
  });

  it.each(cases)(
    'one piece on from the other, none of them short, its middle within once round',
    ({ half, cope }) => {
      let [beyond, crossing] = [0, 0];
      for (const run of footprintOf(cope, 0, 0).runs) {
        const rounds: number[] = [];
        run.forEach(([from, , , to], i) => {
          rounds.push(from.round, to.round);
          expect(Math.abs(to.round - from.round)).toBeLessThan(half);
          const before = run[i - 1]?.[3] ?? from;
          expect(Math.abs(from.round - before.round)).toBeLessThan(half);
          // Over the line where the header is cut open the outline is as smooth as beside it, and so are its pieces as long.
          const [turnFrom, turnTo] = [from, to].map(({ round }) => Math.floor((round / half + 1) / 2));
          if (turnFrom === turnTo) return;
          crossing++;
          expect(Math.hypot(to.round - from.round, to.along - from.along)).toBeGreaterThan(0.1);
        });
        expect(Math.abs(Math.min(...rounds) + Math.max(...rounds)) / 2).toBeLessThanOrEqual(half);
        beyond = Math.max(beyond, ...rounds.map(Math.abs));
      }
      expect(beyond).toBeGreaterThan(half);
      expect(crossing).toBeGreaterThan(0);
    },
  );

  // The step by which a direction is taken is 1e-4 mm: looked at from nearer than that, the jump lies between.
  it.each(cases)('with one direction to both sides of the line where it is cut open', ({ half, cope }) => {
    let crossings = 0;
    for (const stretch of stretchesOf(cope.joint, 0)) {
      const way = developedWay(cope.joint, cope.joint.landings[0], 0, stretch);
      const leaps = (from: number, to: number) => Math.abs(way(to).at.round - way(from).at.round) > half;
      for (let i = 1; i < 40; i++) {
        let [low, high] = [i / 41, (i + 1) / 41];
        if (!leaps(low, high)) continue;
        while (high - low > 1e-9) {
          const middle = (low + high) / 2;
          if (leaps(low, middle)) high = middle;
          else low = middle;
        }
        crossings++;
        const [before, after] = [way(low - 1e-3), way(high + 1e-3)];
        for (const at of [way(low), way(high)]) {
          expect(at.round).toBeCloseTo((before.round + after.round) / 2, 3);
          expect(at.along).toBeCloseTo((before.along + after.along) / 2, 3);
        }
      }
    }
    expect(crossings).toBeGreaterThan(0);
  });
});

// As wide as its header: one face of the tube lies along the bend's side, where the normal stands square to the tube but for rounding.
it('a footprint whose tube lies along the side of a bend is measured at once', () => {
  const header = {
    kind: 'bend',
    radius: 7.45,
    bendRadius: 88.506,
    centre: (116.39 * Math.PI) / 180,
  } as const;
  const tube = { kind: 'rectangular', wide: 14.9, deep: 11.175, corner: 3.24 } as const;
  const angle = (128.61 * Math.PI) / 180;
  const cope = copeUnderTest({
    tube,
    wall: 0.782,
    parts: [{ header, angle, clock: 0, offset: 0, shift: 1.043 }],
  });
  const pieces = footprintOf(cope, 0, 0).runs.flat();
  expect(pieces.length).toBeLessThan(200);
  const chords = pieces.reduce(
    (sum, [from, , , to]) => sum + Math.hypot(to.round - from.round, to.along - from.along),
    0,
  );
  const length = footprintLength(cope, 0, 0);
  expect(length).toBeGreaterThan(chords);
  expect(length).toBeLessThan(chords * 1.05);
});

it('a footprint that goes over to another header on either side is one run, though its line begins within it', () => {
  const header = { kind: 'round', radius: 30 } as const;
  const lie = { header, angle: 1, offset: 0, shift: 0 };
  const cope = copeUnderTest({
    tube: { kind: 'round', radius: 20 },
    wall: 2,
    parts: [
      { ...lie, clock: 0.3 },
      { ...lie, clock: 0.3 + Math.PI },
    ],
  });
  const { closed, runs } = footprintOf(cope, 0, 0);
  expect(closed).toBe(false);
  expect(runs).toHaveLength(1);
});

it('each stretch of a footprint begins and ends in the direction of its own face', () => {
  const header = { kind: 'box', wide: 30, deep: 24, corner: 0, roll: 0.4 } as const;
  const tube = { kind: 'round', radius: 11 } as const;
  const part = { header, angle: 1.05, clock: 0.3, offset: 3, shift: 0 };
  const cope = copeUnderTest({ tube, wall: 1.5, parts: [part] });
  const stretches = stretchesOf(cope.joint, 0);
  expect(stretches.length).toBeGreaterThan(3);
  for (const stretch of stretches) {
    const way = developedWay(cope.joint, cope.joint.landings[0], 0, stretch);
    // From a hundredth of the way in, where the curve has hardly turned.
    for (const [at, inner] of [
      [0, 0.01],
      [1, 0.99],
    ] as const) {
      const [end, near] = [way(at), way(inner)];
      const ahead = at === 0 ? 1 : -1;
      const [round, along] = [near.at.round - end.at.round, near.at.along - end.at.along];
      const length = Math.hypot(round, along) * ahead;
      expect((round / length) * end.round + (along / length) * end.along).toBeGreaterThan(0.999);
    }
  }
});
