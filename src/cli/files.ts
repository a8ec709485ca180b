import { createReadStream } from 'node:fs';
import { stat, writeFile } from 'node:fs/promises';
import { resolve } from 'node:path';
import { MOST_OF_A_JOB } from '../job/text/limits.ts';
import type { Said } from '../measure/said.ts';
import type { Language } from '../words/language.ts';
import { inputOf, type Shell } from './shell.ts';
import { Obstacle, refuse } from './trouble.ts';
import { errorCode } from './whole/place.ts';
import { writeWhole } from './whole/write-whole.ts';

/** Reads a job file, or standard input for `-`. A missing file or a folder is wrong input. */
export async function readText(path: string, shell: Shell): Promise<string> {
  return new TextDecoder('utf-8', { ignoreBOM: true }).decode(await readBytes(path, shell));
}

/** The same as bytes, no more than so many. */
export async function readBytes(path: string, shell: Shell, most = MOST_OF_A_JOB): Promise<Uint8Array> {
  const { words } = shell;
  const bytes = await (path === '-' ? shell.input(most) : bytesOf(path, shell, most));
  if (bytes.length > most) {
    const file = path === '-' ? words.commandFaults.standardInput : path;
    throw refuse('too-large', file, path, words.job.text.tooLarge, words);
  }
  return bytes;
}

/** Not more of a file than may be and a little: a device has no end. */
async function bytesOf(path: string, { cwd, words }: Shell, most: number): Promise<Uint8Array> {
  try {
    return await inputOf(createReadStream(resolve(cwd, path)), most);
  } catch (error) {
    throw readTrouble(error, path, words);
  }
}

/** What the system says of a path that leads nowhere, or of a text that can be no path. */
const NO_SUCH_PATH = new Set(['ENOENT', 'ENOTDIR', 'ENAMETOOLONG', 'ELOOP', 'ERR_INVALID_ARG_VALUE']);

function readTrouble(error: unknown, path: string, words: Language): Error {
  const code = errorCode(error);
  const { commandFaults: faults } = words;
  if (NO_SUCH_PATH.has(code)) return refuse('no-file', path, path, faults.noFile, words);
  if (code === 'EISDIR') return refuse('is-folder', path, path, faults.folderForJob, words);
  return new Obstacle('unreadable', path, faults.unreadable(code));
}

/** Throws `Refusal` where a result would be written over the file that it is read from, by whatever name. */
export async function refuseOwnInput(
  path: string | undefined,
  target: string,
  { cwd, words }: Shell,
): Promise<void> {
  if (path === undefined || path === '-' || target === '-') return;
  const [input, there] = await Promise.all(
    [path, target].map((each) => stat(resolve(cwd, each)).catch(() => undefined)),
  );
  if (there?.isFile() && input?.ino === there.ino && input.dev === there.dev)
    throw refuse('own-input', target, target, words.commandFaults.ownInput, words);
}

/** Writes a result to standard output for `-`, else to a file, whole or not at all. */
export async function writeResult(path: string, result: Said | Uint8Array, shell: Shell): Promise<void> {
  if (path === '-') return shell.out(result);
  const target = resolve(shell.cwd, path);
  const found = await stat(target).catch(() => undefined);
  if (/[^/]\/$/.test(path) && !found?.isDirectory()) {
    throw refuse('no-folder', path, `--out ${path}`, shell.words.commandFaults.noFolder, shell.words);
  }
  if (found?.isDirectory()) {
    throw refuse('is-folder', path, `--out ${path}`, shell.words.commandFaults.folderForResult, shell.words);
  }
  // A device or a pipe is written to as it is: renaming would put a plain file in its place.
  const write = found && !found.isFile() ? writeFile : writeWhole;
  await write(target, result).catch((error: unknown) => {
    throw writeTrouble(error, path, shell.words);
  });
}

function writeTrouble(error: unknown, path: string, words: Language): Error {
  const code = errorCode(error);
  const { commandFaults: faults } = words;
  if (code === 'ENAMETOOLONG') return refuse('long-name', path, path, faults.longPath, words);
  if (NO_SUCH_PATH.has(code)) return refuse('no-folder', path, path, faults.noFolder, words);
  return new Obstacle('unwritable', path, faults.unwritable(code));
}
