import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import {
  chmodSync,
  lstatSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  readlinkSync,
  rmSync,
  statSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { hostname } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { describe, expect, it } from 'vitest';
import { howMany } from '../count.ts';
import { asProcess, COMMAND, folderWith, inProcess, namesIn } from './run-command.ts';

const JOB =
  'copeleaf: 1\ntube: { od: 30, wall: 2, between: 500, ends: { A: { onto: { od: 40 }, angle: 70 }, B: plain } }\n';
const FLAGS = ['--od', '30', '--onto', '40', '--angle', '70'];
const READINGS = ['--across', '99.3mm', '--up', '100.1mm'];

const print = (folder: string, out: string) => inProcess(folder, ['print', ...FLAGS, '--out', out]);

/** `copeleaf printer add` as a process with its settings in a folder. */
function adding(settings: string, name: string): ChildProcess {
  return spawn(process.execPath, [COMMAND, 'printer', 'add', name, ...READINGS], {
    env: { ...process.env, XDG_CONFIG_HOME: settings },
    stdio: 'ignore',
  });
}

/** The settings of a machine with one printer, on which a run of another machine, which can't be asked, is at work just now. */
async function settingsInUse(): Promise<{ settings: string; own: string; others: string }> {
  const settings = folderWith();
  await once(adding(settings, 'first'), 'exit');
  const own = join(settings, 'copeleaf');
  // By its name it comes after any of this machine's, so a run of this machine waits with its own file at hand.
  const others = join(own, '.copeleaf-~-1-1');
  writeFileSync(others, '');
  return { settings, own, others };
}

async function waitingIn(folder: string): Promise<void> {
  while (readdirSync(folder).length < 3) await pause(5);
}

describe('saved printers', () => {
  const COUNT = howMany({ short: 8, deep: 20 });

  it(`of ${COUNT} processes at once are all kept, in one file`, async () => {
    const settings = folderWith();
    const names = Array.from({ length: COUNT }, (_, i) => `printer ${i}`);
    const runs = await Promise.all(names.map((name) => once(adding(settings, name), 'exit')));
    expect(runs.map(([code]) => code)).toEqual(names.map(() => 0));
    const kept = JSON.parse(readFileSync(join(settings, 'copeleaf', 'printers.json'), 'utf8'));
    expect(kept.printers.map(({ name }: { name: string }) => name)).toEqual(names.toSorted());
    expect(namesIn(join(settings, 'copeleaf'))).toEqual(['printers.json']);
  });

  it.each(['SIGINT', 'SIGTERM', 'SIGHUP'] as const)('a run that %s ends leaves nothing', async (signal) => {
    const { settings, own, others } = await settingsInUse();
    const run = adding(settings, 'second');
    await waitingIn(own);
    run.kill(signal);
    expect(await once(run, 'exit')).toEqual([null, signal]);
    rmSync(others);
    expect(namesIn(own)).toEqual(['printers.json']);
  });

  it('a killed run holds nobody up, and what it left goes with the next', async () => {
    const { settings, own, others } = await settingsInUse();
    const run = adding(settings, 'second');
    await waitingIn(own);
    run.kill('SIGKILL');
    await once(run, 'exit');
    rmSync(others);
    expect(namesIn(own)).toHaveLength(2);
    expect(await once(adding(settings, 'third'), 'exit')).toEqual([0, null]);
    expect(namesIn(own)).toEqual(['printers.json']);
    expect(readFileSync(join(own, 'printers.json'), 'utf8')).toMatch(/first.*third/s);
  });

  // Under /proc nobody makes a folder; Node's own way to make one with those above it would try for ever.
  it.each(['/proc/nowhere', '/dev/null/nowhere'])('at %s can not be saved, and that is said', (home) => {
    const { code, err } = asProcess(folderWith(), ['printer', 'add', 'x', ...READINGS], {
      env: { HOME: home },
    });
    expect([code, err]).toEqual([1, expect.stringMatching(/the printers can't be saved \(ENO/)]);
  });

  it('are kept where a symbolic link leads, with the mode of what is there', async () => {
    const folder = folderWith({ 'mine.json': '{"printers":[]}' });
    chmodSync(join(folder, 'mine.json'), 0o640);
    mkdirSync(join(folder, 'copeleaf'));
    symlinkSync('../mine.json', join(folder, 'copeleaf', 'printers.json'));
    const env = { XDG_CONFIG_HOME: folder };
    const run = await inProcess(folder, ['printer', 'add', 'x', ...READINGS], { env });
    expect([run.code, namesIn(join(folder, 'copeleaf'))]).toEqual([0, ['printers.json']]);
    expect(readFileSync(join(folder, 'mine.json'), 'utf8')).toContain('99.3mm/100mm');
    expect(statSync(join(folder, 'mine.json')).mode & 0o777).toBe(0o640);
    chmodSync(join(folder, 'mine.json'), 0o444);
    const refused = await inProcess(folder, ['printer', 'remove', 'x'], { env });
    expect([refused.code, refused.err]).toEqual([1, expect.stringContaining('EACCES')]);
  });
});

describe('a result', () => {
  it('goes through symbolic links to their target, also to one that is not there yet', async () => {
    const folder = folderWith({ 'old.pdf': 'old' });
    chmodSync(join(folder, 'old.pdf'), 0o604);
    mkdirSync(join(folder, 'in'));
    symlinkSync('../link', join(folder, 'in', 'link'));
    symlinkSync('old.pdf', join(folder, 'link'));
    symlinkSync('new.pdf', join(folder, 'ahead'));
    expect((await print(folder, 'in/link')).code).toBe(0);
    expect((await print(folder, 'ahead')).code).toBe(0);
    expect(namesIn(folder)).toEqual(['ahead', 'in', 'link', 'new.pdf', 'old.pdf']);
    expect(readlinkSync(join(folder, 'in', 'link'))).toBe('../link');
    expect(lstatSync(join(folder, 'new.pdf')).isFile()).toBe(true);
    expect(readFileSync(join(folder, 'old.pdf'), 'latin1')).toMatch(/^%PDF-/);
    expect(statSync(join(folder, 'old.pdf')).mode & 0o777).toBe(0o604);
  });

  it('does not take the place of what may not be written, nor of links that go round', async () => {
    const folder = folderWith({ 'kept.pdf': 'kept' });
    chmodSync(join(folder, 'kept.pdf'), 0o444);
    symlinkSync('kept.pdf', join(folder, 'link.pdf'));
    symlinkSync('round.pdf', join(folder, 'round.pdf'));
    for (const out of ['kept.pdf', 'link.pdf']) {
      const { code, err } = await print(folder, out);
      expect([code, err]).toEqual([1, expect.stringMatching(/can't be written \(EACCES\)/)]);
    }
    expect((await print(folder, 'round.pdf')).code).toBe(2);
    expect(readFileSync(join(folder, 'kept.pdf'), 'utf8')).toBe('kept');
    expect(namesIn(folder)).toEqual(['kept.pdf', 'link.pdf', 'round.pdf']);
  });

  it.each(['print', 'cutlist', 'ordinates'])(
    'of %s does not take the place of its job, by whatever name',
    async (command) => {
      // Named so that a print without a name of its own would come to lie on it.
      const folder = folderWith({ 'job.pdf': JOB });
      symlinkSync('job.pdf', join(folder, 'link'));
      for (const out of [['--out', 'job.pdf'], ['--out', 'link'], ...(command === 'print' ? [[]] : [])]) {
        const { code, err } = await inProcess(folder, [command, 'job.pdf', ...out]);
        expect([code, err]).toEqual([2, expect.stringContaining('it is the file that is read')]);
      }
      expect(readFileSync(join(folder, 'job.pdf'), 'utf8')).toBe(JOB);
    },
  );

  it('is no file of the name of a folder that is not there', async () => {
    const folder = folderWith();
    const { code, err } = await print(folder, 'sheets/');
    expect([code, err, namesIn(folder)]).toEqual([2, expect.stringContaining('does not exist'), []]);
  });

  it('may have a name as long as the system takes, and no longer', async () => {
    const folder = folderWith();
    const longest = `${'ü'.repeat(125)}a.pdf`;
    expect((await print(folder, longest)).code).toBe(0);
    const { code, err } = await print(folder, `a${longest}`);
    expect([code, err]).toEqual([2, expect.stringContaining('longer than the system takes')]);
    expect(namesIn(folder)).toEqual([longest]);
  });

  it('takes away what runs have left that are no more, and nothing else', async () => {
    const folder = folderWith();
    const host = hostname().replace(/\W/g, '_').slice(0, 60);
    const { pid: ended } = spawnSync('true');
    const named = (pid: number): string => `.copeleaf-${host}-${pid}-1`;
    const [left, running] = [named(ended), named(process.pid)];
    const [elsewhere, longAgo] = ['.copeleaf-elsewhere-1-1', '.copeleaf-elsewhere-2-1'];
    for (const name of [left, running, elsewhere, longAgo]) writeFileSync(join(folder, name), '');
    utimesSync(join(folder, longAgo), 0, 0);
    await print(folder, 'x.pdf');
    expect(namesIn(folder)).toEqual([elsewhere, running, 'x.pdf'].toSorted());
  });

  it('that the disk has no room for leaves what was there', () => {
    const folder = folderWith({ 'x.pdf': 'old' });
    const { status, stderr } = spawnSync(
      'sh',
      ['-c', 'ulimit -f 8; exec "$0" "$@"', process.execPath, COMMAND, 'print', ...FLAGS, '--out', 'x.pdf'],
      { cwd: folder, encoding: 'utf8' },
    );
    expect([status, stderr]).toEqual([1, expect.stringMatching(/can't be written \(EFBIG\)/)]);
    expect(readFileSync(join(folder, 'x.pdf'), 'utf8')).toBe('old');
    expect(namesIn(folder)).toEqual(['x.pdf']);
  });

  it('stands where nobody takes what is said of it', async () => {
    const folder = folderWith();
    const run = spawn(process.execPath, [COMMAND, 'print', ...FLAGS], {
      cwd: folder,
      stdio: ['ignore', 'ignore', 'pipe'],
    });
    run.stderr.destroy();
    expect(await once(run, 'exit')).toEqual([0, null]);
    expect(namesIn(folder)).toEqual(['cope.pdf']);
  });

  it('of a folder that is no more is told as such', () => {
    const { status, stderr } = spawnSync(
      'sh',
      ['-c', 'rmdir "$PWD"; exec "$0" "$@"', process.execPath, COMMAND, 'print', ...FLAGS],
      { cwd: folderWith(), encoding: 'utf8' },
    );
    expect([status, stderr]).toEqual([2, expect.stringContaining('the folder to write into does not exist')]);
  });
});
