import { writeFile } from 'node:fs/promises';
import { build } from 'esbuild';
import { between, randomFrom, SEED } from '../outside/random-joints.ts';
import { type Bench, median } from './row.ts';
import { buildCommand, runNode } from './whole-process.ts';

const ROUNDS = 3;
const YARDSTICK = 'out/bench/plain-pages.mjs';

/**
 * A thousand tubes with two ends each in one PDF, against one pdf-lib document of as many pages: each a content stream
 * built as one string (four polylines of 400 segments and 40 words, three decimals), deflated, added as a raw stream,
 * with the same embedded font.
 */
export const bench: Bench = async () => {
  buildCommand();
  await yardstick();
  await writeFile('out/bench/thousand.yaml', jobOf(1000));
  await writeFile('out/bench/hundred.yaml', jobOf(100));
  const runs = Array.from({ length: ROUNDS }, () => {
    const thousand = printed('thousand');
    const pages = Number(/on (\d+) sheets/.exec(thousand.out)?.[1]);
    return { thousand, pages, hundred: printed('hundred'), plain: runNode(YARDSTICK, [`${pages}`]) };
  });
  const times = median(runs.map(({ thousand, plain }) => thousand.ms / plain.ms));
  const peak = Math.max(...runs.map(({ thousand }) => thousand.mib));
  const growth = median(runs.map(({ thousand, hundred }) => thousand.ms / hundred.ms));
  const packed = printed('thousand', []);
  const packPages = Number(/on (\d+) sheets/.exec(packed.out)?.[1]) - (runs[0]?.pages ?? 0);
  const packMs = packed.ms - median(runs.map(({ thousand }) => thousand.ms));
  const plainPage = median(runs.map(({ plain, pages }) => plain.ms / pages));
  const first = runs[0];
  const seconds = median(runs.map(({ thousand }) => thousand.ms)) / 1000;
  const plainSeconds = median(runs.map(({ plain }) => plain.ms)) / 1000;
  return [
    {
      what: `1,000 tubes, two ends each, on ${first?.pages} pages, against as many plain pages`,
      measured: `${times.toFixed(2)} times (${seconds.toFixed(1)} s against ${plainSeconds.toFixed(1)} s)`,
      bar: '2 times',
      holds: times <= 2,
    },
    {
      what: 'the most memory that took',
      measured: `${peak.toFixed(0)} MiB (the plain pages ${Math.max(...runs.map(({ plain }) => plain.mib)).toFixed(0)})`,
      bar: '300 MiB',
      holds: peak <= 300,
    },
    {
      what: `their shop pack besides, ${packPages} pages, against as many plain pages`,
      measured: `${(packMs / packPages / plainPage).toFixed(2)} times, ${packed.mib.toFixed(0)} MiB`,
      bar: '3 times, 300 MiB',
      holds: packMs / packPages <= 3 * plainPage && packed.mib <= 300,
    },
    {
      what: 'a thousand tubes against a hundred',
      measured: `${growth.toFixed(1)} times the time`,
      bar: '11 times',
      holds: growth <= 11,
    },
  ];
};

function printed(name: string, more: readonly string[] = ['--leaves-only']): ReturnType<typeof runNode> {
  return runNode('dist/copeleaf.js', [
    'print',
    `out/bench/${name}.yaml`,
    ...more,
    '--out',
    `out/bench/${name}.pdf`,
  ]);
}

function jobOf(count: number): string {
  const random = randomFrom(SEED);
  const tubes = Array.from({ length: count }, (_, i) => {
    const od = between(random, 20, 60);
    const end = (): string => {
      const header = od * between(random, 1.05, 2);
      return `{ onto: { od: ${header.toFixed(1)} }, angle: ${between(random, 35, 145).toFixed(1)}, clock: ${between(random, 0, 359).toFixed(0)} }`;
    };
    return `  - name: stay ${i + 1}\n    od: ${od.toFixed(1)}\n    wall: 2\n    between: 900\n    ends: { A: ${end()}, B: ${end()} }\n`;
  });
  return `copeleaf: 1\npaper: A4\ntubes:\n${tubes.join('')}`;
}

async function yardstick(): Promise<void> {
  await writeFile(
    'out/bench/plain-pages-source.ts',
    `import { PDFDocument, PDFName, PDFRawStream } from 'pdf-lib';
import { writeFileSync } from 'node:fs';
import { deflateSync } from 'node:zlib';
import { FONT_DEFLATED } from '../../src/ink/font.generated.ts';
const pages = Number(process.argv[2]);
const pdf = await PDFDocument.create();
const { context } = pdf;
const file = context.register(PDFRawStream.of(context.obj({ Filter: 'FlateDecode' }), Buffer.from(FONT_DEFLATED, 'base64')));
const descriptor = context.register(context.obj({ Type: 'FontDescriptor', FontName: 'F', Flags: 4, FontFile2: file }));
const font = context.register(context.obj({ Type: 'Font', Subtype: 'TrueType', BaseFont: 'F', FontDescriptor: descriptor }));
for (let n = 0; n < pages; n++) {
  const page = pdf.addPage([595.28, 841.89]);
  let stream = '';
  for (let line = 0; line < 4; line++) {
    for (let i = 0; i <= 400; i++) stream += (i * 1.3 + 20).toFixed(3) + ' ' + (200 + 100 * line + 40 * Math.sin(i / 40 + n)).toFixed(3) + (i ? ' l\\n' : ' m\\n');
    stream += 'S\\n';
  }
  for (let w = 0; w < 40; w++) stream += 'BT /F 8 Tf ' + (30 + w).toFixed(3) + ' ' + (30 + 12 * w).toFixed(3) + ' Td (word ' + w + ' of page ' + n + ') Tj ET\\n';
  const body = context.register(PDFRawStream.of(context.obj({ Filter: 'FlateDecode' }), deflateSync(stream)));
  page.node.set(PDFName.of('Contents'), body);
  page.node.setFontDictionary(PDFName.of('F'), font);
}
writeFileSync('out/bench/plain-pages.pdf', await pdf.save());
`,
  );
  await build({
    entryPoints: ['out/bench/plain-pages-source.ts'],
    outfile: YARDSTICK,
    bundle: true,
    minify: true,
    platform: 'node',
    format: 'esm',
    logLevel: 'warning',
  });
}
