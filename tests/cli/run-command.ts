import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { main } from '../../src/cli/main.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { DEEP } from '../count.ts';

const HOME = new URL('../../', import.meta.url);
export const COMMAND = fileURLToPath(new URL('dist/copeleaf.js', HOME));
/** Where A4 is the paper. */
const REGION = { LANG: 'de_DE.UTF-8' };

export interface Run {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** A run whose standard output is no text. */
export interface BytesRun {
  readonly code: number | null;
  readonly bytes: Buffer;
  readonly err: string;
}

interface More {
  readonly input?: string;
  readonly env?: Readonly<Record<string, string>>;
}

/** Runs the command in a folder, in a region of A4 unless told: in this process; in a deep run as one of its own. */
export async function copeleaf(folder: string, args: readonly string[], more: More = {}): Promise<Run> {
  const { code, bytes, err } = await copeleafBytes(folder, args, more);
  return { code, out: bytes.toString('utf8'), err };
}

export async function copeleafBytes(
  folder: string,
  args: readonly string[],
  more: More = {},
): Promise<BytesRun> {
  return DEEP ? asProcess(folder, args, more) : inProcess(folder, args, more);
}

/** The command's main function, called. */
export async function inProcess(folder: string, args: readonly string[], more: More = {}): Promise<BytesRun> {
  const out: Buffer[] = [];
  let err = '';
  const code = await main(args, {
    words: ENGLISH,
    cwd: folder,
    home: HOME,
    env: { ...REGION, ...more.env },
    out: async (data) => {
      out.push(Buffer.from(data));
    },
    err: (text) => {
      err += text;
    },
    input: async () => Buffer.from(more.input ?? ''),
  });
  return { code, bytes: Buffer.concat(out), err };
}

/** The built command, as people run it. */
export function asProcess(folder: string, args: readonly string[], more: More = {}): BytesRun {
  const { status, stdout, stderr } = spawnSync(process.execPath, [COMMAND, ...args], {
    cwd: folder,
    input: more.input ?? '',
    env: { PATH: process.env.PATH, ...REGION, ...more.env },
    maxBuffer: 1 << 28,
  });
  return { code: status, bytes: stdout, err: stderr.toString('utf8') };
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
