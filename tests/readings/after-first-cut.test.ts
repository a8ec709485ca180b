import { describe, expect, test } from 'vitest';
import { jobWithSeated } from '../../src/job/ways/seated.ts';
import { solveHands } from '../../src/saddle/solve.ts';
import { readSample, refusalOf } from '../job/sample.ts';

function tubeOf(between: string): string {
  return `copeleaf: 1
tube:
  od: 31.75
  between: ${between}
  ends:
    A: { onto: { od: 38.1 }, angle: 62deg }
    B: { onto: { od: 44.5 }, angle: 48deg, clock: mark, offset: 3 }
`;
}

/** A joint with no offset is deepest on its heel's line: R / sin(angle) + r / tan(angle), by the two triangles there. */
function onHeel(header: number, angle: number): number {
  const rad = (angle * Math.PI) / 180;
  return header / 2 / Math.sin(rad) + 31.75 / 2 / Math.tan(rad);
}

/** Beside the middle by 3 mm, the header's surface stands at sqrt(R^2 - 9). */
const MARK = onHeel(2 * Math.sqrt(22.25 ** 2 - 9), 48);

describe('the length from the seated end A to the mark gives the length between work points', () => {
  test.each([
    ['a mark', 'mark # to be made'],
    ['a number that proved wrong', '600'],
    ['a map of one line', '{ overall: 600 }'],
    ['a map of its own lines', '\n    overall: 600'],
    ['a list', '\n    - 600\n    - 601mm'],
    ['a list no further in than its key', '\n  - 600\n  - 601mm'],
  ])('in place of %s', (_, between) => {
    const job = jobWithSeated(readSample(tubeOf(between)), '587mm');
    const [solution] = solveHands(job);
    expect(solution?.lengths?.between).toBeCloseTo(587 + onHeel(38.1, 62) + MARK, 9);
    expect(solution?.ends.B).toMatchObject({ fitUp: { clock: true, between: false } });
    // What travels in the PDF is the corrected job.
    expect(readSample(job.source).tubes).toEqual(job.tubes);
  });
});

describe('it is refused, in the words of the flag', () => {
  const one = 'copeleaf: 1\ntube: { od: 30, ends: { A: { onto: { od: 50 }, angle: 60 } } }\n';
  const two = 'copeleaf: 1\ntubes:\n  - { od: 30, ends: { A: { onto: { od: 50 }, angle: 60 } } }\n';
  test.each([
    ['no length', tubeOf('mark'), 'long', 'length'],
    ['nothing', tubeOf('mark'), '0', 'not-positive'],
    ['of one end alone', one, '587', 'seated'],
    ['of several tubes', `${two}${two.split('\n')[2]}\n`, '587', 'seated'],
  ])('%s', (_, text, length, code) => {
    const job = readSample(text);
    expect(refusalOf(() => jobWithSeated(job, length))).toMatchObject([
      { code, file: 'command line', read: `--seated ${length}` },
    ]);
  });
});
