import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { someOf } from '../count.ts';
import { pageCountOf, textOf } from '../ink/raster.ts';
import { copeleaf, folderWith, namesIn } from './run-command.ts';

const TEMPLATES = new URL('../../templates/', import.meta.url);

/** The starters, by the files that they are. */
const STARTERS = readdirSync(TEMPLATES).map((file) => file.replace(/\.yaml$/, ''));

/** A frame takes as long as all the others. */
const isFrame = (name: string): boolean =>
  /^frame:/m.test(readFileSync(new URL(`${name}.yaml`, TEMPLATES), 'utf8'));
const ONE_TUBE = STARTERS.filter((name) => !isFrame(name));
const FRAMES = STARTERS.filter(isFrame);

describe('the starters', () => {
  it('are listed, each with what it is for, and nothing is written', async () => {
    const folder = folderWith();
    const { code, out, err } = await copeleaf(folder, ['starter']);
    expect({ code, err, files: namesIn(folder) }).toEqual({ code: 0, err: '', files: [] });
    const lines = out.trimEnd().split('\n');
    expect(lines.map((line) => line.split(' ')[0])).toEqual([...STARTERS].sort());
    for (const line of lines) expect(line).toMatch(/^\S+ +\S.{20,}$/);
  });

  it.each([...ONE_TUBE, ...someOf(FRAMES, { short: 1 })])(
    '%s is written as it is, and goes through check and print',
    async (name) => {
      const folder = folderWith();
      const written = await copeleaf(folder, ['starter', name]);
      expect({ code: written.code, out: written.out }).toEqual({ code: 0, out: '' });
      expect(written.err).toContain(`copeleaf check ${name}.yaml`);
      const job = readFileSync(join(folder, `${name}.yaml`), 'utf8');
      expect(job).toBe(readFileSync(new URL(`${name}.yaml`, TEMPLATES), 'utf8'));

      const tube = /^(?: +| +- \{ )name: ([^,\n]*)/m.exec(job)?.[1] ?? '';
      expect(tube).not.toBe('');
      const checked = await copeleaf(folder, ['check', `${name}.yaml`]);
      expect({ code: checked.code, err: checked.err }).toEqual({ code: 0, err: '' });
      expect(checked.out.toLowerCase()).toContain(tube.toLowerCase());

      const { code, out } = await copeleaf(folder, ['print', `${name}.yaml`]);
      expect({ code, out, files: namesIn(folder) }).toEqual({
        code: 0,
        out: '',
        files: [`${name}.pdf`, `${name}.yaml`],
      });
      const pdf = readFileSync(join(folder, `${name}.pdf`));
      const pages = Array.from({ length: await pageCountOf(pdf) }, (_, page) => textOf(pdf, page));
      expect((await Promise.all(pages)).join()).toContain(tube);
    },
  );

  it('are written to the file that --out names, or to standard output', async () => {
    const folder = folderWith();
    const source = readFileSync(new URL('rung.yaml', TEMPLATES), 'utf8');
    expect((await copeleaf(folder, ['starter', 'rung', '--out', 'mine.yaml'])).err).toMatch(/^mine\.yaml: /);
    expect(readFileSync(join(folder, 'mine.yaml'), 'utf8')).toBe(source);
    expect(await copeleaf(folder, ['starter', 'rung', '--out', '-'])).toEqual({
      code: 0,
      out: source,
      err: '',
    });
    expect(namesIn(folder)).toEqual(['mine.yaml']);
  });

  it.each([
    ['its own name', 'rung.yaml', []],
    ['the name given by --out', 'mine.yaml', ['--out', 'mine.yaml']],
  ] as const)('do not overwrite a file of %s', async (_, file, more) => {
    const folder = folderWith({ [file]: 'my work\n' });
    const { code, out, err } = await copeleaf(folder, ['starter', 'rung', ...more]);
    expect({ code, out, files: namesIn(folder) }).toEqual({ code: 2, out: '', files: [file] });
    expect(readFileSync(join(folder, file), 'utf8')).toBe('my work\n');
    expect(err).toContain(file);
    expect(err).toMatch(/^ {2}instead {2}.*--out/m);
  });
});
