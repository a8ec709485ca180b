import type { Drawing, Mark } from '../draw/drawing.ts';
import type { Placement, Sheet, SheetSet } from '../tiler/sheets.ts';
import { written } from './number.ts';
import { PICTURE, svgLayers } from './svg-marks.ts';
import { element } from './xml.ts';

/**
 * One sheet as it will be printed, as SVG for a page to show: a unit is a millimetre. What clips a tile is named with
 * `name`, which has to differ from sheet to sheet. A printer's stretch is left out: it is too little to be seen. Throws where
 * words hold a sign that the font lacks or a number is none.
 */
export function inkSheetSvg(
  { width, height }: Pick<SheetSet, 'width' | 'height'>,
  sheet: Sheet,
  name: string,
): string {
  const placed = sheet.placements.map((placement, i) => placementOf(placement, height, `${name}-${i}`));
  return pictureOf([0, 0, width, height], placed.join(''));
}

function placementOf({ drawing, at, turn, clip }: Placement, height: number, name: string): string {
  const transform = `translate(${written(at.x)} ${written(height - at.y)}) rotate(${-90 * turn})`;
  const group = element('g', { transform }, turnedOver(drawing.marks));
  if (!clip) return group;
  const hole = element('rect', {
    x: written(clip.left),
    y: written(height - clip.top),
    width: written(clip.right - clip.left),
    height: written(clip.top - clip.bottom),
  });
  return element('clipPath', { id: name }, hole) + element('g', { 'clip-path': `url(#${name})` }, group);
}

/** One drawing alone, as SVG for a page to show: a unit is a millimetre. Throws as `inkSheetSvg` does. */
export function inkDrawingSvg({ box, marks }: Drawing): string {
  const { left, right, bottom, top } = box;
  return pictureOf([left, -top, right - left, top - bottom], element('g', {}, turnedOver(marks)));
}

function pictureOf(viewBox: readonly number[], content: string): string {
  return element(
    'svg',
    { xmlns: 'http://www.w3.org/2000/svg', viewBox: viewBox.map(written).join(' '), ...PICTURE },
    content,
  );
}

function turnedOver(marks: readonly Mark[]): string {
  return svgLayers([{ marks, onPage: ({ x, y }) => ({ x, y: -y }) }]);
}
