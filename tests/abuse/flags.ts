import { pick, whole } from '../cli/malformed-draw.ts';
import { wrongFlags } from '../cli/malformed-flags.ts';
import { inProcess } from '../cli/run-command.ts';
import type { Random } from '../outside/random-joints.ts';
import type { Attack } from './attack.ts';
import { damaged } from './damage.ts';
import { outcomeOf } from './told.ts';

const VALUES: Readonly<Record<string, readonly string[]>> = {
  od: ['38.1', '1-1/2in', '60,3 mm', '1 1/2"'],
  wall: ['2.4', '16 BWG', '.095in', '14 ga'],
  pipe: ['NPS 1-1/2 sch 40', 'EN 48.3 x 2.6'],
  onto: ['44.5', '2in', '1m'],
  angle: ['60', "60°30'", '1.05rad', '90'],
  offset: ['0', '3', '-1/8in'],
  clock: ['0', '35', '-120°'],
  edge: ['bevel', 'square'],
  land: ['1', '1mm'],
  from: ['inside', 'outside'],
  root: ['2', '1/16in'],
  end: ['A', 'B'],
  units: ['mm', 'in'],
  paper: ['A4', 'letter', '300x400mm', '11x17in', 'roll 610mm'],
  margin: ['12', '1/2in'],
  seated: ['587mm'],
  every: ['15deg', '30', '22.5'],
  as: ['svg', 'dxf', 'json', 'csv', 'text', 'pdf'],
};

/** Command lines: with something wrong, and such of any flags with any values, damaged or not. */
export function flags(random: Random, folder: string): Attack {
  const wrong = random() < 0.5;
  const drawn = wrong ? wrongFlags(random) : { args: anyLine(random) };
  const input = 'job' in drawn && drawn.job !== undefined ? Buffer.from(drawn.job).toString('utf8') : '';
  const args = drawn.args.map((arg) => (arg === 'JOB' ? '-' : arg));
  return {
    what: args.join(' ').slice(0, 120),
    async run() {
      return outcomeOf(await inProcess(folder, args, { input }), wrong ? [2] : [0, 2]);
    },
  };
}

function anyLine(random: Random): readonly string[] {
  const name = pick(random, ['print', 'check', 'ordinates', 'aid', 'starter', 'cutlist', 'help']);
  const needed = ['od', 'onto', 'angle'];
  const more = Array.from({ length: whole(random, 0, 4) }, () => pick(random, Object.keys(VALUES)));
  const given = [...new Set([...needed, ...more])].map((flag) => `--${flag}=${value(random, flag)}`);
  const first = name === 'aid' ? [name, pick(random, ['ruler', 'girth', 'bevel'])] : [name];
  const out = name === 'print' || name === 'aid' || name === 'starter' ? ['--out=-'] : [];
  return [...first, ...(random() < 0.8 ? given : given.slice(1)), ...out];
}

function value(random: Random, flag: string): string {
  const good = pick(random, VALUES[flag] ?? ['5']);
  if (random() < 0.8) return good;
  // No process is handed a zero byte.
  return damaged(Buffer.from(good), random).toString('utf8').replaceAll('\0', '0');
}
