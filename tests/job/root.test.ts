import { expect, test } from 'vitest';
import { reportsAsData } from '../../src/fit/as-data.ts';
import { inOrder } from '../../src/saddle/ordinates.ts';
import { solveHands } from '../../src/saddle/solve.ts';
import { ticketsOf } from '../../src/shop/ticket/ticket.ts';
import { reportJob } from '../../src/together/report-job.ts';
import { complaintsAbout, readSample } from './sample.ts';

function jobWith(onto: string, root: string, angle = 60): string {
  return `copeleaf: 1
tube:
  od: 40mm
  wall: 4mm
  ends: { A: { onto: ${onto}, angle: ${angle}deg${root} } }
`;
}

// Inside a bend of 60 round 32 there are 2 mm from its wall to its centre.
test('a bend too tight for the root gap is refused where the gap is asked for', () => {
  const bend = '{ bend: { od: 60mm, radius: 32mm, centre: 180deg } }';
  const [complaint] = complaintsAbout(jobWith(bend, ', root: 2mm', 90));
  expect(complaint).toMatchObject({
    code: 'root',
    line: 5,
    read: 'root: 2mm',
    instead: 'a root gap under 2 mm',
  });
  expect(complaintsAbout(jobWith(bend, ', root: 1.9mm', 90))).toEqual([]);
  expect(complaintsAbout(jobWith(bend, '', 90))).toEqual([]);
  const ofTube = jobWith(bend, '', 90).replace('  wall: 4mm\n', '  wall: 4mm\n  root: 3mm\n');
  expect(complaintsAbout(ofTube)).toMatchObject([{ code: 'root' }]);
});

// The line of a header of 44.5 with a gap of 2 is the line of one of 48.5; on the heel at 60 degrees that is
// (R + root + r cos 60) / sin 60.
test('check, ordinates and ticket follow the root gap', () => {
  const rooted = readSample(jobWith('{ od: 44.5mm }', ', root: 2mm'));
  const [table] = inOrder(solveHands(rooted), { perTurn: 4, apart: 10 });
  const heel = (22.25 + 2 + 20 * 0.5) / Math.sin(Math.PI / 3);
  expect(table?.rows[0]?.cut).toBeCloseTo(heel, 9);
  expect(table?.rows[0]?.outside).toBeCloseTo(heel, 9);
  expect(reportsAsData(reportJob(rooted))).toMatchObject({
    tubes: [{ ends: { A: { throat: { phi: 0, setback: expect.closeTo(heel, 9) }, gap: { mm: 0 } } } }],
  });
  const words = JSON.stringify(ticketsOf(solveHands(rooted), new Map(), false, rooted.words));
  expect(words).toContain('root gap');
  expect(words).not.toMatch(/rod won't enter|no gap/);
});

// A land is as wide as the true corner asks, so that with one this holds only nearly.
test.each(['', ', edge: square', ', edge: square, from: inside'])(
  'what an error opens with a root gap%s is what it opens on a header so much larger',
  (edge) => {
    const reportOf = (od: number, root: string) => {
      const [tube] = reportJob(readSample(jobWith(`{ od: ${od}mm }`, root + edge)));
      const end = tube?.ends.A;
      if (!end || end === 'plain') throw new Error('the end was asked to be coped');
      return end;
    };
    const [rooted, larger] = [reportOf(52, ', root: 2mm'), reportOf(56, '')];
    for (const step of ['offset', 'angle', 'clock', 'scale'] as const) {
      expect(rooted.sensitivity[step], step).toBeCloseTo(larger.sensitivity[step], 6);
    }
  },
);
