import { expect, test, vi } from 'vitest';
import { between, randomFrom } from '../outside/random-joints.ts';
import type { Place } from './ray-march.ts';
import { dotOf } from './ray-march.ts';
import { readLines } from './read-lines.ts';

const entries = vi.hoisted(() => ({ round: 0 }));

vi.mock(
  '../../src/space/round.ts',
  async (actual) => {
    const own = await actual<typeof import('../../src/space/round.ts')>();
    const roundHeader: typeof own.roundHeader = (...of) => {
      const solid = own.roundHeader(...of);
      const enter: typeof solid.enter = (x, y) => {
        entries.round++;
        return solid.enter(x, y);
      };
      return { ...solid, enter };
    };
    return { ...own, roundHeader };
  },
  60_000,
);
