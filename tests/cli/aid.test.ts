import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { pageCountOf, rasterOf, textOf } from '../ink/raster.ts';
import { copeleaf, folderWith, namesIn, type Run } from './run-command.ts';

const AIDS = ['ruler', 'girth', 'bevel'];

function why({ err }: Run): string[] {
  const told: { errors: { why: string }[] } = JSON.parse(err);
  return told.errors.map((each) => each.why);
}

/** Sides of the first page, mm, to a dot at 100 dpi. */
async function sidesOf(pdf: Uint8Array): Promise<number[]> {
  const { width, height } = await rasterOf(pdf, 0, 100);
  return [width, height].map((dots) => (dots / 100) * 25.4);
}

describe.each(AIDS)('copeleaf aid %s', (aid) => {
  it('writes one sheet in this folder, under the name of the aid, and says so', async () => {
    const folder = folderWith();
    const run = await copeleaf(folder, ['aid', aid]);
    expect(run.code).toBe(0);
    expect(run.out).toBe('');
    expect(run.err).toMatch(new RegExp(`^${aid}\\.pdf: .* on 1 sheet\n$`));
    expect(namesIn(folder)).toEqual([`${aid}.pdf`]);
    const pdf = readFileSync(join(folder, `${aid}.pdf`));
    expect(await pageCountOf(pdf)).toBe(1);
    expect((await sidesOf(pdf)).sort((a, b) => a - b).map(Math.round)).toEqual([210, 297]);
  });

  it('takes paper, margin and the name of the file', async () => {
    const folder = folderWith();
    const run = await copeleaf(folder, ['aid', aid, '--paper', 'A3', '--margin', '15', '--out', 'mine.pdf']);
    expect([run.code, namesIn(folder)]).toEqual([0, ['mine.pdf']]);
    const pdf = readFileSync(join(folder, 'mine.pdf'));
    expect((await sidesOf(pdf)).sort((a, b) => a - b).map(Math.round)).toEqual([297, 420]);
    expect(await textOf(pdf, 0)).toContain('A3');
  });

  it('is drawn for a saved printer, and says so', async () => {
    const folder = folderWith();
    const env = { XDG_CONFIG_HOME: join(folder, 'settings'), HOME: folder, APPDATA: folder };
    const add = ['printer', 'add', 'workshop', '--across', '99.3mm', '--up', '100.3mm'];
    expect((await copeleaf(folder, add, { env })).code).toBe(0);
    expect((await copeleaf(folder, ['aid', aid, '--printer', 'workshop'], { env })).code).toBe(0);
    const text = await textOf(readFileSync(join(folder, `${aid}.pdf`)), 0);
    expect(text.replace(/\s+/g, ' ')).toContain('Drawn for the printer “workshop”');
  });
});

it('the same aid gives the same bytes', async () => {
  const folder = folderWith();
  for (const out of ['one.pdf', 'two.pdf']) await copeleaf(folder, ['aid', 'girth', '--out', out]);
  const [one, two] = ['one.pdf', 'two.pdf'].map((name) => readFileSync(join(folder, name)));
  expect(two && one?.equals(two)).toBe(true);
});

describe('what an aid is not printed for', () => {
  it.each([
    [['aid', 'compass'], /Allowed choices are ruler, girth, bevel/],
    [['aid'], /missing required argument/],
    [['aid', 'ruler', '--paper', 'foolscap'], /no paper of that name/],
    [['aid', 'ruler', '--margin', '-3mm'], /less than 0/],
    [['aid', 'ruler', '--margin', '60mm'], /110 mm each way are needed/],
    [['aid', 'girth', '--paper-thickness', '3mm'], /more than 2 mm/],
    [['aid', 'girth', '--printer', 'nobody'], /no printer of that name/],
  ])('%o is wrong input, and writes nothing', async (args, expected) => {
    const folder = folderWith();
    const run = await copeleaf(folder, [...args, '--errors', 'json'], { env: { XDG_CONFIG_HOME: folder } });
    expect(run.code).toBe(2);
    expect(why(run).join()).toMatch(expected);
    expect(namesIn(folder)).toEqual([]);
  });

  it('tells every flag that is wrong', async () => {
    const args = ['aid', 'ruler', '--paper', 'foolscap', '--margin', 'wide', '--errors', 'json'];
    expect(why(await copeleaf(folderWith(), args))).toHaveLength(2);
  });

  it('is a sheet with no room left for the bars once it is drawn for a printer', async () => {
    const folder = folderWith();
    const env = { XDG_CONFIG_HOME: join(folder, 'settings'), HOME: folder, APPDATA: folder };
    await copeleaf(folder, ['printer', 'add', 'workshop', '--across', '99.3mm', '--up', '100mm'], { env });
    const small = ['aid', 'ruler', '--paper', '130x137mm', '--errors', 'json'];
    expect((await copeleaf(folder, [...small, '--printer', 'workshop'], { env })).code).toBe(2);
    expect((await copeleaf(folder, small, { env })).code).toBe(0);
  });
});
