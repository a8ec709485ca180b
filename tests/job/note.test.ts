import { describe, expect, test } from 'vitest';
import { reportsAsData } from '../../src/fit/as-data.ts';
import { checkReport } from '../../src/fit/check-report.ts';
import { reportTube } from '../../src/fit/report.ts';
import { solveHands } from '../../src/saddle/solve.ts';
import { shopPack } from '../../src/shop/pack.ts';
import { reportJob } from '../../src/together/report-job.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { readText } from '../frame/read-lines.ts';
import { complaintsAbout, readSample } from './sample.ts';

const withNote = (note: string): string => `copeleaf: 1
tube:
  name: stay
  od: 30
  wall: 2
  note: ${note}
  ends: { A: { onto: { od: 40 }, angle: 60 } }
`;

const LINES = `
    - drill 8 mm for the pin
    - left front: foot down, pin out
      plate: 60 from end A
    - { right front: the other way round }`;

describe('a note', () => {
  test('is a line, or a list of lines, some about a thing and some under another', () => {
    const [tube] = readSample(withNote(LINES)).tubes;
    expect(tube?.note).toEqual([
      [{ says: 'drill 8 mm for the pin' }],
      [
        { of: 'left front', says: 'foot down, pin out' },
        { of: 'plate', says: '60 from end A' },
      ],
      [{ of: 'right front', says: 'the other way round' }],
    ]);
    expect(readSample(withNote('"on the left"')).tubes[0]?.note).toEqual([[{ says: 'on the left' }]]);
    expect(readSample(withNote('[]')).tubes[0]?.note).toBeUndefined();
  });

  test('stands on the ticket, with the spine and the name that it may speak of, and in what check says', () => {
    const job = readSample(withNote(LINES));
    const room = { left: 10, right: 200, top: 280, bottom: 17 };
    const drawn = JSON.stringify(
      shopPack(job, solveHands(job), false)(room).map(({ draw }) => draw({ x: 10, y: 280 }, () => [])),
    );
    for (const words of [
      'drill 8 mm for the pin',
      'left front',
      '60 from end A',
      'the other way round',
      'Write name',
    ])
      expect(drawn).toContain(words);
    const [report] = solveHands(job).map((solution) => reportTube(solution, ENGLISH));
    if (!report) throw new Error('no report');
    expect(checkReport(report, ENGLISH)).toContain(`
  note   drill 8 mm for the pin
         left front: foot down, pin out
           plate: 60 from end A
         right front: the other way round
`);
    expect(reportsAsData([report]).tubes).toMatchObject([
      {
        note: [
          'drill 8 mm for the pin',
          { 'left front': 'foot down, pin out', plate: '60 from end A' },
          { 'right front': 'the other way round' },
        ],
      },
    ]);
  });

  test('of a frame stands on the ticket of every tube that has it', () => {
    const job = readText(`copeleaf: 1
frame:
  mirror: { x: 300 }
  tubes: [{ name: post, along: [[0, 0, 0], [0, 40, 700]], od: 30, wall: 2, note: paint it red, ends: { A: { flat: z } } }]
`);
    expect(reportJob(job).map(({ solution }) => solution.tube.note)).toEqual([[[{ says: 'paint it red' }]]]);
    expect(job.tubes.map(({ note }) => note?.[0]?.[0].says)).toEqual(['paint it red', 'paint it red']);
  });

  test.each([
    [`"${'x'.repeat(199)}"`, 'too-long'],
    ['"up\\nand down"', 'words'],
    ['', 'shape'],
    ['[{ a: {} }]', 'shape'],
    ['[[a]]', 'shape'],
    ['\n    - { "": red }', 'key'],
    ['\n    - left: red\n      left: blue', 'duplicate-key'],
  ])('%s is refused once, in its place', (note, code) => {
    const complaints = complaintsAbout(withNote(note));
    expect(complaints.map((each) => each.code)).toEqual([code]);
    expect(complaints[0]?.line).toBeGreaterThanOrEqual(6);
  });
});
