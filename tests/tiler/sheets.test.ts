import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Box, Drawing, Mark } from '../../src/draw/drawing.ts';
import { PAPERS, type Paper } from '../../src/job/paper/paper.ts';
import type { CardedLeaf } from '../../src/leaf/leaf.ts';
import { laySheets } from '../../src/tiler/lay-sheets.ts';
import type { Placement, Sheet } from '../../src/tiler/sheets.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { howMany } from '../count.ts';

import { inkBox, shownBox } from './ink-boxes.ts';
import { ask, leafOf } from './synthetic.ts';

const JOB = 'Trailer for sea kayaks';
/** The printer's foot may come to lie at either side of a sideways page. */
const TURNED_MARGINS = { left: 17, right: 17, top: 10, bottom: 10 };
const MARGINS = { left: 10, right: 10, top: 10, bottom: 17 };

/** From the smallest paper taken, whose printable part is 110 mm each way, to larger than A0. */
const paper: fc.Arbitrary<Paper> = fc.oneof(
  fc.constantFrom(...PAPERS),
  fc
    .record({
      width: fc.double({ min: 130, max: 900, noNaN: true }),
      more: fc.double({ min: 7, max: 400, noNaN: true }),
    })
    .map(({ width, more }) => ({ name: 'a roll’s end', width, height: width + more })),
);
const side = (most: number) => fc.double({ min: 15, max: most, noNaN: true });
const leaves: fc.Arbitrary<CardedLeaf[]> = fc
  .array(
    fc.record({
      wrap: fc.oneof(fc.tuple(side(160), side(90)), fc.tuple(side(700), side(300))),
      card: fc.tuple(side(60), side(45)),
      name: fc.constantFrom(
        'rung',
        'Lange Strebe für den Mast, links hinten, zweite Ausführung',
        'ράβδος',
        'стойка',
      ),
    }),
    { minLength: 1, maxLength: 7 },
  )
  .map((sizes) => sizes.map(({ wrap, card, name }, index) => leafOf(`${name} ${index}`, wrap, card)));
const jobName = fc.constantFrom(JOB, 'Прицеп для морских каяков, '.repeat(9), 'x'.repeat(300));

const RUNS = { numRuns: howMany({ short: 20, deep: 80 }), seed: 20240, endOnFailure: true };

interface Laid {
  readonly width: number;
  readonly height: number;
  readonly sheets: readonly Sheet[];
}

/** Holds that no set of sheets a random job gives has any of the faults that `faults` finds. */
function forRandomJobs(
  faults: (set: Laid, leaves: CardedLeaf[], paper: Paper, job: string) => readonly unknown[],
): void {
  fc.assert(
    fc.property(leaves, paper, jobName, (leaves, paper, job) => {
      const { width, height, sheets } = laySheets(leaves, ask(paper), { job, words: ENGLISH });
      expect(faults({ width, height, sheets: [...sheets] }, leaves, paper, job)).toEqual([]);
    }),
    RUNS,
  );
}

function isBlock({ drawing }: Placement, leaves: readonly CardedLeaf[]): boolean {
  return leaves.some(({ wrap, card }) => drawing === wrap || drawing === card);
}

/** All marks of a sheet that are not a leaf's, with their boxes. */
function marksOf(
  placements: readonly Placement[],
  leaves: readonly CardedLeaf[],
): { mark: Mark; box: Box }[] {
  return placements
    .filter((each) => !isBlock(each, leaves))
    .flatMap((each) => each.drawing.marks.map((mark) => ({ mark, box: inkBox(each, mark) })));
}

function pairs<T>(items: readonly T[]): [T, T][] {
  return items.flatMap((item, index) => items.slice(index + 1).map((other): [T, T] => [item, other]));
}

/** How far two boxes reach into each other; negative: how far they are apart. */
function overlap(a: Box, b: Box): number {
  const wide = Math.min(a.right, b.right) - Math.max(a.left, b.left);
  const high = Math.min(a.top, b.top) - Math.max(a.bottom, b.bottom);
  return Math.min(wide, high);
}

/** How far a box reaches out of another. */
function beyond(box: Box, inside: Box): number {
  return Math.max(
    inside.left - box.left,
    inside.bottom - box.bottom,
    box.right - inside.right,
    box.top - inside.top,
  );
}

