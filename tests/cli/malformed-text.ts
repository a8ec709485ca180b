import type { Random } from '../outside/random-joints.ts';
import {
  changed,
  goodJob,
  keysOf,
  type Malformed,
  pick,
  type Tree,
  whole,
  withJob,
  written,
} from './malformed-draw.ts';

type Damage = (text: string, random: Random) => string;

/** A line, by its number, that satisfies this. */
function lineWhere(
  all: readonly string[],
  random: Random,
  fits: (line: string, i: number) => boolean,
): number {
  return pick(
    random,
    all.map((_, i) => i).filter((i) => fits(all[i] ?? '', i)),
  );
}

function onLine(
  text: string,
  random: Random,
  fits: (line: string, before: string) => boolean,
  change: (line: string) => string,
): string {
  const all = text.trimEnd().split('\n');
  const i = lineWhere(all, random, (line, n) => fits(line, all[n - 1] ?? ''));
  return `${all.map((line, n) => (n === i ? change(line) : line)).join('\n')}\n`;
}

const indentOf = (line: string): number => line.search(/\S/);
const holdsValue = (line: string): boolean => /^\s*[\w-]+: [^{[]+$/.test(line);
const onlyValue = (line: string, value: string): string => line.replace(/: .*$/, `: ${value}`);
/** Two neighbours on one level, the upper one with a plain value. */
const sibling = (line: string, before: string): boolean =>
  holdsValue(line) && holdsValue(before) && indentOf(line) === indentOf(before) && indentOf(line) > 0;

const DAMAGES: Readonly<Record<string, Damage>> = {
  'a brace not closed': (text, random) => text.replace(/\}(?=[^}]*$)/, () => (random() < 0.5 ? '' : ']')),
  'a brace closed twice': (text, random) =>
    onLine(
      text,
      random,
      (line) => line.endsWith('}'),
      (line) => `${line} }`,
    ),
  'a quote not closed': (text, random) =>
    onLine(text, random, holdsValue, (line) => line.replace(': ', pick(random, [': "', ": '"]))),
  'words after a quoted value': (text, random) =>
    onLine(text, random, holdsValue, (line) => line.replace(/: (.*)$/, ': "$1" mm')),
  'a tab for an indent': (text, random) =>
    onLine(
      text,
      random,
      (line) => indentOf(line) > 0,
      (line) => `\t${line.trimStart()}`,
    ),
  'a second document': (text, random) =>
    onLine(
      text,
      random,
      (line, before) => before !== '' && indentOf(line) === 0,
      (line) => `---\n${line}`,
    ),
  'a sign that begins no value': (text, random) =>
    onLine(text, random, holdsValue, (line) => line.replace(': ', `: ${pick(random, ['@', '`', '%'])}`)),
  'a value by reference': (text, random) =>
    onLine(text, random, holdsValue, (line) => onlyValue(line, '*rail')),
  'a tag': (text, random) => onLine(text, random, holdsValue, (line) => line.replace(': ', ': !size ')),
  'a second colon': (text, random) => onLine(text, random, holdsValue, (line) => `${line}: 5`),
  'a line without a key': (text, random) =>
    onLine(
      text,
      random,
      (line, before) => before !== '' && holdsValue(line),
      (line) => `${line}\n${' '.repeat(indentOf(line))}measured twice`,
    ),
  'a line too far in': (text, random) =>
    onLine(text, random, sibling, (line) => ' '.repeat(whole(random, 1, 3)) + line),
  'a line too far out': (text, random) => onLine(text, random, sibling, (line) => line.slice(1)),
  'the rest cut off': (text, random) => {
    const open = text.lastIndexOf('{');
    return text.slice(0, open + 1 + whole(random, 0, 20)).replace(/[}\s]*$/, '');
  },
};

/** A job with an end in braces, so that there is something of each sort to damage. */
function braced(random: Random): string {
  const job = goodJob(random);
  const end = pick(random, ['A', 'B']);
  return written(changed(job, `tube.ends.${end}`, '{ onto: { od: 90.5 }, angle: 60deg }'), random);
}

export function damagedYaml(random: Random): Malformed {
  const what = pick(random, Object.keys(DAMAGES));
  const damage = DAMAGES[what];
  if (damage === undefined) throw new Error(what);
  return withJob(random, what, damage(braced(random), random), { messages: 1 });
}

/** Bytes that are no job: noise, other files' beginnings, text in other encodings. */
export function binary(random: Random): Malformed {
  const noise = Uint8Array.from({ length: whole(random, 1, 600) }, () => whole(random, 0, 255));
  // Noise that happens to be text is not what is tested here.
  noise[0] = pick(random, [0x00, 0x80, 0xff, 0x1b]);
  const text = braced(random);
  const inside = Buffer.from(text);
  inside[whole(random, 0, inside.length - 1)] = pick(random, [0x00, 0x07, 0x1b, 0x7f, 0xc0, 0xff]);
  const forms: readonly (readonly [string, Uint8Array])[] = [
    ['noise', noise],
    ['a zip file', Buffer.concat([Buffer.from('PK\u0003\u0004'), noise])],
    ['a PNG', Buffer.concat([Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10), noise])],
    ['a PDF', Buffer.concat([Buffer.from('%PDF-1.7\n'), noise])],
    ['UTF-16', Buffer.from(`\uFEFF${text}`, 'utf16le')],
    ['Latin letters in one byte each', Buffer.from(text.replace('kayak', 'caf\u00e9'), 'latin1')],
    ['a job with a stray byte', inside],
    ['nothing but zeros', new Uint8Array(whole(random, 1, 4096))],
  ];
  const [what, job] = pick(random, forms);
  return withJob(random, what, job, { messages: 1 });
}

