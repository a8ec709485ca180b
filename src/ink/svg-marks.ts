import type { Mark, Path, PathPiece, Point, Purpose, Words } from '../draw/drawing.ts';
import { widthOf } from '../draw/letters.ts';
import { PENS } from '../draw/pens.ts';
import { written } from './number.ts';
import { asText, element } from './xml.ts';

/** The sheets' own font. */
export const FONT = 'DejaVu Sans Condensed';

/** What each picture says of itself: the same font first, after it what is about as narrow; and spaces as they are. */
export const PICTURE = {
  'font-family': `'${FONT}', 'DejaVu Sans', 'Arial Narrow', sans-serif`,
  'xml:space': 'preserve',
};

/** From a drawing, whose y runs up, to the file, whose y runs down. */
export type ToPage = (point: Point) => Point;

/** Marks of one drawing, and how they come to lie on the page. */
export interface OnPage {
  readonly marks: readonly Mark[];
  readonly onPage: ToPage;
}

/**
 * A group for each purpose, in the order in which they are first met. `id` begins their ids; without it they have none. Throws where
 * words hold a sign that the font lacks or a number is none.
 */
export function svgLayers(drawn: readonly OnPage[], id?: string): string {
  const layers = new Map<Purpose, string[]>();
  for (const { marks, onPage } of drawn) {
    for (const mark of marks) {
      const layer = layers.get(mark.purpose) ?? [];
      layers.set(mark.purpose, layer);
      layer.push(markOf(mark, onPage));
    }
  }
  return [...layers].map(([purpose, marks]) => layerOf(purpose, marks.join(''), id)).join('');
}

function layerOf(purpose: Purpose, marks: string, id: string | undefined): string {
  const { width, dash } = PENS[purpose];
  return element(
    'g',
    {
      id: id === undefined ? undefined : `${id}-${purpose}`,
      class: purpose,
      fill: 'none',
      stroke: '#000000',
      'stroke-width': written(width),
      'stroke-linejoin': 'round',
      'stroke-dasharray': dash.length > 0 ? dash.map(written).join(' ') : undefined,
    },
    marks,
  );
}

function markOf(mark: Mark, onPage: ToPage): string {
  if (mark.kind === 'words') return wordsOf(mark, onPage);
  const d = pathOf(mark.path, onPage);
  return element('path', mark.kind === 'fill' ? { d, fill: '#000000', stroke: 'none' } : { d });
}

function pathOf({ start, pieces, closed }: Path, onPage: ToPage): string {
  const point = (p: Point): string => pair(onPage(p));
  const drawn = pieces.map((piece) => pieceOf(piece, point));
  return `M${point(start)}${drawn.join('')}${closed ? 'Z' : ''}`;
}

function pieceOf(piece: PathPiece, point: (p: Point) => string): string {
  if (piece.kind === 'line') return `L${point(piece.to)}`;
  return `C${point(piece.c1)} ${point(piece.c2)} ${point(piece.to)}`;
}

function pair({ x, y }: Point): string {
  return `${written(x)} ${written(y)}`;
}

/** `textLength` holds the width that the words were given room for, whatever font a viewer has. */
function wordsOf({ text, size, at, turn }: Words, onPage: ToPage): string {
  const place = onPage(at);
  return element(
    'text',
    {
      x: written(place.x),
      y: written(place.y),
      'font-size': written(size),
      fill: '#000000',
      stroke: 'none',
      textLength: written(widthOf(text, size)),
      lengthAdjust: 'spacingAndGlyphs',
      transform: turn === 0 ? undefined : `rotate(${-90 * turn} ${pair(place)})`,
    },
    asText(text),
  );
}
