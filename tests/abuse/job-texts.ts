import { readdirSync, readFileSync } from 'node:fs';
import { wrongCombinations } from '../cli/malformed-combinations.ts';
import { goodJob, type Malformed, pick, whole, written } from '../cli/malformed-draw.ts';
import { badPaper } from '../cli/malformed-paper.ts';
import { binary, damagedYaml, huge, slips } from '../cli/malformed-text.ts';
import { geometry, wrongKeys, wrongQuantities, wrongTypes } from '../cli/malformed-values.ts';
import { inProcess } from '../cli/run-command.ts';
import type { Random } from '../outside/random-joints.ts';
import type { Attack } from './attack.ts';
import { damaged } from './damage.ts';
import { outcomeOf } from './told.ts';

const WRONG = [
  damagedYaml,
  wrongTypes,
  wrongKeys,
  wrongQuantities,
  wrongCombinations,
  binary,
  huge,
  geometry,
  badPaper,
];

const FOLDERS = ['samples', 'templates'];
const OURS = FOLDERS.flatMap((folder) =>
  readdirSync(folder).map((name) => readFileSync(`${folder}/${name}`)),
);

/** Job files: good ones, such with one thing wrong, with slips, and with bytes anywhere. */
export function jobText(random: Random, folder: string): Attack {
  const { what, args, job = '', codes } = drawn(random);
  return {
    what: `${what}: ${args.join(' ')}`,
    async run() {
      const own = args.map((arg) => (arg === 'JOB' ? '-' : arg));
      const out = args[0] === 'print' ? ['--out', '-'] : [];
      const input = Buffer.from(job).toString('utf8');
      return outcomeOf(await inProcess(folder, [...own, ...out], { input }), codes);
    },
  };
}

type Text = Malformed & { readonly codes: readonly number[] };

function drawn(random: Random): Text {
  const share = random();
  if (share < 0.05)
    return { what: 'a good job', args: command(random), job: written(goodJob(random), random), codes: [0] };
  if (share < 0.45) return { ...pick(random, WRONG)(random), codes: [2] };
  if (share < 0.6) return { ...slips(random), codes: [0, 2] };
  const ours = share < 0.65 ? pick(random, OURS) : Buffer.from(written(goodJob(random), random));
  return { what: 'bytes anywhere', args: command(random), job: damaged(ours, random), codes: [0, 2] };
}

function command(random: Random): readonly string[] {
  return pick(random, [
    ['check', 'JOB'],
    ['check', '--as=json', 'JOB'],
    ['ordinates', `--every=${whole(random, 1, 12) * 30}`, 'JOB'].filter(
      (arg) => !/=(210|240|270|300|330|150)/.test(arg),
    ),
    ['cutlist', '--as=csv', 'JOB'],
    ['print', 'JOB'],
  ]);
}
