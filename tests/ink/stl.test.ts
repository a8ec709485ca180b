import fc from 'fast-check';
import loadModule, { type Manifold, type ManifoldToplevel } from 'manifold-3d';
import { beforeAll, describe, expect, it } from 'vitest';
import { readFrame } from '../../src/frame/read-frame.ts';
import { inkStl } from '../../src/ink/stl.ts';
import type { Job } from '../../src/job/job.ts';
import { solvePieces } from '../../src/together/pieces.ts';
import { solidsOf } from '../../src/together/solids.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { copeleafBytes, folderWith } from '../cli/run-command.ts';
import { howMany } from '../count.ts';
import { drawnFrames } from '../frame/random-frames.ts';
import { A4 } from '../job/sample.ts';
import { volumeUnder } from '../outside/volume-under.ts';

let kernel: ManifoldToplevel;
beforeAll(async () => {
  kernel = await loadModule();
  kernel.setup();
});

const jobOf = (text: string): Job => readFrame(text, 'job.yaml', { words: ENGLISH, paper: A4 });
const solidsIn = (text: string): Uint8Array<ArrayBuffer>[] => {
  const job = jobOf(text);
  return [...solidsOf(job, solvePieces(job))].map((surface) => inkStl([surface]));
};

/** A binary STL as its format says, corners at one place being one, as a closed body of the mesh kernel, which refuses all others. */
function bodyIn(stl: Uint8Array<ArrayBuffer>): Manifold {
  const view = new DataView(stl.buffer);
  const count = view.getUint32(80, true);
  expect(stl.length).toBe(84 + 50 * count);
  const places = new Map<string, number>();
  const vertices: number[] = [];
  const corners = Array.from({ length: 3 * count }, (_, corner) => {
    const at = 84 + 50 * Math.floor(corner / 3) + 12 + 12 * (corner % 3);
    const place = [0, 4, 8].map((axis) => view.getFloat32(at + axis, true));
    const known = places.get(place.join());
    if (known !== undefined) return known;
    places.set(place.join(), places.size);
    vertices.push(...place);
    return places.size - 1;
  });
  const edges = new Map<string, number>();
  corners.forEach((from, i) => {
    const to = corners[i % 3 === 2 ? i - 2 : i + 1] ?? 0;
    const key = from < to ? `${from} ${to}` : `${to} ${from}`;
    edges.set(key, (edges.get(key) ?? 0) + (from < to ? 1 : -1));
  });
  expect([...edges].filter(([, sum]) => sum !== 0)).toEqual([]);
  const body = new kernel.Manifold(
    new kernel.Mesh({
      numProp: 3,
      vertProperties: new Float32Array(vertices),
      triVerts: new Uint32Array(corners),
    }),
  );
  expect(body.status()).toBe('NoError');
  return body;
}

/** Equal chords of a circle hold less than it does by this share: 1 - sin(2 pi / n) / (2 pi / n). */
const CHORDS = 1 - Math.sin((2 * Math.PI) / 144) / ((2 * Math.PI) / 144);

const ends = (a: string, b: string): string => `ends: { A: ${a}, B: ${b} }`;
const tube = (more: string): string => `copeleaf: 1\ntube: { name: t, ${more} }\n`;

