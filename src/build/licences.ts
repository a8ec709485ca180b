import { readdir, readFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Metafile } from 'esbuild';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));

/** Those that let a work be passed on inside another under any licence, if their words go with it. */
const KNOWN = ['MIT', 'ISC', '0BSD', 'BSD-2-Clause', 'BSD-3-Clause', 'BlueOak-1.0.0', 'Unlicense'];

/** The font is carried by a module that is made of it, and its package names no licence but by its file. */
const FONT = {
  module: 'src/ink/font.generated.ts',
  package: 'dejavu-fonts-ttf',
  opening: /^Fonts are \(c\) Bitstream/,
};

/**
 * The licences, word for word, of all packages that are in these bundles, in the order of their names. Throws where one has none that
 * is known here, or none of its words. `root` is the folder with the node_modules that they were bundled from.
 */
export async function licencesOf(
  bundles: readonly Pick<Metafile, 'outputs'>[],
  root = ROOT,
): Promise<string> {
  const inputs = bundles.flatMap(({ outputs }) => Object.values(outputs).flatMap((output) => used(output)));
  const folders = new Set(inputs.flatMap((input) => folderOf(input, root)));
  const notices = await Promise.all([...folders].sort().map(notice));
  return notices.join(`\n${'-'.repeat(72)}\n\n`);
}

/** What is looked at and left out leaves no byte. */
function used({ inputs }: Metafile['outputs'][string]): readonly string[] {
  return Object.entries(inputs).flatMap(([input, { bytesInOutput }]) => (bytesInOutput > 0 ? [input] : []));
}

/** Where the package of an input lies; none for our own modules. A plugin sets its own name before a path. */
function folderOf(input: string, root: string): readonly string[] {
  if (input === FONT.module) return [join(root, 'node_modules', FONT.package)];
  if (/^(src\/|lean-|package\.json$)/.test(input)) return [];
  const [, folder] = /^(?:[\w-]+:)?(.*node_modules\/(?:@[^/]+\/)?[^/]+)\//.exec(input) ?? [];
  if (folder === undefined) throw new Error(`${input} is bundled, and is of no package`);
  return [resolve(root, folder)];
}

async function notice(folder: string): Promise<string> {
  const told: unknown = JSON.parse(await readFile(join(folder, 'package.json'), 'utf8'));
  const [name, version, licence] = ['name', 'version', 'license'].map((key) => stated(told, key));
  const words = await wordsIn(folder, licence);
  const known = KNOWN.includes(licence ?? '') || (name === FONT.package && FONT.opening.test(words));
  if (!known)
    throw new Error(`${name} ${version} is bundled under a licence that is not known: ${licence || 'none'}`);
  if (words === '') throw new Error(`${name} ${version} is bundled, and has no file with its licence`);
  return `${name} ${version}\n\n${words}\n`;
}

function stated(told: unknown, key: string): string {
  const value: unknown = told instanceof Object ? Reflect.get(told, key) : undefined;
  return typeof value === 'string' ? value : '';
}

/** From a file of its own, or from the part of the package's description that is headed by the licence's name. */
async function wordsIn(folder: string, licence = ''): Promise<string> {
  const files = await readdir(folder);
  const own = files.find((each) => /^(licen[cs]e|copying)\b/i.test(each));
  const file = own ?? files.find((each) => /^readme\b/i.test(each));
  if (file === undefined) return '';
  const text = (await readFile(join(folder, file), 'utf8')).replaceAll('\r\n', '\n');
  if (own !== undefined) return text.trim();
  const [, words = ''] = text.split(`\n## ${licence}\n`);
  return (words.split('\n#')[0] ?? '').trim();
}
