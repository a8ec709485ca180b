import type { Drawing, Mark, Path, PathPiece, Point, Purpose } from '../draw/drawing.ts';
import { FACTS, type FactName } from '../draw/facts.ts';
import { PENS } from '../draw/pens.ts';
import type { Said } from '../measure/said.ts';
import { asWritten } from '../words/said.ts';

const NOTHING = asWritten('');

/**
 * The same drawing in an eighth of the memory: its marks are kept as one row of numbers, and made again each time that
 * they are asked for. A job of a thousand tubes has two thousand leaves to keep until each has its place on a sheet.
 */
export function compact({ name, box, marks, of }: Drawing): Drawing {
  const texts: Said[] = [];
  const numbers: number[] = [];
  for (const mark of marks) write(mark, numbers, texts);
  const row = new Float64Array(numbers);
  return {
    name,
    box,
    ...(of && { of }),
    get marks() {
      return marksOf(row, texts);
    },
  };
}

const KINDS = ['stroke', 'fill', 'words'] as const;
const PURPOSES = Object.keys(PENS).filter((key): key is Purpose => key in PENS);
const FACT_NAMES = Object.keys(FACTS).filter((key): key is FactName => key in FACTS);
const TURNS = [0, 1, 2, 3] as const;

function write(mark: Mark, row: number[], texts: Said[]): void {
  row.push(KINDS.indexOf(mark.kind), PURPOSES.indexOf(mark.purpose));
  if (mark.kind !== 'words') {
    writePath(mark.path, row);
    return;
  }
  texts.push(mark.text);
  row.push(
    FACT_NAMES.indexOf(mark.fact),
    Number(mark.more ?? false),
    mark.size,
    mark.at.x,
    mark.at.y,
    mark.turn,
  );
}

function writePath({ start, pieces, closed }: Path, row: number[]): void {
  row.push(Number(closed), pieces.length, start.x, start.y);
  for (const piece of pieces) {
    if (piece.kind === 'line') row.push(0, piece.to.x, piece.to.y);
    else row.push(1, piece.c1.x, piece.c1.y, piece.c2.x, piece.c2.y, piece.to.x, piece.to.y);
  }
}

function marksOf(row: Float64Array, texts: readonly Said[]): Mark[] {
  const marks: Mark[] = [];
  let place = 0;
  let text = 0;
  const next = (): number => row[place++] ?? 0;
  const point = (): Point => ({ x: next(), y: next() });
  const piece = (): PathPiece =>
    next() === 0 ? { kind: 'line', to: point() } : { kind: 'cubic', c1: point(), c2: point(), to: point() };
  const path = (): Path => {
    const closed = next() === 1;
    const count = next();
    const start = point();
    const pieces: PathPiece[] = [];
    for (let i = 0; i < count; i++) pieces.push(piece());
    return { start, pieces, closed };
  };
  while (place < row.length) {
    const kind = KINDS[next()] ?? 'stroke';
    const purpose = PURPOSES[next()] ?? 'guide';
    if (kind === 'words') {
      const [fact, more] = [FACT_NAMES[next()] ?? 'sheet', next() === 1];
      const [size, at, turn] = [next(), point(), TURNS[next()] ?? 0];
      const words = { kind, purpose, text: texts[text++] ?? NOTHING, fact, size, at, turn };
      marks.push(more ? { ...words, more } : words);
    } else {
      marks.push({ kind, purpose, path: path() });
    }
  }
  return marks;
}
