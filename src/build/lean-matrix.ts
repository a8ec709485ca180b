import { fileURLToPath } from 'node:url';

/** The modules of ml-matrix rather than the one bundle that it ships, so that what least squares does not use falls away. */
export const LEAN_MATRIX = {
  'ml-matrix': fileURLToPath(new URL('../../node_modules/ml-matrix/src/index.js', import.meta.url)),
};
