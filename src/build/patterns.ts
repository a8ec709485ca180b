import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { type AST, RegExpParser, visitRegExpAST } from '@eslint-community/regexpp';
import { getFirstConsumedChar, hasSomeDescendant, type ReadonlyFlags } from 'regexp-ast-analysis';
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
    if (ts.isIdentifier(node) && node.text === 'RegExp' && !isType(node)) tell(node, 'write it as a pattern');
    if (takesPattern(node)) tell(node, 'write it as a pattern');
    ts.forEachChild(node, look);
  };
  look(file);
  return found;
}

/** Which name a type, and make nothing. */
function isType({ parent }: ts.Identifier): boolean {
  const isAsked =
    ts.isBinaryExpression(parent) && parent.operatorToken.kind === ts.SyntaxKind.InstanceOfKeyword;
  return ts.isTypeReferenceNode(parent) || isAsked;
}

/** What a text is looked through for by these is made into a pattern where it is none; a constant by its name is looked at where it stands. */
function takesPattern(node: ts.Node): boolean {
  if (!ts.isCallExpression(node) || !ts.isPropertyAccessExpression(node.expression)) return false;
  if (!['match', 'matchAll', 'search', 'compile'].includes(node.expression.name.text)) return false;
  const [wanted] = node.arguments;
  if (wanted === undefined || ts.isRegularExpressionLiteral(wanted)) return false;
  return !(ts.isIdentifier(wanted) && /^[A-Z_]+$/.test(wanted.text));
}

function isSlow(pattern: string): boolean {
  const end = pattern.lastIndexOf('/');
  const [source, flags] = [pattern.slice(1, end), pattern.slice(end + 1)];
  return analyse({ source, flags }).reports.length > 0 || choosesAnew(source, flags);
}

/**
 * Whether something that is repeated without an end begins in two ways with one sign, as `(a|a)*` does: each of so many may then be either,
 * and all are tried. The analysis looks at repetitions alone.
 */
function choosesAnew(source: string, flags: string): boolean {
  const { pattern, flags: how } = new RegExpParser().parseLiteral(`/${source}/${flags}`);
  let found = false;
  visitRegExpAST(pattern, {
    onQuantifierEnter(quantifier) {
      if (quantifier.max === Number.POSITIVE_INFINITY && isOpen(quantifier, how)) found = true;
    },
  });
  return found;
}

function isOpen(quantifier: AST.Quantifier, flags: ReadonlyFlags): boolean {
  return hasSomeDescendant(quantifier, (node) => {
    const choices = node.type === 'Group' || node.type === 'CapturingGroup' ? node.alternatives : [];
    return choices.some((one, i) => choices.slice(i + 1).some((other) => beginAlike(one, other, flags)));
  });
}

function beginAlike(one: AST.Alternative, other: AST.Alternative, flags: ReadonlyFlags): boolean {
  const [first, second] = [one, other].map((each) => getFirstConsumedChar(each, 'ltr', flags));
  return first === undefined || second === undefined || !first.char.isDisjointWith(second.char);
}

if (process.argv[1]?.endsWith('patterns.ts')) {
  const listed = execFileSync('git', ['ls-files', '--cached', '--others', '--exclude-standard', 'src']);
  const files = listed.toString().trim().split('\n');
  const sources = files.filter((path) => /\.tsx?$/.test(path) && !path.endsWith('.generated.ts'));
  const slow = sources.flatMap((path) => slowPatterns(path, readFileSync(path, 'utf8')));
  for (const each of slow) console.error(each);
  process.exitCode = slow.length > 0 ? 1 : 0;
}
