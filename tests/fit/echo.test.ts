import { expect, test } from 'vitest';
import { checkReport } from '../../src/fit/check-report.ts';
import { reportJob } from '../../src/together/report-job.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { readSample } from '../job/sample.ts';

// What each comes to: pi goes into 100 mm 31.83 times; 90 - 28 = 62; atan2(7, 12) = 30.26 degrees; the law of cosines
// gives 2 asin(104 / 200) = 62.66; 9.7 mm of 100 mm round are 34.92 degrees; square onto 38.1 the axis meets it at 19.05.
const ECHOES = [
  ['od: { girth: 100mm }', 'od: girth 100mm, that is 31.83 mm'],
  ['angle: { off-square: 28deg }', 'end B angle: 28deg off square, that is 62°'],
  ['angle: { rise: 7in, run: 12in }', 'end B angle: rise 7in, run 12in, that is 30.26°'],
  ['angle: { triangle: [200mm, 200mm, 208mm] }', 'end B angle: triangle 200mm, 200mm, 208mm, that is 62.66°'],
  ['angle: { acute: 62deg, read-at: toe }', 'end B angle: 62deg acute, read at the toe, that is 118°'],
  ['clock: { arc: 9.7mm }', 'end B clock: arc 9.7mm, that is 34.92°'],
  ['between: { faces: 500mm }', 'between: faces 500mm, that is 538.1 mm'],
  ['between: { straightedge: 500mm, at: 0deg }', 'between: straightedge 500mm at 0deg, that is 538.1 mm'],
  ['between: { overall: 600mm }', 'between: overall 600mm, that is'],
  ['between: { seated: 500mm }', 'between: seated 500mm, that is 538.1 mm'],
  ['between: [600mm, 601mm]', 'between: 601mm; 1 mm more'],
  ['angle: [90deg, { off-square: 0.5deg }]', 'end B angle: 0.5deg off square, that is 89.5°; 0.5° less'],
] as const;

function jobWith(reading: string): string {
  const keys = { od: 'od: 31.83098862', between: 'between: 600mm', angle: 'angle: 90', clock: 'clock: 0' };
  const [key = ''] = reading.split(':');
  const said = { ...keys, [key]: reading };
  return `copeleaf: 1
tube:
  ${said.od}
  ${said.between}
  ends:
    A: { onto: { od: 38.1 }, angle: 90 }
    B:
      onto: { od: 38.1 }
      ${said.angle}
      ${said.clock}
`;
}

test.each(ECHOES)('what was measured is echoed with what it came to: %s', (reading, echo) => {
  const [report] = reportJob(readSample(jobWith(reading)));
  expect(report && checkReport(report, ENGLISH)).toContain(echo);
});

test('what was told as itself is not echoed as a reading', () => {
  const [report] = reportJob(readSample(jobWith('od: 31.83098862')));
  expect(report && checkReport(report, ENGLISH)).not.toContain('that is 31.83');
});
