import { mkdir } from 'node:fs/promises';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import type { Bench, Row } from './row.ts';

/**
 * Runs every bench named here, or those named on the command line, and prints each figure beside its bar. Figures are
 * ratios of things measured in turn in one run: absolute times say nothing from one machine to the next. To add one,
 * write a file that exports `bench` and name it here.
 */
const BENCHES = [
  'end-solved',
  'round-lines',
  'million-joints',
  'one-end-process',
  'thousand-tubes',
  'thousand-in-frame',
  'nesting',
  'sheet-counts',
  'changed-number',
];

const OUT = 'out/bench';

async function main(asked: readonly string[]): Promise<void> {
  await mkdir(OUT, { recursive: true });
  const missed: Row[] = [];
  for (const name of asked.length > 0 ? asked : BENCHES) {
    const bench = await load(name);
    for (const row of await bench()) {
      console.log(`${row.holds ? 'holds ' : 'MISSED'}  ${row.what}: ${row.measured}   (bar: ${row.bar})`);
      if (!row.holds) missed.push(row);
    }
  }
  if (missed.length > 0) process.exitCode = 1;
}

/** Bundled as the program itself is, for a loader that names every inner function on the way would slow it down. */
async function load(name: string): Promise<Bench> {
  const outfile = `${OUT}/${name}.mjs`;
  await build({
    entryPoints: [`tests/bench/${name}.ts`],
    outfile,
    bundle: true,
    platform: 'node',
    format: 'esm',
    packages: 'external',
    logLevel: 'warning',
  });
  const loaded: { bench: Bench } = await import(pathToFileURL(outfile).href);
  return loaded.bench;
}

await main(process.argv.slice(2));
