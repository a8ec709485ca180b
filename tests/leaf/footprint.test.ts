import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Drawing, Fill, Point, Words } from '../../src/draw/drawing.ts';
import { PENS } from '../../src/draw/pens.ts';
import { drawFootprint } from '../../src/leaf/footprint/leaf.ts';
import type { CardedLeaf } from '../../src/leaf/leaf.ts';
import { contextOf, leavesOf, withoutFootprint } from '../../src/leaf/leaves-of.ts';
import { solveHands } from '../../src/saddle/solve.ts';
import { laySheets } from '../../src/tiler/lay-sheets.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { howMany } from '../count.ts';
import { readSample } from '../job/sample.ts';
import { boxOfWords, pointsAlong, strokesOf, textsOf } from './collisions.ts';
import { kindCasesOf, partOf, randomKind, round, tubeOnto } from './random-kinds.ts';
import { angle, dice, length, PAPER } from './random-tubes.ts';

const FIRST = { kind: 'round', od: length(60.3) } as const;
const SECOND = { kind: 'round', od: length(48.3) } as const;

function footprintsOf(tube: Parameters<typeof kindCasesOf>[0]): readonly CardedLeaf[] {
  return kindCasesOf(tube).flatMap(({ footprints }) => footprints);
}

const ENDS = howMany({ short: 10, deep: 60 });

/** The outlines that random ends leave on their headers. */
const WRAPS = (() => {
  const roll = dice(515);
  return Array.from({ length: ENDS }, () => randomKind(roll))
    .flatMap(footprintsOf)
    .map(({ wrap }) => wrap);
})();

/** A tube into the corner between two headers. */
const NODE = tubeOnto(round(42.4), [partOf(FIRST, 45), partOf(SECOND, 45, 180)], 2.6);

function isWords(mark: Drawing['marks'][number]): mark is Words {
  return mark.kind === 'words';
}

/** The marks' solid shapes: the arrow on the long line has three corners, the dot at the end of a leader eight. */
function fillsOf({ marks }: Drawing, corners: number): Fill[] {
  return marks.filter(
    (mark): mark is Fill => mark.kind === 'fill' && mark.path.pieces.length === corners - 1,
  );
}

function boreOf(wrap: Drawing): Point[] {
  return strokesOf(wrap, 'other-edge').flatMap(({ path }) => pointsAlong(path, 0.5));
}

/** By the angle that the shape's outline goes round a point. */
function isAround(shape: readonly Point[], { x, y }: Point): boolean {
  let turned = 0;
  shape.forEach((to, i) => {
    const from = shape.at(i - 1) ?? to;
    const by = Math.atan2(to.y - y, to.x - x) - Math.atan2(from.y - y, from.x - x);
    turned += by - 2 * Math.PI * Math.round(by / (2 * Math.PI));
  });
  return Math.abs(turned) > 3;
}

/** A dot begins so far to the right of its middle. */
const DOT = 0.45;

/** Lines of one note, which stand under one another, from its first words on. */
function noteFrom(wrap: Drawing, start: string): Words[] {
  const first = wrap.marks.findIndex((mark) => isWords(mark) && mark.text.startsWith(start));
  const found = wrap.marks[first];
  if (!found || !isWords(found)) return [];
  const words = wrap.marks.slice(first).filter(isWords);
  return words.filter((mark, i) => i === 0 || (mark.at.x === found.at.x && i < 4));
}

it('the words for the hole stand in the bore, or a line with a dot leads from them into it', () => {
  const wraps = WRAPS.filter((wrap) => strokesOf(wrap, 'other-edge').length > 0);
  let inside = 0;
  let led = 0;
  for (const wrap of wraps) {
    const lines = noteFrom(wrap, "tube's inside");
    if (lines.length === 0) continue;
    const bore = boreOf(wrap);
    const boxes = lines.map(boxOfWords);
    const here = isAround(bore, {
      x: (Math.min(...boxes.map(({ left }) => left)) + Math.max(...boxes.map(({ right }) => right))) / 2,
      y: (Math.min(...boxes.map(({ bottom }) => bottom)) + Math.max(...boxes.map(({ top }) => top))) / 2,
    });
    if (here) inside += 1;
    else {
      led += 1;
      expect(
        fillsOf(wrap, 8).some(({ path: { start } }) => isAround(bore, { x: start.x - DOT, y: start.y })),
      ).toBe(true);
    }
  }
  expect(Math.min(inside, led)).toBeGreaterThan(ENDS / 12);
});

it('long dashes are three times as long as the short ones', () => {
  const [short] = PENS['other-edge'].dash;
  const [long] = PENS.clean.dash;
  expect((long ?? 0) / (short ?? 1)).toBeGreaterThanOrEqual(3);
});

