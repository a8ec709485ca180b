import { describe, expect, it } from 'vitest';
import type { Drawing, Point, Words } from '../../src/draw/drawing.ts';
import { radians } from '../../src/measure/units.ts';
import { howMany } from '../count.ts';
import { faultsOf, pointsAlong, strokesOf, textsOf } from './collisions.ts';
import {
  type KindCase,
  kindCasesOf,
  partOf,
  randomKind,
  rectangle,
  round,
  tubeOnto,
} from './random-kinds.ts';
import { angle, dice, length, PAPER } from './random-tubes.ts';

const SEED = 4711;
const JOBS = howMany({ short: 18, deep: 150, asked: 'LEAF_JOBS' });

function only(tube: Parameters<typeof kindCasesOf>[0]): KindCase {
  const [first] = kindCasesOf(tube);
  if (!first) throw new Error('one end');
  return first;
}

/** Upright guide lines, where they stand across the leaf. */
function uprights(drawing: Drawing): number[] {
  const xs = [...strokesOf(drawing, 'guide'), ...strokesOf(drawing, 'fold')].flatMap(({ path }) =>
    path.pieces.every(({ to }) => to.x === path.start.x) ? [path.start.x] : [],
  );
  return [...new Set(xs)].sort((a, b) => a - b);
}

function said(drawing: Drawing): string {
  return textsOf(drawing).join(' ');
}

describe(`${JOBS} random ends onto every kind of header, seed ${SEED}`, () => {
  const roll = dice(SEED);
  const cases = Array.from({ length: JOBS }, () => randomKind(roll)).flatMap(kindCasesOf);

  it('no word lies on a line or on another word, and no ink is beyond its drawing', () => {
    const bad = cases.flatMap(({ tube, leaf, footprints }) =>
      [leaf, ...footprints]
        .flatMap(({ wrap, card }) => [...faultsOf(wrap), ...faultsOf(card)])
        .map((fault) => `${fault}: ${JSON.stringify(tube)}`),
    );
    expect(bad).toEqual([]);
  });

  it('every wrap has its arrow, spine, base edge, waste, seam edges and its end', () => {
    for (const { tube, end, leaf, solution } of cases) {
      const why = JSON.stringify(tube);
      const texts = textsOf(leaf.wrap);
      expect(texts, why).toContain(tube.section.kind === 'round' ? 'spine 0°' : 'spine 0 mm');
      expect(texts, why).toContain('waste');
      expect(texts, why).toContain(end);
      expect(
        leaf.wrap.marks.filter((mark) => mark.kind === 'fill'),
        why,
      ).toHaveLength(1);
      expect(strokesOf(leaf.wrap, 'cut'), why).toHaveLength(1);
      expect(strokesOf(leaf.wrap, 'seam').length, why).toBeGreaterThanOrEqual(6);
      const width = solution.section.girth + Math.PI * PAPER;
      const bases = strokesOf(leaf.wrap, 'outline').filter(({ path }) => {
        const [piece] = path.pieces;
        return piece && path.pieces.length === 1 && Math.abs(piece.to.x - path.start.x - width) < 1e-9;
      });
      expect(bases, why).toHaveLength(1);
    }
  });

  it('a footprint has no line in the weight of a cut', () => {
    for (const { footprints } of cases) {
      for (const { wrap } of footprints) expect(strokesOf(wrap, 'cut')).toHaveLength(0);
    }
  });
});

