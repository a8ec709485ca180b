import { fileURLToPath } from 'node:url';
import ts from 'typescript';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));

/** Writes the types of the library's face, and of all that it rests on, into dist/types. Throws where they can't be told. */
function makeTypes(): void {
  const { config } = ts.readConfigFile(`${ROOT}tsconfig.json`, ts.sys.readFile);
  const { options } = ts.convertCompilerOptionsFromJson(config.compilerOptions, ROOT);
  // What was found is not kept: the files are written anew each time.
  const { incremental, tsBuildInfoFile, ...withoutNotes } = options;
  const program = ts.createProgram([`${ROOT}src/index.ts`], {
    ...withoutNotes,
    noEmit: false,
    declaration: true,
    emitDeclarationOnly: true,
    rootDir: `${ROOT}src`,
    outDir: `${ROOT}dist/types`,
  });
  const { diagnostics } = program.emit();
  if (diagnostics.length > 0)
    throw new Error(ts.formatDiagnostics(diagnostics, ts.createCompilerHost(options)));
}

makeTypes();
