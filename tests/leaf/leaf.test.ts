import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Drawing, PathPiece, Point, Words } from '../../src/draw/drawing.ts';
import { widthOf } from '../../src/draw/letters.ts';
import { drawLeaf } from '../../src/leaf/draw-leaf.ts';
import { curveOf } from '../../src/saddle/cope.ts';
import { solveHands } from '../../src/saddle/solve.ts';
import { wrapStation } from '../../src/space/section.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { howMany } from '../count.ts';
import { readSample } from '../job/sample.ts';
import { boxOfWords, faultsOf, pointsAlong, strokesOf, textsOf } from './collisions.ts';
import { type Ask, type Case, casesOf, dice, PAPER, randomAsk } from './random-tubes.ts';

const SEED = 20260;
const JOBS = howMany({ short: 25, deep: 400, asked: 'LEAF_JOBS' });

/** A brace of the kayak trailer: oblique, on a larger header, the second end offset and turned. */
const BRACE: Ask = {
  name: 'mast brace',
  od: 31.75,
  wall: 2.4,
  between: 619,
  pair: true,
  A: { header: 38.1, angle: 62 },
  B: { header: 38.1, angle: 48, offset: 3, clock: 35 },
};

function turnedBy(x: number, width: number, turn: number): number {
  return (x / width) * turn;
}

/** pi (D + paper): the bent paper is as long as its middle is. */
function widthOfWrap({ ask }: Case): number {
  return Math.PI * (ask.od + PAPER);
}

/** Points of the drawn cut, without the upright steps between two sides of an edge. */
function cutPoints({ leaf }: Case): Point[] {
  const [cut] = strokesOf(leaf.wrap, 'cut');
  if (!cut) return [];
  let from = cut.path.start;
  return cut.path.pieces.flatMap((piece) => {
    const path = { start: from, pieces: [piece], closed: false };
    from = piece.to;
    return isCubic(piece) ? pointsAlong(path, 2) : [];
  });
}

function isCubic(piece: PathPiece): piece is PathPiece & { kind: 'cubic' } {
  return piece.kind === 'cubic';
}

/** The station of the left edge, read off the drawing: the spine's line stands at (0 - seam) / turn of the width. */
function seamOf(each: Case): number {
  const spine = spineX(each.leaf.wrap);
  return wrapStation(-turnedBy(spine, widthOfWrap(each), 2 * Math.PI), 2 * Math.PI);
}

/** How far a word stands from the upright line that it names, mm. */
const BESIDE = 0.8;

function spineX(wrap: Drawing): number {
  const label = wrap.marks.find((mark): mark is Words => mark.kind === 'words' && mark.text === 'spine 0°');
  if (!label) throw new Error('no spine');
  const box = boxOfWords(label);
  const xs = strokesOf(wrap, 'guide').map((stroke) => stroke.path.start.x);
  const away = (x: number): number =>
    Math.min(Math.abs(box.left - x - BESIDE), Math.abs(x - box.right - BESIDE));
  return xs.reduce((best, x) => (away(x) < away(best) ? x : best));
}

