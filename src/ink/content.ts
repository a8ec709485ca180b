import type { Drawing, Path, PathPiece, Point, Purpose, Words } from '../draw/drawing.ts';
import { letterOf } from '../draw/letters.ts';
import { PENS } from '../draw/pens.ts';
import { written } from './number.ts';

/** The glyphs that a file's words use, each with the sign it stands for. */
export type UsedGlyphs = Map<number, string>;

/** The name by which every page's resources know the font. */
export const FONT_KEY = 'F';

/** Cosine and sine of quarter turns, counter-clockwise. */
const QUARTERS = [
  [1, 0],
  [0, 1],
  [-1, 0],
  [0, -1],
] as const;

/**
 * A drawing as PDF operators (ISO 32000-1, 8.5 and 9.4), in its own millimetres. All is black, which a page's ink is until
 * told otherwise. Lines end square at their end points, so a bar is as long as it says, and turn corners round, so that no
 * spike stands out where a curve is steep. Notes each glyph in `used`. Throws where the font lacks a sign.
 */
export function contentOf(drawing: Drawing, used: UsedGlyphs): string {
  const stretches: string[] = [];
  let operators = ['0 J 1 j'];
  let pen: Purpose | undefined;
  for (const mark of drawing.marks) {
    if (operators.length > STRETCH) {
      stretches.push(operators.join('\n'));
      operators = [];
    }
    if (mark.kind === 'words') {
      operators.push(wordsOf(mark, used));
    } else if (mark.kind === 'fill') {
      operators.push(`${pathOf(mark.path)} f`);
    } else {
      if (mark.purpose !== pen) operators.push(penOf(mark.purpose));
      pen = mark.purpose;
      operators.push(`${pathOf(mark.path)} S`);
    }
  }
  return [...stretches, operators.join('\n')].join('\n');
}

/** So many operators are joined at once: until it is, each is held in all the parts that it was put together from. */
const STRETCH = 500;

/** `cm` operands that turn by quarters about the origin and carry the origin to `at`. */
export function placed(at: Point, turn: 0 | 1 | 2 | 3): string {
  const [cos, sin] = QUARTERS[turn];
  return `${cos} ${sin} ${-sin} ${cos} ${point(at)}`;
}

function penOf(purpose: Purpose): string {
  const { width, dash } = PENS[purpose];
  return `${written(width)} w [${dash.map(written).join(' ')}] 0 d`;
}

function pathOf(path: Path): string {
  const pieces = path.pieces.map(pieceOf).join('\n');
  return `${point(path.start)} m\n${pieces}${path.closed ? ' h' : ''}`;
}

function pieceOf(piece: PathPiece): string {
  if (piece.kind === 'line') return `${point(piece.to)} l`;
  return `${point(piece.c1)} ${point(piece.c2)} ${point(piece.to)} c`;
}

function point({ x, y }: Point): string {
  return `${written(x)} ${written(y)}`;
}

function wordsOf(words: Words, used: UsedGlyphs): string {
  let codes = '';
  for (const sign of words.text) codes += codeOf(sign, used);
  return `BT /${FONT_KEY} ${written(words.size)} Tf ${placed(words.at, words.turn)} Tm <${codes}> Tj ET`;
}

/** Glyph numbers in four digits, each spelled once: a file's words are made of few signs. */
const CODES = new Map<number, string>();

function codeOf(sign: string, used: UsedGlyphs): string {
  const { glyph } = letterOf(sign);
  if (!used.has(glyph)) used.set(glyph, sign);
  const known = CODES.get(glyph);
  if (known !== undefined) return known;
  const code = glyph.toString(16).padStart(4, '0');
  CODES.set(glyph, code);
  return code;
}
