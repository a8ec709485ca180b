import { readFile } from 'node:fs/promises';
import { register } from 'node:module';
import { isMainThread } from 'node:worker_threads';
import { transform } from 'esbuild';

// Imported, it has Node read TypeScript; the hook itself runs in a thread of its own.
if (isMainThread) register(import.meta.url);

/** A hook of Node's (module.register): the text of a module, with its types taken off and a map by which faults are told in lines of the file. */
export async function load(url, context, next) {
  const [, name, loader] = /^file:(?!.*\/node_modules\/)([^?]+\.(tsx?))(?:\?|$)/.exec(url) ?? [];
  if (!name) return next(url, context);
  const { code } = await transform(await readFile(new URL(url), 'utf8'), {
    loader,
    sourcefile: name,
    sourcemap: 'inline',
    target: 'node20.19',
    jsx: 'automatic',
    jsxImportSource: 'preact',
  });
  return { format: 'module', source: code, shortCircuit: true };
}
