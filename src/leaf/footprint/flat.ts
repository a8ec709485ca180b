import type { PathPiece, Point, Purpose, Stroke } from '../../draw/drawing.ts';
import { distance } from '../../draw/path.ts';
import type { HeaderShape } from '../../job/kind.ts';
import type { Mm } from '../../measure/units.ts';
import type { Outline, OutlinePiece } from '../../saddle/footprint.ts';
import type { Developed } from '../../space/solid.ts';
import type { BodyWay } from '../picture/view.ts';

/** How a header's surface lies on paper, seen from outside: its axis to the right, the way to clock + 90 degrees up at A. */
export interface HeaderFlat {
  readonly to: (place: Developed) => Point;
  /** Half of once round the header, on paper; endless for a flat one. */
  readonly half: Mm;
  /** Where the paper is folded, up from the line that faces the tube. */
  readonly folds: readonly Mm[];
}

/** The flat of a header wrapped in paper of this thickness, which bends about its middle; a plate's is the plate. */
export function headerFlat(shape: HeaderShape, k: BodyWay, paper: Mm): HeaderFlat {
  const { scale, half } = roundOf(shape, paper);
  return {
    to: ({ round, along }) => ({ x: along, y: k * scale * round }),
    half,
    folds: shape.kind === 'bar' ? (shape.folds ?? []) : [],
  };
}

function roundOf(shape: HeaderShape, paper: Mm): { scale: number; half: Mm } {
  switch (shape.kind) {
    case 'plane':
      return { scale: 1, half: Number.POSITIVE_INFINITY };
    case 'bar':
      // Its faces are flat: each fold takes pi t / 4 more, under what a marker's line hides.
      return shape.folds ? { scale: 1, half: shape.girth / 2 } : bentRound(shape.girth, paper);
    case 'bent':
      return bentRound(Math.PI * shape.bend.od.mm, paper);
  }
}

function bentRound(girth: Mm, paper: Mm): { scale: number; half: Mm } {
  const onPaper = girth + Math.PI * paper;
  return { scale: onPaper / girth, half: onPaper / 2 };
}

/** Each run of an outline as a stroke. */
export function outlineStrokes(purpose: Purpose, flat: HeaderFlat, { runs, closed }: Outline): Stroke[] {
  return runs.flatMap((run) => {
    const [first] = run;
    if (!first) return [];
    const start = flat.to(first[0]);
    return [{ kind: 'stroke', purpose, path: { start, pieces: piecesOf(flat, run, start), closed } }];
  });
}

function piecesOf(flat: HeaderFlat, run: readonly OutlinePiece[], start: Point): PathPiece[] {
  let end = start;
  return run.flatMap((piece): PathPiece[] => {
    const [from, c1, c2, to] = [flat.to(piece[0]), flat.to(piece[1]), flat.to(piece[2]), flat.to(piece[3])];
    const jump: PathPiece[] = distance(from, end) > STEP ? [{ kind: 'line', to: from }] : [];
    end = to;
    return [...jump, { kind: 'cubic', c1, c2, to }];
  });
}

const STEP: Mm = 1e-6;