describe(`${JOBS} random tubes from 10 to 220 mm, seed ${SEED}`, () => {
  const roll = dice(SEED);
  const cases = Array.from({ length: JOBS }, () => randomAsk(roll)).flatMap((ask) =>
    casesOf(ask, 'kayak trailer'),
  );

  it('no word lies on a line or on another word, and no ink is beyond its drawing', () => {
    const bad = cases.flatMap(({ ask, end, leaf }) =>
      [...faultsOf(leaf.wrap), ...faultsOf(leaf.card)].map(
        (fault) => `${fault}: ${JSON.stringify(ask)} ${end}`,
      ),
    );
    expect(bad).toEqual([]);
  });

  it('every wrap has its arrow, spine, base edge, waste, seam edges and its name', () => {
    for (const each of cases) {
      const { ask, end, leaf } = each;
      const said = JSON.stringify(ask) + end;
      const texts = textsOf(leaf.wrap);
      expect(texts, said).toContain('spine 0°');
      expect(texts, said).toContain(end);
      // An arrow's tip, and on a leaf of a pair its badge's bar.
      const opposite = each.solution.hand === 'opposite';
      expect(
        leaf.wrap.marks.filter((mark) => mark.kind === 'fill'),
        said,
      ).toHaveLength(ask.pair ? 2 : 1);
      expect(texts.includes('opposite hand'), said).toBe(opposite);
      expect(texts, said).toContain('waste');
      // On a smaller tube the name may stand beside the leaf, with what else has no room.
      const named = leaf.wrap.marks.some((mark) => mark.kind === 'words' && mark.fact === 'name');
      expect(named || ask.od < 16, said).toBe(true);
      expect(baseEdges(each), said).toHaveLength(1);
      expect(strokesOf(leaf.wrap, 'seam').length, said).toBeGreaterThanOrEqual(6);
    }
  });

  it('the drawn cut is within 0.002 mm of the exact line', () => {
    for (const each of cases)
      expect(strayOfCut(each), JSON.stringify(each.ask) + each.end).toBeLessThan(0.002);
  });

  it('the body lies above the cut at end A and below it at end B', () => {
    for (const each of cases) {
      const [base] = baseEdges(each);
      const ys = cutPoints(each).map((point) => point.y);
      const y = base?.path.start.y ?? Number.NaN;
      if (each.end === 'A') expect(y).toBeGreaterThan(Math.max(...ys));
      else expect(y).toBeLessThan(Math.min(...ys));
    }
  });

  it('the long point and the heel stand in one piece, 20 degrees off the seam or more', () => {
    for (const each of cases.filter(({ cope }) => cope.end.seam === undefined)) {
      const { ask, cope, leaf } = each;
      const width = widthOfWrap(each);
      for (const station of [cope.longPoint.station, cope.heel ?? Number.NaN]) {
        const x = wrapStation(spineX(leaf.wrap) + (station / (2 * Math.PI)) * width, width);
        expect(Math.min(x, width - x), JSON.stringify(ask)).toBeGreaterThan(width / 18);
      }
    }
  });

  it('the seam is off the spine', () => {
    for (const each of cases) {
      const x = spineX(each.leaf.wrap);
      const width = widthOfWrap(each);
      expect(Math.min(x, width - x), JSON.stringify(each.ask)).toBeGreaterThan(width / 10);
    }
  });

  it('the opposite hand has the mirror image of the cut of its twin', () => {
    const twins = cases.filter(({ solution }) => solution.hand === 'opposite');
    expect(twins.length).toBeGreaterThan(JOBS / 20);
    for (const twin of twins) {
      const first = cases.find(({ ask, end }) => ask === twin.ask && end === twin.end);
      if (!first) throw new Error('no twin');
      const width = widthOfWrap(twin);
      for (const { x, y } of cutPoints(first)) {
        const station = -(seamOf(first) + turnedBy(x, width, 2 * Math.PI));
        const setback = twin.end === 'A' ? y : -y;
        expect(nearest(twin, station, setback, width / (2 * Math.PI))).toBeLessThan(0.002);
      }
    }
  });
});

function baseEdges({ leaf, end, ask }: Case): ReturnType<typeof strokesOf> {
  const width = Math.PI * (ask.od + PAPER);
  const edge = end === 'A' ? 'top' : 'bottom';
  return strokesOf(leaf.wrap, 'outline').filter(({ path }) => {
    const [piece, ...more] = path.pieces;
    if (!piece || more.length > 0) return false;
    const level = path.start.y === piece.to.y && Math.abs(path.start.y - leaf.wrap.box[edge]) < 0.3;
    return level && Math.abs(piece.to.x - path.start.x - width) < 1e-9;
  });
}

/** The most that a point of the drawn curve is away from a point of the exact line, mm on the paper. */
function strayOfCut(each: Case): number {
  const scale = widthOfWrap(each) / (2 * Math.PI);
  const seam = seamOf(each);
  const sign = each.end === 'A' ? 1 : -1;
  return Math.max(...cutPoints(each).map(({ x, y }) => nearest(each, seam + x / scale, sign * y, scale)));
}

