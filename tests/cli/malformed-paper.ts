import { between, type Random } from '../outside/random-joints.ts';
import {
  changed,
  command,
  goodJob,
  type Malformed,
  pick,
  type Tree,
  whole,
  withJob,
  written,
} from './malformed-draw.ts';
import { noLength } from './malformed-values.ts';

export function badPaper(random: Random): Malformed {
  const job = goodJob(random);
  const n = whole(random, 1, 99);
  const papers = [
    'A44',
    `A${n + 5}`,
    'lettre',
    'foolscap',
    '',
    `${n}x400mm`,
    `400x${n}mm`,
    `0x${n}`,
    `${n}x`,
    `x${n}`,
    `-${n}x300`,
    '300x400x500',
    `${n + 6}mx1m`,
    'NaNxNaN',
    '300 by 400',
    '300x400furlongs',
    `9e9x${n}`,
    '1,500x300',
  ];
  const sides = ['left', 'right', 'top', 'bottom'];
  const forms: readonly (() => Malformed)[] = [
    () => told('paper', changed(job, 'paper', JSON.stringify(pick(random, papers))), 'paper'),
    () =>
      told(
        'margin too wide',
        changed(changed(job, 'paper', 'A4'), 'margin', `${between(random, 50.1, 900)}`),
        '110',
      ),
    // At the foot 177 mm still leave 110 of A4's 297, with the 10 above.
    () =>
      told(
        'one margin too wide',
        changed(changed(job, 'paper', 'A4'), 'margin', {
          [pick(random, sides)]: `${between(random, 177.01, 900)}`,
        }),
        '110',
      ),
    () => told('a negative margin', changed(job, 'margin', `-${between(random, 0.1, 30)}`), 'margin'),
    () => told('one negative margin', changed(job, 'margin', { [pick(random, sides)]: '-1' }), 'less than 0'),
    () =>
      told(
        'an unknown margin',
        changed(job, 'margin', { [pick(random, ['foot', 'gutter', 'lft', 'Right'])]: '10' }),
        'margin',
      ),
    () =>
      told(
        'a margin that is no length',
        changed(job, 'margin', { [pick(random, sides)]: JSON.stringify(noLength(random)) }),
        'read',
      ),
    () =>
      told(
        'board for paper',
        changed(job, 'paper-thickness', `${between(random, 2.01, 90)}`),
        'paper-thickness',
      ),
    () => told('paper of no thickness', changed(job, 'paper-thickness', `-0.1`), 'paper-thickness'),
    () => ({
      what: '--paper',
      args: [...command(random), 'JOB', `--paper=${pick(random, papers)}`],
      job: written(job),
      messages: 1,
      says: 'paper',
    }),
    () => ({
      what: '--paper too small',
      args: [...command(random), 'JOB', `--paper=${pick(random, ['100x300mm', '4x6in', '120x120mm'])}`],
      job: written(job),
      messages: 1,
      says: '110',
    }),
  ];
  const told = (what: string, tree: Tree, says: string) =>
    withJob(random, what, written(tree), { messages: 1, says });
  return pick(random, forms)();
}
