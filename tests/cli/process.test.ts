import { type SpawnSyncReturns, spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { asProcess, COMMAND, copeleaf, folderWith, inProcess, namesIn } from './run-command.ts';

// The other tests of the command call its main function unless the run is deep; what that leaves open is tried here.

const JOB = 'copeleaf: 1\ntube: { od: 30, ends: { A: { onto: { od: 40 }, angle: 70 } } }\n';

const FILES = { 'job.yaml': JOB, 'bad.yaml': `${JOB}wall: 3\n` };

describe('the built command, as a process of its own, does what its main function does', () => {
  it.each([
    ['sheets in a file', ['print', 'job.yaml'], 0, /^job\.pdf: /],
    ['sheets on standard output', ['print', '-', '--out', '-'], 0, /^$/],
    ['a report on a job that is piped in', ['check', '-'], 0, /^$/],
    ['a table', ['ordinates', 'job.yaml', '--as', 'csv'], 0, /^$/],
    ['help', ['help', 'print'], 0, /^$/],
    ['a starter', ['starter', 'rung'], 0, /rung\.yaml/],
    ['a mistake in a job', ['check', 'bad.yaml'], 2, /line 3/],
    ['a mistake in a flag', ['print', '--agnle', '60'], 2, /--angle/],
    ['a full disk', ['print', 'job.yaml', '--out', '/dev/full'], 1, /ENOSPC/],
  ] as const)('%s', async (_, args, code, says) => {
    const [there, here] = [folderWith(FILES), folderWith(FILES)];
    const run = asProcess(there, args, { input: JOB });
    expect(run).toEqual(await inProcess(here, args, { input: JOB }));
    expect(run.code).toBe(code);
    expect(run.err).toMatch(says);
    expect(namesIn(there)).toEqual(namesIn(here));
    const [theirs, ours] = [there, here].map((folder) =>
      namesIn(folder).map((name) => readFileSync(join(folder, name), 'latin1')),
    );
    expect(theirs).toEqual(ours);
  });
});

describe('what nobody takes ends with its reason, and never as done', () => {
  const to = (device: string, asked: string): SpawnSyncReturns<string> =>
    spawnSync('sh', ['-c', `"$0" "$1" ${asked} > ${device}`, process.execPath, COMMAND], {
      cwd: folderWith(FILES),
      encoding: 'utf8',
    });

  it.each(['check job.yaml', 'help print', '--version'])('a full disk behind what %s says', (asked) => {
    const { status, stderr } = to('/dev/full', asked);
    expect({ status, stderr }).toMatchObject({
      status: 1,
      stderr: expect.stringMatching(/^standard output:.*ENOSPC/s),
    });
  });
});

it('a device without an end is read no further than a job may be long', async () => {
  const { code, err } = await inProcess(folderWith(), ['check', '/dev/zero']);
  expect({ code, err }).toMatchObject({ code: 2, err: expect.stringContaining('too large for a job') });
});

it('names of files and folders steer no terminal', async () => {
  const name = '\u001b[31mred\u009b2J\u0007';
  const folder = folderWith({ [`${name}.yaml`]: JOB });
  const env = { XDG_CONFIG_HOME: join(folder, name), HOME: folder };
  const runs = [
    ['print', `${name}.yaml`],
    ['print', `${name}.yaml`, '--out', `${name}2.pdf`],
    ['check', `${name}3.yaml`],
    ['check', `${name}3.yaml`, '--errors', 'json'],
    ['starter', 'rung', '--out', `${name}4.yaml`],
    ['printer', 'add', 'workshop', '--across', '99.3mm', '--up', '100mm'],
    ['printer', 'remove', name],
    ['aid', 'ruler', '--out', `${name}5.pdf`],
    ['page', '--out', `${name}6.html`],
    [name],
  ];
  for (const args of runs) {
    const { out, err } = await copeleaf(folder, args, { env });
    expect(`${out}${err}`).toMatch(/\[31mred/);
    expect(`${out}${err}`).not.toMatch(/[^\P{Cc}\n]/u);
  }
});
