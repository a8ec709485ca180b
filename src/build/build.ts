import { chmod, mkdir, readdir, rm, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { type BuildOptions, build as bundle } from 'esbuild';
import { makeFont } from './font.ts';
import { leanCommander } from './lean-commander.ts';
import { leanMatrix } from './lean-matrix.ts';
import { leanPdfLib } from './lean-pdf-lib.ts';
import { leanSvgdom } from './lean-svgdom.ts';
import { licencesOf } from './licences.ts';
import { makePage } from './page.ts';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));

/** How the command and the library are bundled. Each on its own: what the two share would fall into parts that both have to open. */
const SHARED = {
  metafile: true,
  absWorkingDir: ROOT,
  outdir: 'dist',
  bundle: true,
  // What a command seldom needs stands in parts of its own.
  splitting: true,
  minify: true,
  platform: 'node',
  target: 'node20',
  format: 'esm',
  // Modules rather than the older bundles that some packages ship beside them: half the start-up time.
  mainFields: ['module', 'main'],
  plugins: [leanPdfLib, leanCommander, leanMatrix, leanSvgdom],
  chunkNames: 'parts/[name]-[hash]',
  alias: { yaml: `${ROOT}node_modules/yaml/browser/index.js` },
  // Commander is written for `require`, which a module has to make for itself.
  banner: { js: "import{createRequire}from'node:module';const require=createRequire(import.meta.url);" },
  logLevel: 'warning',
} satisfies BuildOptions & { metafile: true };

/** Makes everything in dist/: the command, the library and the page, after the font they carry. */
export async function build(): Promise<void> {
  await makeFont();
  await mkdir(`${ROOT}dist`, { recursive: true });
  const command = await bundle({ ...SHARED, entryPoints: ['src/cli/copeleaf.ts'] });
  const library = await bundle({ ...SHARED, entryPoints: ['src/index.ts'] });
  const page = await makePage();
  await dropStale([command, library].flatMap(({ metafile }) => Object.keys(metafile.outputs)));
  await writeFile(`${ROOT}dist/LICENCES`, await licencesOf([command.metafile, library.metafile, page]));
  await chmod(`${ROOT}dist/copeleaf.js`, 0o755);
}

/** Parts of earlier builds go only now, so that a command that is running finds what it has yet to load. */
async function dropStale(made: readonly string[]): Promise<void> {
  const parts = await readdir(`${ROOT}dist/parts`);
  const stale = parts.filter((part) => !made.includes(`dist/parts/${part}`));
  await Promise.all(stale.map((part) => rm(`${ROOT}dist/parts/${part}`)));
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await build();