describe('random jobs on random papers', () => {
  it('keep every mark and word inside the margins, whichever way the printer turns the page', () => {
    forRandomJobs(({ width, height, sheets }, _leaves, paper) => {
      const { left, right, top, bottom } = width === paper.width ? MARGINS : TURNED_MARGINS;
      const inside = { left, bottom, right: width - right, top: height - top };
      return sheets.flatMap(({ placements }) =>
        placements.flatMap((placement) =>
          placement.drawing.marks.filter((mark) => {
            const box = inkBox(placement, mark);
            const clippedAway = box.left > box.right || box.bottom > box.top;
            return !clippedAway && beyond(box, inside) > 1e-9;
          }),
        ),
      );
    });
  });

  it('keep 5 mm between blocks, but for a card 2.5 mm off its own wrap', () => {
    forRandomJobs(({ sheets }, leaves) =>
      sheets.flatMap(({ placements }) => {
        const blocks = placements.filter((each) => isBlock(each, leaves));
        return pairs(blocks).filter(([a, b]) => {
          const own = leaves.some((leaf) => leaf.wrap === a.drawing && leaf.card === b.drawing);
          // A tile's clip is 0.3 mm wider at the leaf's edges than what it shows.
          return overlap(shownBox(a), shownBox(b)) > (own ? -2.5 : -4.7) + 1e-9;
        });
      }),
    );
  });

  it('keep the furniture and all words of the sheet off the leaves', () => {
    forRandomJobs(({ sheets }, leaves) =>
      sheets.flatMap(({ placements }) => {
        const blocks = placements.filter((each) => isBlock(each, leaves)).map(shownBox);
        // Only the lines and marks of a seam lie on the leaf.
        const others = marksOf(placements, leaves).filter(({ mark }) => mark.purpose !== 'registration');
        return others.filter(({ box }) => blocks.some((block) => overlap(box, block) > 0));
      }),
    );
  });

  it('set no word of a sheet over another, over a bar or over the marks of a seam', () => {
    forRandomJobs(({ sheets }, leaves) =>
      sheets.flatMap(({ placements }) => {
        // The numbers of a map stand in its frames.
        const marks = marksOf(placements, leaves).filter(({ mark }) => mark.purpose !== 'frame');
        return pairs(marks).filter(
          ([a, b]) => (a.mark.kind === 'words' || b.mark.kind === 'words') && overlap(a.box, b.box) > 0,
        );
      }),
    );
  });

  it('show each card once and whole, and leave no sheet empty', () => {
    forRandomJobs(({ sheets }, leaves) => {
      const all = sheets.flatMap(({ placements }) => placements);
      const shown = (drawing: Drawing) => all.filter((each) => each.drawing === drawing);
      const wrong = leaves.filter(({ card, wrap }) => {
        const [first, ...more] = shown(card);
        return first === undefined || first.clip !== undefined || more.length > 0 || shown(wrap).length === 0;
      });
      const empty = sheets.filter(({ placements }) => !placements.some((each) => isBlock(each, leaves)));
      return [...wrong, ...empty];
    });
  });

  it('give the same sheets twice', () => {
    forRandomJobs(({ sheets }, leaves, paper, job) => {
      const again = [...laySheets(leaves, ask(paper), { job, words: ENGLISH }).sheets];
      return JSON.stringify(again) === JSON.stringify(sheets) ? [] : ['another set'];
    });
  });
});

describe('a few leaves', () => {
  const [letter, A4] = PAPERS;
  if (letter === undefined || A4 === undefined) throw new Error('letter and A4 are the papers to begin with');
  const lay = (leaves: CardedLeaf[], paper: Paper) => {
    const set = laySheets(leaves, ask(paper), { job: JOB, words: ENGLISH });
    return { ...set, sheets: [...set.sheets] };
  };
  const placementsOf = ({ sheets }: Laid, { wrap }: CardedLeaf) =>
    sheets.flatMap(({ placements }) => placements.filter(({ drawing }) => drawing === wrap));

  it('share a sheet, in their order', () => {
    const [first, second] = [leafOf('rung, end A', [110, 60]), leafOf('rung, end B', [110, 60])];
    const set = lay([first, second], A4);
    expect(set.sheets).toHaveLength(1);
    const [upper, lower] = [first, second].flatMap((leaf) => placementsOf(set, leaf)).map(shownBox);
    expect(upper?.bottom).toBeGreaterThan(lower?.top ?? Number.NaN);
  });

  it('are turned where that saves a sheet', () => {
    // Beside the first card there is room for 100 x 45 across, not for 45 x 100 upright; so is it on a sideways page.
    const wide = leafOf('wide', [170, 150], [60, 40]);
    const tall = leafOf('tall', [45, 100], [40, 30]);
    const set = lay([wide, tall], A4);
    expect(set.sheets).toHaveLength(1);
    expect(placementsOf(set, tall).map(({ turn }) => turn)).toEqual([1]);
    expect(placementsOf(set, wide).map(({ turn }) => turn)).toEqual([0]);
  });

  it('are not turned where that saves nothing', () => {
    const leaves = [leafOf('rung', [45, 100]), leafOf('brace', [45, 100])];
    const set = lay(leaves, A4);
    expect(set.sheets).toHaveLength(1);
    expect(leaves.flatMap((leaf) => placementsOf(set, leaf)).map(({ turn }) => turn)).toEqual([0, 0]);
  });

  it('stay on an upright page where a sideways one saves nothing', () => {
    const set = lay([leafOf('rung', [100, 60])], letter);
    expect([set.width, set.height]).toEqual([letter.width, letter.height]);
  });

  it('go on a sideways page where that saves sheets', () => {
    // On an upright A4 it fits only turned, and its card is too large for what is left beside or under it.
    const set = lay([leafOf('mast foot', [230, 105], [100, 40])], A4);
    expect([set.width, set.height, set.count]).toEqual([297, 210, 1]);
  });

  it('are refused on paper with less than 110 mm inside its margins', () => {
    const narrow = { name: 'narrow', width: 129.9, height: 300 };
    expect(() => lay([leafOf('rung', [60, 40])], narrow)).toThrow(/narrow .* 110 mm/);
  });

  it('are refused with a card larger than a sheet', () => {
    expect(() => lay([leafOf('rung', [60, 40], [250, 280])], A4)).toThrow(/"rung" is 250.0 x 280.0 mm/);
  });
});
