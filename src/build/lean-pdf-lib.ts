import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { OnResolveResult, Plugin } from 'esbuild';

/**
 * Tells the bundler that modules of pdf-lib do nothing by being imported, so that what is not used falls away: two
 * thirds of it, the form fields, the standard fonts and the parser among them. What is left would deflate by a library of
 * its own, which nothing of ours asks it to. Its modules have a namespace of their own, so that only their imports come
 * by here: to ask for every import that there is takes longer than the rest of the build.
 */
export const leanPdfLib: Plugin = {
  name: 'lean-pdf-lib',
  setup(build) {
    build.onResolve({ filter: /^pdf-lib$/ }, async ({ path, kind, resolveDir, pluginData }) => {
      if (pluginData === OURS) return undefined;
      return lean(await build.resolve(path, { kind, resolveDir, pluginData: OURS }));
    });
    build.onResolve({ filter: /^\.{1,2}\//, namespace: INSIDE }, ({ path, importer }) =>
      lean({ path: moduleAt(join(dirname(importer), path)) }),
    );
    build.onLoad({ filter: /.*/, namespace: INSIDE }, async ({ path }) => ({
      contents: await readFile(path),
      resolveDir: dirname(path),
    }));
    build.onResolve({ filter: /^pako$/, namespace: INSIDE }, () => ({ path: 'pako', namespace: NOTHING }));
    build.onLoad({ filter: /.*/, namespace: NOTHING }, () => ({ contents: 'export default {};' }));
  },
};

const INSIDE = 'pdf-lib';
const NOTHING = 'lean-pdf-lib';

/** Marks a question that this plugin itself asked. */
const OURS = Symbol('lean-pdf-lib');

function lean(resolved: OnResolveResult): OnResolveResult {
  return { ...resolved, namespace: INSIDE, sideEffects: false };
}

/** The file of an import, which is written without its ending. */
function moduleAt(path: string): string {
  const file = `${path}.js`;
  return existsSync(file) ? file : join(path, 'index.js');
}
