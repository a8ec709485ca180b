import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { copeleaf, folderWith } from './run-command.ts';

const STAY = `copeleaf: 1
tube:
  name: winch stay
  od: 31.75
  wall: 2.4
  between: mark
  ends:
    A: { onto: { od: 38.1 }, angle: 90 }
    B: { onto: { od: 44.5 }, angle: 90, clock: mark }
`;

/** Square onto a round header the outside meets it at its radius on the heel's line: between is 587 + 19.05 + 22.25. */
const BETWEEN = 628.3;

describe('--seated takes the length from the seated end to the mark', () => {
  it('check says what it came to, in words and as data', async () => {
    const folder = folderWith({ 'stay.yaml': STAY });
    const told = await copeleaf(folder, ['check', 'stay.yaml', '--seated', '587mm']);
    expect(told).toMatchObject({ code: 0, err: '' });
    expect(told.out).toContain('between: seated 587mm, that is 628.3 mm');
    const data = await copeleaf(folder, ['check', 'stay.yaml', '--seated', '587mm', '--as', 'json']);
    expect(JSON.parse(data.out).tubes[0].between).toBeCloseTo(BETWEEN, 9);
    expect(JSON.parse(data.out).tubes[0].ends.B.fitUp).toEqual(['clock']);
  });

  it('print draws the same leaves as the job with that length written in it', async () => {
    const folder = folderWith({
      'job.yaml': STAY,
      'told.yaml': STAY.replace('mark', '{ seated: "587mm" }'),
    });
    expect((await copeleaf(folder, ['print', 'job.yaml', '--as', 'svg', '--seated', '587mm'])).code).toBe(0);
    expect((await copeleaf(folder, ['print', 'told.yaml', '--as', 'svg', '--out', 'told.svg'])).code).toBe(0);
    const [drawn, told] = ['job.svg', 'told.svg'].map((name) => readFileSync(join(folder, name), 'utf8'));
    expect(drawn).toBe(told);
  });

  it('is told on one line where it is refused', async () => {
    const folder = folderWith({ 'stay.yaml': STAY });
    const { code, err } = await copeleaf(folder, ['check', 'stay.yaml', `--seated=5${'\n'.repeat(300)}m`]);
    expect([code, err]).toEqual([
      2,
      expect.stringMatching(/^command line:\n {2}read {5}--seated 5 .*\.\.\.\n.*\n.*\n$/),
    ]);
  });

  it('is refused in place of a length, by its flag', async () => {
    const folder = folderWith({ 'stay.yaml': STAY });
    const { code, err } = await copeleaf(folder, [
      'check',
      'stay.yaml',
      '--seated',
      'to the mark',
      '--errors',
      'json',
    ]);
    expect(code).toBe(2);
    expect(JSON.parse(err).errors).toMatchObject([{ code: 'length', read: '--seated to the mark' }]);
  });
});
