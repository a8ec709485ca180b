import { describe, expect, it } from 'vitest';
import type { Drawing, Words } from '../../src/draw/drawing.ts';
import { howMany } from '../count.ts';
import { boxOfWords, faultsOf, strokesOf, textsOf } from './collisions.ts';
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

/** An arc leaves its flat side smoothly: where is not felt, or found, to the last hundredth of a mm. */
const APART = 0.05;

const ENDS = howMany({ short: 16, deep: 160 });

/** How long a tick at a kink is drawn, mm. */
const TICK = 1.8;

/** Where ticks at kinks begin, across a leaf: short guide lines of one length and no other. */
function ticksOn(wrap: Drawing): number[] {
  return strokesOf(wrap, 'guide')
    .flatMap(({ path: { start, pieces } }) => {
      const [piece, ...more] = pieces;
      if (!piece || more.length > 0) return [];
      const long = Math.hypot(piece.to.x - start.x, piece.to.y - start.y);
      return Math.abs(long - TICK) < 1e-6 ? [start.x] : [];
    })
    .sort((a, b) => a - b);
}

function only(tube: Parameters<typeof kindCasesOf>[0]): KindCase {
  const [first] = kindCasesOf(tube);
  if (!first) throw new Error('one end');
  return first;
}

/** Degrees round a tube of 60 mm from the heel, of the seam of a leaf. */
function acrossOf(each: KindCase, degrees: number, seam: number): number {
  const width = each.solution.section.girth + Math.PI * PAPER;
  return ((((degrees - seam) % 360) + 360) % 360) * (width / 360);
}

describe('a tube of 60 square onto a box 40 wide with corners of 8', () => {
  // Beside the middle by y = 30 sin(station): the flat ends at y = 12, the corner's arc and with it the box at y = 20.
  const edges = [12, 20].flatMap((y) => {
    const turned = (Math.asin(y / 30) * 180) / Math.PI;
    return [turned, 180 - turned, 180 + turned, 360 - turned];
  });
  const onto = {
    kind: 'box',
    wide: length(40),
    deep: length(40),
    corner: length(8),
    roll: angle(0),
  } as const;
  const tube = tubeOnto(round(60), [partOf(onto, 90)], 3);
  const coped = tube.ends.A;
  if (coped?.kind !== 'coped') throw new Error('a coped end');
  const each = only({ ...tube, ends: { A: { ...coped, seam: angle(100) } } });

  it('has a tick where each arc of the box begins and where the tube leaves the box', () => {
    const ticks = ticksOn(each.leaf.wrap);
    const wanted = edges.map((edge) => acrossOf(each, edge, 100)).sort((a, b) => a - b);
    // The long point and the throat have their own marks, each on one of four places alike.
    const marks = strokesOf(each.leaf.wrap, 'guide').map(({ path }) => path.start.x);
    for (const x of wanted) expect(marks.some((mark) => Math.abs(mark - x) < APART)).toBe(true);
    expect(ticks.length).toBeGreaterThanOrEqual(6);
    for (const tick of ticks) expect(wanted.some((x) => Math.abs(tick - x) < APART)).toBe(true);
  });

  it('says on its card what the ticks are', () => {
    expect(textsOf(each.leaf.card)).toContain('ticks');
    expect(faultsOf(each.leaf.wrap)).toEqual([]);
  });
});

it('a plain joint has no tick at its cut, and no word of ticks', () => {
  const { leaf } = only(tubeOnto(round(60), [partOf({ kind: 'round', od: length(76.1) }, 60)], 3));
  expect(ticksOn(leaf.wrap)).toEqual([]);
  expect(textsOf(leaf.card)).not.toContain('ticks');
});

it('a box that turns an edge to a rectangular tube has its kink marked on the face, off the folds', () => {
  // Turned by 45 degrees, the box has its edge in the middle; shifted by an offset of 10 mm it lies 10 mm off the spine.
  const onto = {
    kind: 'box',
    wide: length(80),
    deep: length(80),
    corner: length(0),
    roll: angle(45),
  } as const;
  const { leaf } = only(tubeOnto(rectangle(60, 40, 6), [partOf(onto, 90, 0, 10)], 3));
  const spine = strokesOf(leaf.wrap, 'guide')
    .map(({ path }) => path.start.x)
    .filter((x) => ticksOn(leaf.wrap).some((tick) => Math.abs(Math.abs(tick - x) - 10) < 0.01));
  expect(spine.length).toBeGreaterThan(0);
});

/** Where the spine stands, across a leaf of a round tube: the guide beside its label. */
function spineOf(wrap: Drawing): number {
  const label = wrap.marks.find((mark): mark is Words => mark.kind === 'words' && mark.text === 'spine 0°');
  if (!label) throw new Error('no spine');
  const { left, right } = boxOfWords(label);
  const away = (x: number): number => Math.min(Math.abs(left - x - 0.8), Math.abs(x - right - 0.8));
  const xs = strokesOf(wrap, 'guide').map(({ path }) => path.start.x);
  return xs.reduce((best, x) => (away(x) < away(best) ? x : best));
}

describe('on random ends of round tubes onto every kind of header, seed 88', () => {
  const roll = dice(88);
  const cases = Array.from({ length: ENDS }, () => randomKind(roll))
    .filter(({ section }) => section.kind === 'round')
    .flatMap(kindCasesOf);

  it('each place where the cut goes over to something else has a mark at the cut within 1 mm', () => {
    let places = 0;
    const bare: string[] = [];
    for (const { leaf, cope, end, solution, tube } of cases) {
      const width = solution.section.girth + Math.PI * PAPER;
      const spine = spineOf(leaf.wrap);
      const step = (2 * Math.PI) / LOOKS;
      const met = Array.from({ length: LOOKS }, (_, i) => cope.cut(i * step));
      const marks = strokesOf(leaf.wrap, 'guide').map(({ path: { start, pieces } }) => {
        const ys = [start.y, ...pieces.map(({ to }) => to.y)];
        return { x: start.x, foot: Math.min(...ys), head: Math.max(...ys) };
      });
      met.forEach(({ region, setback }, i) => {
        const before = met.at(i - 1);
        if (before === undefined || before.region === region) return;
        places += 1;
        const x = (((spine + (i * width) / LOOKS) % width) + width) % width;
        const aside = Math.ceil(LOOKS / width);
        const heights = Array.from({ length: 2 * aside + 1 }, (_, k) => {
          const there = met[(i - aside + k + LOOKS) % LOOKS]?.setback ?? setback;
          return end === 'A' ? there : -there;
        });
        const [low, high] = [Math.min(...heights) - HAIR, Math.max(...heights) + HAIR];
        const near = Math.min(
          x,
          width - x,
          ...marks.filter(({ foot, head }) => head > low && foot < high).map((mark) => Math.abs(mark.x - x)),
        );
        if (near > 1 + width / LOOKS) bare.push(`${JSON.stringify(tube)} at ${x.toFixed(1)} mm: ${near}`);
      });
    }
    expect(bare).toEqual([]);
    expect(places).toBeGreaterThan(ENDS * (50 / 160));
  });
});

/** Of the line, once round. */
const LOOKS = 3600;

/** A mark begins at the cut within a millimetre to both sides, where it may rise too fast for the looks. */
const HAIR = 0.5;
