import { readdir, readFile, stat } from 'node:fs/promises';
import { resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { nearest } from '../job/text/nearest.ts';
import { writeResult } from './files.ts';
import type { Shell } from './shell.ts';
import { refuse } from './trouble.ts';

/** `copeleaf starter`: lists the jobs to begin from, or writes one into the current folder. */
export async function starter(
  name: string | undefined,
  options: { readonly out?: string },
  shell: Shell,
): Promise<void> {
  const names = (await readdir(templatesOf(shell)))
    .filter((file) => file.endsWith('.yaml'))
    .map((file) => file.slice(0, -5));
  if (name === undefined) {
    const lines = await Promise.all(
      names.sort().map(async (each) => `${each.padEnd(14)}${await purposeOf(each, shell)}`),
    );
    return shell.out(`${lines.join('\n')}\n`);
  }
  if (!names.includes(name)) {
    const near = nearest(name, names);
    throw refuse('no-starter', 'command line', name, 'there is no such starter', near ?? names.join(', '));
  }
  const target = options.out ?? `${name}.yaml`;
  if (target !== '-' && (await stat(resolve(shell.cwd, target)).catch(() => undefined))?.isFile()) {
    throw refuse(
      'file-exists',
      target,
      target,
      'there is such a file, and it may hold your work',
      'another name with --out',
    );
  }
  await writeResult(target, await textOf(name, shell), shell);
  if (target !== '-')
    shell.err(`${target}: edit it, then copeleaf check ${target} and copeleaf print ${target}\n`);
}

async function textOf(name: string, shell: Shell): Promise<string> {
  return readFile(fileURLToPath(new URL(`${name}.yaml`, templatesOf(shell))), 'utf8');
}

/** What a starter is for stands in its first comment. */
async function purposeOf(name: string, shell: Shell): Promise<string> {
  const comment = /^#\s*(.*)$/m.exec(await textOf(name, shell));
  return comment?.[1] ?? '';
}

function templatesOf(shell: Shell): URL {
  return new URL('templates/', shell.home);
}
