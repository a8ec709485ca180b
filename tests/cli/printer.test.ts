import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Command } from 'commander';
import { describe, expect, it, test } from 'vitest';
import { printerNamed } from '../../src/cli/printer/printer.ts';
import { addPrinterCommands } from '../../src/cli/printer/printer-commands.ts';
import { changePrinters, printerFileOf } from '../../src/cli/printer/printer-file.ts';
import type { Shell } from '../../src/cli/shell.ts';
import { tell } from '../../src/cli/trouble.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { folderWith, type Run } from './run-command.ts';

/** A shell whose settings are in a folder of its own. */
function shellIn(folder: string) {
  const said = { out: '', err: '' };
  const shell: Shell = {
    words: ENGLISH,
    cwd: folder,
    home: new URL('../..', import.meta.url),
    env: { XDG_CONFIG_HOME: folder, APPDATA: folder, HOME: folder },
    out: async (data) => {
      said.out += typeof data === 'string' ? data : new TextDecoder().decode(data);
    },
    err: (text) => {
      said.err += text;
    },
    input: async () => Buffer.from(''),
  };
  return { shell, said };
}

/** `copeleaf printer ...` in this process, for the settings of one folder. */
async function printer(folder: string, ...args: readonly string[]): Promise<Run> {
  const { shell, said } = shellIn(folder);
  const program = new Command('copeleaf');
  addPrinterCommands(program, shell);
  try {
    await program.parseAsync(['printer', ...args], { from: 'user' });
    return { code: 0, ...said };
  } catch (error) {
    const code = tell(error, shell, true);
    return { code, ...said };
  }
}

interface Told {
  readonly code: string;
  readonly read: string;
  readonly why: string;
  readonly instead: string;
}

function told({ err }: Run): Told[] {
  const report: { errors: Told[] } = JSON.parse(err);
  return report.errors;
}

const fileIn = (folder: string) => printerFileOf(shellIn(folder).shell.env);

describe('a printer is saved', () => {
  it('by what was measured on its bars, listed with it, and forgotten', async () => {
    const folder = folderWith();
    expect((await printer(folder, 'list')).out).toBe('');
    expect((await printer(folder, 'add', 'workshop', '--across', '99.3mm', '--up', '100.1mm')).code).toBe(0);
    expect((await printer(folder, 'add', 'Büro', '--across', '3.97in', '--up', '199.2mm/200mm')).code).toBe(
      0,
    );
    expect((await printer(folder, 'list')).out.split('\n')).toEqual([
      'Büro      across 3.97in for 4in (0.75 % short)  up 199.2mm for 200mm (0.40 % short)',
      'workshop  across 99.3mm for 100mm (0.70 % short)  up 100.1mm for 100mm (0.10 % long)',
      '',
    ]);
    expect((await printer(folder, 'remove', 'Büro')).code).toBe(0);
    expect((await printer(folder, 'list')).out).toMatch(/^workshop .*\n$/);
  });

  it('anew in place of an earlier reading', async () => {
    const folder = folderWith();
    await printer(folder, 'add', 'workshop', '--across', '99.3mm', '--up', '100.1mm');
    await printer(folder, 'add', 'workshop', '--across', '99.6mm', '--up', '100mm');
    expect((await printer(folder, 'list')).out).toBe(
      'workshop  across 99.6mm for 100mm (0.40 % short)  up 100mm for 100mm (true)\n',
    );
  });

  it('and found by its name, with a factor for each axis', async () => {
    const folder = folderWith();
    await printer(folder, 'add', ' workshop ', '--across', '7-15/16in/8in', '--up', '99.9');
    const found = await printerNamed('workshop', shellIn(folder).shell);
    expect(found.across.factor).toBeCloseTo(7.9375 / 8, 12);
    expect(found.up.factor).toBeCloseTo(0.999, 12);
  });

  it('in one JSON file that is written whole, with nothing left beside it', async () => {
    const folder = folderWith();
    await printer(folder, 'add', 'workshop', '--across', '99.3mm', '--up', '100.1mm');
    const file = fileIn(folder);
    expect(JSON.parse(readFileSync(file, 'utf8'))).toEqual({
      printers: [{ name: 'workshop', across: '99.3mm/100mm', up: '100.1mm/100mm' }],
    });
    expect(readdirSync(join(file, '..'))).toEqual(['printers.json']);
  });
});

