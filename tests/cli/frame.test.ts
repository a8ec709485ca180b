import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { DEEP } from '../count.ts';
import { COMMAND, copeleaf } from './run-command.ts';

const TABLE = 'name,x1,y1,z1,x2,y2,z2,od,wall\nTr\u00e4ger,0,0,0,900,0,0,44.5,2\n';

function folder(): string {
  return mkdtempSync(join(tmpdir(), 'frame-'));
}

test('a frame stands beside in the current folder under the name of its lines, and says what it is', async () => {
  const at = folder();
  writeFileSync(join(at, 'rack.csv'), TABLE);
  expect(await copeleaf(at, ['frame', 'rack.csv'])).toMatchObject({
    code: 0,
    out: '',
    err: 'rack.yaml: 1 tube between 2 points\n',
  });
  expect(readFileSync(join(at, 'rack.yaml'), 'utf8')).toContain(
    '- { name: Träger, along: [Träger A, Träger B]',
  );
  const again = await copeleaf(at, ['frame', 'rack.csv']);
  expect(again.code).toBe(2);
  expect(again.err).toContain('it may hold your work');
  expect((await copeleaf(at, ['frame', 'rack.csv', '--out', 'rack.yaml'])).code).toBe(0);
});

test('what is read is never written over, by whatever name', async () => {
  const at = folder();
  writeFileSync(join(at, 'rack.txt'), TABLE);
  for (const args of [['rack.yaml'], ['rack.txt', '--out', './rack.txt']]) {
    expect((await copeleaf(at, ['frame', ...args])).code).toBe(2);
  }
  expect(readFileSync(join(at, 'rack.txt'), 'utf8')).toBe(TABLE);
});

test('names in the letters of an older program are read; standard input and output are taken', async () => {
  const at = folder();
  writeFileSync(join(at, 'rack.csv'), Buffer.from(TABLE, 'latin1'));
  const run = await copeleaf(at, ['frame', 'rack.csv', '--out', '-']);
  expect(run.out).toContain('name: Träger');
  const piped = await copeleaf(at, ['frame', '-', '--out', '-'], { input: TABLE });
  expect(piped.out.split('\n').slice(1)).toEqual(run.out.split('\n').slice(1));
});

test('a flag that can be none is told as the command line, a mistake in the table with its line', async () => {
  const at = folder();
  writeFileSync(join(at, 'rack.csv'), TABLE.replace('900', 'x'));
  expect((await copeleaf(at, ['frame', 'rack.csv', '--snap', 'far'])).err).toContain('rack.csv, line 2:');
  const flag = await copeleaf(at, ['frame', 'rack.csv', '--od', 'wide']);
  expect(flag.err).toContain('command line:\n  read     --od wide');
  expect(flag.code).toBe(2);
});

const FRAME = `copeleaf: 1
frame:
  points: { a: [0, 0, 0], b: [900, 0, 0], c: [450, 0, 600] }
  tubes:
    - { name: sill, along: [a, b], od: 44.5, wall: 2 }
    - { name: stay / left, along: [a, c], od: 38.1, wall: 2, ends: { A: { onto: [sill] } } }
    - { name: post, along: [[450, 0, 0], c], od: 38.1, wall: 2 }
`;

test('one tube of a frame is a file of its own, and prints as the frame prints it alone', async () => {
  const at = folder();
  writeFileSync(join(at, 'rack.yaml'), FRAME);
  const run = await copeleaf(at, ['frame', 'rack.yaml', '--tube', 'post']);
  expect(run).toMatchObject({ code: 0, err: expect.stringContaining('post.yaml: post') });
  expect((await copeleaf(at, ['frame', 'rack.yaml', '--tube', 'stay / left'])).err).toContain(
    'stay - left.yaml',
  );
  const [alone, whole] = await Promise.all([
    copeleaf(at, ['print', 'post.yaml', '--as', 'svg', '--only', 'post', '--out', '-']),
    copeleaf(at, ['print', 'rack.yaml', '--as', 'svg', '--only', 'post', '--out', '-']),
  ]);
  expect(alone.code).toBe(0);
  expect(alone.out).toBe(whole.out);
  const unknown = await copeleaf(at, ['frame', 'rack.yaml', '--tube', 'pots']);
  expect([unknown.code, unknown.err.includes('post')]).toEqual([2, true]);
});

test.runIf(DEEP)('of thousands of lines that meet no list of all pairs is made', () => {
  const at = folder();
  const rows = Array.from(
    { length: 4000 },
    (_, i) => `,0,0,0,${1000 + i},${3 * i},${(7 * i) % 1000},38.1,2\n`,
  );
  writeFileSync(join(at, 'star.csv'), `name,x1,y1,z1,x2,y2,z2,od,wall\n${rows.join('')}`);
  const args = ['--max-old-space-size=256', COMMAND, 'frame', 'star.csv'];
  const { status, stderr } = spawnSync(process.execPath, args, { cwd: at, encoding: 'utf8' });
  expect([status, stderr]).toEqual([0, 'star.yaml: 4000 tubes between 4001 points\n']);
});
