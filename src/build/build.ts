import { chmod, copyFile, mkdir, rm } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { build as bundle } from 'esbuild';
import { makeFont } from './font.ts';
import { leanPdfLib } from './lean-pdf-lib.ts';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));

/** Makes everything in dist/: the command and the library, after the font they carry. */
export async function build(): Promise<void> {
  await makeFont();
  await rm(`${ROOT}dist`, { recursive: true, force: true });
  await mkdir(`${ROOT}dist`, { recursive: true });
  await bundle({
    absWorkingDir: ROOT,
    entryPoints: { copeleaf: 'src/cli/copeleaf.ts', index: 'src/index.ts' },
    outdir: 'dist',
    bundle: true,
    // A command loads only what it uses: what others need stands in chunks of its own.
    splitting: true,
    minify: true,
    platform: 'node',
    target: 'node20',
    format: 'esm',
    // Modules rather than the older bundles that some packages ship beside them: half the start-up time.
    mainFields: ['module', 'main'],
    plugins: [leanPdfLib],
    chunkNames: 'parts/[name]-[hash]',
    // Commander is written for `require`, which a module has to make for itself.
    banner: { js: "import{createRequire}from'node:module';const require=createRequire(import.meta.url);" },
    logLevel: 'warning',
  });
  // The font's licence asks to go where the font goes.
  await copyFile(`${ROOT}node_modules/dejavu-fonts-ttf/LICENSE`, `${ROOT}dist/FONT-LICENSE`);
  await chmod(`${ROOT}dist/copeleaf.js`, 0o755);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await build();
