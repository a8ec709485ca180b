import { between, type Random } from '../outside/random-joints.ts';
import {
  changed,
  goodJob,
  keysOf,
  type Malformed,
  pick,
  renamed,
  type Tree,
  whole,
  withJob,
  written,
} from './malformed-draw.ts';

const END_LENGTHS = ['onto.od', 'offset', 'root'];
const ENDS = ['tube.ends.A', 'tube.ends.B'];
export const LENGTH_KEYS = [
  'margin',
  'paper-thickness',
  'tube.od',
  'tube.wall',
  'tube.between',
  'tube.allowance',
  ...ENDS.flatMap((end) => END_LENGTHS.map((key) => `${end}.${key}`)),
];
const ANGLE_KEYS = ENDS.flatMap((end) => ['angle', 'clock'].map((key) => `${end}.${key}`));
const SCALAR_KEYS = [
  ...LENGTH_KEYS,
  ...ANGLE_KEYS,
  'paper',
  'pair',
  'units',
  'job',
  'tube.copies',
  'tube.name',
  'tube.ends.A.edge',
];

const last = (path: string): string => path.split('.').at(-1) ?? path;

export function wrongTypes(random: Random): Malformed {
  const nested: Tree = { rail: `${whole(random, 1, 9)}` };
  const scalar = pick(random, ['5', 'rail', '38.1mm', 'true']);
  // A value may be measured several times over, so that one of the list has to be none.
  const list: Tree = ['rail', '120'];
  const maps: readonly (readonly [string, Tree])[] = [
    ['tube', scalar],
    ['tube', list],
    ['tube', ''],
    ['tube.ends', scalar],
    ['tube.ends', list],
    ['tube.ends', ''],
    ['tube.ends', {}],
    ['tube.ends.A', scalar],
    ['tube.ends.B', [scalar]],
    ['tube.ends.A', ''],
    ['tube.ends.B.onto', scalar],
    ['tube.ends.A.onto', list],
    ['tube.ends.A.onto', ''],
    ['copeleaf', list],
    ['copeleaf', nested],
    ['copeleaf', ''],
  ];
  if (random() < 0.1) {
    const root = pick<Tree>(random, [list, scalar, [goodJob(random)]]);
    return withJob(random, 'a job that is no map', written(root), { messages: 1 });
  }
  const [path, value] =
    random() < 0.5
      ? pick(random, maps)
      : ([
          pick(
            random,
            SCALAR_KEYS.filter((key) => key !== 'margin'),
          ),
          pick<Tree>(random, [list, nested, '']),
        ] as const);
  const job = written(changed(goodJob(random), path, value), random);
  // What stands in a list has no key to be told by.
  const says = Array.isArray(value) && path === 'tube.ends.B' ? {} : { says: last(path) };
  return withJob(random, `${path} of another shape`, job, { messages: 1, ...says });
}

const STRANGE = [
  '__proto__x',
  'constructor',
  'toString',
  'hasOwnProperty',
  '<<',
  'größe',
  '寸法',
  'kayak-rail',
  'NaN',
];

export function wrongKeys(random: Random): Malformed {
  const job = goodJob(random);
  const forms: Readonly<Record<string, () => Malformed>> = {
    misspelt: () => {
      const path = pick(random, [
        'tube.wall',
        'tube.between',
        'tube.allowance',
        'tube.ends.A.angle',
        'tube.ends.B.onto',
      ]);
      const slip = misspelt(random, last(path));
      return told(renamed(job, path, slip), { messages: 1, says: last(path) });
    },
    'from another place': () => {
      const [path, belongs] = pick(random, [
        ['tube.angle', 'on an end'],
        ['tube.paper', 'at the head'],
        ['wall', 'on the tube'],
        ['tube.ends.A.between', 'on the tube'],
        ['tube.ends.angle', 'on an end'],
        ['tube.ends.B.onto.angle', 'on an end'],
      ] as const);
      return told(changed(job, path, '5'), { messages: 1, says: belongs });
    },
    'that nobody knows': () => {
      const place = pick(random, ['', 'tube.', 'tube.ends.', 'tube.ends.A.', 'tube.ends.B.onto.']);
      const key = pick(random, STRANGE) + (random() < 0.5 ? '' : whole(random, 0, 99));
      return told(changed(job, place + key, pick<Tree>(random, ['5', '', { a: '1' }, ['1']])), {
        messages: 1,
        says: key,
      });
    },
    'given twice': () => {
      const path = pick(random, [...LENGTH_KEYS, ...ANGLE_KEYS, 'paper', 'tube.ends.A']);
      // A space before the colon is no part of the key.
      return told(changed(job, `${path} `, '5'), { messages: 1, says: 'already' });
    },
    'left out': () => {
      const path = pick(random, [
        'tube.od',
        'tube.ends',
        'tube',
        'tube.between',
        'tube.ends.A.angle',
        'tube.ends.B.onto',
        'tube.ends.A.onto.od',
      ]);
      return told(changed(job, path, undefined), { messages: 1, says: last(path) });
    },
    'that is no word': () =>
      told(changed(job, `tube.${pick(random, ['[a]', '{ a: 1 }', '""'])}`, '5'), { messages: 1 }),
    'for the version left out': () =>
      told(changed(job, 'copeleaf', undefined), { messages: 1, says: 'copeleaf' }),
    'for the version too late': () => {
      const { copeleaf: _, ...rest } = keysOf(job);
      return told({ ...rest, copeleaf: '1' }, { messages: 1, says: 'copeleaf' });
    },
    'of another version': () =>
      told(changed(job, 'copeleaf', pick(random, ['2', '1.0', '01', 'one', '-1', '1e0'])), {
        messages: 1,
        says: 'version',
      }),
  };
  const told = (tree: Tree, more: Partial<Malformed>) => withJob(random, '', written(tree, random), more);
  const what = pick(random, Object.keys(forms));
  return { ...(forms[what]?.() ?? told(job, {})), what: `a key ${what}` };
}

