import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { analyse } from 'scslre';
import ts from 'typescript';

/**
 * What is wrong with the patterns of a source: each must run in proportion to the text that it looks at, whatever a stranger wrote there.
 * One that is put together of texts can't be looked at before it runs.
 */
export function slowPatterns(path: string, source: string): string[] {
  const kind = path.endsWith('.tsx') ? ts.ScriptKind.TSX : ts.ScriptKind.TS;
  const file = ts.createSourceFile(path, source, ts.ScriptTarget.Latest, true, kind);
  const found: string[] = [];
  const tell = (node: ts.Node, why: string): void => {
    const { line } = file.getLineAndCharacterOfPosition(node.getStart());
    found.push(`${path}:${line + 1} ${node.getText()}: ${why}`);
  };
  const look = (node: ts.Node): void => {
    if (ts.isRegularExpressionLiteral(node) && isSlow(node.text)) {
      tell(node, 'runs longer than in proportion to its text');
    }
    const isCalled = ts.isNewExpression(node) || ts.isCallExpression(node);
    if (isCalled && node.expression.getText() === 'RegExp') tell(node, 'write it as a pattern');
    ts.forEachChild(node, look);
  };
  look(file);
  return found;
}

function isSlow(pattern: string): boolean {
  const end = pattern.lastIndexOf('/');
  return analyse({ source: pattern.slice(1, end), flags: pattern.slice(end + 1) }).reports.length > 0;
}

if (process.argv[1]?.endsWith('patterns.ts')) {
  const listed = execFileSync('git', ['ls-files', '--cached', '--others', '--exclude-standard', 'src']);
  const files = listed.toString().trim().split('\n');
  const sources = files.filter((path) => /\.tsx?$/.test(path) && !path.endsWith('.generated.ts'));
  const slow = sources.flatMap((path) => slowPatterns(path, readFileSync(path, 'utf8')));
  for (const each of slow) console.error(each);
  process.exitCode = slow.length > 0 ? 1 : 0;
}
