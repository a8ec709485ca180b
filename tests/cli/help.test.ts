import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { PAPER_NAMES } from '../../src/job/paper/paper.ts';
import { copeleaf, folderWith } from './run-command.ts';

const SUBCOMMANDS = ['print', 'ordinates', 'check', 'starter'];
const ESCAPE = '\u001b';
const GOOD = 'copeleaf: 1\ntube: { od: 30, wall: 2, ends: { A: { onto: { od: 40 }, angle: 25 } } }\n';

function run(...args: string[]) {
  return copeleaf(folderWith({ 'job.yaml': GOOD }), args);
}

describe('help', () => {
  it.each([[['--help']], [['-h']], [['help']]])(
    '%s tells what there is, how to begin, and the cautions',
    async (args) => {
      const { code, out, err } = await run(...args);
      expect({ code, err }).toEqual({ code: 0, err: '' });
      for (const name of SUBCOMMANDS) expect(out).toMatch(new RegExp(`^ +${name}\\b.*\\w{3}`, 'm'));
      for (const example of ['copeleaf print --od', 'copeleaf starter', 'copeleaf check my-job.yaml']) {
        expect(out).toContain(example);
      }
      for (const caution of [/eye/, /fume/, /vent/, /measure the bars/, /licensed/])
        expect(out).toMatch(caution);
    },
  );

  it('begins with an example that works', async () => {
    const example = /^ +copeleaf (print --od .*?) {2}/m.exec((await run('--help')).out)?.[1] ?? '';
    expect((await run(...example.split(' '))).code).toBe(0);
  });

  it.each(SUBCOMMANDS)('of %s is the same by --help and by help, and describes every flag', async (name) => {
    const { code, out, err } = await run(name, '--help');
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect((await run('help', name)).out).toBe(out);
    expect(out).toMatch(new RegExp(`^Usage: copeleaf ${name} `));
    const flags = out.split('\n').filter((line) => /^ {2}(-\w, )?--/.test(line));
    expect(flags.length).toBeGreaterThan(2);
    for (const flag of flags) expect(flag).toMatch(/^ {2}(-\w, )?--[a-z-]+( <[a-z]+>)? {2,}\S.{5,}/);
  });

  it.each([
    [
      'print',
      ['od', 'wall', 'onto', 'angle', 'offset', 'clock', 'edge', 'end', 'units', 'paper', 'as', 'out'],
    ],
    ['ordinates', ['od', 'wall', 'onto', 'angle', 'offset', 'clock', 'end', 'every', 'as', 'out']],
    ['check', ['as', 'strict']],
    ['starter', ['out']],
  ])('of %s names its flags', async (name, flags) => {
    const { out } = await run(name, '--help');
    for (const flag of flags) expect(out).toMatch(new RegExp(`^ {2}--${flag}\\b`, 'm'));
  });

  it('names every paper', async () => {
    const { out } = await run('print', '--help');
    for (const name of PAPER_NAMES) expect(out).toContain(name);
  });

  it('says what stands in for what is left out', async () => {
    expect((await run('ordinates', '--help')).out).toMatch(/--every .*default: "?15deg/);
    expect((await run('print', '--help')).out).toMatch(/--out .*default: the job's name/);
  });
});

describe('--version', () => {
  it("is the package's, and nothing else", async () => {
    const { version }: { version: string } = JSON.parse(
      readFileSync(new URL('../../package.json', import.meta.url), 'utf8'),
    );
    expect(await run('--version')).toEqual({ code: 0, out: `${version}\n`, err: '' });
  });
});

describe('what is unknown', () => {
  it.each([
    ['a command', ['frobnicate'], 'frobnicate', ''],
    ['a command with a slip', ['chekc'], 'chekc', 'check'],
    ['a flag', ['print', '--frobnicate'], '--frobnicate', ''],
    ['a flag with a slip', ['print', '--agnle', '60'], '--agnle', '--angle'],
    ['a flag of the whole command', ['--frobnicate'], '--frobnicate', ''],
    ['a command asked for help', ['chekc', '--help'], 'chekc', 'check'],
    ['help on a command with a slip', ['help', 'chekc'], 'chekc', 'check'],
    ['an aid', ['aid', 'rulr'], 'rulr', '`copeleaf aid --help`'],
    ['a word of a command of several', ['printer', 'ad'], 'ad', '`copeleaf printer --help`'],
    ['a way to write', ['check', 'job.yaml', '--as', 'poem'], 'poem', 'json'],
    ['a second job', ['check', 'job.yaml', 'other.yaml'], 'other.yaml', ''],
  ])('%s: quoted, pointed to help, and to what is near', async (_, args, read, near) => {
    const { code, out, err } = await run(...args);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toContain(read);
    expect(err).toMatch(/^ {2}instead {2}.*--help/m);
    expect(err).toContain(near);
  });

  it('no command at all: pointed to help', async () => {
    const { code, out, err } = await run();
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toMatch(/^ {2}instead {2}.*copeleaf --help/m);
  });
});

describe('NO_COLOR', () => {
  it.each([
    [['--help']],
    [['print', '--help']],
    [['check', 'job.yaml']],
    [['ordinates', 'job.yaml']],
    [['starter']],
    [['print', 'missing.yaml']],
    [['print', '--frobnicate']],
  ])('is obeyed, whatever else asks for colours: %s', async (args) => {
    const folder = folderWith({ 'job.yaml': GOOD });
    const { out, err } = await copeleaf(folder, args, {
      env: { NO_COLOR: '1', FORCE_COLOR: '1', TERM: 'xterm-256color' },
    });
    expect(`${out}${err}`).not.toContain(ESCAPE);
    expect(`${out}${err}`.length).toBeGreaterThan(20);
  });
});
