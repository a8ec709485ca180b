import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { copeleaf, folderWith, namesIn } from './run-command.ts';

const JOB = `copeleaf: 1
stock: [2m x 2]
tube:
  name: rung
  od: 25
  between: 500
  copies: 5
  ends: { A: { onto: { plate: {} }, angle: 90 }, B: plain }
`;

describe('cutlist', () => {
  it('tells what to cut and from which stock, and writes no file', async () => {
    const folder = folderWith({ 'job.yaml': JOB });
    const { code, out, err } = await copeleaf(folder, ['cutlist', 'job.yaml']);
    expect({ code, err, files: namesIn(folder) }).toEqual({ code: 0, err: '', files: ['job.yaml'] });
    expect(out).toContain('rung');
    // 510 and 3 mm of kerf go into 2 m three times.
    expect(out).toContain('2m no. 1: 3 x rung 510 mm; offcut 1: 461 mm');
    expect(out).toContain('2m no. 2: 2 x rung 510 mm');
  });

  it('writes JSON and CSV, from standard input and into a file', async () => {
    const folder = folderWith();
    const data = await copeleaf(folder, ['cutlist', '-', '--as', 'json'], { input: JOB });
    expect(JSON.parse(data.out)).toMatchObject({
      units: 'mm',
      tubes: [{ name: 'rung', copies: 5, blank: 510 }],
      stock: { kerf: 3, sizes: [{ total: 4000, least: 4000 }] },
    });
    const { code, out } = await copeleaf(folder, ['cutlist', '-', '--as', 'csv', '--out', 'list.csv'], {
      input: JOB,
    });
    expect({ code, out }).toEqual({ code: 0, out: '' });
    expect(readFileSync(join(folder, 'list.csv'), 'utf8').split('\n')[1]).toMatch(/^rung,as-drawn,5,/);
  });

  it('takes a job and no flags of one end', async () => {
    expect((await copeleaf(folderWith(), ['cutlist'])).code).toBe(2);
    expect((await copeleaf(folderWith(), ['cutlist', 'nothing.yaml'])).code).toBe(2);
    expect(
      (await copeleaf(folderWith({ 'job.yaml': JOB }), ['cutlist', 'job.yaml', '--od', '30'])).code,
    ).toBe(2);
  });
});

it('what finds no stock is told alike by the cut list, by check and by print', async () => {
  const job = `copeleaf: 1\nstock: [400mm]\ntube: { name: stay, od: 38.1, between: 600, ends: { A: plain, B: { onto: { od: 44.5 }, angle: 60 } } }\n`;
  const folder = folderWith({ 'job.yaml': job });
  const list = await copeleaf(folder, ['cutlist', 'job.yaml']);
  const told = /No stock for: .*$/m.exec(list.out)?.[0] ?? 'it tells none';
  const check = await copeleaf(folder, ['check', 'job.yaml']);
  expect(check.out).toContain(told);
  expect((await copeleaf(folder, ['check', 'job.yaml', '--strict'])).code).toBe(2);
  expect((await copeleaf(folder, ['check', 'job.yaml', '--as', 'json'])).out).toContain(told);
  expect((await copeleaf(folder, ['print', 'job.yaml'])).err).toContain(told);
});
