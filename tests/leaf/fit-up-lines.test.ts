import { describe, expect, test } from 'vitest';
import type { Drawing, Point, Words } from '../../src/draw/drawing.ts';
import { drawLeaf } from '../../src/leaf/draw-leaf.ts';
import { solveHands } from '../../src/saddle/solve.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { howMany } from '../count.ts';
import { readSample } from '../job/sample.ts';
import { between, type Random, randomFrom, SEED } from '../outside/random-joints.ts';
import { type Frame, heelOf, rayTo } from '../readings/tape.ts';
import { boxOfWords, faultsOf, pointsAlong, strokesOf, textsOf } from './collisions.ts';

const FRAMES = howMany({ short: 6, deep: 40 });
const PAPER_THICKNESS = 0.1;

interface RoundFrame extends Frame {
  readonly tube: { readonly od: number };
}

/** Numbers of six decimals, so that the job file holds them exactly. */
function short(value: number): number {
  return Number(value.toFixed(6));
}

function randomFrame(random: Random): RoundFrame {
  const od = short(between(random, 25, 60));
  const part = () => ({
    onto: { kind: 'round' as const, od: short(od * between(random, 1.2, 3)) },
    angle: random() < 0.1 ? 90 : short(between(random, 30, 150)),
    clock: short(between(random, -175, 175)),
    offset: short(between(random, -0.09, 0.09) * od),
    shift: 0,
  });
  return { tube: { od }, between: short(between(random, 700, 1500)), A: part(), B: part() };
}

/** The job of a person who marks the length, and the rotation or not. */
function jobOf({ tube, A, B }: RoundFrame, clock: string): string {
  const onto = (part: Frame['B']) => (part.onto.kind === 'round' ? `{ od: ${part.onto.od} }` : '');
  return `copeleaf: 1
tube:
  od: ${tube.od}
  wall: 1.5
  between: mark
  ends:
    A: { onto: ${onto(A)}, angle: ${A.angle}, clock: ${A.clock}, offset: ${A.offset} }
    B: { onto: ${onto(B)}, angle: ${B.angle}, clock: ${clock}, offset: ${B.offset} }
`;
}

function wrapOf(job: string): Drawing {
  const [solution] = solveHands(readSample(job));
  if (!solution) throw new Error('a job has a tube');
  return drawLeaf(solution, 'B', { words: ENGLISH, paperThickness: PAPER_THICKNESS }).wrap;
}

/** The guide that runs beside some words, the nearest of them: upright or level, by where it stands. */
function guideAt(wrap: Drawing, words: RegExp, upright: boolean): number {
  const named = wrap.marks.find((mark): mark is Words => mark.kind === 'words' && words.test(mark.text));
  if (!named) throw new Error(`nothing reads ${words}`);
  const box = boxOfWords(named);
  const places = strokesOf(wrap, 'guide').flatMap(({ path: { start, pieces } }): [number, number][] => {
    const to: Point = pieces[0]?.to ?? start;
    const [place, other] = upright ? [start.x, to.x] : [start.y, to.y];
    const ends = upright ? [start.y, to.y] : [start.x, to.x];
    const [low, high, first, last] = upright
      ? [box.left, box.right, box.bottom, box.top]
      : [box.bottom, box.top, box.left, box.right];
    if (Math.abs(place - other) > 1e-9 || Math.max(...ends) < first || Math.min(...ends) > last) return [];
    return [[Math.max(low - place, place - high), place]];
  });
  places.sort(([a], [b]) => a - b);
  return places[0]?.[1] ?? Number.NaN;
}

