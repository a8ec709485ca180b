import type { Leaf } from '../leaf/leaf.ts';
import type { Placement } from '../tiler/sheets.ts';
import { written } from './number.ts';
import { type Row, type SideBySide, sideBySide } from './side-by-side.ts';
import { type OnPage, PICTURE, svgLayers } from './svg-marks.ts';
import { asText, element } from './xml.ts';

/**
 * Leaves as one SVG file (SVG 1.1) at true size: a unit is a millimetre, nothing is scaled or moved by a transform but turned
 * words are. A group for each leaf (`leaf-1`), in it one for each purpose (`leaf-1-cut`, of class `cut`). The same
 * leaves give the same text. Throws where words hold a sign that the font lacks or a number is none.
 */
export function inkSvg(leaves: readonly Leaf[]): string {
  const sheet = sideBySide(leaves);
  const [width, height] = [written(sheet.width), written(sheet.height)];
  const picture = element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      version: '1.1',
      'xmlns:xlink': 'http://www.w3.org/1999/xlink',
      width: `${width}mm`,
      height: `${height}mm`,
      viewBox: `0 0 ${width} ${height}`,
      ...PICTURE,
    },
    sheet.rows.map((row, i) => leafOf(`leaf-${i + 1}`, row, sheet)).join(''),
  );
  return `<?xml version="1.0" encoding="UTF-8"?>\n${picture}\n`;
}

function leafOf(id: string, { leaf, wrap, card }: Row, sheet: SideBySide): string {
  const drawn = (card ? [wrap, card] : [wrap]).map((placement) => onPage(placement, sheet));
  return element('g', { id }, element('title', {}, asText(leaf.title)) + svgLayers(drawn, id));
}

/** A drawing's y runs up, the file's runs down: it is turned over here. */
function onPage({ at, drawing }: Placement, { height }: SideBySide): OnPage {
  return { marks: drawing.marks, onPage: ({ x, y }) => ({ x: at.x + x, y: height - (at.y + y) }) };
}
