import { writeFile } from 'node:fs/promises';
import { build } from 'esbuild';
import { type Bench, median } from './row.ts';
import { buildCommand, runNode } from './whole-process.ts';

const BAR = 1.3;
const ROUNDS = 21;
const BLANK = 'out/bench/blank-page.mjs';
const ARGS = ['print', '--od', '38.1', '--wall', '2.4', '--onto', '44.5', '--angle', '60', '--paper', 'A4'];

/**
 * The command printing one end, as a whole process, against a script that only saves a blank page with pdf-lib,
 * bundled by esbuild with nothing set but --bundle --minify --platform=node --format=esm. They take turns.
 */
export const bench: Bench = async () => {
  buildCommand();
  await blankPage();
  const ours: number[] = [];
  const theirs: number[] = [];
  for (let round = 0; round <= ROUNDS; round++) {
    const a = runNode('dist/copeleaf.js', [...ARGS, '--out', 'out/bench/one-end.pdf']).ms;
    const b = runNode(BLANK, []).ms;
    if (round === 0) continue;
    ours.push(a);
    theirs.push(b);
  }
  const ratios = ours.map((ms, i) => ms / (theirs[i] ?? Number.NaN));
  const ratio = median(ratios);
  return [
    {
      what: `one end printed, whole process, against a blank page by pdf-lib, ${ROUNDS} rounds in turn`,
      measured: `${ratio.toFixed(2)} times at the median, ${Math.min(...ratios).toFixed(2)} to ${Math.max(...ratios).toFixed(2)} (${median(ours).toFixed(0)} ms against ${median(theirs).toFixed(0)} ms)`,
      bar: `${BAR} times`,
      holds: ratio <= BAR,
    },
  ];
};

async function blankPage(): Promise<void> {
  await writeFile(
    'out/bench/blank-page-source.mjs',
    `import { PDFDocument } from 'pdf-lib';
import { writeFileSync } from 'node:fs';
const pdf = await PDFDocument.create();
pdf.addPage();
writeFileSync('out/bench/blank.pdf', await pdf.save());
`,
  );
  await build({
    entryPoints: ['out/bench/blank-page-source.mjs'],
    outfile: BLANK,
    bundle: true,
    minify: true,
    platform: 'node',
    format: 'esm',
    logLevel: 'warning',
  });
}
