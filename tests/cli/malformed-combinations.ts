import { between, type Random } from '../outside/random-joints.ts';
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

const SMALL: Tree = { od: '30', ends: { A: { onto: { od: '60' }, angle: '60' } } };

type Changes = readonly (readonly [path: string, value: Tree | undefined])[];

/** Each value would do by itself; `end` is one of the two. */
const TOGETHER: Readonly<Record<string, (random: Random, end: string) => readonly [Changes, says: string]>> =
  {
    'a square edge and no wall': (_random, _end) => [
      [
        ['tube.wall', undefined],
        ['tube.ends.A.edge', 'bevel'],
        ['tube.ends.B.edge', 'square'],
      ],
      'wall',
    ],
    'a land and no wall': (_random, end) => [
      [
        ['tube.wall', undefined],
        ['tube.ends.A.edge', 'bevel'],
        ['tube.ends.B.edge', 'bevel'],
        [`${end}.land`, '1'],
      ],
      'wall',
    ],
    'a land thicker than the wall': (random, end) => [
      [
        [`${end}.edge`, 'bevel'],
        [`${end}.land`, `${between(random, 3.01, 9)}`],
      ],
      'land',
    ],
    'a land on a square edge': (_random, end) => [
      [
        [`${end}.edge`, 'square'],
        [`${end}.land`, '0.5'],
      ],
      'land',
    ],
    'the inside line with a bevel': (_random, end) => [
      [
        [`${end}.edge`, 'bevel'],
        [`${end}.from`, 'inside'],
      ],
      'from',
    ],
    'two sizes of tube': (_random, _end) => [[['tube.pipe', 'NPS 1-1/2']], 'one of the two'],
    'two sizes of header': (_random, end) => [[[`${end}.onto.pipe`, 'NPS 2']], 'one of the two'],
    'two walls': (random, _end) => [
      [
        ['tube.od', undefined],
        ['tube.pipe', pick(random, ['NPS 1-1/2 sch 40', 'EN 48.3 x 2.6'])],
      ],
      'wall',
    ],
    'two ends and no length': (_random, _end) => [[['tube.between', undefined]], 'between'],
    'one plain end': (random, _end) => [
      [
        ['tube.ends', { A: 'plain' }],
        ['tube.between', pick(random, ['500', undefined])],
      ],
      'ends',
    ],
    'two plain ends and no length': (_random, _end) => [
      [
        ['tube.ends', { A: 'plain', B: 'plain' }],
        ['tube.between', undefined],
      ],
      'between',
    ],
    'a tube and tubes': (_random, _end) => [[['tubes', [SMALL]]], 'tubes'],
    'no tubes in the list': (_random, _end) => [
      [
        ['tube', undefined],
        ['tubes', []],
      ],
      'tube',
    ],
    'two tubes of one name': () => [
      [
        ['tube', undefined],
        ['tubes', [{ name: 'rung', ...keysOf(SMALL) }, SMALL, { name: 'rung', ...keysOf(SMALL) }]],
      ],
      'rung',
    ],
    'ends that cross': (random, _end) => [[['tube.between', `${between(random, 1, 20)}`]], 'between'],
    'a gauge of no kind': (random, _end) => [
      [['tube.wall', `${whole(random, 7, 20)} ${pick(random, ['ga', 'gauge', 'SWG'])}`]],
      'BWG',
    ],
    'an unknown pipe': (random, _end) => [
      [
        ['tube.od', undefined],
        ['tube.pipe', pick(random, ['NPS 7', 'DN 40', 'EN 50', 'NPS 2 sch 11', '48.3', 'x'])],
      ],
      'pipe',
    ],
    'the name of a pipe for a length': (random, end) => [
      [[pick(random, ['tube.od', `${end}.onto.od`]), 'NPS 1-1/2']],
      'name of a size',
    ],
  };

/** Values that will not do together. */
export function wrongCombinations(random: Random): Malformed {
  const what = pick(random, Object.keys(TOGETHER));
  const [put, says] = TOGETHER[what]?.(random, `tube.ends.${pick(random, ['A', 'B'])}`) ?? [[], ''];
  const job = put.reduce((tree, [path, value]) => changed(tree, path, value), goodJob(random));
  return withJob(random, what, written(job, random), { messages: 1, says });
}
