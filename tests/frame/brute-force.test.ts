import fc from 'fast-check';
import { expect, test } from 'vitest';
import { solveHands } from '../../src/saddle/solve.ts';
import { howMany } from '../count.ts';
import { drawnFrames, spineBy } from './random-frames.ts';
import { along, crossOf, dotOf, minus, type Place, standsAt, unitAlong, wallMet } from './ray-march.ts';
import { rayTubes } from './ray-tubes.ts';
import { readText } from './read-lines.ts';

const FRAMES = howMany({ short: 1, deep: 30, asked: 'FRAMES' });

/** Round each line. */
const LOOKS = howMany({ short: 3, deep: 6 });

/** Apart along a ray. */
const FINE = 0.5;
/** What is within a thousandth of a degree from square is cut square: at these tubes' reach that is as much. */
const NEAR = 2e-4;

/** Beside an edge, where a ray only grazes what it meets, its last bits decide how far it runs. */
const BESIDE = 5e-3;

test('every end of random frames agrees with rays walked through solids that know points and sizes alone', () => {
  let [looked, compared, exact, between, worst] = [0, 0, 0, 0, 0];
  fc.assert(
    fc.property(fc.noBias(drawnFrames), fc.nat(1000), (frame, seed) => {
      const job = readText(frame.text);
      const scene = { tubes: rayTubes(frame, job), fine: FINE };
      for (const [place, { ends, section }] of solveHands(job).entries()) {
        const tube = frame.tubes[place];
        if (!tube) continue;
        const axis = unitAlong(minus(tube.to, tube.from));
        const spine = spineBy(tube.from, tube.to);
        const past = crossOf(axis, spine);
        for (const name of ['A', 'B'] as const) {
          const cope = ends[name];
          if (cope?.kind !== 'coped') continue;
          const point = name === 'A' ? tube.from : tube.to;
          const body: Place = name === 'A' ? axis : [-axis[0], -axis[1], -axis[2]];
          const workPoint = along(tube.from, job.frame?.seats[place]?.ends[name].workPoint ?? 0, axis);
          const shift = dotOf(minus(workPoint, point), body);
          for (const line of [cope.outside, cope.inside]) {
            for (let look = 0; look < LOOKS; look++) {
              const station = (((look + (seed % 97) / 97) % LOOKS) * section.turn) / LOOKS;
              const { x, y, nx, ny } = section.at(station);
              const depth = line === cope.outside ? 0 : tube.wall;
              const radial = along(along([0, 0, 0], x - depth * nx, spine), y - depth * ny, past);
              const met = line?.(station);
              const ray = wallMet(scene, place, name, radial);
              if (!met?.contact || ray === undefined) continue;
              looked++;
              const beside = [-1, 1].map((side) => line?.(station + side * BESIDE * section.turn).region);
              if (beside.some((region) => region !== met.region)) continue;
              compared++;
              const told = met.setback + shift;
              const off = Math.abs(told - ray);
              const said = `${tube.name} ${name} at ${station}\n${frame.text}`;
              if (off < NEAR) {
                worst = Math.max(worst, off);
                if (off < 5e-6) exact++;
                continue;
              }
              // A ray passes over what is thinner than its looks are apart, and is met later: what is told then has to stand.
              between++;
              expect(told, said).toBeGreaterThan(ray);
              expect(standsAt(scene, place, name, radial, told - NEAR), said).toBe(true);
            }
          }
        }
      }
    }),
    {
      numRuns: FRAMES,
      seed: Number(process.env.FRAME_SEED ?? 4711),
      endOnFailure: true,
    },
  );
  console.info(
    `${FRAMES} frames: ${compared} of ${looked} rays compared, ${between} met between two looks, ${worst} mm at worst`,
  );
  expect(exact / compared).toBeGreaterThan(0.99);
  expect(compared / looked).toBeGreaterThan(0.85);
  expect(looked).toBeGreaterThan(8 * LOOKS * FRAMES);
}, 1_800_000);