describe('a tube as STL', () => {
  it.each([
    [
      'plain',
      tube(`od: 40, wall: 3, between: 200, ${ends('plain', '{ onto: { plate: {} }, angle: 90 }')}`),
      1,
    ],
    [
      'bevelled',
      tube(
        `od: 38.1, wall: 2.4, between: 300, ${ends('{ onto: { od: 44.5 }, angle: 60, clock: 25 }', '{ onto: { od: 50 }, angle: 80, offset: 4 }')}`,
      ),
      1,
    ],
    [
      'square',
      tube(
        `od: 38.1, wall: 2.4, edge: square, between: 300, ${ends('{ onto: { od: 38.1 }, angle: 60 }', 'plain')}`,
      ),
      1,
    ],
    [
      'with a land',
      tube(
        `od: 38.1, wall: 2.4, land: 1, between: 300, ${ends('{ onto: { od: 38.1 }, angle: 60 }', 'plain')}`,
      ),
      1,
    ],
    [
      'beside its header',
      tube(
        `od: 38.1, wall: 2.4, between: 300, ${ends('{ onto: { od: 38.1 }, angle: 70, offset: 12 }', 'plain')}`,
      ),
      1,
    ],
    ['a bar', tube(`od: 20, wall: 10, between: 300, ${ends('{ onto: { od: 30 }, angle: 70 }', 'plain')}`), 0],
    [
      'with no wall given',
      tube(`od: 20, between: 300, ${ends('{ onto: { od: 30 }, angle: 70 }', 'plain')}`),
      0,
    ],
    [
      'rectangular',
      tube(
        `section: { wide: 40, deep: 25 }, wall: 2, between: 300, ${ends('{ onto: { od: 60 }, angle: 65, clock: 30 }', 'plain')}`,
      ),
      1,
    ],
    [
      'with sharp corners',
      tube(
        `section: { wide: 40, deep: 25, corner: 0 }, wall: 2, between: 300, ${ends('{ onto: { od: 60 }, angle: 65 }', 'plain')}`,
      ),
      1,
    ],
    [
      'onto two headers',
      tube(
        `od: 30, wall: 2, between: 300, ${ends('[{ onto: { od: 40 }, angle: 50 }, { onto: { od: 40 }, angle: 70, clock: 120 }]', 'plain')}`,
      ),
      1,
    ],
    [
      'onto a box',
      tube(
        `od: 30, wall: 2, between: 300, ${ends('{ onto: { box: { wide: 30, deep: 40, wall: 3 } }, angle: 60 }', 'plain')}`,
      ),
      1,
    ],
  ])('%s is closed, turned outwards, and goes through or not', (_, text, genus) => {
    const [stl] = solidsIn(text);
    if (!stl) throw new Error('no solid');
    const body = bodyIn(stl);
    expect(body.genus()).toBe(genus);
    expect(body.volume()).toBeGreaterThan(0);
  });

  it('cut square off holds its wall times its length, less what chords hold less', () => {
    const [stl] = solidsIn(
      tube(`od: 40, wall: 3, between: 200, ${ends('plain', 'plain')}`).replace(
        'B: plain',
        'B: { onto: { plate: {} }, angle: 90 }',
      ),
    );
    if (!stl) throw new Error('no solid');
    const exact = Math.PI * (20 ** 2 - 17 ** 2) * 200;
    const short = 1 - bodyIn(stl).volume() / exact;
    // A few stations stand between the equal ones, and make it hold a hair more.
    expect(short).toBeLessThan(CHORDS * (1 + 1e-6));
    expect(short).toBeGreaterThan(CHORDS * 0.98);
  });

  it.each([
    [38.1, 2.4, 44.5, 60, 0],
    [38.1, 2.4, 60.3, 45, 5],
    [25, 6, 60, 75, 12],
  ])('of %s x %s onto %s at %s, offset %s: what our lines leave of it', (od, wall, header, angle, offset) => {
    const length = 300;
    const [stl] = solidsIn(
      tube(
        `od: ${od}, wall: ${wall}, between: ${length}, ${ends(`{ onto: { od: ${header} }, angle: ${angle}, offset: ${offset} }`, 'plain')}`,
      ),
    );
    if (!stl) throw new Error('no solid');
    const ask = { tube: od / 2, wall, header: header / 2, angle: (angle * Math.PI) / 180, offset, clock: 0 };
    const bore = { ...ask, tube: od / 2 - wall };
    const exact =
      Math.PI * (ask.tube ** 2 - bore.tube ** 2) * length - (volumeUnder(ask) - volumeUnder(bore));
    const short = 1 - bodyIn(stl).volume() / exact;
    // A face in two steps through the wall, and lines in chords along it, err by as little as the chords round it.
    expect(Math.abs(short - CHORDS)).toBeLessThan(CHORDS / 2);
  });
});

const FRAMES = howMany({ short: 0, deep: 2 });
const SEED = 17;

const FRAME = `copeleaf: 1
frame:
  points: { a: [0, 0, 0], b: [900, 0, 0], c: [900, 700, 100], top: [300, 250, 600], mid: { on: sill, at: 300 } }
  tubes:
    - { name: sill, along: [a, b], od: 40, wall: 2 }
    - { name: side, along: [b, c], od: 40, wall: 2 }
    - { name: post, along: [mid, top], od: 30, wall: 2 }
    - { name: lace, along: [c, top], od: 25, wall: 2 }
`;

describe('a frame as STL', () => {
  it('stands where its points are, and no two of its tubes lie in one another', () => {
    const bodies = solidsIn(FRAME).map(bodyIn);
    expect(bodies).toHaveLength(4);
    const { min, max } = kernel.Manifold.union(bodies).boundingBox();
    expect(min[0]).toBeCloseTo(0, 0);
    expect(max[2]).toBeGreaterThan(590);
    for (const [i, one] of bodies.entries())
      for (const other of bodies.slice(i + 1)) {
        // Walls alone: chords lie inside the true outsides by 40/2 (1 - cos(pi / 144)) = 0.005 mm at most.
        expect(kernel.Manifold.intersection(one, other).volume()).toBeLessThan(1);
      }
  });

  it.runIf(FRAMES > 0)(
    `${FRAMES} random ones: every tube is closed, and goes through where it has a wall`,
    () => {
      fc.assert(
        fc.property(fc.noBias(drawnFrames), ({ text }) => {
          const { tubes } = jobOf(text);
          const bodies = solidsIn(text).map(bodyIn);
          expect(bodies.map((body) => body.genus())).toEqual(tubes.map(({ wall }) => (wall ? 1 : 0)));
          expect(Math.min(...bodies.map((body) => body.volume()))).toBeGreaterThan(0);
        }),
        { numRuns: FRAMES, seed: SEED },
      );
    },
  );

  it('is written by the command, whole or of the tubes that are named', async () => {
    const folder = folderWith({ 'frame.yaml': FRAME });
    const whole = await copeleafBytes(folder, ['print', 'frame.yaml', '--as', 'stl', '--out', '-']);
    expect({ code: whole.code, err: whole.err }).toEqual({ code: 0, err: '' });
    expect(Buffer.compare(whole.bytes, inkStl(solidsOf(jobOf(FRAME), solvePieces(jobOf(FRAME)))))).toBe(0);
    const one = await copeleafBytes(folder, ['print', 'frame.yaml', '--as', 'stl', '--only', 'post']);
    expect(one.err).toBe('frame.stl: 1 tube as solids, in mm\n');
    const since = await copeleafBytes(folder, ['print', 'frame.yaml', '--as', 'stl', '--since', 'old.pdf']);
    expect(since.code).toBe(2);
    expect(since.err).toContain('solids have no leaves');
  });
});