const HUGE: Readonly<Record<string, (random: Random, n: number) => readonly [Tree | string, number?]>> = {
  'a long name': (random, n) => [changed(goodJob(random), 'tube.name', 'rung '.repeat(n + 20).trim()), 1],
  'a long number': (random, n) => [changed(goodJob(random), 'tube.od', '9'.repeat(n + 60)), 1],
  'a long list for a number': (random, n) => [changed(goodJob(random), 'tube.wall', [...'9'.repeat(n)]), 1],
  'a long key': (random, n) => [
    changed(goodJob(random), `tube.${'x'.repeat(Math.min(1000, n + 20))}`, '5'),
    1,
  ],
  'many keys': (random, n) => {
    const keys = Array.from({ length: 1 + (n % 200) }, (_, i): [string, Tree] => [`rail-no-${i}`, '5']);
    return [{ ...keysOf(goodJob(random)), ...Object.fromEntries(keys) }, Math.min(50, keys.length)];
  },
  'many tubes, one wrong': (_, n) => {
    const wrong = n % 40;
    const tubes = Array.from({ length: 40 }, (__, i) => ({
      od: i === wrong ? '-30' : '30',
      ends: { A: { onto: { od: '60' }, angle: '60' } },
    }));
    return [{ copeleaf: '1', tubes }, 1];
  },
  'deep brackets': (_, n) => [`copeleaf: 1\ntube: ${'['.repeat(n + 50)}`, 1],
  'deep braces': (_, n) => [`copeleaf: 1\ntube: ${'{ ends: '.repeat(n + 50)}`, 1],
  'deep dashes': (_, n) => [`copeleaf: 1\ntubes:\n  ${'- '.repeat(n + 100)}5\n`, 1],
  'deep indents': (_, n) => [
    `copeleaf: 1\n${Array.from({ length: 150 + (n % 200) }, (_, i) => `${' '.repeat(i)}tube:`).join('\n')}`,
    1,
  ],
  'aliases of aliases': (_, n) => {
    const layers = Array.from(
      { length: 2 + (n % 30) },
      (_, i) => `a${i + 1}: &a${i + 1} [${`*a${i}, `.repeat(9)}*a${i}]`,
    );
    return [`copeleaf: 1\na0: &a0 [x]\n${layers.join('\n')}\ntubes: *a1\n`];
  },
  'a long comment and no job': (_, n) => [`# ${'measured twice '.repeat(n + 1)}\n`, 1],
  'a long line of words': (_, n) => ['measured twice '.repeat(n + 1), 1],
};

export function huge(random: Random): Malformed {
  // Rarely, since it takes long: more than any job may hold.
  if (random() < 1 / 2000) {
    return withJob(random, 'twenty million signs', `copeleaf: 1\n#${'x'.repeat(20_000_000)}\n`, {
      messages: 1,
    });
  }
  const what = pick(random, Object.keys(HUGE));
  const [job, messages] = HUGE[what]?.(random, whole(random, 1, 3000)) ?? [''];
  return withJob(
    random,
    what,
    typeof job === 'string' ? job : written(job),
    messages === undefined ? {} : { messages },
  );
}

const SIGNS = [
  ...`:,-{}[]"'#&*!|>%@?\t\n \r0123456789./x½°−`,
  ': ',
  '- ',
  '\n  ',
  '---\n',
  '*a',
  '&a ',
  '1e9',
  '0x1',
  '~',
];

/** Slips of the keys anywhere: some do no harm, and none may do more than be refused. */
export function slips(random: Random): Malformed {
  let text = braced(random);
  for (let n = whole(random, 1, 4); n > 0; n--) {
    const at = whole(random, 0, text.length);
    const put = random() < 0.3 ? '' : pick(random, SIGNS);
    text = text.slice(0, at) + put + text.slice(at + whole(random, 0, 6));
  }
  return { what: 'slips of the keys', args: ['ordinates', '--every=90', 'JOB'], job: text };
}
