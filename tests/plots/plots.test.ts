import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { PLOTS } from './gallery.ts';
import { compareWithKept, keptFile } from './kept.ts';

/** Pixels that may differ: rounding here and there. The least change that the comparison's own test makes has over 60. */
const MAY_DIFFER = 12;

describe('drawings look as they did when a person last judged them', () => {
  it.each(PLOTS.map((plot) => [plot.name, plot] as const))('%s', async (name, { draw }) => {
    const comparison = compareWithKept(name, await draw());
    expect(comparison, `${name} is not kept: npm run plots, then look at it`).toBeDefined();
    expect(comparison?.apart, `${name} changed: npm run plots, then look at out/plots`).toBeLessThanOrEqual(
      MAY_DIFFER,
    );
  });

  it('no plot is kept that nothing draws', () => {
    const kept = readdirSync(new URL('.', keptFile('any'))).filter((file) => file.endsWith('.png'));
    const drawn = [...PLOTS.map(({ name }) => `${name}.png`), 'readme-leaf.png'];
    expect(kept.sort()).toEqual(drawn.sort());
  });
});
