import { expect, it } from 'vitest';
import type { Point } from '../../src/draw/drawing.ts';
import { PAPERS } from '../../src/job/paper/paper.ts';
import { laySheets } from '../../src/tiler/lay-sheets.ts';
import type { Placement } from '../../src/tiler/sheets.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { inkBox, onSheet, pointsOf } from './ink-boxes.ts';
import { ask, leafOf } from './synthetic.ts';

const SMALLEST = { name: 'smallest', width: 130, height: 137 };

/**
 * Lengths of the two bars of a placed drawing, read as a person does: between the middles of the outermost ticks, those that stand
 * out to one side of the line, then those to the other.
 */
function read(
  placement: Placement,
  along: (point: Point) => number,
  square: (point: Point) => number,
): number[] {
  const strokes = placement.drawing.marks.flatMap((mark) =>
    mark.kind === 'stroke' ? [pointsOf(mark.path).map((point) => onSheet(placement, point))] : [],
  );
  const extent = (points: Point[], by: (point: Point) => number) =>
    Math.max(...points.map(by)) - Math.min(...points.map(by));
  const [line, ...others] = strokes
    .filter((points) => extent(points, square) === 0)
    .flatMap(([first]) => (first ? [square(first)] : []));
  expect(others).toEqual([line]);
  const ticks = strokes.filter((points) => extent(points, along) === 0);
  // Over the line as it is read: to the left of the bars that are read upwards.
  const up = placement.turn === 0 ? 1 : -1;
  return [1, -1].map((side) => {
    const own = ticks.filter((tick) => tick.some((point) => (square(point) - (line ?? 0)) * side * up > 0));
    const places = own.map(([tick]) => (tick === undefined ? Number.NaN : along(tick)));
    expect(places.length).toBeGreaterThan(6);
    return Math.max(...places) - Math.min(...places);
  });
}

it.each([...PAPERS, SMALLEST])('every sheet of $name has bars of 100 mm and 4 in, across and up', (paper) => {
  const inTiles = [2.5 * paper.width, 1.5 * paper.height] as const;
  const leaves = [leafOf('mast foot', inTiles, [50, 35]), leafOf('rung', [70, 40], [50, 35])];
  const sheets = [...laySheets(leaves, ask(paper), { job: 'Trailer', words: ENGLISH }).sheets];
  expect(sheets.length).toBeGreaterThan(1);
  for (const { placements } of sheets) {
    const named = (name: string) => placements.filter(({ drawing }) => drawing.name === name);
    const [across, ...more] = named('bars across');
    const [up, ...others] = named('bars up');
    if (across === undefined || up === undefined) throw new Error('no bars');
    expect([...more, ...others]).toEqual([]);
    // 4 in is 101.6 mm exactly (international yard and pound agreement, 1959).
    const lengths = read(
      across,
      ({ x }) => x,
      ({ y }) => y,
    );
    const heights = read(
      up,
      ({ y }) => y,
      ({ x }) => x,
    );
    for (const [index, length] of [100, 101.6].entries()) {
      expect(lengths[index]).toBeCloseTo(length, 9);
      expect(heights[index]).toBeCloseTo(length, 9);
    }
  }
});

it('each bar has one number and the name of its direction', () => {
  const sheets = [
    ...laySheets([leafOf('rung', [70, 40])], ask(SMALLEST), { job: 'Trailer', words: ENGLISH }).sheets,
  ];
  const words = (sheets[0]?.placements ?? [])
    .filter(({ drawing }) => drawing.name.startsWith('bars'))
    .flatMap(({ drawing }) => drawing.marks.flatMap((mark) => (mark.kind === 'words' ? [mark.text] : [])));
  expect(words).toEqual(['100 mm across', '4 in across', '100 mm up', '4 in up']);
});

it('the words that matter stand on every sheet, with its number, its paper and its job', () => {
  const sheets = [
    ...laySheets([leafOf('mast foot', [400, 250])], ask(SMALLEST), { job: 'Trailer', words: ENGLISH }).sheets,
  ];
  sheets.forEach(({ placements }, index) => {
    const text = placements
      .flatMap((placement) =>
        placement.drawing.marks.flatMap((mark) =>
          mark.kind === 'words' ? [{ mark, box: inkBox(placement, mark) }] : [],
        ),
      )
      .map(({ mark }) => mark.text)
      .join(' ');
    for (const part of [
      '100 %',
      'actual size',
      'one-sided',
      'borderless off',
      'Before cutting, measure',
      'middle of the line',
    ])
      expect(text).toContain(part);
    expect(text).toContain(`Sheet ${index + 1} of ${sheets.length} · smallest`);
    expect(text).toContain('Trailer');
  });
});
