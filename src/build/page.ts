import { createHash } from 'node:crypto';
import { rename, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { build as bundle, type Metafile, type Plugin } from 'esbuild';
import { ENGLISH } from '../words/english.ts';
import { leanMatrix } from './lean-matrix.ts';
import { leanPdfLib } from './lean-pdf-lib.ts';
import { licencesOf } from './licences.ts';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));

/** Makes the page, one file with everything in it, and tells what it is bundled of. */
export async function makePage(): Promise<Metafile> {
  const [script, style] = await Promise.all([bundled(), styled()]);
  const page = pageOf(script.text, style, await licencesOf([script.metafile]));
  const target = `${ROOT}dist/copeleaf.html`;
  // Several test runs may build at once; none may see half a file.
  await writeFile(`${target}.${process.pid}`, page);
  await rename(`${target}.${process.pid}`, target);
  return script.metafile;
}

/** The page has no command line, and no help to it. */
const wordsOfCommandLine: Plugin = {
  name: 'words-of-command-line',
  setup(build) {
    build.onLoad({ filter: /words[\\/]english[\\/]command[\\/]help\.ts$/ }, () => ({
      contents: 'export const command = {};',
      loader: 'ts',
    }));
  },
};

async function bundled(): Promise<{ readonly text: string; readonly metafile: Metafile }> {
  const { outputFiles, metafile } = await bundle({
    absWorkingDir: ROOT,
    entryPoints: ['src/page/main.tsx'],
    bundle: true,
    write: false,
    metafile: true,
    minify: true,
    // The page says that it is in UTF-8; escapes would be longer.
    charset: 'utf8',
    platform: 'browser',
    target: 'es2022',
    format: 'iife',
    mainFields: ['module', 'main'],
    // yaml and others ship a browser's version beside the one for Node; of tslib, that of which is taken what is used.
    conditions: ['browser', 'module'],
    plugins: [leanPdfLib, leanMatrix, wordsOfCommandLine],
    // The licences stand in the page whole, once.
    legalComments: 'none',
    jsx: 'automatic',
    jsxImportSource: 'preact',
    define: { 'process.env.NODE_ENV': '"production"' },
    logLevel: 'warning',
  });
  const [file] = outputFiles;
  if (!file) throw new Error('nothing was bundled');
  // What would end the script element inside it is written in another way that means the same in a string.
  return { text: file.text.trim().replaceAll('</script', '<\\/script'), metafile };
}

async function styled(): Promise<string> {
  const { outputFiles } = await bundle({
    absWorkingDir: ROOT,
    entryPoints: ['src/page/page.css'],
    bundle: true,
    write: false,
    minify: true,
    logLevel: 'warning',
  });
  return outputFiles[0]?.text.trim() ?? '';
}

/** Nothing may be fetched and nothing sent; only this script and this style are run. */
function pageOf(script: string, style: string, licences: string): string {
  const policy = [
    "default-src 'none'",
    `script-src '${hashOf(script)}'`,
    `style-src '${hashOf(style)}'`,
    // The page's own script once more, to check beside it.
    'worker-src blob:',
    'img-src data:',
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ');
  const { bar } = ENGLISH.page;
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<title>${bar.name}</title>
<link rel="icon" href="data:,">
<style>${style}</style>
</head>
<body>
<div id="page"><noscript>${bar.noScript}</noscript></div>
<script>${script}</script>
<template id="licences">${escaped(licences)}</template>
</body>
</html>
`;
}

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;');
}

function hashOf(text: string): string {
  return `sha256-${createHash('sha256').update(text).digest('base64')}`;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await makePage();
