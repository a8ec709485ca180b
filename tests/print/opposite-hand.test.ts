import { decodePDFRawStream, PDFDocument, PDFName, PDFRawStream } from 'pdf-lib';
import { describe, expect, test } from 'vitest';
import type { Path, Point, Purpose } from '../../src/draw/drawing.ts';
import { textOf } from '../ink/raster.ts';
import { boxAround, pointsOf } from '../tiler/ink-boxes.ts';
import { type DrawnLeaf, leavesOf, printedSample, spineOf } from './laid-wraps.ts';

/** Offset, clock, a seam that the job asks for, and both kinds of edge. */
const UPRIGHT = `copeleaf: 1
pair: true
tube:
  name: cradle upright
  od: 31.75
  wall: 2.4
  between: 510
  ends:
    A: { onto: { od: 38.1 }, angle: 72, clock: -20, offset: -3, edge: square }
    B: { onto: { od: 30 }, angle: 48, clock: 35, offset: 2, seam: 200 }
`;

const BRACE = printedSample('brace');

/** A leaf as drawn and its opposite hand. */
interface Twins {
  readonly name: string;
  readonly one: DrawnLeaf;
  readonly other: DrawnLeaf;
}

function twinsOf(source: string): Twins[] {
  const { leaves } = leavesOf(source);
  return (['A', 'B'] as const).map((end) => {
    const [one, other] = leaves.filter((leaf) => leaf.end === end);
    if (!one || !other) throw new Error('no twins');
    expect([one.hand, other.hand]).toEqual(['as-drawn', 'opposite']);
    return { name: one.leaf.title, one, other };
  });
}

const TWINS = [BRACE.source, UPRIGHT].flatMap(twinsOf);

/** Both samples are of a tube of 31.75 mm, on paper of 0.10 mm that bends about its middle. */
const GIRTH = Math.PI * (31.75 + 0.1);

function mirrored({ x, y }: Point): Point {
  return { x: GIRTH - x, y };
}

function pathsOf({ leaf }: DrawnLeaf, purpose: Purpose): Path[] {
  return leaf.wrap.marks.flatMap((mark) =>
    mark.kind === 'stroke' && mark.purpose === purpose ? [mark.path] : [],
  );
}

/** Points along a path, close enough together to measure from one to the next in a straight line. */
function dense({ start, pieces }: Path): Point[] {
  const points = [start];
  for (const piece of pieces) {
    const from = points.at(-1) ?? start;
    for (let i = 1; i <= 100; i++) {
      const t = i / 100;
      const u = 1 - t;
      const { c1, c2 } =
        piece.kind === 'cubic'
          ? piece
          : { c1: between(from, piece.to, 1 / 3), c2: between(from, piece.to, 2 / 3) };
      const blend = (axis: 'x' | 'y') =>
        u ** 3 * from[axis] + 3 * u * u * t * c1[axis] + 3 * u * t * t * c2[axis] + t ** 3 * piece.to[axis];
      points.push({ x: blend('x'), y: blend('y') });
    }
  }
  return points;
}

function between(from: Point, to: Point, part: number): Point {
  return { x: from.x + part * (to.x - from.x), y: from.y + part * (to.y - from.y) };
}

function distanceTo(line: readonly Point[], { x, y }: Point): number {
  return Math.min(
    ...line.slice(1).map((to, i) => {
      const from = line[i] ?? to;
      const along = { x: to.x - from.x, y: to.y - from.y };
      const squared = along.x ** 2 + along.y ** 2;
      const part = squared === 0 ? 0 : ((x - from.x) * along.x + (y - from.y) * along.y) / squared;
      const foot = between(from, to, Math.min(1, Math.max(0, part)));
      return Math.hypot(x - foot.x, y - foot.y);
    }),
  );
}

/** Straight strokes as text, each by its box, so that neither order nor direction counts. */
function asBoxes(paths: readonly Path[], place: (point: Point) => Point): string[] {
  return paths
    .map((path) => boxAround(pointsOf(path).map(place)))
    .map((box) =>
      [box.left, box.bottom, box.right, box.top].map((mm) => Math.round(mm * 1e6) / 1e6 + 0).join(),
    )
    .sort();
}

