import { readFile, rename, rm, stat, writeFile } from 'node:fs/promises';
import { resolve } from 'node:path';
import { besideOf } from './beside.ts';
import type { Shell } from './shell.ts';
import { Obstacle, refuse } from './trouble.ts';

/** Reads a job file, or standard input for `-`. A missing file or a folder is wrong input. */
export async function readText(path: string, shell: Shell): Promise<string> {
  if (path === '-') return shell.input();
  try {
    return await readFile(resolve(shell.cwd, path), 'utf8');
  } catch (error) {
    throw readTrouble(error, path);
  }
}

/** What the system says of a path that leads nowhere, or of a text that can be no path. */
const NO_SUCH_PATH = new Set(['ENOENT', 'ENOTDIR', 'ENAMETOOLONG', 'ELOOP', 'ERR_INVALID_ARG_VALUE']);

function readTrouble(error: unknown, path: string): Error {
  const code = errorCode(error);
  if (NO_SUCH_PATH.has(code)) {
    return refuse(
      'no-file',
      path,
      path,
      'there is no such file',
      'the path of a job file, or - to read it from a pipe',
    );
  }
  if (code === 'EISDIR') {
    return refuse('is-folder', path, path, 'this is a folder', 'the path of one job file in it');
  }
  return new Obstacle({
    code: 'unreadable',
    file: path,
    read: path,
    why: `the file can't be read (${code})`,
    instead: 'see to its permissions, or copy it elsewhere',
  });
}

/** Writes a result to standard output for `-`, else beside its final name and then into place, whole or not at all. */
export async function writeResult(path: string, data: string | Uint8Array, shell: Shell): Promise<void> {
  if (path === '-') return shell.out(data);
  const target = resolve(shell.cwd, path);
  const found = await stat(target).catch(() => undefined);
  if (found?.isDirectory()) {
    throw refuse(
      'is-folder',
      path,
      `--out ${path}`,
      'this is a folder',
      'the name of a file, in it if you like',
    );
  }
  // A device or a pipe is written to as it is: renaming would put a plain file in its place.
  if (found && !found.isFile()) return writeOnto(target, data, path);
  const unfinished = besideOf(target);
  try {
    await writeFile(unfinished, data, { flag: 'wx' });
    await rename(unfinished, target);
  } catch (error) {
    await rm(unfinished, { force: true }).catch(() => undefined);
    throw writeTrouble(error, path);
  }
}

async function writeOnto(target: string, data: string | Uint8Array, path: string): Promise<void> {
  try {
    await writeFile(target, data);
  } catch (error) {
    throw writeTrouble(error, path);
  }
}

function writeTrouble(error: unknown, path: string): Error {
  const code = errorCode(error);
  if (NO_SUCH_PATH.has(code)) {
    return refuse(
      'no-folder',
      path,
      path,
      'the folder to write into does not exist',
      'a folder that is there, or make it first',
    );
  }
  return new Obstacle({
    code: 'unwritable',
    file: path,
    read: path,
    why: `the file can't be written (${code})`,
    instead: 'another folder with --out, or see to permissions and space',
  });
}

function errorCode(error: unknown): string {
  return error instanceof Error && 'code' in error ? String(error.code) : String(error);
}
