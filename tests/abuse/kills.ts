import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { readFileSync, watch, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { COMMAND, folderWith, namesIn } from '../cli/run-command.ts';
import { between, type Random, randomFrom } from '../outside/random-joints.ts';

const NODE = process.execPath;
const TUBES = 300;
const OLD = 'what was there before';
const PRINT = [COMMAND, 'print', 'many.yaml'];
const NEXT = [COMMAND, 'print', '--od=30', '--onto=40', '--angle=70', '--out=next.pdf'];
const FILES = ['many.pdf', 'many.yaml', 'next.pdf'];

/** What stopped runs had written, what they left, and what was not as it has to be. */
export interface Kills {
  readonly asItWas: number;
  readonly whole: number;
  readonly strays: number;
  readonly faults: readonly string[];
}

/** When a run is stopped: at any instant of it, or within some milliseconds of when it begins to write. */
export type Instant = 'at any instant' | 'while it writes';

/** Stops runs of 300 tubes: what they write is whole or as it was, and the next run clears away what they left. */
export async function kills(
  count: number,
  signal: 'SIGKILL' | 'SIGINT',
  instant: Instant,
  seed: number,
): Promise<Kills> {
  const random = randomFrom(seed);
  const folder = folderWith({ 'many.yaml': manyTubes(), 'next.pdf': '' });
  const begun = performance.now();
  const { status, stderr } = spawnSync(NODE, PRINT, { cwd: folder, encoding: 'utf8' });
  if (status !== 0) throw new Error(`a run that nobody stopped failed: ${stderr}`);
  const ms = performance.now() - begun;
  const printed = readFileSync(join(folder, 'many.pdf'));
  let [asItWas, whole, strays] = [0, 0, 0];
  const faults: string[] = [];
  for (let i = 0; i < count; i++) {
    const run = started(folder);
    await (instant === 'while it writes' ? writing(folder, random) : pause(between(random, 0, 1.05) * ms));
    run.process.kill(signal);
    await run.ended;
    const written = readFileSync(join(folder, 'many.pdf'));
    if (written.equals(printed)) whole += 1;
    else if (written.toString('latin1') === OLD) asItWas += 1;
    else faults.push(`${signal} ${i}: ${written.length} bytes of ${printed.length}`);
    const left = namesIn(folder).length - FILES.length;
    strays += left;
    if (left > 0 && signal !== 'SIGKILL') faults.push(`${signal} ${i}: left ${namesIn(folder)}`);
    spawnSync(NODE, NEXT, { cwd: folder });
    if (`${namesIn(folder)}` !== `${FILES}`)
      faults.push(`${signal} ${i}: after the next run ${namesIn(folder)}`);
  }
  return { asItWas, whole, strays, faults };
}

function started(folder: string): { process: ChildProcess; ended: Promise<unknown> } {
  writeFileSync(join(folder, 'many.pdf'), OLD);
  const process = spawn(NODE, PRINT, { cwd: folder, stdio: 'ignore' });
  return { process, ended: once(process, 'exit') };
}

/** Until a little after something new is in the folder. */
async function writing(folder: string, random: Random): Promise<void> {
  const watcher = watch(folder);
  await once(watcher, 'change');
  watcher.close();
  const until = performance.now() + between(random, 0, 6);
  // No timer is as exact as this takes.
  while (performance.now() < until);
}

function manyTubes(): string {
  const tubes = Array.from(
    { length: TUBES },
    (_, i) =>
      `  - { name: rung ${i}, od: 30, wall: 2, between: ${300 + i}, ends: { A: { onto: { od: 40 }, angle: 70 }, B: { onto: { od: 44 }, angle: 60 } } }\n`,
  );
  return `copeleaf: 1\ntubes:\n${tubes.join('')}`;
}