/** At most how far (station, setback) is from the exact line: straight along the tube, or to a nearer point of it. */
function nearest({ cope }: Case, station: number, setback: number, scale: number): number {
  const away = (at: number): number => Math.hypot((at - station) * scale, cope.cut(at).setback - setback);
  let best = away(station);
  let middle = station;
  // Nothing further across than what is missed straight up can be nearer. Ever finer rows of looks find the foot.
  for (let reach = best / scale; best > 0.001 && reach * scale > 1e-5; reach /= 10) {
    const from = middle;
    for (let i = -40; i <= 40; i++) {
      const at = from + (i * reach) / 40;
      if (away(at) < best) {
        best = away(at);
        middle = at;
      }
    }
  }
  return best;
}

it('the drawn cut is the curve that was solved, piece for piece', () => {
  const roll = dice(SEED + 1);
  const asked = Array.from({ length: howMany({ short: 25, deep: 100 }) }, () => randomAsk(roll)).map(
    ({ A, B, ...ask }) => ({
      ...ask,
      A: { ...(A ?? { header: ask.od, angle: 70 }), seam: 30 + Math.round(300 * roll()) },
    }),
  );
  // A seam that the job asks for is known to its last digit, and so is where the solver starts.
  for (const each of asked.flatMap((ask) => casesOf(ask))) {
    const { turn } = each.solution.section;
    const askedSeam = each.cope.end.seam;
    const seam = wrapStation(askedSeam && 'rad' in askedSeam ? askedSeam.rad : Number.NaN, turn);
    const scale = widthOfWrap(each) / turn;
    const solved = curveOf(each.cope, each.cope.cut, seam, scale);
    const drawn = strokesOf(each.leaf.wrap, 'cut')
      .flatMap(({ path }) => path.pieces)
      .filter(isCubic);
    expect(drawn, JSON.stringify(each.ask)).toHaveLength(solved.length);
    drawn.forEach((piece, i) => {
      const { stations, setbacks } = solved[i] ?? { stations: [], setbacks: [] };
      [piece.c1, piece.c2, piece.to].forEach(({ x, y }, k) => {
        expect(x).toBeCloseTo(((stations[k + 1] ?? Number.NaN) - seam) * scale, 8);
        expect(y).toBeCloseTo(setbacks[k + 1] ?? Number.NaN, 8);
      });
    });
  }
});

describe('a brace and its opposite hand', () => {
  const cases = casesOf(BRACE, 'kayak trailer');

  it('has four leaves, each with its title', () => {
    expect(cases.map(({ leaf }) => leaf.title)).toEqual([
      'mast brace, end A',
      'mast brace, end B',
      'mast brace, end A, opposite hand',
      'mast brace, end B, opposite hand',
    ]);
  });

  it('is drawn the same each time', () => {
    expect(casesOf(BRACE, 'kayak trailer').map(({ leaf }) => leaf)).toEqual(cases.map(({ leaf }) => leaf));
  });

  it('gives twins mirrored seams, and words that read the same way', () => {
    const [a, b, oppositeA, oppositeB] = cases.map((each) => seamOf(each));
    expect(wrapStation((a ?? 0) + (oppositeA ?? 0), 2 * Math.PI)).toBeCloseTo(0, 9);
    expect(wrapStation((b ?? 0) + (oppositeB ?? 0), 2 * Math.PI)).toBeCloseTo(0, 9);
    for (const { leaf } of cases) {
      for (const mark of leaf.wrap.marks) if (mark.kind === 'words') expect([0, 1]).toContain(mark.turn);
    }
  });

  it('says the length between the base edges that the leaves are drawn with', () => {
    const [a, b] = cases;
    if (!a || !b) throw new Error('two ends');
    const apart = 619 - a.leaf.wrap.box.top - -b.leaf.wrap.box.bottom + 2 * 0.2;
    expect(Math.abs(apart - Math.round(apart))).toBeLessThan(1e-9);
    for (const { leaf } of [a, b]) expect(textsOf(leaf.wrap).join(' ')).toContain(`${Math.round(apart)} mm`);
  });

  it('says on the card what the person wrote and what follows', () => {
    const card = textsOf(
      cases[1]?.leaf.card ?? { name: '', box: { left: 0, bottom: 0, right: 0, top: 0 }, marks: [] },
    );
    const said = card.join(' ');
    for (const words of ['kayak trailer', '31.75mm (1-1/4 in, 1.250)', '48°', '3mm', '125°', 'bevel:'])
      expect(said).toContain(words);
  });

  it('keeps the card within 100 by 130 mm', () => {
    for (const { leaf } of cases) {
      expect(leaf.card.box.right - leaf.card.box.left).toBeLessThanOrEqual(100);
      expect(leaf.card.box.top - leaf.card.box.bottom).toBeLessThanOrEqual(130);
    }
  });

  it('has the cut alone in the weight of a cut, in one stroke', () => {
    for (const { leaf } of cases) {
      expect(strokesOf(leaf.wrap, 'cut')).toHaveLength(1);
      expect(strokesOf(leaf.card, 'cut')).toHaveLength(0);
    }
  });

  it('keeps long point, heel, toe and the spine away from tile seams', () => {
    for (const each of cases) {
      const spine = spineX(each.leaf.wrap);
      expect(each.leaf.keepWhole.some((box) => box.left < spine && spine < box.right)).toBe(true);
      expect(each.leaf.keepWhole.length).toBeGreaterThanOrEqual(4);
    }
  });
});

