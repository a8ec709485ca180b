import { readFile, stat } from 'node:fs/promises';
import { homedir } from 'node:os';
import { isAbsolute, join } from 'node:path';
import { asMeasured, type Printer, readMeasured, readPrinter } from '../../job/paper/printer.ts';
import type { Language } from '../../words/language.ts';
import { Obstacle } from '../trouble.ts';
import { errorCode } from '../whole/place.ts';
import { changeWhole } from '../whole/write-whole.ts';
import { wrongWithName } from './printer-name.ts';

export type Environment = Readonly<Record<string, string | undefined>>;

/**
 * Where saved printers are: in the folder that the system keeps for such settings. On Linux that is XDG_CONFIG_HOME, and
 * ~/.config where it is not set or relative (XDG Base Directory Specification; from memory).
 */
export function printerFileOf(env: Environment, platform: NodeJS.Platform = process.platform): string {
  return join(settingsFolder(env, platform), 'copeleaf', 'printers.json');
}

function settingsFolder(env: Environment, platform: NodeJS.Platform): string {
  const home = env.HOME || env.USERPROFILE || homedir();
  if (platform === 'win32') return env.APPDATA || join(home, 'AppData', 'Roaming');
  if (platform === 'darwin') return join(home, 'Library', 'Application Support');
  const { XDG_CONFIG_HOME } = env;
  return XDG_CONFIG_HOME && isAbsolute(XDG_CONFIG_HOME) ? XDG_CONFIG_HOME : join(home, '.config');
}

/** The saved printers; none where there is no file yet. Throws an Obstacle where the file can't be read or is damaged. */
export async function readPrinters(file: string, words: Language): Promise<readonly Printer[]> {
  const { commandFaults: faults } = words;
  if (await isNoSettings(file)) throw new Obstacle('damaged', file, faults.printersDamaged);
  const text = await readFile(file, 'utf8').catch((error: unknown) => {
    if (errorCode(error) === 'ENOENT') return undefined;
    throw new Obstacle('unreadable', file, faults.printersUnreadable(errorCode(error)));
  });
  if (text === undefined) return [];
  const printers = printersIn(text);
  if (printers !== undefined) return printers;
  throw new Obstacle('damaged', file, faults.printersDamaged);
}

/** In bytes: of more printers than any shop has. */
const MOST_OF_SETTINGS = 1_000_000;

/** Whether something stands there that would be read for ever, or for long. */
async function isNoSettings(file: string): Promise<boolean> {
  const found = await stat(file).catch(() => undefined);
  if (found === undefined || found.isDirectory()) return false;
  return !found.isFile() || found.size > MOST_OF_SETTINGS;
}

/** Saves other printers in place of those in the file, one run after the other. Throws an Obstacle as `readPrinters` does. */
export async function changePrinters(
  file: string,
  change: (printers: readonly Printer[]) => readonly Printer[],
  words: Language,
): Promise<void> {
  try {
    await changeWhole(file, async (target) => textOf(change(await readPrinters(target, words))));
  } catch (error) {
    if (error instanceof Obstacle) throw error;
    throw new Obstacle('unwritable', file, words.commandFaults.printersUnwritable(errorCode(error)));
  }
}

function textOf(printers: readonly Printer[]): string {
  const kept = printers.map(({ name, across, up }) => ({
    name,
    across: asMeasured(across),
    up: asMeasured(up),
  }));
  return `${JSON.stringify({ printers: kept }, null, 2)}\n`;
}

/** Undefined where the text is not what `changePrinters` writes, or a reading in it would have been refused. */
function printersIn(text: string): readonly Printer[] | undefined {
  const data = parsed(text);
  if (!isRecord(data) || !Array.isArray(data.printers)) return undefined;
  const printers = data.printers.map(printerIn);
  const sound = printers.filter((printer) => printer !== undefined);
  const names = new Set(sound.map(({ name }) => name));
  return sound.length === printers.length && names.size === sound.length ? sound : undefined;
}

function printerIn(data: unknown): Printer | undefined {
  if (!isRecord(data)) return undefined;
  const { name, across, up } = data;
  if (typeof name !== 'string' || typeof across !== 'string' || typeof up !== 'string') return undefined;
  if (wrongWithName(name) !== undefined) return undefined;
  const [first, second] = [readMeasured('across', across), readMeasured('up', up)];
  if (!first.ok || !second.ok) return undefined;
  const printer = readPrinter(name, first.value, second.value);
  return printer.ok ? printer.value : undefined;
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

function isRecord(data: unknown): data is Record<string, unknown> {
  return typeof data === 'object' && data !== null;
}
