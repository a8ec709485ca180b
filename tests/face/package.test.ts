import { execFile, spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { DEEP } from '../count.ts';
import { block, blocks, ROOT } from './readme.ts';

const run = promisify(execFile);

/** Starts a command with no network but, at most, this machine; where the system lets nobody do so, npm alone is kept from it. */
const CUT_OFF = spawnSync('unshare', ['-rn', 'true']).status === 0 ? ['unshare', '-rn'] : [];

/** What a line of a table that draws a frame looks like. */
const LINES =
  'name,x1,y1,z1,x2,y2,z2,od,wall\nrail,0,0,0,1200,0,0,44.5,2.4\nstay,600,0,0,900,0,400,38.1,2.4\n';

describe.runIf(DEEP)('the packed package, in an empty folder and with no network', () => {
  let folder = '';
  const settings = () => ({
    ...process.env,
    HOME: folder,
    XDG_CONFIG_HOME: join(folder, 'settings'),
    npm_config_cache: join(folder, 'cache'),
    npm_config_offline: 'true',
    npm_config_audit: 'false',
    npm_config_fund: 'false',
  });
  const cutOff = (command: string, ...args: readonly string[]) => {
    const [program = command, ...rest] = [...CUT_OFF, command, ...args];
    return run(program, rest, { cwd: folder, env: settings() });
  };

  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'packed-'));
    await run('npx', ['tsx', 'src/build/types.ts'], { cwd: ROOT });
    // What it is packed from was built before the tests; others are reading it.
    await run('npm', ['pack', '--ignore-scripts', '--pack-destination', folder], { cwd: ROOT });
    const [packed = ''] = await readdir(folder);
    await mkdir(join(folder, 'settings'));
    await cutOff('npm', 'install', `./${packed}`);
    await writeFile(join(folder, 'lines.csv'), LINES);
    await writeFile(join(folder, 'bunk-stay.yaml'), await block('yaml', 'bunk stay'));
    await writeFile(join(folder, 'example.mts'), await block('js', "from 'copeleaf'"));
    await writeFile(join(folder, 'example.mjs'), await block('js', "from 'copeleaf'"));
  });
  afterAll(() => rm(folder, { recursive: true, force: true }));

  it('is one package, with a licence, that asks for no other and for no script to be run', async () => {
    const there = await readdir(join(folder, 'node_modules'));
    expect(there.toSorted()).toEqual(['.bin', '.package-lock.json', 'copeleaf']);
    const inside = await readdir(join(folder, 'node_modules/copeleaf'));
    expect(inside).not.toContain('node_modules');
    expect(inside).toContain('LICENSE');
    const about = JSON.parse(await readFile(join(folder, 'node_modules/copeleaf/package.json'), 'utf8'));
    for (const kind of ['dependencies', 'optionalDependencies', 'peerDependencies'])
      expect(about).not.toHaveProperty(kind);
    for (const script of ['preinstall', 'install', 'postinstall', 'prepare'])
      expect(about.scripts).not.toHaveProperty(script);
  });

  it("does what README's commands say", async () => {
    const lines = (await blocks('sh')).flatMap((body) => body.split('\n'));
    const commands = lines.flatMap((line) => /^npx copeleaf [^#]*/.exec(line)?.[0].trim() ?? []);
    expect(commands).toContain('npx copeleaf print --od 38.1 --wall 2.4 --onto 44.5 --angle 60');
    for (const command of commands.filter((each) => each !== 'npx copeleaf page')) {
      const { stdout, stderr } = await cutOff('npx', ...command.split(' ').slice(1));
      expect(stdout + stderr, command).not.toBe('');
    }
    for (const file of ['cope.pdf', 'bunk-stay.pdf', 'copeleaf.html'])
      expect(await readdir(folder)).toContain(file);
    const [pdf, page] = await Promise.all(
      ['cope.pdf', 'copeleaf.html'].map((each) => readFile(join(folder, each))),
    );
    expect(pdf?.subarray(0, 5).toString()).toBe('%PDF-');
    expect(page).toEqual(await readFile(`${ROOT}dist/copeleaf.html`));
  });

  it('serves the page', async () => {
    const [program = 'npx', ...rest] = [...CUT_OFF, 'npx', 'copeleaf', 'page'];
    const serving = spawn(program, rest, { cwd: folder, env: settings(), detached: true });
    const [told] = await once(serving.stdout, 'data');
    // With what it has started in its turn.
    process.kill(-(serving.pid ?? Number.NaN));
    expect(String(told)).toMatch(/http:\/\/127\.0\.0\.1:\d+/);
  });

  it("runs README's program", async () => {
    await rm(join(folder, 'bunk-stay.pdf'), { force: true });
    await cutOff(process.execPath, 'example.mjs');
    expect((await readFile(join(folder, 'bunk-stay.pdf'))).subarray(0, 5).toString()).toBe('%PDF-');
    expect(await readFile(join(folder, 'bunk-stay.dxf'), 'utf8')).toContain('AC1009');
  });

  it.each([
    ['a bundler', 'esnext', 'bundler'],
    ['Node', 'nodenext', 'nodenext'],
  ])("has types for README's program, as %s finds them", async (_, module, resolution) => {
    const compiler = `${ROOT}node_modules/typescript/bin/tsc`;
    const types = ['--types', 'node', '--typeRoots', `${ROOT}node_modules/@types`];
    const how = ['--noEmit', '--strict', '--target', 'es2022', '--lib', 'es2023', '--module', module];
    const { stdout } = await cutOff(
      process.execPath,
      compiler,
      ...how,
      '--moduleResolution',
      resolution,
      ...types,
      'example.mts',
    );
    expect(stdout).toBe('');
  });
});