describe('which way a footprint lies on its header', () => {
  // The tube leans to where the angle between its body and the header's axis, which points to the right, is acute.
  it.each([
    [45, 1, 'tube leans'],
    [135, -1, 'tube leans'],
    [90, 1, "heel, tube's 20°"],
  ] as const)('at %d degrees an arrow tells it', (degrees, way, words) => {
    for (const end of ['A', 'B'] as const) {
      const [leaf] = footprintsOf(tubeOnto(round(42.4), [partOf(FIRST, degrees, 20)], 2.6, end));
      const [arrow, ...others] = leaf ? fillsOf(leaf.wrap, 3) : [];
      expect(others).toEqual([]);
      const [tip, ...rest] = arrow ? [arrow.path.start, ...arrow.path.pieces.map(({ to }) => to)] : [];
      expect(tip?.y).toBe(0);
      for (const corner of rest) expect(((tip?.x ?? 0) - corner.x) * way).toBeGreaterThan(2);
      expect(leaf && textsOf(leaf.wrap)).toContain(words);
    }
  });

  it('is told on each header of a union, with the side and the station that are there', () => {
    const said = footprintsOf(NODE).map(({ wrap }) => textsOf(wrap).join(' '));
    expect(said[0]).toContain("acute side, tube's 0°");
    expect(said[1]).toContain("acute side, tube's 180°");
    for (const each of said) expect(each).toContain('tube leans');
  });
});

it.each([
  // The outline and 34 mm to either side of it: more than pi 25 mm, less than pi 60.3 mm.
  ['a round header that it goes round', 'edges meet behind the header', { kind: 'round', od: length(25) }],
  ['a round header that it goes part way round', 'goes part way round', FIRST],
  ['a plate', undefined, { kind: 'plate' }],
] as const)('on %s a footprint says how far round it goes: %s', (_, said, onto) => {
  const [leaf] = footprintsOf(tubeOnto(round(20), [partOf(onto, 60)], 2));
  if (!leaf) throw new Error('one header');
  const about = textsOf(leaf.wrap)
    .join(' ')
    .match(/edges meet behind the header|goes part way round/g);
  expect(about).toEqual(said === undefined ? null : [said]);
});

it('the line to clean to has no hook where an outline is open', () => {
  for (const { wrap } of footprintsOf(NODE)) {
    const line = strokesOf(wrap, 'clean').flatMap(({ path }) => [
      path.start,
      ...path.pieces.map(({ to }) => to),
    ]);
    expect(line.length).toBeGreaterThan(100);
    line.slice(2).forEach((to, i) => {
      const [a, b] = [line[i] ?? to, line[i + 1] ?? to];
      const turned = Math.atan2(to.y - b.y, to.x - b.x) - Math.atan2(b.y - a.y, b.x - a.x);
      const home = turned - 2 * Math.PI * Math.round(turned / (2 * Math.PI));
      expect(Math.abs(home)).toBeLessThan(0.3);
    });
  }
});

it('a mitre has no footprint, and says why', () => {
  const onto = { kind: 'mitre', turn: angle(90) } as const;
  const [mitred] = kindCasesOf(tubeOnto(round(42.4), [partOf(onto, 45)], 2.6));
  if (!mitred) throw new Error('one end');
  const { solution } = mitred;
  const context = { words: ENGLISH, paperThickness: PAPER };
  expect(leavesOf(solution, context, true).map(({ title }) => title)).toEqual(['gusset, end A']);
  expect(() => drawFootprint(solution, 'A', 0, context)).toThrow(RangeError);
  expect(withoutFootprint(solution, ENGLISH)).toEqual([
    'No footprint for gusset, end A: it lands on the cut end of the next piece, where there is no wall to scribe, vent or clean.',
  ]);
  const [landed] = kindCasesOf(NODE);
  expect(landed && withoutFootprint(landed.solution, ENGLISH)).toEqual([]);
});

