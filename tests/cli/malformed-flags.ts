import type { Random } from '../outside/random-joints.ts';
import { command, goodJob, type Malformed, pick, whole, written } from './malformed-draw.ts';
import { noAngle, noLength } from './malformed-values.ts';

const GOOD_FLAGS: Readonly<Record<string, string>> = { od: '38.1', wall: '2.4', onto: '44.5', angle: '60' };

function flagged(flags: Readonly<Record<string, string>>): readonly string[] {
  return Object.entries(flags).map(([flag, value]) => `--${flag}=${value}`);
}

/** What a terminal, a spreadsheet or a web page may leave in a pasted word. */
const PASTED = [
  '\u001b[31mred',
  'a\nb',
  'a\tb',
  '\u202Ecba',
  '\u0007',
  'x'.repeat(2000),
  '=1+1',
  '\u{1F6F6}'.repeat(90),
  '',
];

/** One flag with a value that will not do, beside others that will. */
const VALUES: Readonly<Record<string, (random: Random) => readonly [flag: string, value: string]>> = {
  'no length': (random) => [
    pick(random, ['od', 'wall', 'onto', 'offset', 'margin', 'land']),
    noLength(random),
  ],
  'no angle': (random) => [pick(random, ['angle', 'clock']), noAngle(random)],
  'no choice': (random) => [
    pick(random, ['edge', 'from', 'end', 'units', 'paper']),
    pick(random, ['round', 'C', 'A44', '7', '']),
  ],
  'nothing for a length': (random) => [
    pick(random, ['od', 'wall', 'onto', 'margin']),
    pick(random, ['', ' ', '\n', '\t']),
  ],
  'YAML in a flag': (random) => [
    pick(random, ['od', 'wall', 'onto', 'angle']),
    pick(random, ['{ od: 5 }', '[5]', '*a', '5 # mm', '5\nwall: 3', '"5', '!x 5']),
  ],
  'out of range': (random) =>
    pick<[string, string]>(random, [
      ['angle', '0'],
      ['angle', '180'],
      ['wall', '30'],
      ['offset', '99'],
      ['margin', '90'],
      ['od', '-5'],
    ]),
  'a very long value': (random) => [
    pick(random, ['od', 'onto', 'angle']),
    '9'.repeat(whole(random, 61, 3000)),
  ],
  'a pasted value': (random) => [
    pick(random, ['od', 'wall', 'angle', 'edge', 'end', 'units', 'paper']),
    pick(random, PASTED),
  ],
};

type Line = Partial<Malformed> & { readonly args: readonly string[] };

/** A command line that will not do; `name` and `rest` begin one that would. */
const LINES: Readonly<Record<string, (random: Random, name: string, rest: readonly string[]) => Line>> = {
  'an unknown flag': (random, name, rest) => ({
    args: [
      name,
      ...rest,
      ...GOOD,
      `--${pick(random, ['odd', 'rail', 'anlge', 'x', 'paperr', '__proto__'])}`,
      '5',
    ],
  }),
  'a flag without its value': (random, name, rest) => ({
    args: [name, ...rest, ...GOOD, `--${pick(random, ['offset', 'clock', 'paper', 'edge'])}`],
  }),
  'a flag that is needed left out': (random, name, rest) => {
    const left = pick(random, ['od', 'onto', 'angle']);
    const flags = Object.entries(GOOD_FLAGS).filter(([flag]) => flag !== left);
    return { args: [name, ...rest, ...flagged(Object.fromEntries(flags))], says: left };
  },
  'no such format': (random, name, rest) => ({
    args: [name, ...rest, ...GOOD, '--as', pick(random, ['xml', 'PDF2', 'pdff', ...PASTED])],
  }),
  'no such step': (random, _, rest) => ({
    args: [
      'ordinates',
      ...rest,
      ...GOOD,
      `--every=${pick(random, ['7', '0', '-15', '361', 'NaN', '1e-9', '0.001', '17mm', ...PASTED])}`,
    ],
    says: 'every',
  }),
  'a job and flags': (random, name, rest) => ({
    args: [name, ...rest, ...GOOD, 'JOB'],
    job: written(goodJob(random)),
    says: 'either',
  }),
  'two jobs': (random, name, rest) => ({
    args: [name, ...rest, 'JOB', 'another.yaml'],
    job: written(goodJob(random)),
  }),
  'an unknown command': (random, _, rest) => ({
    args: [pick(random, ['prnt', 'Print', 'cut', '5', '__proto__', ...PASTED]), ...rest],
  }),
  'no command': (_, __, rest) => ({ args: rest }),
  'nothing to work on': (_, name, rest) => ({ args: [name, ...rest] }),
  'an unknown starter': (random, _, rest) => ({
    args: ['starter', ...rest, pick(random, ['brase', '../package', ...PASTED])],
  }),
  'no such file': (random, name, rest) => ({
    args: [name, ...rest, pick(random, ['gone.yaml', 'gone/a.yaml', 'job.yaml/a', 'größe.yaml', ...PASTED])],
  }),
  'a folder for a job': (random, name, rest) => ({
    args: [name, ...rest, pick(random, ['.', 'there', './there/'])],
    says: 'folder',
  }),
  'a folder to write into a file': (random, _, rest) => ({
    args: [
      pick(random, ['print', 'ordinates']),
      ...rest,
      ...GOOD,
      `--out=${pick(random, ['there', '.', 'gone/leaf.pdf', 'job.yaml/leaf.pdf'])}`,
    ],
    says: 'folder',
  }),
  'no such way to report': (random, name) => ({
    args: [name, ...GOOD, `--errors=${pick(random, ['xml', 'JSON', ...PASTED])}`],
  }),
  'a great many words': (random, name, rest) => ({
    args: [name, ...rest, ...Array.from({ length: whole(random, 2, 400) }, (_, i) => `rail-${i}`)],
  }),
};

const GOOD = flagged(GOOD_FLAGS);

/** Wrong words on the command line. */
export function wrongFlags(random: Random): Malformed {
  const [name = '', ...rest] = command(random);
  const what = pick(random, [...Object.keys(VALUES), ...Object.keys(LINES)]);
  const value = VALUES[what]?.(random);
  if (value) {
    const [flag] = value;
    const args = [name, ...rest, ...flagged({ ...GOOD_FLAGS, ...Object.fromEntries([value]) })];
    return { what, args, messages: 1, says: flag };
  }
  const line = LINES[what]?.(random, name, rest);
  if (line === undefined) throw new Error(what);
  return { what, messages: 1, ...line };
}
