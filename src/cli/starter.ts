import { readdir, readFile, stat } from 'node:fs/promises';
import { resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { nearest } from '../job/text/nearest.ts';
import type { Said } from '../measure/said.ts';
import { asWritten, endedLines, inColumn, joined } from '../words/said.ts';
import { dataOf } from './data.ts';
import { writeResult } from './files.ts';
import type { Shell } from './shell.ts';
import { refuse, refuseArgument } from './trouble.ts';

/** `copeleaf starter`: lists the jobs to begin from, or writes one into the current folder. */
export async function starter(
  name: string | undefined,
  options: { readonly out?: string },
  shell: Shell,
): Promise<void> {
  const { words } = shell;
  const { commandFaults: faults } = words;
  const names = (await readdir(templatesOf(shell)))
    .filter((file) => file.endsWith('.yaml'))
    .map((file) => file.slice(0, -5));
  if (name === undefined) {
    return shell.out(endedLines(await Promise.all(names.sort().map((each) => lineOf(each, shell)))));
  }
  if (!names.includes(name)) {
    const near = nearest(name, names);
    throw refuseArgument('no-starter', name, faults.noStarter(near, names), words);
  }
  const target = options.out ?? `${name}.yaml`;
  if (target !== '-' && (await stat(resolve(shell.cwd, target)).catch(() => undefined))?.isFile()) {
    throw refuse('file-exists', target, target, faults.fileExists, words);
  }
  await writeResult(target, dataOf(await textOf(name, shell)), shell);
  if (target !== '-') shell.err(endedLines([words.commandAnswers.starterWritten(target)]));
}

async function textOf(name: string, shell: Shell): Promise<string> {
  return readFile(fileURLToPath(new URL(`${name}.yaml`, templatesOf(shell))), 'utf8');
}

/** A starter and what it is for, which stands in its first comment. */
async function lineOf(name: string, shell: Shell): Promise<Said> {
  const comment = /^#(.*)$/m.exec(await textOf(name, shell));
  return joined([inColumn(asWritten(name), 14), asWritten(comment?.[1]?.trim() ?? '')], '');
}

function templatesOf(shell: Shell): URL {
  return new URL('templates/', shell.home);
}
