import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import type { Plugin } from 'esbuild';
import ts from 'typescript';

const MODULES = new URL('../../node_modules/', import.meta.url);
const INSIDE = /ml-matrix[\\/]src[\\/].*\.js$/;

/** What least squares asks of a matrix stands in these; and what it falls back to for one that its damping never lets come. */
const ASKING = [
  'ml-levenberg-marquardt/lib/step.js',
  'ml-levenberg-marquardt/lib/levenberg_marquardt.js',
  'ml-levenberg-marquardt/lib/gradient_function.js',
  'ml-matrix/src/dc/cholesky.js',
  'ml-matrix/src/dc/lu.js',
  'ml-matrix/src/decompositions.js',
];

/**
 * Takes the modules of ml-matrix rather than the one bundle that it ships, and of its classes' two hundred methods leaves out those
 * that nobody names: a bundler can't, for it does not know what an object is asked. Of its decompositions the two are left out that
 * matrices which are not square have.
 */
export const leanMatrix: Plugin = {
  name: 'lean-matrix',
  setup(build) {
    build.onResolve({ filter: /^ml-matrix$/ }, () => ({
      path: fileURLToPath(new URL('ml-matrix/src/index.js', MODULES)),
      sideEffects: false,
    }));
    build.onLoad({ filter: INSIDE }, async ({ path }) => {
      const text = await readFile(path, 'utf8');
      if (/[\\/](qr|svd)\.js$/.test(path)) return { contents: 'export default undefined;' };
      if (!/[\\/](matrix|mathOperations)\.js$/.test(path)) return { contents: text };
      const asked = await namesAsked();
      return { contents: without(text, unasked(text, asked)) };
    });
  },
};

/** The names that are asked for, and those that what these name asks for in its turn. */
async function namesAsked(): Promise<ReadonlySet<string>> {
  const texts = await Promise.all(ASKING.map((file) => readFile(new URL(file, MODULES), 'utf8')));
  const named = new Set(texts.flatMap(namesIn));
  const members = (
    await Promise.all(
      ['matrix.js', 'mathOperations.js'].map((file) =>
        readFile(new URL(`ml-matrix/src/${file}`, MODULES), 'utf8'),
      ),
    )
  ).flatMap(membersOf);
  for (let before = 0; before < named.size; ) {
    before = named.size;
    for (const { name, text } of members) {
      if (named.has(name)) for (const each of namesIn(text)) named.add(each);
    }
  }
  return named;
}

function namesIn(text: string): string[] {
  return [...text.matchAll(/\.\s*(\w+)/g)].flatMap(([, name]) => name ?? []);
}

interface Member {
  readonly name: string;
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

/** The methods of the classes in a module, and those that it puts on a class. */
function membersOf(text: string): Member[] {
  const source = ts.createSourceFile('matrix.js', text, ts.ScriptTarget.Latest, true);
  const members: Member[] = [];
  const note = (name: string, node: ts.Node): void => {
    members.push({ name, from: node.getStart(source), to: node.end, text: node.getText(source) });
  };
  const visit = (node: ts.Node): void => {
    if (ts.isMethodDeclaration(node) && ts.isIdentifier(node.name)) note(node.name.text, node);
    else if (ts.isExpressionStatement(node) && ts.isBinaryExpression(node.expression)) {
      const { left } = node.expression;
      if (ts.isPropertyAccessExpression(left) && left.getText(source).startsWith('AbstractMatrix.')) {
        note(left.name.text, node);
      }
    } else ts.forEachChild(node, visit);
  };
  visit(source);
  return members;
}

function unasked(text: string, asked: ReadonlySet<string>): Member[] {
  return membersOf(text).filter(({ name }) => !asked.has(name));
}

function without(text: string, members: readonly Member[]): string {
  return members.reduceRight((rest, { from, to }) => rest.slice(0, from) + rest.slice(to), text);
}
