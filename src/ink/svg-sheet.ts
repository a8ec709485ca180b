import { SVG, type Svg, withWindow } from '@svgdotjs/svg.js';
import type { Drawing } from '../draw/drawing.ts';
import type { Placement, Sheet, SheetSet } from '../tiler/sheets.ts';
import { written } from './number.ts';
import type { SvgWindow } from './svg.ts';
import { addMarks, FONTS } from './svg-marks.ts';

/**
 * One sheet as it will be printed, as an element for a page to show: a unit is a millimetre. What clips a tile is named with
 * `name`, which has to differ from sheet to sheet. A printer's stretch is left out: it is too little to be seen. Throws where
 * words hold a sign that the font lacks or a number is none.
 */
export function inkSheetSvg(
  { width, height }: Pick<SheetSet, 'width' | 'height'>,
  sheet: Sheet,
  name: string,
  window: SvgWindow,
): SVGSVGElement {
  return withWindow(window, () => {
    const root = SVG().attr({
      viewBox: `0 0 ${written(width)} ${written(height)}`,
      'font-family': FONTS,
      'xml:space': 'preserve',
    });
    for (const [i, placement] of sheet.placements.entries())
      addPlacement(root, placement, height, `${name}-${i}`);
    return root.node;
  });
}

function addPlacement(root: Svg, { drawing, at, turn, clip }: Placement, height: number, name: string): void {
  const outer = root.group();
  if (clip) {
    const hole = root.clip().attr({ id: name });
    hole.rect(clip.right - clip.left, clip.top - clip.bottom).move(clip.left, height - clip.top);
    outer.attr({ 'clip-path': `url(#${name})` });
  }
  const group = outer
    .group()
    .attr({ transform: `translate(${written(at.x)} ${written(height - at.y)}) rotate(${-90 * turn})` });
  addMarks({ group, made: new Map() }, drawing.marks, ({ x, y }) => ({ x, y: -y }));
}

/** One drawing alone, as an element for a page to show: a unit is a millimetre. Throws as `inkSheetSvg` does. */
export function inkDrawingSvg({ box, marks }: Drawing, window: SvgWindow): SVGSVGElement {
  return withWindow(window, () => {
    const [left, top] = [written(box.left), written(-box.top)];
    const [width, height] = [written(box.right - box.left), written(box.top - box.bottom)];
    const root = SVG().attr({
      viewBox: `${left} ${top} ${width} ${height}`,
      'font-family': FONTS,
      'xml:space': 'preserve',
    });
    addMarks({ group: root.group(), made: new Map() }, marks, ({ x, y }) => ({ x, y: -y }));
    return root.node;
  });
}
