import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const COMMAND = fileURLToPath(new URL('../../dist/copeleaf.js', import.meta.url));

export interface Run {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** Runs the built command as a process in a folder, in the C locale unless told. */
export function copeleaf(
  folder: string,
  args: readonly string[],
  more: { input?: string; env?: object } = {},
): Run {
  const { status, stdout, stderr } = spawnSync(process.execPath, [COMMAND, ...args], {
    cwd: folder,
    input: more.input ?? '',
    encoding: 'utf8',
    env: { PATH: process.env.PATH, LANG: 'de_DE.UTF-8', ...more.env },
    maxBuffer: 1 << 28,
  });
  return { code: status, out: stdout, err: stderr };
}

/** A new empty folder with these files in it. */
export function folderWith(files: Readonly<Record<string, string | Uint8Array>> = {}): string {
  const folder = mkdtempSync(join(tmpdir(), 'copeleaf-'));
  for (const [name, text] of Object.entries(files)) writeFileSync(join(folder, name), text);
  return folder;
}

export function namesIn(folder: string): string[] {
  return readdirSync(folder).sort();
}
