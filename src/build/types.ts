import { writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { generateDtsBundle } from 'dts-bundle-generator';
import ts from 'typescript';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));
const TYPES = `${ROOT}dist/index.d.ts`;

/**
 * Writes the types of the library's face, and what they rest on, as one file beside it. Throws where they can't be told, or rest on
 * another package, which does not come with ours.
 */
async function makeTypes(): Promise<void> {
  const face = {
    filePath: `${ROOT}src/index.ts`,
    libraries: { importedLibraries: [], allowedTypesLibraries: [] },
    output: { noBanner: true, exportReferencedTypes: false },
  };
  const [types = ''] = generateDtsBundle([face], { preferredConfigPath: `${ROOT}tsconfig.json` });
  // A picture is built in a window, which a program for Node alone does not know.
  await writeFile(TYPES, `/// <reference lib="dom" />\n${types}`);
  standAlone();
}

/** The generator leaves out what comes from other packages, and does not look whether something is missed then. */
function standAlone(): void {
  const program = ts.createProgram([TYPES], {
    noEmit: true,
    strict: true,
    target: ts.ScriptTarget.ES2022,
    types: [],
  });
  const wrong = ts.getPreEmitDiagnostics(program);
  if (wrong.length > 0) throw new Error(ts.formatDiagnostics(wrong, ts.createCompilerHost({})));
}

await makeTypes();
