import { execFile } from 'node:child_process';
import { mkdir } from 'node:fs/promises';
import { availableParallelism } from 'node:os';
import { promisify } from 'node:util';
import { build } from 'esbuild';
import type { Tally } from './attack.ts';
import { type Instant, kills } from './kills.ts';

/**
 * What a stranger sends and what a machine does: ten thousand of each kind of input, in process, and runs that are stopped at random
 * instants. Each ends as it is designed, with nothing left behind, or is told here with its number and seed. `npm run abuse` does all of
 * it; `npm run abuse -- links 500 7` that many of one kind from that seed, and `npm run abuse -- kills 10` only some kills.
 */
const COUNT = 10_000;
const KINDS = ['job-texts', 'flags', 'links', 'pdfs', 'printer-files', 'tables', 'drawings'];
const KILLS = 50;
const SEED = 20_241_128;

/** Bundled as the program itself is, for a loader that reads each file on the way would be measured with it. */
const OUT = 'out/abuse/run-kind.mjs';

async function main([only, count, seed]: readonly string[]): Promise<void> {
  await mkdir('out/abuse', { recursive: true });
  await build({
    entryPoints: ['tests/abuse/run-kind.ts'],
    outfile: OUT,
    bundle: true,
    platform: 'node',
    format: 'esm',
    packages: 'external',
    logLevel: 'warning',
  });
  const kinds = only === undefined ? KINDS : KINDS.filter((kind) => kind === only);
  await inTurns(kinds, (kind) => attack(kind, Number(count ?? COUNT), Number(seed ?? SEED)));
  if (only !== undefined && only !== 'kills') return;
  const many = Number(count ?? KILLS);
  await kill('SIGKILL', 'at any instant', many);
  await kill('SIGKILL', 'while it writes', Math.ceil(many / 5));
  await kill('SIGINT', 'while it writes', Math.ceil(many / 5));
}

/** Each kind in a process of its own, so that its memory is its own, as many at once as there are processors. */
async function inTurns(kinds: readonly string[], run: (kind: string) => Promise<void>): Promise<void> {
  const waiting = [...kinds];
  const hands = Array.from({ length: availableParallelism() }, async () => {
    for (let kind = waiting.shift(); kind !== undefined; kind = waiting.shift()) await run(kind);
  });
  await Promise.all(hands);
}

async function attack(kind: string, count: number, seed: number): Promise<void> {
  const args = ['--enable-source-maps', OUT, kind, `${count}`, `${seed}`];
  const { stdout } = await promisify(execFile)(process.execPath, args, { maxBuffer: 1 << 26 });
  const { came, faults, seconds, slowest, peak, hungriest }: Tally = JSON.parse(stdout);
  const counted = Object.entries(came).map(([what, times]) => `${times} ${what}`);
  console.log(
    `${kind}, ${count}, seed ${seed}: ${counted.join(', ')}; ${faults.length} faults; ${seconds.toFixed(0)} s`,
  );
  console.log(`    slowest ${slowest.ms.toFixed(0)} ms of the processor, ${slowest.what}`);
  console.log(
    `    most memory ${peak.toFixed(0)} MiB, most of it (${hungriest.mib.toFixed(0)}) by ${hungriest.what}`,
  );
  report(faults);
}

async function kill(signal: 'SIGKILL' | 'SIGINT', instant: Instant, count: number): Promise<void> {
  const { asItWas, whole, strays, faults } = await kills(count, signal, instant, SEED);
  console.log(
    `${count} runs of 300 tubes ended by ${signal} ${instant}: ${asItWas} files as they were, ${whole} whole, ${strays} strays before the next run; ${faults.length} faults`,
  );
  report(faults);
}

function report(faults: readonly string[]): void {
  for (const fault of faults) console.log(`  FAULT ${fault}`);
  if (faults.length > 0) process.exitCode = 1;
}

await main(process.argv.slice(2));