it('a name that moves 3 mm onto a line is a fault', () => {
  for (const { leaf } of casesOf(BRACE)) {
    const { wrap } = leaf;
    expect(faultsOf(wrap)).toEqual([]);
    const moved = wrap.marks.filter((mark): mark is Words => mark.kind === 'words' && mark.text === 'waste');
    expect(moved).toHaveLength(1);
    for (const word of moved) {
      const [up, down] = [3, -3].map((by) => {
        const at = { x: word.at.x, y: word.at.y + by };
        return faultsOf({
          ...wrap,
          marks: wrap.marks.map((mark) => (mark === word ? { ...word, at } : mark)),
        });
      });
      expect([...(up ?? []), ...(down ?? [])]).toContain('"waste" on a cut stroke');
    }
  }
});

it('a seam that the job asks for is the left edge', () => {
  const [a] = casesOf({ od: 38.1, A: { header: 44.5, angle: 60, seam: 200 } });
  if (!a) throw new Error('one end');
  expect((seamOf(a) * 180) / Math.PI).toBeCloseTo(200, 9);
});

it('a seam asked for on the spine still has its words', () => {
  const [a] = casesOf({ od: 38.1, wall: 2, A: { header: 44.5, angle: 60, seam: 0 } });
  expect(
    faultsOf(a?.leaf.wrap ?? { name: '', box: { left: 0, bottom: 0, right: 0, top: 0 }, marks: [] }),
  ).toEqual([]);
  expect(
    textsOf(a?.leaf.wrap ?? { name: '', box: { left: 0, bottom: 0, right: 0, top: 0 }, marks: [] }),
  ).toContain('spine 0°');
});

it('signs that the font lacks are spelled on wrap and card', () => {
  const [a] = casesOf({ name: '台座', od: 60, wall: 2, A: { header: 70, angle: 70 } });
  expect(a?.leaf.title).toBe('[U+53F0][U+5EA7], end A');
  for (const drawing of [a?.leaf.wrap, a?.leaf.card]) {
    for (const text of drawing ? textsOf(drawing) : []) expect(() => widthOf(text, 1)).not.toThrow();
  }
});

it('a plain end has no leaf', () => {
  const [a] = casesOf(BRACE);
  if (!a) throw new Error('one end');
  const { solution } = a;
  const plain = { ...solution, ends: { ...solution.ends, B: { kind: 'plain' } as const } };
  expect(() => drawLeaf(plain, 'B', { words: ENGLISH, paperThickness: PAPER })).toThrow(RangeError);
  expect(textsOf(drawLeaf(plain, 'A', { words: ENGLISH, paperThickness: PAPER }).wrap).join(' ')).toContain(
    'cut square',
  );
});

it('the toe of a leaf does not take the place of the long point 3.5 mm beside it', () => {
  const job = readSample(readFileSync('samples/drawbar-brace.yaml', 'utf8'));
  const context = { words: ENGLISH, paperThickness: PAPER };
  const wraps = solveHands(job).map((solution) => drawLeaf(solution, 'B', context).wrap);
  expect(wraps).toHaveLength(2);
  for (const wrap of wraps) {
    const said = textsOf(wrap);
    for (const name of ['toe', 'long point']) expect(said).toContain(name);
  }
});