describe('a box section of 60 x 40 with corners of 6, on a round header', () => {
  const each = only(tubeOnto(rectangle(60, 40, 6), [partOf({ kind: 'round', od: length(76.1) }, 60, 30)], 3));
  const { leaf, cope } = each;
  const label = leaf.wrap.marks.find(
    (mark): mark is Words => mark.kind === 'words' && mark.text === 'spine 0 mm',
  );
  const xs = uprights(leaf.wrap);
  const spine = xs.reduce((a, b) =>
    Math.abs(b - (label?.at.x ?? 0)) < Math.abs(a - (label?.at.x ?? 0)) ? b : a,
  );

  it('has one fold at the middle of each corner: faces as long as they are, corners by the middle of the paper', () => {
    // Half a wide face is 30 - 6; a quarter turn of 6 mm and half the paper; a deep face is 40 - 12.
    const quarter = (Math.PI / 2) * (6 + PAPER / 2);
    const round = 4 * quarter + 2 * (48 + 28);
    const folds = strokesOf(leaf.wrap, 'fold').map(({ path }) => (path.start.x - spine + round) % round);
    const wanted = [0, 28, 28 + 48, 28 + 48 + 28].map(
      (faces, corner) => 24 + faces + (corner + 0.5) * quarter,
    );
    const places = folds.toSorted((a, b) => a - b).filter((at, i, all) => at - (all[i - 1] ?? -1) > 1e-6);
    expect(places).toHaveLength(4);
    for (const [i, at] of places.entries()) expect(at).toBeCloseTo(wanted[i] ?? 0, 6);
    expect(textsOf(leaf.wrap).filter((text) => text === 'fold')).toHaveLength(1);
  });

  it('has its quarter lines on the middles of the faces, named by the way round', () => {
    // Half a wide face, a corner of the outside, half a deep face: 24 + 9.425 + 14.
    expect(textsOf(leaf.wrap)).toContain('47.4 mm');
    expect(textsOf(leaf.wrap)).toContain('142.3 mm');
  });

  it('has the exact line on the face of the spine', () => {
    const [cut] = strokesOf(leaf.wrap, 'cut');
    const points = cut ? pointsAlong(cut.path, 1) : [];
    const onFace = points.filter(({ x }) => Math.abs(x - spine) < 24);
    expect(onFace.length).toBeGreaterThan(30);
    for (const { x, y } of onFace) expect(Math.abs(cope.cut(x - spine).setback - y)).toBeLessThan(0.002);
  });

  it('says its sides and its corner', () => {
    expect(said(leaf.card)).toContain('60mm x 40mm, corner radius 6mm');
  });
});

it('a mitre of five pieces says how long its pieces are, and has the inside of the corner at the clock', () => {
  // Mitre angle T / (2N - 2) = 11.25 (NAVEDTRA 14119, Hull Technician): 2 x 150 tan 11.25 = 59.67, its half 29.84, each to the half millimetre of a tape.
  const onto = {
    kind: 'mitre',
    turn: angle(90),
    segments: { pieces: 5, radius: length(150) },
  } as const;
  const { leaf } = only(tubeOnto(round(60), [partOf(onto, 90 - 11.25, 20)], 2));
  expect(said(leaf.card)).toContain('a middle piece is 59.5 mm');
  expect(said(leaf.card)).toContain('an end piece is 30 mm');
  expect(said(leaf.card)).toContain('11.25° off square');
  expect(said(leaf.wrap)).toMatch(/inside short point/);
});

it('the zones of a slanted plate have the weld angles of its own formula', () => {
  // On a plane cos(dihedral) = cos(60) cos(phi): 60 at the heel, 69.3 and 110.7 at 45 and 135, 120 at the toe.
  const { leaf } = only(tubeOnto(round(76.1), [partOf({ kind: 'plate' }, 60)], 3));
  expect(said(leaf.card)).toContain('weld angle heel 60–69°, side 69–111°, toe 111–120°');
});

it('a union of two equal headers to both sides changes from one to the other in its plane of symmetry', () => {
  const header = { kind: 'round', od: length(76.1) } as const;
  const { leaf, cope } = only(tubeOnto(round(60.3), [partOf(header, 50, 0), partOf(header, 50, 180)], 3));
  expect(cope.cut(0.1).part).not.toBe(cope.cut(Math.PI - 0.1).part);
  const texts = textsOf(leaf.wrap);
  expect(texts.filter((text) => text === 'header 1')).toHaveLength(2);
  expect(texts.filter((text) => text === 'header 2')).toHaveLength(2);
  const spine = leaf.wrap.marks.find(
    (mark): mark is Words => mark.kind === 'words' && mark.text === 'spine 0°',
  );
  const width = Math.PI * (60.3 + PAPER);
  const names = leaf.wrap.marks.filter(
    (mark): mark is Words => mark.kind === 'words' && mark.text.startsWith('header'),
  );
  // Both changes lie a quarter turn from the spine; the names stand within a few mm of them.
  for (const { at } of names) {
    const away = Math.abs(at.x - (spine?.at.x ?? 0));
    expect(Math.min(Math.abs(away - width / 4), Math.abs(away - (3 * width) / 4))).toBeLessThan(18);
  }
  expect(said(leaf.card)).toMatch(/header 1.*header 2/);
  expect(textsOf(leaf.wrap).join(' ')).not.toContain('heel');
});

