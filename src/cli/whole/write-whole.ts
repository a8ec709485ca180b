import { mkdir, stat } from 'node:fs/promises';
import { dirname } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { errorCode, filePlaceOf } from './place.ts';
import { beginIn, type Unfinished, unfinishedIn } from './unfinished.ts';

/** Writes a file beside its place and then into it, so that it is whole or as it was. Throws what the system says. */
export async function writeWhole(path: string, data: string | Uint8Array): Promise<void> {
  const { target, mode } = await filePlaceOf(path);
  const own = beginIn(dirname(target), mode);
  try {
    clear(dirname(target));
    await own.finish(target, data, mode);
  } finally {
    own.drop();
  }
}

/** A folder that may be written to and not looked into is no reason to write nothing. */
function clear(folder: string): void {
  try {
    unfinishedIn(folder);
  } catch {}
}

/**
 * Writes a file anew from what it holds, one run after the other, so that none undoes what another wrote. Its folder is made
 * where there is none. Throws what `change` throws, and what the system says; EBUSY where others are at it for a minute.
 */
export async function changeWhole(path: string, change: (path: string) => Promise<string>): Promise<void> {
  await makeFolder(dirname(path));
  const { target, mode } = await filePlaceOf(path);
  const own = await beginAlone(dirname(target), mode);
  try {
    await own.finish(target, await change(target), mode);
  } finally {
    own.drop();
  }
}

const LONGEST_WAIT_MS = 60_000;

/**
 * An unfinished file is also the turn of whose it is. Who begins one and then sees no other is alone, for whoever comes later sees it; of
 * several that see one another the first by name waits, and the others make room. What a killed run left is nobody's turn.
 */
async function beginAlone(folder: string, mode: number | undefined): Promise<Unfinished> {
  const until = Date.now() + LONGEST_WAIT_MS;
  let own = beginIn(folder, mode);
  try {
    for (;;) {
      const others = unfinishedIn(folder).filter((name) => name !== own.name);
      if (others.length === 0) return own;
      if (Date.now() > until) throw Object.assign(new Error('EBUSY'), { code: 'EBUSY' });
      const first = others.every((name) => own.name < name);
      if (!first) own.drop();
      await pause(5 + 20 * Math.random());
      if (!first) own = beginIn(folder, mode);
    }
  } catch (error) {
    own.drop();
    throw error;
  }
}

/** Node's own way to make a folder with those above it tries for ever where the system has no such place. */
async function makeFolder(folder: string): Promise<void> {
  const there = await stat(folder).then(
    () => true,
    () => false,
  );
  if (there) return;
  if (dirname(folder) !== folder) await makeFolder(dirname(folder));
  await mkdir(folder).catch((error: unknown) => {
    if (errorCode(error) !== 'EEXIST') throw error;
  });
}
