import {
  closeSync,
  fchmodSync,
  openSync,
  readdirSync,
  renameSync,
  rmSync,
  statSync,
  writeFile,
} from 'node:fs';
import { hostname } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { errorCode } from './place.ts';

/** A file that is not whole yet, under a name that tells whose it is, so that the next run knows what a killed one left. */
export interface Unfinished {
  readonly name: string;
  /** Writes it, gives it this mode and puts it in place of `target`, whole; throws what the system says. */
  readonly finish: (target: string, data: string | Uint8Array, mode: number | undefined) => Promise<void>;
  /** Takes it away, if it is there still. */
  readonly drop: () => void;
}

const MARK = '.copeleaf-';

/** In letters that every system takes in a name, and few of them. */
const HOST = hostname().replace(/\W/g, '_').slice(0, 60);

/** Longer than any file takes to write: what is older is nobody's, even where another process has the number by now. */
const LONGEST_MS = 600_000;

/** Begins a file in this folder, which nobody may read who may not read what it will be. */
export function beginIn(folder: string, mode: number | undefined): Unfinished {
  const name = `${MARK}${HOST}-${process.pid}-${process.hrtime.bigint()}`;
  const path = join(folder, name);
  let file: number | undefined;
  const close = (): void => {
    const opened = file;
    file = undefined;
    if (opened !== undefined) closeSync(opened);
  };
  const drop = (): void => {
    rmSync(path, { force: true });
    close();
    forget();
  };
  // Before there is a file; what follows but for the writing is done at once, so that a signal never comes between a file and its name.
  const forget = onStop(drop);
  try {
    file = openSync(path, 'wx', mode);
  } catch (error) {
    forget();
    throw error;
  }
  const finish: Unfinished['finish'] = async (target, data, finalMode) => {
    if (file === undefined) throw new Error(`${path} was finished before`);
    await promisify(writeFile)(file, data);
    if (finalMode !== undefined) fchmodSync(file, finalMode);
    close();
    renameSync(path, target);
    forget();
  };
  return { name, finish, drop };
}

/** Undoes something where the process is told to stop, and lets it stop then. Gives how to forget about it. */
function onStop(undo: () => void): () => void {
  const signals = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;
  const stop = (signal: NodeJS.Signals): void => {
    undo();
    process.kill(process.pid, signal);
  };
  for (const signal of signals) process.on(signal, stop);
  return () => {
    for (const signal of signals) process.off(signal, stop);
  };
}

/** The names of the files that runs are at in this folder. What a run has left that is no more is taken away. */
export function unfinishedIn(folder: string): readonly string[] {
  return readdirSync(folder).filter((name) => {
    if (!name.startsWith(MARK)) return false;
    const path = join(folder, name);
    const left = isLeft(path, name);
    if (left) rmSync(path, { force: true });
    return !left;
  });
}

function isLeft(path: string, name: string): boolean {
  const written = statSync(path, { throwIfNoEntry: false })?.mtimeMs;
  if (written === undefined) return true;
  const [, host, pid] = /^(\w+)-(\d+)-\d+$/.exec(name.slice(MARK.length)) ?? [];
  return Date.now() - written > LONGEST_MS || (host === HOST && !isRunning(Number(pid)));
}

function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    // Another person's process may not be asked, but it is there.
    return errorCode(error) === 'EPERM';
  }
}
