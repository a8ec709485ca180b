import { readFile } from 'node:fs/promises';
import { register } from 'node:module';
import { fileURLToPath } from 'node:url';
import { isMainThread } from 'node:worker_threads';
import { transform } from 'esbuild';

// Imported, it has Node read TypeScript; the hook itself runs in a thread of its own.
if (isMainThread) register(import.meta.url);

/** A hook of Node's (module.register): the text of a module, its types taken off, and a map by which faults are told in lines of the file. */
export async function load(url, context, next) {
  const [, loader] = /^file:(?!.*\/node_modules\/)[^?]+\.(tsx?)(?:\?|$)/.exec(url) ?? [];
  if (!loader) return next(url, context);
  const sourcefile = fileURLToPath(url);
  const { code } = await transform(await readFile(sourcefile, 'utf8'), {
    loader,
    sourcefile,
    sourcemap: 'inline',
    target: 'node20.19',
    jsx: 'automatic',
    jsxImportSource: 'preact',
  });
  return { format: 'module', source: code, shortCircuit: true };
}