describe.each(TWINS)('the opposite hand of $name', ({ one, other }) => {
  test.each(['cut', 'other-edge'] as const)("has the mirror image of its twin's line: %s", (purpose) => {
    const [twin, ...more] = pathsOf(one, purpose).map(dense);
    const [own, ...others] = pathsOf(other, purpose).map(dense);
    if (!twin || !own) throw new Error('no line');
    expect([more, others]).toEqual([[], []]);
    // Either is drawn to 0.002 mm.
    const far = twin.filter((_, i) => i % 7 === 0).map((point) => distanceTo(own, mirrored(point)));
    expect(Math.max(...far)).toBeLessThan(0.004);
  });

  test('has its spine, base edge, seam edges and match ticks where a mirror shows them', () => {
    expect(spineOf(other.leaf.wrap)).toBeCloseTo(GIRTH - spineOf(one.leaf.wrap), 6);
    const base = (leaf: DrawnLeaf) => pathsOf(leaf, 'outline').slice(0, 1);
    expect(asBoxes(base(other), (point) => point)).toEqual(asBoxes(base(one), mirrored));
    const seams = asBoxes(pathsOf(other, 'seam'), (point) => point);
    expect(seams.length).toBeGreaterThan(4);
    expect(seams).toEqual(asBoxes(pathsOf(one, 'seam'), mirrored));
  });

  test('is not its twin over again, and is named', () => {
    const own = pathsOf(other, 'cut').flatMap(dense);
    const far = pathsOf(one, 'cut')
      .flatMap(dense)
      .filter((_, i) => i % 7 === 0)
      .map((point) => distanceTo(own, point));
    expect(Math.max(...far)).toBeGreaterThan(1);
    const said = other.leaf.wrap.marks
      .flatMap((mark) => (mark.kind === 'words' ? [mark.text] : []))
      .join(' ');
    expect(said).toContain('opposite hand');
  });
});

test.each(
  TWINS.flatMap(({ one, other }) => [one, other]).map((drawn) => ({ name: drawn.leaf.title, drawn })),
)("$name: A's cut is at the foot of its leaf, B's at its head", ({ drawn }) => {
  const cut = pathsOf(drawn, 'cut')
    .flatMap(dense)
    .map(({ y }) => y);
  const [base] = pathsOf(drawn, 'outline');
  if (!base) throw new Error('no base edge');
  const [from, to] = pointsOf(base).map(({ y }) => y);
  expect(from).toBe(to);
  if (drawn.end === 'A') expect(Math.max(...cut)).toBeLessThan((from ?? Number.NaN) - 10);
  else expect(Math.min(...cut)).toBeGreaterThan((from ?? Number.NaN) + 10);
});

/** Every content stream of a file as text: pages and stored drawings. */
async function contentsOf(pdf: Uint8Array): Promise<string[]> {
  const { context } = await PDFDocument.load(pdf, { updateMetadata: false });
  return context.enumerateIndirectObjects().flatMap(([, object]) => {
    if (!(object instanceof PDFRawStream)) return [];
    if (
      object.dict.has(PDFName.of('Length1')) ||
      object.dict.get(PDFName.of('Type')) === PDFName.of('EmbeddedFile')
    ) {
      return [];
    }
    const text = Buffer.from(decodePDFRawStream(object).decode()).toString('latin1');
    return /\bBT\b/.test(text) ? [text] : [];
  });
}

test('no word is printed mirrored: no matrix of the file turns anything over', async () => {
  const contents = await contentsOf(BRACE.pdf);
  const number = '(-?[\\d.]+)\\s+';
  const matrices = contents.flatMap((text) => [
    ...text.matchAll(new RegExp(`${number.repeat(6)}(?:cm|Tm)\\b`, 'g')),
  ]);
  expect(matrices.length).toBeGreaterThan(100);
  for (const [, a, b, c, d] of matrices)
    expect(Number(a) * Number(d) - Number(b) * Number(c)).toBeGreaterThan(0);
  expect(contents.join()).not.toMatch(/-[\d.]+\s+Tz\b|-[\d.]+\s+Tf\b/);
});

test('the words of the opposite hand read in the same order as those of its twin', async () => {
  const [asDrawn, opposite] = await Promise.all(
    [0, 1].map(async (page) => (await textOf(BRACE.pdf, page)).replace(/\s+/g, ' ')),
  );
  const title =
    'B bunk stay HAND · make 1 · wrap printed side out job sea kayak trailer tube 1-1/4in (31.75 mm) wall 0.095in';
  expect(asDrawn).toContain(title.replace('HAND', 'as drawn'));
  expect(opposite).toContain(title.replace('HAND', 'opposite hand'));
});