/** How far the cut of a leaf, laid on the marks, strays from where the tube's outside meets the exact header, at most. */
function strayOf(frame: RoundFrame, wrap: Drawing, x: number, station: number): number {
  const radius = frame.tube.od / 2;
  const onLine = (angle: number) => rayTo(frame, 'B', radius * Math.cos(angle), radius * Math.sin(angle));
  const mark = onLine(heelOf(frame, 'B')) ?? Number.NaN;
  const level = guideAt(wrap, /length mark: lay|on the length mark|^length mark$/, false);
  const perMm = (2 * Math.PI) / (Math.PI * (frame.tube.od + PAPER_THICKNESS));
  const [cut] = strokesOf(wrap, 'cut');
  const points = cut ? pointsAlong(cut.path, 3) : [];
  const strays = points.map((point) => {
    const met = onLine(station + (point.x - x) * perMm) ?? Number.NaN;
    return Math.abs(mark + point.y - level - met);
  });
  return strays.length > 0 ? Math.max(...strays) : Number.NaN;
}

describe(`a leaf laid by its lines on marks made at the frame (JOINT_SEED=${SEED})`, () => {
  test('cuts where the tube meets the solid to 0.01 mm, with no number for rotation and length', () => {
    const random = randomFrom(SEED + 8);
    for (let n = 0; n < FRAMES; n++) {
      const frame = randomFrame(random);
      const job = jobOf(frame, 'mark');
      const wrap = wrapOf(job);
      const x = guideAt(wrap, /^rotation mark 0°/, true);
      expect(strayOf(frame, wrap, x, heelOf(frame, 'B')), job).toBeLessThan(0.01);
      expect(faultsOf(wrap), job).toEqual([]);
    }
  });

  test('does so by its spine where only the length is marked', () => {
    const random = randomFrom(SEED + 9);
    for (let n = 0; n < FRAMES; n++) {
      const frame = randomFrame(random);
      const job = jobOf(frame, `${frame.B.clock}`);
      const wrap = wrapOf(job);
      expect(textsOf(wrap).some((text) => text.startsWith('rotation'))).toBe(false);
      const x = guideAt(wrap, /^spine 0°/, true);
      expect(strayOf(frame, wrap, x, 0), job).toBeLessThan(0.01);
      expect(faultsOf(wrap), job).toEqual([]);
    }
  });
});

describe('where only the rotation is marked', () => {
  const job = `copeleaf: 1
tube:
  od: 31.75
  between: 600
  ends:
    A: { onto: { od: 38.1 }, angle: 62 }
    B: { onto: { od: 38.1 }, angle: 48, clock: mark }
`;
  test('a leaf has no line for a length mark, and says how far it lies from the other', () => {
    const texts = textsOf(wrapOf(job));
    expect(texts.filter((text) => text.includes('length mark'))).toEqual([]);
    expect(texts.join(' ')).toContain('to base edge A');
  });
});

const TUBES = ['od: 14', 'od: 80', 'section: { wide: 50, deep: 30, corner: 5 }'];
const HEADERS = ['{ od: 90 }', '{ plate: {} }', '{ box: { wide: 100, deep: 60, corner: 8 } }'];

describe.each(TUBES)('on a tube of %s every kind of header', (tube) => {
  test.each(HEADERS)('%s has its lines named, and no word on a line', (onto) => {
    for (const angle of [40, 90, 120]) {
      for (const clock of tube.startsWith('od') ? ['77', 'mark'] : ['77']) {
        for (const edge of ['bevel', 'square']) {
          const job = `copeleaf: 1
tube:
  ${tube}
  wall: 2
  edge: ${edge}
  between: mark
  ends: { A: plain, B: { onto: ${onto}, angle: ${angle}, clock: ${clock} } }
`;
          const [solution] = solveHands(readSample(job));
          if (!solution) throw new Error('a job has a tube');
          const { wrap, card } = drawLeaf(solution, 'B', { words: ENGLISH, paperThickness: PAPER_THICKNESS });
          expect([...faultsOf(wrap), ...faultsOf(card)], job).toEqual([]);
          // What finds no room on a small wrap stands on its card.
          const texts = [...textsOf(wrap), ...textsOf(card)];
          const named = texts.filter((text) =>
            /length mark: lay this|^on the length mark$|^length mark$/.test(text),
          );
          expect(named.length, job).toBeGreaterThan(0);
          expect(texts.join(' ').includes('rotation mark'), job).toBe(clock === 'mark');
        }
      }
    }
  });
});
