import type { Plugin } from 'esbuild';

/**
 * Tells the bundler that modules of pdf-lib do nothing by being imported, so that what is not used falls away: two
 * thirds of it, the form fields, the standard fonts and the parser among them. What is left would deflate by a library of
 * its own, which nothing of ours asks it to.
 */
export const leanPdfLib: Plugin = {
  name: 'lean-pdf-lib',
  setup(build) {
    build.onResolve({ filter: /^pako$/ }, ({ importer }) =>
      IN_PDF_LIB.test(importer) ? { path: 'nothing', namespace: 'lean-pdf-lib' } : undefined,
    );
    build.onLoad({ filter: /.*/, namespace: 'lean-pdf-lib' }, () => ({
      contents: 'export default {};',
    }));
    build.onResolve(
      { filter: /^pdf-lib$|^\.{1,2}\// },
      async ({ path, importer, kind, resolveDir, pluginData }) => {
        const inside = path === 'pdf-lib' || IN_PDF_LIB.test(importer);
        if (pluginData === OURS || !inside) return undefined;
        const resolved = await build.resolve(path, { kind, resolveDir, importer, pluginData: OURS });
        return { ...resolved, sideEffects: false };
      },
    );
  },
};

const IN_PDF_LIB = /node_modules\/pdf-lib\/es/;

/** Marks a question that this plugin itself asked. */
const OURS = Symbol('lean-pdf-lib');