it("two footprints on one sheet each have their own card under them or to their right, not the other's", () => {
  const job = readSample(readFileSync(new URL('../../samples/fender-stay.yaml', import.meta.url), 'utf8'));
  const footprints = solveHands(job)
    .flatMap((solution) => leavesOf(solution, contextOf(job), true))
    .filter(({ title }) => title.endsWith('footprint'));
  const placed = [...laySheets(footprints, job.sheet, { job: 'stay', words: ENGLISH }).sheets].flatMap(
    ({ placements }) => placements,
  );
  const at = (name: string) => placed.find(({ drawing }) => drawing.name === name);
  expect(footprints).toHaveLength(2);
  for (const { wrap, card } of footprints) {
    const [own, beside] = [at(wrap.name), card && at(card.name)];
    if (!own || !card || !beside) throw new Error('not laid');
    const down = own.at.y + wrap.box.bottom - (beside.at.y + card.box.top);
    const right = beside.at.x + card.box.left - (own.at.x + wrap.box.right);
    const inLine =
      down > 0
        ? beside.at.x + card.box.left - (own.at.x + wrap.box.left)
        : beside.at.y + card.box.top - (own.at.y + wrap.box.top);
    expect(Math.max(down, right)).toBeCloseTo(2.5, 6);
    expect(inLine).toBeCloseTo(0, 6);
  }
});

describe('the words of a footprint that name a straight line', () => {
  const dotsOf = (wrap: Drawing) =>
    fillsOf(wrap, 8).map(({ path: { start } }) => ({ x: start.x - DOT, y: start.y }));
  const spanOf = (lines: readonly Words[]) => {
    const boxes = lines.map(boxOfWords);
    return {
      left: Math.min(...boxes.map(({ left }) => left)),
      right: Math.max(...boxes.map(({ right }) => right)),
      bottom: Math.min(...boxes.map(({ bottom }) => bottom)),
      top: Math.max(...boxes.map(({ top }) => top)),
    };
  };

  it.each([
    ['tube side', 'y'],
    ['work point', 'x'],
  ] as const)('"%s" stands within 1 mm of it, or a line leads to it', (start, axis) => {
    let hardBy = 0;
    let lost = 0;
    for (const wrap of WRAPS) {
      const lines = noteFrom(wrap, start);
      if (lines.length === 0) {
        lost += 1;
        continue;
      }
      const { left, right, bottom, top } = spanOf(lines);
      const off = axis === 'y' ? Math.max(bottom, -top) : Math.max(left, -right);
      if (off < 1) hardBy += 1;
      else expect(dotsOf(wrap).some((dot) => Math.abs(dot[axis]) < 1e-6)).toBe(true);
    }
    // Of these, slivers and sheets of a few millimetres have no room for words of 9 pt.
    expect(hardBy).toBeGreaterThan(WRAPS.length / 2);
    expect(lost).toBeLessThan(WRAPS.length / 3);
  });

  it('never stands on both sides of the work point with its title, whose lines are one under the other', () => {
    let titled = 0;
    for (const wrap of WRAPS) {
      const [first, ...rest] = wrap.marks
        .filter(isWords)
        .filter(({ fact, text }) => fact === 'name' && !text.startsWith('end '));
      if (!first) continue;
      titled += 1;
      const end = wrap.marks.filter(isWords).find(({ text }) => text.startsWith('end '));
      const lines = [first, ...rest, ...(end ? [end] : [])];
      expect(end).toBeDefined();
      expect(lines.map(({ at }) => at.x)).toEqual(lines.map(() => first.at.x));
      const { left, right } = spanOf(lines);
      expect(left > 0 || right < 0).toBe(true);
      expect((lines.at(-2)?.at.y ?? 0) - (end?.at.y ?? 0)).toBeLessThan(4);
    }
    expect(titled).toBeGreaterThan(ENDS / 3);
  });
});

it.each([0, 3, -3])(
  'what the long line is stands by it outside the outline, and the lean apart from the acute side, offset %d',
  (offset) => {
    for (const degrees of [48, 60, 75]) {
      const [leaf] = footprintsOf(
        tubeOnto(round(31.75), [partOf({ kind: 'round', od: length(38.1) }, degrees, 0, offset)], 2.4),
      );
      if (!leaf) throw new Error('one header');
      const words = leaf.wrap.marks.filter(isWords);
      const [outside] = strokesOf(leaf.wrap, 'guide').filter(({ path }) => path.closed);
      const outline = outside ? pointsAlong(outside.path, 0.5) : [];
      expect(outline.length).toBeGreaterThan(50);
      const faces = words.filter(({ text }) => /^tube side/.test(text));
      expect(faces).toHaveLength(1);
      for (const word of faces) {
        const { left, right, bottom, top } = boxOfWords(word);
        expect(isAround(outline, { x: (left + right) / 2, y: (bottom + top) / 2 })).toBe(false);
      }
      const heel = words.find(({ text }) => text.startsWith('heel'));
      const leans = words.find(({ text }) => text === 'tube leans');
      if (!heel || !leans) throw new Error('both sides of the line are named');
      // The long line lies at 0.
      expect(Math.sign(boxOfWords(heel).bottom), `${degrees}`).not.toBe(Math.sign(boxOfWords(leans).bottom));
    }
  },
);
