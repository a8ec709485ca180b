import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { copeleaf, folderWith, namesIn } from './run-command.ts';

const JOB = `copeleaf: 1
tubes:
  - { name: stay, od: 30, wall: 2, between: 400, pair: true, ends: { A: { onto: { od: 40 }, angle: 55, clock: 20 }, B: { onto: { od: 40 }, angle: 80 } } }
  - { name: rung, od: 25, wall: 2, between: 500, ends: { A: { onto: { od: 40 }, angle: 90 }, B: plain } }
  - { name: web, od: 25, wall: 2, between: 300, ends: { A: { onto: { od: 40 }, angle: 70 }, B: plain } }
`;

/** Two sills with a stay on each, which are mirror images, and a rung between them on its own. */
const FRAME = `copeleaf: 1
frame:
  points: { a: [0, 0, 0], b: [0, 900, 0], c: [0, 300, 0], d: [0, 700, 0], near: [400, 0, 500], far: [480, 900, 560], top: { on: rail, at: 420 } }
  mirror: { x: 600 }
  tubes:
    - { name: sill, along: [a, b], od: 40, wall: 2 }
    - { name: rail, along: [near, far], od: 40, wall: 2 }
    - { name: stay, along: [c, top], od: 25, wall: 2 }
    - { name: tie, along: [d, "d'"], od: 20, wall: 2 }
`;

const run = (...args: string[]) => copeleaf(folderWith({ 'job.yaml': JOB, 'frame.yaml': FRAME }), args);
const tubesOf = (text: string): unknown[] =>
  JSON.parse(text).tubes.map(({ name, hand }: { name: string; hand: string }) => `${name}, ${hand}`);

describe('--only', () => {
  it.each([
    ['job.yaml', ['--only', 'stay'], ['stay, as-drawn', 'stay, opposite']],
    ['job.yaml', ['--only', 'web', '--only', 'rung'], ['rung, as-drawn', 'web, as-drawn']],
    ['frame.yaml', ['--only', 'stay'], ['stay, as-drawn', 'stay, opposite']],
    ['frame.yaml', ['--only', "stay'"], ['stay, as-drawn', 'stay, opposite']],
    ['frame.yaml', ['--only', 'stay’'], ['stay, as-drawn', 'stay, opposite']],
    ['frame.yaml', ['--only', "rail'"], ['rail, as-drawn']],
  ])('of %s %j: only these, in the order of the file', async (file, only, tubes) => {
    for (const command of ['check', 'cutlist']) {
      const { code, out, err } = await run(command, file, '--as', 'json', ...only);
      expect({ code, err }).toEqual({ code: 0, err: '' });
      expect(tubesOf(out)).toEqual(tubes);
    }
  });

  it.each(['job.yaml', 'frame.yaml'])('of %s: the stations of these ends', async (file) => {
    const all = (await run('ordinates', file, '--as', 'csv')).out.split('\n');
    const [head, ...rows] = (await run('ordinates', file, '--as', 'csv', '--only', 'stay')).out.split('\n');
    expect(head).toBe(all[0]);
    expect(rows).toEqual([...all.filter((row) => row.startsWith('stay,')), '']);
    expect(rows.length).toBeLessThan(all.length - 10);
  });

  it('prints their leaves and tickets, and the whole job goes with them', async () => {
    const folder = folderWith({ 'frame.yaml': FRAME });
    const { code, err } = await copeleaf(folder, ['print', 'frame.yaml', '--only', 'stay']);
    expect({ code, files: namesIn(folder) }).toEqual({ code: 0, files: ['frame.pdf', 'frame.yaml'] });
    expect(err).toMatch(/4 leaves/);
    expect(readFileSync(join(folder, 'frame.pdf')).length).toBeGreaterThan(10_000);
  });

  it('checks of a frame what is about these tubes', async () => {
    const { frame } = JSON.parse((await run('check', 'frame.yaml', '--as', 'json', '--only', 'tie')).out);
    expect(frame.landings.map(({ tube, end }: { tube: string; end: string }) => `${tube} ${end}`)).toEqual([
      'tie A',
      'tie B',
    ]);
    const { out } = await run('check', 'frame.yaml', '--only', 'tie');
    expect(out).toContain('tie');
    expect(out).not.toMatch(/\b(stay|rail)\b/);
  });

  it.each([
    ['job.yaml', 'stya', 'stay'],
    ['frame.yaml', "stya'", "stay'"],
    ['job.yaml', 'something else', 'one of: stay, rung, web'],
  ])('of %s: a name that no tube has is told, with what is near', async (file, name, near) => {
    for (const command of ['print', 'check', 'ordinates', 'cutlist']) {
      const { code, out, err } = await run(command, file, '--only', name);
      expect({ code, out }).toEqual({ code: 2, out: '' });
      expect(err).toContain(`--only ${name}`);
      expect(err).toMatch(/^ {2}but {6}no tube has this name$/m);
      expect(err).toContain(`instead  ${near}`);
    }
  });
});
