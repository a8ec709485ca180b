import { constants } from 'node:fs';
import { access, readlink, realpath, stat } from 'node:fs/promises';
import { dirname, resolve } from 'node:path';

/** Where a file is to stand: at the end of the symbolic links that lead there, with the mode of what stands there now. */
export interface FilePlace {
  readonly target: string;
  readonly mode: number | undefined;
}

/** As many as Linux follows. */
const MOST_LINKS = 40;

const FOR_ANYBODY_TO_WRITE = 0o222;

/** Throws what the system says, and that it is not permitted where a file may not be written, even to who could replace it. */
export async function filePlaceOf(path: string): Promise<FilePlace> {
  const target = await endOfLinks(path, MOST_LINKS);
  const found = await stat(target).catch((error: unknown) => {
    if (errorCode(error) === 'ENOENT') return undefined;
    throw error;
  });
  if (found === undefined) return { target, mode: undefined };
  await access(target, constants.W_OK);
  if ((found.mode & FOR_ANYBODY_TO_WRITE) === 0) throw systemError('EACCES');
  return { target, mode: found.mode & 0o7777 };
}

/** The last link may lead to a file that is not there yet. */
async function endOfLinks(path: string, more: number): Promise<string> {
  const to = await readlink(path).catch(() => undefined);
  if (to === undefined) return path;
  if (more === 0) throw systemError('ELOOP');
  return endOfLinks(resolve(await realpath(dirname(path)), to), more - 1);
}

function systemError(code: string): Error {
  return Object.assign(new Error(code), { code });
}

/** What the system calls the trouble. */
export function errorCode(error: unknown): string {
  return error instanceof Error && 'code' in error ? String(error.code) : String(error);
}
