import type { Box, Drawing, Path, Point, Stroke, Words } from '../../src/draw/drawing.ts';
import { ASCENT, DESCENT, widthOf } from '../../src/draw/letters.ts';
import { PENS } from '../../src/draw/pens.ts';

/** Where a run of text may ink, by the font's own measures. */
export function boxOfWords({ text, size, at, turn }: Words): Box {
  const corners = [
    [0, -DESCENT * size],
    [widthOf(text, size), ASCENT * size],
  ].map(([x = 0, y = 0]) => {
    if (turn === 0) return [at.x + x, at.y + y];
    if (turn === 1) return [at.x - y, at.y + x];
    if (turn === 2) return [at.x - x, at.y - y];
    return [at.x + y, at.y - x];
  });
  const xs = corners.map(([x = 0]) => x);
  const ys = corners.map(([, y = 0]) => y);
  return { left: Math.min(...xs), right: Math.max(...xs), bottom: Math.min(...ys), top: Math.max(...ys) };
}

/** Points along a path, never more than about `step` mm from one to the next. */
export function pointsAlong(path: Path, step: number): Point[] {
  const points: Point[] = [path.start];
  let from = path.start;
  const pieces = path.closed ? [...path.pieces, { kind: 'line', to: path.start } as const] : path.pieces;
  for (const piece of pieces) {
    const [c1, c2] = piece.kind === 'cubic' ? [piece.c1, piece.c2] : [from, piece.to];
    const { to } = piece;
    const length = gap(from, c1) + gap(c1, c2) + gap(c2, to);
    const count = Math.max(1, Math.ceil(length / step));
    for (let i = 1; i <= count; i++) {
      const t = i / count;
      points.push(piece.kind === 'cubic' ? cubic(from, c1, c2, to, t) : straight(from, to, t));
    }
    from = to;
  }
  return points;
}

function gap(a: Point, b: Point): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}

function straight(a: Point, b: Point, t: number): Point {
  return { x: a.x + t * (b.x - a.x), y: a.y + t * (b.y - a.y) };
}

function cubic(a: Point, b: Point, c: Point, d: Point, t: number): Point {
  const ab = straight(a, b, t);
  const bc = straight(b, c, t);
  const cd = straight(c, d, t);
  return straight(straight(ab, bc, t), straight(bc, cd, t), t);
}

/** Everything on a drawing that should not be: words on a line or on other words, ink beyond the box. */
export function faultsOf(drawing: Drawing): string[] {
  const words = drawing.marks.filter((mark): mark is Words => mark.kind === 'words');
  const boxes = words.map((mark) => ({ text: mark.text, box: boxOfWords(mark) }));
  const faults: string[] = [];
  boxes.forEach((one, i) => {
    if (!isWithin(one.box, drawing.box, 0)) faults.push(`"${one.text}" beyond the box`);
    for (const other of boxes.slice(i + 1)) {
      if (overlaps(one.box, other.box)) faults.push(`"${one.text}" on "${other.text}"`);
    }
  });
  for (const mark of drawing.marks) {
    if (mark.kind === 'words') continue;
    const half = mark.kind === 'stroke' ? PENS[mark.purpose].width / 2 : 0;
    const reach = boxOfPoints(hullOf(mark.path));
    const near = boxes.filter(({ box }) => isNear(reach, box));
    const inBounds = isWithin(reach, drawing.box, half);
    if (inBounds && near.length === 0) continue;
    const points = pointsAlong(mark.path, 0.2);
    if (!inBounds && !points.every((p) => isWithin(pointBox(p), drawing.box, half))) {
      faults.push(`a ${mark.purpose} ${mark.kind} beyond the box`);
    }
    for (const { text, box } of near) {
      if (points.some((p) => isInside(p, box, half)))
        faults.push(`"${text}" on a ${mark.purpose} ${mark.kind}`);
    }
  }
  return faults;
}

/** Points between which a path runs: a Bézier stays within its control points. */
function hullOf({ start, pieces }: Path): Point[] {
  return [
    start,
    ...pieces.flatMap((piece) => (piece.kind === 'cubic' ? [piece.c1, piece.c2, piece.to] : [piece.to])),
  ];
}

function boxOfPoints(points: readonly Point[]): Box {
  const xs = points.map(({ x }) => x);
  const ys = points.map(({ y }) => y);
  return { left: Math.min(...xs), right: Math.max(...xs), bottom: Math.min(...ys), top: Math.max(...ys) };
}

function isNear(a: Box, b: Box): boolean {
  const half = 0.5;
  return (
    a.left < b.right + half && b.left < a.right + half && a.bottom < b.top + half && b.bottom < a.top + half
  );
}

function pointBox({ x, y }: Point): Box {
  return { left: x, right: x, bottom: y, top: y };
}

function isWithin(box: Box, outer: Box, more: number): boolean {
  return (
    box.left - more >= outer.left &&
    box.right + more <= outer.right &&
    box.bottom - more >= outer.bottom &&
    box.top + more <= outer.top
  );
}

function overlaps(a: Box, b: Box): boolean {
  const hair = 1e-6;
  return (
    a.left < b.right - hair && b.left < a.right - hair && a.bottom < b.top - hair && b.bottom < a.top - hair
  );
}

function isInside({ x, y }: Point, box: Box, more: number): boolean {
  return x > box.left - more && x < box.right + more && y > box.bottom - more && y < box.top + more;
}

export function strokesOf(drawing: Drawing, purpose: Stroke['purpose']): Stroke[] {
  return drawing.marks.filter((mark): mark is Stroke => mark.kind === 'stroke' && mark.purpose === purpose);
}

export function textsOf(drawing: Drawing): string[] {
  return drawing.marks.flatMap((mark) => (mark.kind === 'words' ? [mark.text] : []));
}
