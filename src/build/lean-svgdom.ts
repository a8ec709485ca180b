import type { Plugin } from 'esbuild';

/**
 * svgdom measures words and pictures by libraries that are larger than all else that the command carries. A leaf's words are
 * measured before they come to it, and no leaf has a picture.
 */
export const leanSvgdom: Plugin = {
  name: 'lean-svgdom',
  setup(build) {
    build.onResolve({ filter: /^(fontkit|image-size)$/ }, () => ({
      path: 'nothing',
      namespace: 'lean-svgdom',
    }));
    build.onLoad({ filter: /.*/, namespace: 'lean-svgdom' }, () => ({ contents: 'module.exports = {};' }));
  },
};
