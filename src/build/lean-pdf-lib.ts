import type { Plugin } from 'esbuild';

/**
 * Tells the bundler that modules of pdf-lib do nothing by being imported, so that what is not used falls away: two
 * thirds of it, the form fields, the standard fonts and the parser among them.
 */
export const leanPdfLib: Plugin = {
  name: 'lean-pdf-lib',
  setup(build) {
    build.onResolve(
      { filter: /^pdf-lib$|^\.{1,2}\// },
      async ({ path, importer, kind, resolveDir, pluginData }) => {
        const inside = path === 'pdf-lib' || /node_modules\/pdf-lib\/es/.test(importer);
        if (pluginData === OURS || !inside) return undefined;
        const resolved = await build.resolve(path, { kind, resolveDir, importer, pluginData: OURS });
        return { ...resolved, sideEffects: false };
      },
    );
  },
};

/** Marks a question that this plugin itself asked. */
const OURS = Symbol('lean-pdf-lib');