test.each([
  ['linux', { XDG_CONFIG_HOME: '/x/settings', HOME: '/home/ada' }, '/x/settings/copeleaf/printers.json'],
  ['linux', { XDG_CONFIG_HOME: 'relative', HOME: '/home/ada' }, '/home/ada/.config/copeleaf/printers.json'],
  ['linux', { HOME: '/home/ada' }, '/home/ada/.config/copeleaf/printers.json'],
  ['darwin', { HOME: '/Users/ada' }, '/Users/ada/Library/Application Support/copeleaf/printers.json'],
  ['win32', { APPDATA: '/Users/ada/Roaming' }, '/Users/ada/Roaming/copeleaf/printers.json'],
] as const)('on %s with %o printers are kept where the system keeps settings', (platform, env, file) => {
  expect(printerFileOf(env, platform)).toBe(file);
});

describe('a reading is refused with its likely cause', () => {
  // The scales of one paper's page on the other follow from ISO 216 and ANSI/ASME Y14.1; 133 and 75 % from 96 and 72 to the inch.
  test.each([
    ['97.3mm', /letter page was shrunk onto A4/],
    ['94.1mm', /A4 page was shrunk onto letter/],
    ['133.3mm', /points .* taken for pixels/],
    ['75mm', /pixels .* taken for points/],
    ['96mm', /fit to page/],
    ['101.6mm', /looks like the bar of 4 in/],
    ['3.93in', /looks like the bar of 100 mm/],
    ['98.4mm', /fit to page/],
    ['102.4mm', /a scale is set/],
    ['0.993', /a factor or a percentage is not taken/],
    ['99.3%', /not a number/],
    ['49.8mm/50mm', /half a millimetre misread/],
    ['99,300mm', /comma or point/],
    ['a bit short', /no number/],
    ['', /nothing written/],
    ['99.3mm/100furlongs', /not a unit/],
  ])('%s', async (reading, why) => {
    for (const [axis, args] of [
      ['across', ['--across', reading, '--up', '100mm']],
      ['up', ['--across', '100mm', '--up', reading]],
    ] as const) {
      const folder = folderWith();
      const run = await printer(folder, 'add', 'workshop', ...args);
      expect(run.code).toBe(2);
      const [complaint, ...more] = told(run);
      expect(more).toEqual([]);
      expect(complaint?.read).toBe(`--${axis} ${reading}`.trimEnd());
      expect(complaint?.why).toMatch(why);
      expect(existsSync(fileIn(folder))).toBe(false);
    }
  });

  it('in both axes at once', async () => {
    const run = await printer(folderWith(), 'add', 'x', '--across', '97.3mm', '--up', '94.1mm');
    expect(told(run).map(({ read }) => read)).toEqual(['--across 97.3mm', '--up 94.1mm']);
  });

  it.each([
    ['98.6mm', '98.9mm'],
    ['101.2mm', '101.4mm'],
  ])('%s across and %s up: off alike', async (across, up) => {
    const run = await printer(folderWith(), 'add', 'x', '--across', across, '--up', up);
    expect(run.code).toBe(2);
    expect(told(run)[0]?.code).toBe('wrong-setting');
    expect(told(run)[0]?.why).toContain('alike in both');
  });

  it.each([
    ['98.5mm', '101.5mm'],
    ['98.5mm', '99mm'],
    ['101mm', '101mm'],
    ['100mm', '98.5mm'],
  ])('but %s across and %s up are within the limits', async (across, up) => {
    expect((await printer(folderWith(), 'add', 'x', '--across', across, '--up', up)).code).toBe(0);
  });
});

