import { between, type Random } from '../outside/random-joints.ts';

/** One thing wrong with a job or a command line, and how it is handed over. */
export interface Malformed {
  /** What is wrong, in few words, for whoever reads a failure. */
  readonly what: string;
  /** `JOB` among them stands for the path of the job, or for - with the job on standard input. */
  readonly args: readonly string[];
  readonly job?: string | Uint8Array;
  /** How many messages it takes; left out where one slip is rightly told as several. */
  readonly messages?: number;
  /** What the message has to hold, for one. */
  readonly says?: string;
}

/** A job as keys and plain values, to be damaged before it is written out. */
export type Tree = string | { readonly [key: string]: Tree } | readonly Tree[];

export function pick<Item>(random: Random, items: readonly Item[]): Item {
  for (const item of items.slice(Math.floor(random() * items.length))) return item;
  throw new Error('nothing to pick from');
}

export function whole(random: Random, low: number, high: number): number {
  return low + Math.floor(random() * (high - low + 1));
}

/** A job with nothing wrong: a brace between two rails, each time of other sizes. */
export function goodJob(random: Random): Tree {
  const od = between(random, 16, 60);
  const end = (): Tree => ({
    onto: { od: size(between(random, od * 1.05, od * 3)) },
    angle: `${whole(random, 35, 145)}`,
    clock: `${whole(random, -180, 180)}`,
    offset: size(between(random, -0.3, 0.3) * od),
    edge: pick(random, ['bevel', 'square']),
    root: '1',
  });
  return {
    copeleaf: '1',
    units: 'mm',
    job: 'kayak trailer',
    paper: pick(random, ['A4', 'letter', 'A3', '300x400mm']),
    margin: `${whole(random, 6, 20)}`,
    'paper-thickness': '0.1',
    tube: {
      name: 'bunk stay',
      od: size(od),
      wall: size(between(random, 1, 3)),
      between: `${whole(random, 900, 1500)}`,
      allowance: `${whole(random, 6, 13)}`,
      copies: `${whole(random, 1, 4)}`,
      ends: { A: end(), B: end() },
    },
    pair: pick(random, ['true', 'false']),
  };
}

function size(mm: number): string {
  return mm.toFixed(1);
}

/** The same job with another value at this path, such as `tube.ends.A.angle`; undefined takes the key out. */
export function changed(job: Tree, path: string, value: Tree | undefined): Tree {
  const [key = '', ...rest] = path.split('.');
  const inner = rest.length === 0 ? value : changed(part(keysOf(job), key), rest.join('.'), value);
  const entries = Object.entries(keysOf(job)).filter(([name]) => name !== key || inner !== undefined);
  if (inner === undefined) return Object.fromEntries(entries);
  if (!Object.hasOwn(keysOf(job), key)) return { ...keysOf(job), [key]: inner };
  return Object.fromEntries(entries.map(([name, old]) => [name, name === key ? inner : old]));
}

/** The keys of a job or of a part of one. */
export function keysOf(tree: Tree): { readonly [key: string]: Tree } {
  if (typeof tree === 'string' || isList(tree)) throw new Error('this part of the job has no keys');
  return tree;
}

function isList(tree: Tree): tree is readonly Tree[] {
  return Array.isArray(tree);
}

function part(job: { readonly [key: string]: Tree }, key: string): Tree {
  const value = job[key];
  if (value === undefined) throw new Error(`the job has no ${key}`);
  return value;
}

/** The same job with this key under another name, in its place. */
export function renamed(job: Tree, path: string, name: string): Tree {
  const [key = '', ...rest] = path.split('.');
  const entries = Object.entries(keysOf(job)).map(([old, value]): [string, Tree] => {
    if (old !== key) return [old, value];
    return rest.length === 0 ? [name, value] : [old, renamed(value, rest.join('.'), name)];
  });
  return Object.fromEntries(entries);
}

/** Writes the job as YAML: in lines, with the inner maps in braces now and then. */
export function written(job: Tree, random: Random = () => 1): string {
  if (typeof job === 'string') return `${job}\n`;
  return `${lines(job, '', random).join('\n')}\n`;
}

function lines(tree: Tree, indent: string, random: Random): string[] {
  if (typeof tree === 'string') return [`${indent}${tree}`];
  if (isList(tree)) return tree.map((item) => `${indent}- ${inBraces(item)}`);
  return Object.entries(tree).flatMap(([key, value]) => {
    const short = typeof value === 'string' || Object.keys(value).length === 0;
    if (short || (indent !== '' && random() < 0.4)) return [`${indent}${key}: ${inBraces(value)}`.trimEnd()];
    return [`${indent}${key}:`, ...lines(value, `${indent}  `, random)];
  });
}

function inBraces(tree: Tree): string {
  if (typeof tree === 'string') return tree;
  if (isList(tree)) return `[${tree.map(inBraces).join(', ')}]`;
  const pairs = Object.entries(tree).map(([key, value]) => `${key}: ${inBraces(value)}`);
  return pairs.length === 0 ? '{}' : `{ ${pairs.join(', ')} }`;
}

/** One of the commands that read a job, in text or as data. */
export function command(random: Random): readonly string[] {
  const name = pick(random, ['print', 'ordinates', 'check']);
  return [name, ...(random() < 0.5 ? ['--errors', 'json'] : [])];
}

/** The job handed to one of the commands. */
export function withJob(
  random: Random,
  what: string,
  job: string | Uint8Array,
  more: Partial<Malformed> = {},
): Malformed {
  return { what, args: [...command(random), 'JOB'], job, ...more };
}
