import type { Plugin } from 'esbuild';

/**
 * Commander can start another program for a command, which none of ours asks for. To load what starts programs takes Node longer
 * than Commander itself.
 */
export const leanCommander: Plugin = {
  name: 'lean-commander',
  setup(build) {
    build.onResolve({ filter: /^node:child_process$/ }, ({ importer }) =>
      /node_modules\/commander/.test(importer) ? { path: 'nothing', namespace: 'lean-commander' } : undefined,
    );
    build.onLoad({ filter: /.*/, namespace: 'lean-commander' }, () => ({ contents: 'module.exports = {};' }));
  },
};