describe('the footprint of a tube of 50 on a round header of 80, at 55 degrees, 6 mm off', () => {
  const R = 40;
  const drawn = (end: 'A' | 'B'): { each: KindCase; points: Point[] } => {
    const part = partOf({ kind: 'round', od: length(2 * R) }, 55, 40, 6);
    const each = only(tubeOnto(round(50), [part], 3, end));
    const [leaf] = each.footprints;
    const outline = (leaf ? strokesOf(leaf.wrap, 'guide') : []).filter(({ path }) =>
      path.pieces.some(({ kind }) => kind === 'cubic'),
    );
    return { each, points: outline.flatMap(({ path }) => pointsAlong(path, 1)) };
  };

  it('wrapped round the header again, the outline lies on the tube', () => {
    const [sin, cos] = [Math.sin(radians(55)), Math.cos(radians(55))];
    for (const end of ['A', 'B'] as const) {
      const { points } = drawn(end);
      expect(points.length).toBeGreaterThan(100);
      for (const { x, y } of points) {
        // The paper bends about its middle; seen from outside, clock + 90 lies up at A and down at B.
        const turn = ((end === 'A' ? 1 : -1) * y) / (R + PAPER / 2);
        const off = R * Math.cos(turn);
        const acrossTube = Math.hypot(x * sin - off * cos, R * Math.sin(turn) + 6);
        expect(Math.abs(acrossTube - 25)).toBeLessThan(0.002);
      }
    }
  });

  it('says its length, which is that of the outside line on the tube', () => {
    const { each, points } = drawn('A');
    const gaps = points.slice(1).map((to, i) => {
      const from = points[i] ?? to;
      return Math.hypot(to.x - from.x, ((to.y - from.y) * R) / (R + PAPER / 2));
    });
    const long = gaps.reduce((sum, gap) => sum + gap, 0);
    const card = said(each.footprints[0]?.card ?? each.leaf.card);
    const words = /outline ([\d.]+) mm/.exec(card);
    // A tape is read to half a millimetre; the line that is measured here is one of short chords.
    expect(Math.abs(Number(words?.[1]) - long)).toBeLessThan(0.25 + 0.05);
  });

  // 25 mm: common practice, no source.
  it('has the clean-to line 25 mm outside, and no nearer', () => {
    const { each, points } = drawn('A');
    const [leaf] = each.footprints;
    const dashes = (leaf ? strokesOf(leaf.wrap, 'clean') : []).flatMap(({ path }) => pointsAlong(path, 1));
    expect(dashes.length).toBeGreaterThan(100);
    for (const dash of dashes) {
      const away = Math.min(...points.map(({ x, y }) => Math.hypot(x - dash.x, y - dash.y)));
      expect(away).toBeGreaterThan(24.9);
      expect(away).toBeLessThan(25.1);
    }
  });
});

it('a footprint is open, and says so, where the tube passes beside the header', () => {
  const part = partOf({ kind: 'round', od: length(50) }, 70, 0, 12);
  const [leaf] = only(tubeOnto(round(48), [part], 2)).footprints;
  expect(
    said(leaf?.wrap ?? { name: '', box: { left: 0, bottom: 0, right: 0, top: 0 }, marks: [] }),
  ).toContain('open here');
  expect(
    said(leaf?.card ?? { name: '', box: { left: 0, bottom: 0, right: 0, top: 0 }, marks: [] }),
  ).toContain('open where');
});

it('where an outline goes over to another header of its end, it says to which', () => {
  const { footprints } = only(
    tubeOnto(
      round(42),
      [partOf({ kind: 'round', od: length(60) }, 45), partOf({ kind: 'round', od: length(48) }, 45, 180)],
      2,
    ),
  );
  const ends = footprints.map(({ wrap }) => said(wrap).match(/header \d from here|open here/g));
  expect(ends).toEqual([
    ['header 2 from here', 'header 2 from here'],
    ['header 1 from here', 'header 1 from here'],
  ]);
});

it('a footprint that reaches beyond the far side of its header stays on its paper', () => {
  const onto = {
    kind: 'bend',
    od: length(14.15),
    radius: length(122.5),
    centre: angle(204.5),
  } as const;
  const [leaf] = only(tubeOnto(rectangle(11.1, 16, 1.1), [partOf(onto, 153.65, 0, 3.56)], 0.56)).footprints;
  expect(leaf && faultsOf(leaf.wrap)).toEqual([]);
});
