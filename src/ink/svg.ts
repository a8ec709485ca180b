import { type G, SVG, type Svg, withWindow } from '@svgdotjs/svg.js';
import type { Leaf } from '../leaf/leaf.ts';
import type { Placement } from '../tiler/sheets.ts';
import { written } from './number.ts';
import { type Row, type SideBySide, sideBySide } from './side-by-side.ts';
import { addMarks, FONTS, type Layers, type ToPage } from './svg-marks.ts';

/** Whose DOM the file is built in: a browser's own window, or svgdom's `createSVGWindow()` where there is none. */
export type SvgWindow = Window;

/**
 * Leaves as one SVG file (SVG 1.1) at true size: a unit is a millimetre, nothing is scaled or moved by a transform but turned
 * words are. A group for each leaf (`leaf-1`), in it one for each purpose (`leaf-1-cut`, of class `cut`). The same
 * leaves give the same text. Throws where words hold a sign that the font lacks or a number is none.
 */
export function inkSvg(leaves: readonly Leaf[], window: SvgWindow): string {
  const source = withWindow(window, () => pictureOf(leaves).svg());
  // A browser writes a no-break space by a name that XML does not know.
  return `<?xml version="1.0" encoding="UTF-8"?>\n${source.replaceAll('&nbsp;', '&#160;')}\n`;
}

function pictureOf(leaves: readonly Leaf[]): Svg {
  const sheet = sideBySide(leaves);
  const [width, height] = [written(sheet.width), written(sheet.height)];
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
  return root;
}

function addLeaf(group: G, id: string, { leaf, wrap, card }: Row, sheet: SideBySide): void {
  group.attr({ id });
  group.element('title').words(leaf.title);
  const layers: Layers = { group, id, made: new Map() };
  for (const placement of card ? [wrap, card] : [wrap])
    addMarks(layers, placement.drawing.marks, toPage(placement, sheet));
}

/** A drawing's y runs up, the file's runs down: it is turned over here. */
function toPage({ at }: Placement, { height }: SideBySide): ToPage {
  return ({ x, y }) => ({ x: at.x + x, y: height - (at.y + y) });
}
