import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { dirname } from 'node:path';
import ts from 'typescript';

/** What a stranger can take in at a glance. */
const MOST_FILES = 25;

/** What is wrong with the rooms of the house: each holds a few files, and DEVELOPERS.md says what it is for. */
function crowdedRooms(files: readonly string[]): string[] {
  const counts = new Map<string, number>();
  for (const file of files) counts.set(dirname(file), (counts.get(dirname(file)) ?? 0) + 1);
  return [...counts]
    .filter(([, count]) => count > MOST_FILES)
    .map(([room, count]) => `${room}/ holds ${count} files; ${MOST_FILES} at most`);
}

function namelessRooms(files: readonly string[], guide: string): string[] {
  const rooms = new Set(files.map((file) => dirname(file)).filter((room) => room.startsWith('src/')));
  return [...rooms]
    .filter((room) => !guide.includes(`\`${room.slice('src/'.length)}/\``))
    .map((room) => `${room}/ has no line in DEVELOPERS.md`);
}

/** Names that two files of src/ export: one name has one meaning. */
function namesakes(files: readonly string[]): string[] {
  const homes = new Map<string, string[]>();
  for (const file of files.filter((each) => /^src\/.*\.tsx?$/.test(each))) {
    for (const name of exportedBy(file)) homes.set(name, [...(homes.get(name) ?? []), file]);
  }
  return [...homes]
    .filter(([, where]) => new Set(where).size > 1)
    .map(([name, where]) => `\`${name}\` is exported by ${[...new Set(where)].join(' and ')}`);
}

/** What a file declares and exports; what it hands on from elsewhere is declared there. */
function exportedBy(file: string): string[] {
  const source = ts.createSourceFile(file, readFileSync(file, 'utf8'), ts.ScriptTarget.Latest);
  return source.statements.flatMap((statement) => {
    const exported =
      ts.canHaveModifiers(statement) &&
      ts.getModifiers(statement)?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword);
    if (!exported) return [];
    if (ts.isVariableStatement(statement))
      return statement.declarationList.declarations.flatMap(({ name }) =>
        ts.isIdentifier(name) ? [name.text] : [],
      );
    return 'name' in statement && statement.name && ts.isIdentifier(statement.name as ts.Node)
      ? [(statement.name as ts.Identifier).text]
      : [];
  });
}

const listed = execFileSync('git', [
  'ls-files',
  '--cached',
  '--others',
  '--exclude-standard',
  'src',
  'tests',
]);
const files = listed.toString().trim().split('\n');
const faults = [
  ...crowdedRooms(files),
  ...namelessRooms(files, readFileSync('DEVELOPERS.md', 'utf8')),
  ...namesakes(files),
];
for (const fault of faults) console.error(fault);
process.exitCode = faults.length > 0 ? 1 : 0;
