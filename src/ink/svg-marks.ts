import type { G } from '@svgdotjs/svg.js';
import type { Mark, Path, PathPiece, Point, Purpose, Words } from '../draw/drawing.ts';
import { widthOf } from '../draw/letters.ts';
import { PENS } from '../draw/pens.ts';
import { written } from './number.ts';

/** The sheets' own font. */
export const FONT = 'DejaVu Sans Condensed';

/** The same first; after it what is about as narrow. */
export const FONTS = `'${FONT}', 'DejaVu Sans', 'Arial Narrow', sans-serif`;

/** From a drawing, whose y runs up, to the file, whose y runs down. */
export type ToPage = (point: Point) => Point;

/** The groups of one picture, one for each purpose, made as they are needed. */
export interface Layers {
  readonly group: G;
  /** Begins the ids of the layers; without it they have none. */
  readonly id?: string;
  readonly made: Map<Purpose, G>;
}

/** Adds marks to their layers. Throws where words hold a sign that the font lacks or a number is none. */
export function addMarks(layers: Layers, marks: readonly Mark[], onPage: ToPage): void {
  for (const mark of marks) {
    const layer = layerOf(layers, mark.purpose);
    if (mark.kind === 'words') addWords(layer, mark, onPage);
    else if (mark.kind === 'fill')
      addPath(layer, mark.path, onPage).attr({ fill: '#000000', stroke: 'none' });
    else addPath(layer, mark.path, onPage);
  }
}

function layerOf({ group, id, made }: Layers, purpose: Purpose): G {
  const known = made.get(purpose);
  if (known) return known;
  const { width, dash } = PENS[purpose];
  const layer = group.group().attr({
    ...(id !== undefined && { id: `${id}-${purpose}` }),
    class: purpose,
    fill: 'none',
    stroke: '#000000',
    'stroke-width': written(width),
    'stroke-linejoin': 'round',
    ...(dash.length > 0 && { 'stroke-dasharray': dash.map(written).join(' ') }),
  });
  made.set(purpose, layer);
  return layer;
}

function addPath(layer: G, { start, pieces, closed }: Path, onPage: ToPage) {
  const point = (p: Point): string => pair(onPage(p));
  const drawn = pieces.map((piece) => pieceOf(piece, point));
  return layer.element('path').attr({ d: `M${point(start)}${drawn.join('')}${closed ? 'Z' : ''}` });
}

function pieceOf(piece: PathPiece, point: (p: Point) => string): string {
  if (piece.kind === 'line') return `L${point(piece.to)}`;
  return `C${point(piece.c1)} ${point(piece.c2)} ${point(piece.to)}`;
}

function pair({ x, y }: Point): string {
  return `${written(x)} ${written(y)}`;
}

/** `textLength` holds the width that the words were given room for, whatever font a viewer has. */
function addWords(layer: G, { text, size, at, turn }: Words, onPage: ToPage): void {
  const place = onPage(at);
  layer
    .element('text')
    .words(text)
    .attr({
      x: written(place.x),
      y: written(place.y),
      'font-size': written(size),
      fill: '#000000',
      stroke: 'none',
      textLength: written(widthOf(text, size)),
      lengthAdjust: 'spacingAndGlyphs',
      ...(turn !== 0 && { transform: `rotate(${-90 * turn} ${pair(place)})` }),
    });
}
