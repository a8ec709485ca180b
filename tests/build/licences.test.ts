import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { licencesOf } from '../../src/build/licences.ts';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));

/** The packages that the program's own modules import by name, however they come into a bundle. */
async function imported(folders: readonly string[]): Promise<readonly string[]> {
  const names = new Set<string>();
  for (const folder of folders) {
    for (const file of await readdir(`${ROOT}src/${folder}`, { recursive: true })) {
      if (!/\.tsx?$/.test(file)) continue;
      const text = await readFile(`${ROOT}src/${folder}/${file}`, 'utf8');
      const found = text.matchAll(/^import (?!type ).*?from '((?:@[\w-]+\/)?[\w.-]+)/gm);
      for (const [, name = ''] of found)
        if (/^[@\w]/.test(name) && !name.startsWith('node:')) names.add(name);
    }
  }
  return [...names].filter((name) => name !== 'node');
}

async function wordsOf(name: string): Promise<string> {
  const folder = `${ROOT}node_modules/${name}/`;
  const file = (await readdir(folder)).find((each) => /^licen[cs]e/i.test(each));
  const words = await readFile(folder + (file ?? 'README.md'), 'utf8');
  // Where a package has none but in its description, they are the last part of it.
  return (file ? words : words.slice(words.lastIndexOf('\n## ')))
    .replace(/^\n## .*/, '')
    .replaceAll('\r\n', '\n')
    .trim();
}

const ABOVE_PAGE = ['draw', 'fit', 'ink', 'job', 'leaf', 'measure', 'saddle', 'shop', 'tiler', 'page'];

test.each([
  ['package', 'dist/LICENCES', [...ABOVE_PAGE, 'cli']],
  ['page', 'dist/copeleaf.html', ABOVE_PAGE],
])(
  'the licences of all that is imported, and of the font, stand whole in the %s',
  async (_, file, folders) => {
    const packages = [...(await imported(folders)), 'dejavu-fonts-ttf'];
    expect(packages).toEqual(expect.arrayContaining(['pdf-lib', 'yaml', 'ogl', '@svgdotjs/svg.js']));
    const told = (await readFile(ROOT + file, 'utf8')).replaceAll('&lt;', '<').replaceAll('&amp;', '&');
    for (const name of packages) expect(told, name).toContain(await wordsOf(name));
  },
);

/** What `licencesOf` says of a bundle that holds one module of a package with this licence and these files. */
async function ofPackage(
  license: string | undefined,
  files: Readonly<Record<string, string>>,
): Promise<string> {
  const root = await mkdtemp(join(tmpdir(), 'licences-'));
  try {
    const folder = join(root, 'node_modules/@maker/part');
    await mkdir(folder, { recursive: true });
    await writeFile(
      join(folder, 'package.json'),
      JSON.stringify({ name: '@maker/part', version: '1.2.3', license }),
    );
    for (const [name, text] of Object.entries(files)) await writeFile(join(folder, name), text);
    const input = { 'node_modules/@maker/part/lib/index.js': { bytesInOutput: 7 } };
    const output = { bytes: 7, inputs: input, imports: [], exports: [] };
    return await licencesOf([{ outputs: { 'dist/index.js': output } }], root);
  } finally {
    await rm(root, { recursive: true });
  }
}

test('a bundled package is told with its version and the words of its licence', async () => {
  expect(await ofPackage('MIT', { 'LICENSE.md': 'Do as you like.\r\nAt your risk.\r\n' })).toBe(
    '@maker/part 1.2.3\n\nDo as you like.\nAt your risk.\n',
  );
});

test('a licence that stands under its name in the package’s description is told from there', async () => {
  const description = '# Part\n\nBends things.\n\n## Unlicense\n\nDo as you like.\n\n## Thanks\n\nTo all.\n';
  expect(await ofPackage('Unlicense', { 'README.md': description })).toBe(
    '@maker/part 1.2.3\n\nDo as you like.\n',
  );
});

test.each([
  [
    'a licence that is not known',
    'GPL-3.0-only',
    { LICENSE: 'Share alike.' },
    /@maker\/part 1\.2\.3.*GPL-3\.0-only/,
  ],
  ['no licence', undefined, { LICENSE: 'All rights reserved.' }, /@maker\/part 1\.2\.3.*none/],
  ['a licence whose words are not there', 'MIT', {}, /@maker\/part 1\.2\.3.*no file/],
  [
    'a licence that the description only names',
    'MIT',
    { 'README.md': '# Part\n\nLicence: MIT\n' },
    /@maker\/part 1\.2\.3.*no file/,
  ],
] as const)('%s fails the build', async (_, license, files, why) => {
  await expect(ofPackage(license, files)).rejects.toThrow(why);
});

test('what is bundled and is of no package fails the build', async () => {
  const output = { bytes: 7, inputs: { '../found.js': { bytesInOutput: 7 } }, imports: [], exports: [] };
  await expect(licencesOf([{ outputs: { 'dist/index.js': output } }])).rejects.toThrow(/found\.js/);
});
