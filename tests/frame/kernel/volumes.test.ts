import fc from 'fast-check';
import { beforeAll, expect, test } from 'vitest';
import type { Job } from '../../../src/job/job.ts';
import { wallLine } from '../../../src/saddle/lines.ts';
import { solveTube, type TubeSolution } from '../../../src/saddle/solve.ts';
import { DEEP, howMany } from '../../count.ts';
import { fileOfStrung, strungFrames } from '../rails-and-stays.ts';
import { along, crossOf, type Place } from '../ray-march.ts';
import { readLines, readText } from '../read-lines.ts';
import { type Kernel, loadKernel } from './bars.ts';
import { type CutFrame, cutFrame } from './cut-frame.ts';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel();
});

const FLATS = 96;
const LAYERS = 6;

/** The surface of a round tube between our lines, at the corners of its flats; undefined where an end passes beside what it lands on. */
function ourTube(job: Job, place: number, { ends, section, tube }: TubeSolution, mesh: CutFrame) {
  const seat = job.frame?.seats[place];
  const wall = tube.wall?.mm;
  if (!seat || wall === undefined || tube.section.kind !== 'round') return undefined;
  const beside = crossOf(seat.axis, seat.spine);
  let isWhole = true;
  const ring = (end: 'A' | 'B', depth: number): Place[] => {
    const cope = ends[end];
    const line = cope?.kind === 'coped' ? wallLine(cope.joint, depth) : undefined;
    return Array.from({ length: FLATS }, (_, i) => {
      const station = (2 * Math.PI * i) / FLATS;
      const { x, y, nx, ny } = section.at(station);
      const met = line?.(station);
      if (met && !met.contact) isWhole = false;
      const setback = met?.setback ?? 0;
      const at = seat.ends[end].workPoint + (end === 'A' ? setback : -setback);
      return along(
        along(along(seat.from, at, seat.axis), x - depth * nx, seat.spine),
        y - depth * ny,
        beside,
      );
    });
  };
  const depths = Array.from({ length: LAYERS + 1 }, (_, k) => (wall * k) / LAYERS);
  // Round the section of the wall: in along end A, and out again along end B.
  const rings = [
    ...depths.map((depth) => ring('A', depth)),
    ...[...depths].reverse().map((depth) => ring('B', depth)),
  ];
  if (!isWhole) return undefined;
  const triangles = rings.flatMap((_, k) =>
    Array.from({ length: FLATS }, (_, i) => {
      const at = (layer: number, flat: number): number => (layer % rings.length) * FLATS + (flat % FLATS);
      const [a, b, c, d] = [at(k, i), at(k, i + 1), at(k + 1, i + 1), at(k + 1, i)];
      return [[a, c, b] as const, [a, d, c] as const];
    }).flat(),
  );
  return mesh.solidOf(rings.flat(), triangles);
}

/** The most that the kernel's inscribed flats, and ours between two corners, lie within what is round. */
const BIAS = 30 * (1 - Math.cos(Math.PI / 256)) + 16 * (1 - Math.cos(Math.PI / FLATS));

interface Compared {
  readonly gap: number;
  readonly overlap: number;
}

/** What the kernel leaves and we cut away, and the other way round, in mm along the tube over the wall's two ends. */
function compared(job: Job, place: number, mesh: CutFrame): Compared | undefined {
  const tube = job.tubes[place];
  if (!tube?.wall || tube.section.kind !== 'round') return undefined;
  const ours = ourTube(job, place, solveTube(tube), mesh);
  if (!ours) return undefined;
  const theirs = mesh.cutTube(place, FLATS);
  const area = Math.PI * (tube.section.od.mm - tube.wall.mm) * tube.wall.mm;
  return {
    gap: theirs.subtract(ours).volume() / area,
    overlap: ours.subtract(theirs).volume() / area,
  };
}

const FRAMES = howMany({ short: 1, deep: 10, asked: 'FRAMES' });
const STAYS = 40;

// A short run has edges.test.ts, which takes a sixth of the time.
test.runIf(DEEP)(
  'stays between rails are what the mesh kernel leaves of them',
  () => {
    const found: Compared[] = [];
    fc.assert(
      fc.property(fc.noBias(strungFrames), (tubes) => {
        const job = readText(fileOfStrung(tubes));
        const mesh = cutFrame(kernel, job);
        const stays = tubes.flatMap(({ onto, od }, place) => (onto && od ? [place] : [])).slice(0, STAYS);
        for (const place of stays) {
          const each = compared(job, place, mesh);
          if (!each) continue;
          expect(each.overlap, tubes[place]?.name).toBeLessThan(BIAS);
          expect(each.gap, tubes[place]?.name).toBeLessThan(0.01);
          found.push(each);
        }
      }),
      { numRuns: FRAMES, seed: 5, endOnFailure: true },
    );
    const [gap, overlap] = (['gap', 'overlap'] as const).map((key) =>
      Math.max(...found.map((each) => each[key])),
    );
    console.info(`${found.length} stays: gap ${gap?.toFixed(5)} mm, overlap ${overlap?.toFixed(5)} mm`);
    expect(found.length).toBeGreaterThanOrEqual(FRAMES);
  },
  1_800_000,
);

test.runIf(DEEP)(
  'two halves that end at the middle of a brace lie outside it, as the kernel cuts them',
  () => {
    const [size, x] = ['od: 26.9, wall: 2.6', '{ middle: [a, c] }'];
    const job = readLines(
      { a: '[0, 0, 0]', b: '[0, 0, 1100]', c: '[1400, 300, 1100]', d: '[1400, 300, 0]', x },
      [
        'name: brace, along: [a, c], od: 42.4, wall: 2.6',
        ...['d', 'b'].map((to) => `name: half ${to}, along: [x, ${to}], ${size}`),
      ],
    );
    const mesh = cutFrame(kernel, job);
    const each = compared(job, 1, mesh);
    expect(each?.overlap).toBeLessThan(BIAS);
    expect(each?.gap).toBeLessThan(0.01);
    const [, half] = job.tubes;
    const ours = half && ourTube(job, 1, solveTube(half), mesh);
    // Cut square at the point, 600 mm3 of it would lie in the brace's wall.
    expect(ours?.intersect(mesh.cutTube(0, FLATS)).volume()).toBeLessThan(1);
  },
);