/** One slip of the keys: a letter too many, too few, doubled, or two swapped. */
function misspelt(random: Random, key: string): string {
  const i = whole(random, 0, key.length - 2);
  const [a = '', b = ''] = [key[i], key[i + 1]];
  const slip = pick(random, [
    key.slice(0, i) + key.slice(i + 1),
    key.slice(0, i) + a + key.slice(i),
    `${key.slice(0, i)}${b}${a}${key.slice(i + 2)}`,
    `${key.slice(0, i)}x${key.slice(i)}`,
    key.toUpperCase(),
  ]);
  return slip === key ? `${key}s` : slip;
}

/** Texts that are no length and no angle anywhere. */
function noQuantity(random: Random): string {
  const n = whole(random, 1, 99);
  return pick(random, [
    `${n},500`,
    `${n}.234,5`,
    `${n},234.5`,
    `${n}e${whole(random, 0, 9)}`,
    `0x${n}`,
    'NaN',
    '.nan',
    '-.inf',
    'Infinity',
    `${n}/0`,
    `--${n}`,
    `${n}.`,
    `.${n}.`,
    `${n} furlongs`,
    `${n}mm ${n}`,
    `${n} ${n}`,
    `1_${n}`,
    `${n} - 1/2`,
    `1 ${n + 9}/8`,
    `${n}²`,
    `three`,
    '~',
    'null',
    'true',
    '٣٨',
    `${n}мм`,
    `about ${n}`,
    `${n} or so`,
    `$${n}`,
    `=${n}+1`,
    `${'9'.repeat(n + 9)}`,
    '/',
    '°',
    '?!',
  ]);
}

export function noLength(random: Random): string {
  const n = whole(random, 1, 80);
  return random() < 0.8
    ? noQuantity(random)
    : pick(random, [`${n}deg`, `${n}°`, `1m ${n}cm`, `2' ${n}`, `${n + 1}km`, `2.5ft 3in`]);
}

export function noAngle(random: Random): string {
  const n = whole(random, 1, 80);
  return random() < 0.8
    ? noQuantity(random)
    : pick(random, [`${n}mm`, `${n}in`, `${n}.5°30'`, `${n}°75'`, `${n}° 30`, `30'`, `1rad ${n}`]);
}

export function wrongQuantities(random: Random): Malformed {
  const angle = random() < 0.3;
  const path = pick(random, angle ? ANGLE_KEYS : LENGTH_KEYS);
  const text = angle ? noAngle(random) : noLength(random);
  const value =
    random() < 0.5
      ? JSON.stringify(text)
      : text.replace(/^([^\w/.$°=]|0x|--)/, "'$1").replace(/^'.*$/, `'${text.replaceAll("'", "''")}'`);
  const job = written(changed(goodJob(random), path, value));
  return withJob(random, `${path}: ${text}`, job, { messages: 1, says: last(path) });
}

export function geometry(random: Random): Malformed {
  const end = pick(random, ENDS);
  const od = between(random, 20, 60);
  const header = between(random, 20, 120);
  const job = changed(changed(goodJob(random), 'tube.od', `${od}`), `${end}.onto.od`, `${header}`);
  const misses = `${pick(random, ['-', ''])}${((od + header) / 2) * between(random, 1.0001, 3)}`;
  const forms: readonly (readonly [path: string, value: string])[] = [
    [`${end}.angle`, pick(random, ['0', '180', '-0', '180deg', '3.1415926535897932rad'])],
    [`${end}.angle`, `${between(random, 180.0001, 3000)}`],
    [`${end}.angle`, `-${between(random, 0.0001, 3000)}`],
    [`${end}.offset`, misses],
    [`${end}.onto.od`, pick(random, ['0', '-5', '0in', '-0'])],
    ['tube.wall', `${(od / 2) * between(random, 1.0001, 9)}`],
    ['tube.wall', pick(random, ['0', '-1'])],
    ['tube.between', pick(random, ['0', `-${between(random, 0.1, 900)}`])],
    ['tube.between', `${between(random, 0.1, 1)}`],
    ['tube.allowance', `-${between(random, 0.1, 9)}`],
    [`${end}.root`, pick(random, ['10', '-0.1', '1in', `${between(random, 10, 900)}`])],
    [`${end}.angle`, `${between(random, 1, 9)}e-7`],
    ['tube.copies', pick(random, ['0', '-1', '1.5', '10000', '1e2', 'many'])],
    ['tube.od', `${between(random, 1.01e6, 9e9).toFixed(1)}`],
  ];
  const [path, value] = pick(random, forms);
  const text = written(changed(job, path, value));
  return withJob(random, `${path}: ${value}`, text, { messages: 1, says: last(path) });
}
