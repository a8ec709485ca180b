import { type G, SVG, withWindow } from '@svgdotjs/svg.js';
import type { Path, Piece, Point, Purpose, Words } from '../leaf/drawing.ts';
import type { Leaf } from '../leaf/leaf.ts';
import { widthOf } from '../leaf/letters.ts';
import { PENS } from '../leaf/pens.ts';
import type { Placement } from '../tiler/sheets.ts';
import { written } from './number.ts';
import { type Row, type SideBySide, sideBySide } from './side-by-side.ts';

/** Whose DOM the file is built in: a browser's own window, or svgdom's `createSVGWindow()` where there is none. */
export type SvgWindow = Window;

/** The sheets' own font first; after it what is about as narrow. */
const FONTS = "'DejaVu Sans Condensed', 'DejaVu Sans', 'Arial Narrow', sans-serif";

/**
 * Leaves as one SVG file (SVG 1.1) at true size: a unit is a millimetre, nothing is scaled or moved by a transform but turned
 * words are. A group for each leaf (`leaf-1`), in it one for each purpose (`leaf-1-cut`, of class `cut`). The same
 * leaves give the same text. Throws where words hold a sign that the font lacks or a number is none.
 */
export function inkSvg(leaves: readonly Leaf[], window: SvgWindow): string {
  const sheet = sideBySide(leaves);
  const [width, height] = [written(sheet.width), written(sheet.height)];
  const source = withWindow(window, () => {
    const root = SVG()
      .size(`${width}mm`, `${height}mm`)
      .attr({
        viewBox: `0 0 ${width} ${height}`,
        'font-family': FONTS,
        'xml:space': 'preserve',
      });
    sheet.rows.forEach((row, i) => {
      addLeaf(root.group(), `leaf-${i + 1}`, row, sheet);
    });
    return root.svg();
  });
  // A browser writes a no-break space by a name that XML does not know.
  return `<?xml version="1.0" encoding="UTF-8"?>\n${source.replaceAll('&nbsp;', '&#160;')}\n`;
}

function addLeaf(group: G, id: string, { leaf, wrap, card }: Row, sheet: SideBySide): void {
  group.attr({ id });
  group.element('title').words(leaf.title);
  const layers = new Map<Purpose, G>();
  for (const placement of [wrap, card]) {
    const onPage = toPage(placement, sheet);
    for (const mark of placement.drawing.marks) {
      const layer = layers.get(mark.purpose) ?? addLayer(group, id, mark.purpose);
      layers.set(mark.purpose, layer);
      if (mark.kind === 'words') addWords(layer, mark, onPage);
      else if (mark.kind === 'fill')
        addPath(layer, mark.path, onPage).attr({ fill: '#000000', stroke: 'none' });
      else addPath(layer, mark.path, onPage);
    }
  }
}

type ToPage = (point: Point) => Point;

/** A drawing's y runs up, the file's runs down: it is turned over here and nowhere else. */
function toPage({ at }: Placement, { height }: SideBySide): ToPage {
  return ({ x, y }) => ({ x: at.x + x, y: height - (at.y + y) });
}

function addLayer(group: G, id: string, purpose: Purpose): G {
  const { width, dash } = PENS[purpose];
  return group.group().attr({
    id: `${id}-${purpose}`,
    class: purpose,
    fill: 'none',
    stroke: '#000000',
    'stroke-width': written(width),
    'stroke-linejoin': 'round',
    ...(dash.length > 0 && { 'stroke-dasharray': dash.map(written).join(' ') }),
  });
}

function addPath(layer: G, { start, pieces, closed }: Path, onPage: ToPage) {
  const point = (p: Point): string => pair(onPage(p));
  const drawn = pieces.map((piece) => pieceOf(piece, point));
  return layer.element('path').attr({ d: `M${point(start)}${drawn.join('')}${closed ? 'Z' : ''}` });
}

function pieceOf(piece: Piece, point: (p: Point) => string): string {
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
