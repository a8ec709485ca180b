import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import ts from 'typescript';

/** Where phrases, and the one cast that makes them, stand. */
const ROOM = 'src/words/';

/** What stands in the attributes of the page's elements and is read by a person. */
const READ_ALOUD = new Set([
  'title',
  'placeholder',
  'alt',
  'label',
  'aria-label',
  'aria-description',
  'summary',
]);

/** Two words with a space between them are a phrase; one word may be a key, a name of a class or of a file. */
const PHRASE = /\p{L}{2}[,;:.]? \p{L}{2}/u;
const LETTER = /\p{L}/u;

/** Finds what is said outside words/: phrases, text of the page's elements, and casts to what is said. */
export function strayPhrases(path: string, source: string): string[] {
  if (path.startsWith(ROOM)) return [];
  const kind = path.endsWith('.tsx') ? ts.ScriptKind.TSX : ts.ScriptKind.TS;
  const file = ts.createSourceFile(path, source, ts.ScriptTarget.Latest, true, kind);
  // What ink/ writes of its own are words of file formats; what it draws comes to it as said.
  const isFormat = path.startsWith('src/ink/');
  const found: string[] = [];
  const tell = (node: ts.Node, what: string): void => {
    const { line } = file.getLineAndCharacterOfPosition(node.getStart());
    found.push(`${path}:${line + 1} ${what}: ${node.getText().replace(/\s+/g, ' ').slice(0, 80)}`);
  };
  const walk = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node) || isOurFault(node) || isPath(node))
      return;
    if (ts.isJsxAttribute(node)) {
      const name = node.name.getText();
      const text = node.initializer && ts.isStringLiteral(node.initializer) ? node.initializer.text : '';
      if (READ_ALOUD.has(name) && LETTER.test(text)) tell(node, 'said in an attribute');
      if (node.initializer && !ts.isStringLiteral(node.initializer) && name !== 'class')
        walk(node.initializer);
      return;
    }
    if (ts.isJsxText(node) && LETTER.test(node.text)) tell(node, 'said in an element');
    if (ts.isAsExpression(node) && node.type.getText() === 'Said' && path !== 'src/measure/said.ts')
      tell(node, 'a cast to what is said');
    if (!isFormat && isText(node) && !isProgram(node) && PHRASE.test(node.text)) tell(node, 'a phrase');
    ts.forEachChild(node, walk);
  };
  walk(file);
  return found;
}

function isText(node: ts.Node): node is ts.LiteralLikeNode {
  return (
    ts.isStringLiteral(node) ||
    ts.isNoSubstitutionTemplateLiteral(node) ||
    ts.isTemplateHead(node) ||
    ts.isTemplateMiddle(node) ||
    ts.isTemplateTail(node)
  );
}

/** What a graphics card runs begins with its language (GLSL ES 3.00, 3.3). */
function isProgram(node: ts.LiteralLikeNode): boolean {
  return node.text.startsWith('#version ');
}

/** Errors that only a mistake of the program throws are read by its makers. */
function isOurFault(node: ts.Node): boolean {
  return ts.isNewExpression(node) && /Error$/.test(node.expression.getText());
}

/** A path is put together by `join`, and what its folders are called is not said. */
function isPath(node: ts.Node): boolean {
  return ts.isCallExpression(node) && node.expression.getText() === 'join';
}

const room = process.argv[2] ?? 'src';
const listed = execFileSync('git', ['ls-files', '--cached', '--others', '--exclude-standard', room]);
const paths = listed
  .toString()
  .trim()
  .split('\n')
  .filter((path) => /\.tsx?$/.test(path) && !path.startsWith('src/build/'));
const faults = paths.flatMap((path) => strayPhrases(path, readFileSync(path, 'utf8')));
for (const fault of faults) console.error(fault);
console.error(`${faults.length} said outside ${ROOM}`);
process.exitCode = faults.length > 0 ? 1 : 0;
