import type { Drawing, Mark, Point, Purpose, Stroke, Words } from '../../src/draw/drawing.ts';
import { inkPdf, type PdfInfo } from '../../src/ink/pdf.ts';
import type { Mm } from '../../src/measure/units.ts';
import type { Sheet } from '../../src/tiler/sheets.ts';
import { asWritten } from '../../src/words/said.ts';

export const A4 = { width: 210, height: 297 };
export const LETTER = { width: 215.9, height: 279.4 };

export const INFO: PdfInfo = { title: 'Kayak trailer', jobSource: 'copeleaf: 1\n', jobName: 'trailer' };

/** A drawing whose box is a whole A4 sheet. */
export function drawing(name: string, ...marks: Mark[]): Drawing {
  return { name, box: { left: 0, bottom: 0, right: 210, top: 297 }, marks };
}

/** A straight line. */
export function line(purpose: Purpose, start: Point, to: Point): Stroke {
  return { kind: 'stroke', purpose, path: { start, pieces: [{ kind: 'line', to }], closed: false } };
}

export function words(text: string, size: Mm, at: Point, turn: Words['turn'] = 0): Words {
  return { kind: 'words', purpose: 'words', text: asWritten(text), fact: 'sheet', size, at, turn };
}

/** A sheet that shows drawings where they were drawn. */
export function sheet(...drawings: Drawing[]): Sheet {
  return { placements: drawings.map((shown) => ({ drawing: shown, at: { x: 0, y: 0 }, turn: 0 })) };
}

export async function a4(...sheets: Sheet[]): Promise<Uint8Array> {
  return inkPdf({ ...A4, sheets }, INFO);
}
