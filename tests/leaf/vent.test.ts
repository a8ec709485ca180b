import { describe, expect, it } from 'vitest';
import { isWithin } from '../../src/draw/boxes.ts';
import { contextOf, leavesOf } from '../../src/leaf/leaves-of.ts';
import { solveHands } from '../../src/saddle/solve.ts';
import { pieceOf } from '../../src/shop/piece.ts';
import { stepsOf } from '../../src/shop/steps/steps.ts';
import { laySheets } from '../../src/tiler/lay-sheets.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { readSample } from '../job/sample.ts';
import { onSheet } from '../tiler/ink-boxes.ts';
import { textsOf } from './collisions.ts';

const ROUND = '{ onto: { od: 60.3 }, angle: 60 }';
const PLATE = '{ onto: { plate: {} }, angle: 60 }';
const CORNER = '[{ onto: { od: 60.3 }, angle: 45 }, { onto: { od: 48.3 }, angle: 45, clock: 180 }]';
const MITRE = '{ onto: { mitre: { turn: 90 } } }';
const PLAIN = 'plain';

/** What the footprints of a tube between these ends say, wrap and card together, and whether its ticket has a vent. */
function told(a: string, b: string | undefined): { footprints: string[]; ticket: boolean } {
  const ends = [['A', a] as const, ...(b === undefined ? [] : [['B', b] as const])]
    .map(([name, end]) => `${name}: ${end}`)
    .join(', ');
  const job = readSample(
    `copeleaf: 1\nunits: mm\ntube:\n  name: stay\n  od: 42.4\n  wall: 2.6\n  between: 800\n  ends: { ${ends} }\n`,
  );
  const [solution] = solveHands(job);
  if (!solution) throw new Error('one tube');
  const footprints = leavesOf(solution, contextOf(job), true)
    .filter(({ title }) => title.includes('footprint'))
    .map(({ wrap, card }) => [...textsOf(wrap), ...(card ? textsOf(card) : [])].join(' '));
  const steps = stepsOf(pieceOf(solution, 'A', true, false, ENGLISH)).map(({ text }) => text);
  return { footprints, ticket: steps.some((text) => /^Drill one 5 mm vent/.test(text)) };
}

describe('a footprint speaks of a vent only where the ticket asks for one, and only on the hollow header that takes most of the wall', () => {
  it.each([
    ['both ends on tubes', ROUND, ROUND, true, [true, false]],
    ['one end on a plate', ROUND, PLATE, true, [true, false]],
    ['both ends on plates', PLATE, PLATE, true, [false, false]],
    ['end B not given', ROUND, undefined, false, [false]],
    ['end B cut square', ROUND, PLAIN, false, [false]],
    ['end B mitred', ROUND, MITRE, false, [false]],
    ['a corner of two headers, end B not given', CORNER, undefined, false, [false, false]],
    ['a corner of two headers and a tube', CORNER, ROUND, true, [false, false, true]],
  ] as const)('%s', (_, a, b, ticket, vented) => {
    const said = told(a, b);
    expect(said.ticket).toBe(ticket);
    expect(said.footprints.map((text) => /vent here/.test(text))).toEqual(vented);
    expect(said.footprints.map((text) => /\bvent\b/.test(text))).toEqual(vented);
    expect(said.footprints.map((text) => /tube's inside/.test(text))).toEqual(vented.map((each) => !each));
  });
});

it('where the dashes are open, a vent keeps away from their ends', () => {
  const [first = ''] = told(CORNER, CORNER).footprints;
  const [closed = ''] = told(ROUND, ROUND).footprints;
  expect(first).toContain('off the open ends');
  expect(closed).not.toContain('open ends');
});

it.each([90, 60])(
  'a vent is drawn on one tile, not in an overlap too: two would be drilled, at %d°',
  (angle) => {
    let tiled = 0;
    for (let od = 100; od <= 240; od += 20) {
      const job = readSample(
        `copeleaf: 1\nunits: mm\npaper: A4\ntube: { od: ${od}, wall: 4, between: 900, ends: { A: { onto: { od: ${1.25 * od} }, angle: ${angle} }, B: ${PLATE} } }\n`,
      );
      const [solution] = solveHands(job);
      const printed = solution ? leavesOf(solution, { ...contextOf(job), ticketed: true }, true) : [];
      const [leaf] = printed.filter(({ title }) => title === 'tube 1, end A, footprint');
      if (!leaf) throw new Error('a footprint at end A');
      // The dot at the end of the leader from these words is the one that lies in the hole, nearest its middle.
      const [dot] = leaf.wrap.marks
        .flatMap((mark) => (mark.kind === 'fill' && mark.path.pieces.length === 7 ? [mark.path.start] : []))
        .sort((a, b) => Math.hypot(a.x, a.y) - Math.hypot(b.x, b.y));
      if (!dot) throw new Error('a dot');
      const sheets = [...laySheets([leaf], job.sheet, { job: 'vents', words: ENGLISH }).sheets];
      const tiles = sheets.flatMap(({ placements }) =>
        placements.filter(({ drawing }) => drawing === leaf.wrap),
      );
      if (tiles.length > 1) tiled++;
      const shown = tiles.filter(
        (tile) => tile.clip === undefined || isWithin(onSheet(tile, dot), tile.clip),
      );
      expect(shown, `${od} mm in ${tiles.length} tiles`).toHaveLength(1);
    }
    expect(tiled).toBeGreaterThan(3);
  },
);
