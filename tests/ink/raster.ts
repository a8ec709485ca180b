import { PDFiumLibrary, type PDFiumPage } from '@hyzyla/pdfium';
import { MM_PER_INCH, type Mm } from '../../src/measure/units.ts';

/** A page as PDFium draws it, one byte a pixel: 0 black, 255 white. Row 0 is the page's top. */
export interface Raster {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8Array;
  /** Pixels a millimetre in each axis, exact: PDFium stretches the page to whole pixels. */
  readonly across: number;
  readonly up: number;
}

/** The size of one page in points, as PDFium reads it. */
export interface PageSize {
  readonly width: number;
  readonly height: number;
}

const library = PDFiumLibrary.init();

/** Renders one page (from 0) in grey. A PDFium page renders once only, so each call opens the file anew. */
export async function rasterOf(pdf: Uint8Array, pageIndex: number, dpi: number): Promise<Raster> {
  return withPage(pdf, pageIndex, async (page) => {
    const size = sizeOf(page);
    const width = Math.round((size.width / 72) * dpi);
    const height = Math.round((size.height / 72) * dpi);
    const { data } = await page.render({ width, height, scale: 1, colorSpace: 'Gray', render: 'bitmap' });
    const across = width / (size.width / 72) / MM_PER_INCH;
    const up = height / (size.height / 72) / MM_PER_INCH;
    return { width, height, data, across, up };
  });
}

/** How dark one pixel is, 0 to 1; white outside the raster. */
export function inkAt(raster: Raster, column: number, row: number): number {
  if (column < 0 || row < 0 || column >= raster.width || row >= raster.height) return 0;
  return 1 - (raster.data[row * raster.width + column] ?? 255) / 255;
}

/**
 * How dark the pixels are along a level line (`across`, at height `at` from the page's foot, from one x to another), or along
 * an upright line (`up`, `at` that x, from one height to another). All in mm.
 */
export function inksFrom(raster: Raster, axis: 'across' | 'up', at: Mm, from: Mm, to: Mm): number[] {
  const along = raster[axis];
  const fixed = Math.floor(at * raster[axis === 'across' ? 'up' : 'across']);
  const first = Math.floor(from * along);
  return Array.from({ length: Math.floor(to * along) - first + 1 }, (_, step) =>
    axis === 'across'
      ? inkAt(raster, first + step, raster.height - 1 - fixed)
      : inkAt(raster, fixed, raster.height - 1 - first - step),
  );
}

/** Where the middle of that ink lies along the line, in mm, to a part of a pixel; NaN where there is none. */
export function middleOfInk(raster: Raster, axis: 'across' | 'up', at: Mm, from: Mm, to: Mm): Mm {
  const inks = inksFrom(raster, axis, at, from, to);
  const weight = inks.reduce((sum, ink) => sum + ink, 0);
  const moment = inks.reduce((sum, ink, step) => sum + ink * (step + 0.5), 0);
  return (Math.floor(from * raster[axis]) + moment / weight) / raster[axis];
}

/** The text of one page, as a person would copy it out of a viewer. */
export async function textOf(pdf: Uint8Array, pageIndex: number): Promise<string> {
  return withPage(pdf, pageIndex, async (page) => page.getText());
}

/** The number of pages. */
export async function pageCountOf(pdf: Uint8Array): Promise<number> {
  const document = await (await library).loadDocument(pdf);
  const count = document.getPageCount();
  document.destroy();
  return count;
}

async function withPage<T>(
  pdf: Uint8Array,
  pageIndex: number,
  use: (page: PDFiumPage) => Promise<T>,
): Promise<T> {
  const document = await (await library).loadDocument(pdf);
  try {
    return await use(document.getPage(pageIndex));
  } finally {
    document.destroy();
  }
}

function sizeOf(page: PDFiumPage): PageSize {
  const { originalWidth, originalHeight } = page.getOriginalSize();
  return { width: originalWidth, height: originalHeight };
}
