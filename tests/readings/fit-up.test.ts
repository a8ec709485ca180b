import { describe, expect, test } from 'vitest';
import { reportsAsData } from '../../src/fit/as-data.ts';
import type { Cope } from '../../src/saddle/cope.ts';
import { solveHands, type TubeSolution } from '../../src/saddle/solve.ts';
import { reportJob } from '../../src/together/report-job.ts';
import { readSample } from '../job/sample.ts';
import { between, type Random, randomFrom, SEED } from '../outside/random-joints.ts';
import { type Frame, heelOf, rayTo } from './tape.ts';

const FRAMES = 60;

interface RoundFrame extends Frame {
  readonly tube: { readonly od: number };
}

/** Numbers of six decimals, so that the job file holds them exactly. */
function short(value: number): number {
  return Number(value.toFixed(6));
}

function randomFrame(random: Random): RoundFrame {
  const od = short(between(random, 15, 60));
  const part = () => ({
    onto: { kind: 'round' as const, od: short(od * between(random, 1.5, 3)) },
    angle: short(between(random, 30, 150)),
    clock: short(between(random, -175, 175)),
    offset: short(between(random, -0.2, 0.2) * od),
    shift: 0,
  });
  return { tube: { od }, between: short(between(random, 700, 1500)), A: part(), B: part() };
}

/** The job of a person who knows neither the rotation nor the length of end B. */
function jobOf({ tube, A, B }: RoundFrame): string {
  const onto = (part: Frame['B']) => (part.onto.kind === 'round' ? `{ od: ${part.onto.od} }` : '');
  return `copeleaf: 1
tube:
  od: ${tube.od}
  wall: 1.5
  between: mark
  ends:
    A: { onto: ${onto(A)}, angle: ${A.angle}, clock: ${A.clock}, offset: ${A.offset} }
    B: { onto: ${onto(B)}, angle: ${B.angle}, clock: mark, offset: ${B.offset} }
`;
}

function solved(job: string): TubeSolution {
  const [solution] = solveHands(readSample(job));
  if (!solution) throw new Error('a job has a tube');
  return solution;
}

function copeOf(frame: RoundFrame): Cope {
  const { B } = solved(jobOf(frame)).ends;
  if (B?.kind !== 'coped') throw new Error('end B is coped');
  return B;
}

describe(`an end laid on the marks made at the frame (JOINT_SEED=${SEED})`, () => {
  test('is cut where the tube meets the solid, all round', () => {
    const random = randomFrom(SEED + 6);
    for (let n = 0; n < FRAMES; n++) {
      const frame = randomFrame(random);
      const cope = copeOf(frame);
      const { markStation, lengthSetback } = cope.fitUp ?? { markStation: Number.NaN };
      const radius = frame.tube.od / 2;
      // The marks: on the tube's outside, on the line of the header's centre nearest the heel, where the header is met.
      const rotation = heelOf(frame, 'B');
      const length = rayTo(frame, 'B', radius * Math.cos(rotation), radius * Math.sin(rotation));
      for (let i = 0; i < 36; i++) {
        const station = (i * Math.PI) / 18;
        const onTube = rotation + station - markStation;
        const met = rayTo(frame, 'B', radius * Math.cos(onTube), radius * Math.sin(onTube));
        const laid = (length ?? Number.NaN) + (lengthSetback ?? Number.NaN) - cope.outside(station).setback;
        expect(Math.abs(laid - (met ?? Number.NaN)), jobOf(frame)).toBeLessThan(1e-6);
      }
    }
  });

  test('has the mark at station 0, on the heel, whether the angle is acute or obtuse', () => {
    const random = randomFrom(SEED + 7);
    for (let n = 0; n < FRAMES; n++) {
      const { fitUp, heel } = copeOf(randomFrame(random));
      expect(fitUp).toMatchObject({ clock: true, between: true });
      expect([fitUp?.markStation, heel]).toEqual([0, 0]);
    }
  });
});

const STAY = `copeleaf: 1
tube:
  od: 31.75
  wall: 2.4
  between: LENGTH
  pair: true
  ends:
    A: { onto: { od: 38.1 }, angle: 62deg, clock: 20deg }
    B: { onto: { od: 38.1 }, angle: 48deg, clock: CLOCK, offset: 3 }
`;

describe('what is only marked is left out of the data, and named', () => {
  test.each([
    ['mark', 'mark', ['clock', 'between'], ['clock', 'between', 'overall', 'blank', 'twist']],
    ['600', 'mark', ['clock'], ['clock', 'twist']],
    ['mark', '35deg', ['between'], ['between', 'overall', 'blank']],
    ['600', '35deg', undefined, []],
  ])('between: %s, clock: %s', (length, clock, fitUp, lacks) => {
    const job = readSample(STAY.replace('LENGTH', length).replace('CLOCK', clock));
    const data = JSON.parse(JSON.stringify(reportsAsData(reportJob(job))));
    for (const tube of data.tubes) {
      const { A, B } = tube.ends;
      expect(B.fitUp).toEqual(fitUp);
      expect(A).not.toHaveProperty('fitUp');
      expect(A).toHaveProperty('clock');
      const lacking = ['clock', 'between', 'overall', 'blank', 'twist'].filter(
        (key) => !(key in (key === 'clock' ? B : tube)),
      );
      expect(lacking).toEqual(lacks);
    }
  });
});

// At 90 degrees, R the header's radius and r = 20 the tube's: the throat is R, the long point sqrt(R^2 - r^2). Turned so that B's
// throat comes to lie on A's long point, R = 30 and 25 take sqrt(500) + 25 off one line; the other way it is 30 + 15.
test('the shortest line left on a tube whose end B can still be turned is that of the worst turn', () => {
  const end = (header: number) => `onto: { od: ${2 * header} }, angle: 90`;
  const [solution] = solveHands(
    readSample(`copeleaf: 1
tube:
  od: 40
  wall: 2
  between: 400
  ends:
    A: { ${end(30)} }
    B: { ${end(25)}, clock: mark }
`),
  );
  expect(solution?.lengths?.shortest).toBeCloseTo(400 - (Math.sqrt(500) + 25), 9);
});
