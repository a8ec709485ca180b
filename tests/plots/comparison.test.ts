import { beforeAll, describe, expect, it } from 'vitest';
import type { Mark } from '../../src/draw/drawing.ts';
import type { CardedLeaf } from '../../src/leaf/leaf.ts';
import type { Raster } from '../ink/raster.ts';
import { leafOf, leafRaster } from './draw-plot.ts';
import { sample } from './gallery.ts';
import { compare, compareWithKept } from './kept.ts';
import { pictureOf } from './png.ts';

/** Five times what a plot may differ by. */
const PLAIN_TO_SEE = 60;

const leaf = leafOf(sample('brace'), 'A', 'as-drawn');
let right: Raster;
beforeAll(async () => {
  right = await leafRaster(leaf);
});

function changed(change: (mark: Mark) => Mark): CardedLeaf {
  return { ...leaf, wrap: { ...leaf.wrap, marks: leaf.wrap.marks.map(change) } };
}

async function apart(other: CardedLeaf): Promise<number> {
  return compare(pictureOf(right), pictureOf(await leafRaster(other))).apart;
}

describe('the comparison of plots', () => {
  it('finds nothing where nothing changed', async () => {
    expect(await apart(changed((mark) => mark))).toBe(0);
  });

  it('sees a cut line that is as thin as the others', async () => {
    const thin = changed((mark) => (mark.purpose === 'cut' ? { ...mark, purpose: 'guide' } : mark));
    expect(await apart(thin)).toBeGreaterThan(PLAIN_TO_SEE);
  });

  it('sees one word that stands half a millimetre off', async () => {
    const off = changed((mark) =>
      mark.kind === 'words' && mark.text === 'waste'
        ? { ...mark, at: { ...mark.at, x: mark.at.x + 0.5 } }
        : mark,
    );
    expect(await apart(off)).toBeGreaterThan(PLAIN_TO_SEE);
  });

  it("sees the other edge's line solid in place of dashed", async () => {
    const solid = changed((mark) => (mark.purpose === 'other-edge' ? { ...mark, purpose: 'guide' } : mark));
    expect(await apart(solid)).toBeGreaterThan(PLAIN_TO_SEE);
  });

  it('counts what one picture has beyond the other', () => {
    const { width, height } = right;
    const taller = {
      ...right,
      height: height + 1,
      data: Uint8Array.from([...right.data, ...right.data.slice(0, width)]),
    };
    const { apart: found, difference } = compare(pictureOf(right), pictureOf(taller));
    expect(found).toBe(width);
    expect([difference.width, difference.height]).toEqual([width, height + 1]);
  });

  it('takes no fresh plot for a kept one that is missing', () => {
    expect(compareWithKept('no such plot', right)).toBeUndefined();
  });
});
