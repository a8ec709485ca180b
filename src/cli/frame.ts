import { stat } from 'node:fs/promises';
import { basename, extname, resolve } from 'node:path';
import { frameOfLines } from '../frame/lines/frame-of-lines.ts';
import type { LengthUnit } from '../measure/units.ts';
import { fileOfTube } from '../shop/frame/file-of-tube.ts';
import { endedLines } from '../words/said.ts';
import { readAsk } from './ask.ts';
import { dataOf } from './data.ts';
import { readBytes, refuseOwnInput, writeResult } from './files.ts';
import { nameAsked } from './only.ts';
import type { Shell } from './shell.ts';
import { refuse, refuseArgument } from './trouble.ts';

export interface FrameOptions {
  readonly units?: LengthUnit;
  readonly up?: 'y' | 'z';
  readonly od?: string;
  readonly wall?: string;
  readonly snap?: string;
  readonly keepPieces: boolean;
  readonly tube?: string;
  readonly out?: string;
}

/** `copeleaf frame`: a frame's file from the lines of a table or a drawing, or one tube of a frame as a file of its own. */
export async function writeFrame(path: string, options: FrameOptions, shell: Shell): Promise<void> {
  if (options.tube !== undefined) return writeTube(path, options.tube, options.out, shell);
  const { words } = shell;
  const { out, up, units, ...asked } = options;
  if (/\.ya?ml$/i.test(path)) throw refuse('usage', path, path, words.commandFaults.whichTube, words);
  const name = path === '-' ? 'frame' : basename(path, extname(path));
  const target = out ?? `${name}.yaml`;
  const source = decoded(await readBytes(path, shell));
  await refuseLoss(path, target, out === undefined, shell);
  const file = path === '-' ? words.commandFaults.standardInput : path;
  const made = frameOfLines(source, {
    ...asked,
    file,
    words,
    units,
    isUp: up ?? 'z',
    format: formatOf(path, source),
  });
  await writeResult(target, dataOf(made.text), shell);
  shell.err(endedLines(made.told));
  if (target !== '-')
    shell.err(endedLines([words.commandAnswers.frameWritten(target, made.tubes, made.points)]));
}

async function writeTube(path: string, asked: string, out: string | undefined, shell: Shell): Promise<void> {
  const { words } = shell;
  const { job } = await readAsk(path, {}, shell);
  const names = job.tubes.map(({ name }) => name);
  if (!job.frame) throw refuseArgument('usage', `--tube ${asked}`, words.commandFaults.noFrame, words);
  const { text, others, alone } = fileOfTube(job, nameAsked('--tube', asked, names, words));
  const target = out ?? `${asked.replace(/[/\\:*?"<>|]/g, '-')}.yaml`;
  await refuseLoss(path, target, out === undefined, shell);
  await writeResult(target, dataOf(text), shell);
  if (target === '-') return;
  shell.err(endedLines([words.commandAnswers.tubeWritten(target, asked, others, alone)]));
}

/** Older programs write names in the letters of western Europe. */
function decoded(bytes: Uint8Array): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}

/** By the ending of its name or, where that says nothing, by how it begins. */
function formatOf(path: string, source: string): 'csv' | 'dxf' {
  const ending = extname(path).toLowerCase();
  if (ending === '.dxf' || ending === '.csv') return ending === '.dxf' ? 'dxf' : 'csv';
  return /^\s*(?:0|999)\s*\n/.test(source) ? 'dxf' : 'csv';
}

/** What is read is never written over, and what may have been edited only where it is named. */
async function refuseLoss(path: string, target: string, isUnnamed: boolean, shell: Shell): Promise<void> {
  await refuseOwnInput(path, target, shell);
  const { cwd, words } = shell;
  if (isUnnamed && (await stat(resolve(cwd, target)).catch(() => undefined))?.isFile())
    throw refuse('file-exists', target, target, words.commandFaults.fileExists, words);
}