describe('a name', () => {
  const add = (name: string) => printer(folderWith(), 'add', name, '--across', '99.3mm', '--up', '100mm');

  it.each(['', '  ', 'two\nlines', 'x'.repeat(41)])('%o is refused', async (name) => {
    const run = await add(name);
    expect([run.code, told(run)[0]?.code]).toEqual([2, 'printer-name']);
  });

  it('that is not saved is refused with the one that was meant, or with what is there', async () => {
    const folder = folderWith();
    const before = told(await printer(folder, 'remove', 'workshop'))[0];
    expect(before?.instead).toContain('printer add');
    await printer(folder, 'add', 'workshop', '--across', '99.3mm', '--up', '100.1mm');
    expect(told(await printer(folder, 'remove', 'workshp'))[0]?.instead).toBe('workshop, if that is meant');
    expect(told(await printer(folder, 'remove', 'office'))[0]?.instead).toBe('one of: workshop');
    for (const letter of 'abcdefghi')
      await printer(folder, 'add', letter, '--across', '99.3mm', '--up', '100mm');
    expect(told(await printer(folder, 'remove', 'office'))[0]?.instead).toBe(
      'one of: a, b, c, d, e, f, g, h and 2 more',
    );
    await expect(printerNamed('office', shellIn(folder).shell)).rejects.toThrow('no printer of that name');
  });
});

describe('the file of printers', () => {
  const damaged = [
    'no JSON',
    '[]',
    '{"printers":{}}',
    '{"printers":[{"name":"workshop"}]}',
    '{"printers":[{"name":"workshop","across":"0.993","up":"1"}]}',
    '{"printers":[{"name":"workshop","across":"97.3mm/100mm","up":"100mm/100mm"}]}',
    '{"printers":[{"name":"\\u001b[31m","across":"99.3mm/100mm","up":"100mm/100mm"}]}',
    `{"printers":[{"name":"${'x'.repeat(41)}","across":"99.3mm/100mm","up":"100mm/100mm"}]}`,
    '{"printers":[]}'.padEnd(1_000_001),
  ];

  it.each(damaged)('is left as it is where it is damaged: %s', async (text) => {
    const folder = folderWith();
    const file = fileIn(folder);
    mkdirSync(join(file, '..'), { recursive: true });
    writeFileSync(file, text);
    for (const args of [
      ['list'],
      ['add', 'x', '--across', '99.3mm', '--up', '100mm'],
      ['remove', 'workshop'],
    ]) {
      const run = await printer(folder, ...args);
      expect(run.code).toBe(1);
      expect(told(run).map(({ code }) => code)).toEqual(['damaged']);
    }
    expect(readFileSync(file, 'utf8')).toBe(text);
  });

  it('is not waited for where a pipe stands in its place', { timeout: 10_000 }, async () => {
    const folder = folderWith();
    mkdirSync(join(fileIn(folder), '..'));
    expect(spawnSync('mkfifo', [fileIn(folder)]).status).toBe(0);
    expect(told(await printer(folder, 'list')).map(({ code }) => code)).toEqual(['damaged']);
  });

  it('gives one error where it can not be read', async () => {
    const folder = folderWith();
    mkdirSync(fileIn(folder), { recursive: true });
    const run = await printer(folder, 'list');
    expect([run.code, told(run).map(({ code }) => code)]).toEqual([1, ['unreadable']]);
  });

  it('gives one error where it can not be written, and nothing is left beside it', async () => {
    const folder = folderWith({ copeleaf: 'a file where the folder would be' });
    await expect(changePrinters(fileIn(folder), (printers) => printers, ENGLISH)).rejects.toMatchObject({
      complaint: { code: 'unwritable', file: fileIn(folder) },
    });
    expect(readdirSync(folder)).toEqual(['copeleaf']);
  });
});
