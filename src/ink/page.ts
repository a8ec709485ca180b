import { type PDFContext, type PDFDict, PDFName, type PDFRef } from 'pdf-lib';
import type { Box } from '../draw/drawing.ts';
import { MM_PER_INCH, type Mm } from '../measure/units.ts';
import type { Stretched } from '../tiler/sheets.ts';
import { FONT_KEY, placed } from './content.ts';
import type { InkedItem, ItemSheet } from './inventory.ts';
import { written } from './number.ts';

const POINTS_PER_MM = 72 / MM_PER_INCH;

/** Without a stretch nothing is moved. */
const AS_IT_STANDS: Stretched = { about: { x: 0, y: 0 }, across: 1, up: 1 };

/** Content is in millimetres; ten digits keep a metre of paper to a ten-thousandth of a micrometre. */
function millimetres({ about, across, up }: Stretched): string {
  const [wide, high] = [POINTS_PER_MM * across, POINTS_PER_MM * up];
  const moved = [about.x * (POINTS_PER_MM - wide), about.y * (POINTS_PER_MM - high)];
  const [x, y] = moved.map((shift) => (shift === 0 ? '0' : shift.toFixed(10)));
  return `${wide.toFixed(10)} 0 0 ${high.toFixed(10)} ${x} ${y} cm`;
}

/** What the pages of one file share. */
export interface Binding {
  readonly context: PDFContext;
  /** The node of the page tree they hang on. */
  readonly parent: PDFRef;
  readonly font: PDFRef;
  readonly width: Mm;
  readonly height: Mm;
  readonly stretch: Stretched | undefined;
  /** Drawings already stored as form XObjects. */
  readonly forms: Map<InkedItem, PDFRef>;
}

/**
 * Adds one sheet as a page. A drawing shown once is a part of the page's own content; one shown more often is stored once,
 * as a form XObject (ISO 32000-1, 8.10), and called.
 */
export function addPage(binding: Binding, sheet: ItemSheet): PDFRef {
  const { context, parent, width, height, stretch } = binding;
  const forms: Record<string, PDFRef> = {};
  const parts: PDFRef[] = [];
  let operators = [millimetres(stretch ?? AS_IT_STANDS)];
  for (const { item, at, turn, clip } of sheet) {
    operators.push('q');
    if (clip !== undefined) operators.push(`${rectangle(clip)} re W n`);
    operators.push(`${placed(at, turn)} cm`);
    if (item.times > 1) {
      const form = formOf(binding, item);
      const key = `D${form.objectNumber}`;
      forms[key] = form;
      operators.push(`/${key} Do`);
    } else {
      parts.push(part(context, operators), context.register(item.content));
      operators = [];
    }
    operators.push('Q');
  }
  return context.register(
    context.obj({
      Type: 'Page',
      Parent: parent,
      MediaBox: [0, 0, points(width), points(height)],
      Resources: resources(binding, forms),
      Contents: [...parts, part(context, operators)],
    }),
  );
}

/** The few operators between drawings are not worth deflating. */
function part(context: PDFContext, operators: readonly string[]): PDFRef {
  return context.register(context.stream(operators.join('\n')));
}

function formOf(binding: Binding, item: InkedItem): PDFRef {
  const known = binding.forms.get(item);
  if (known !== undefined) return known;
  const { context, width, height } = binding;
  // A form is clipped to its box. What a drawing inks beyond its own box must show as it does when it is not a form.
  const reach = width + height;
  const { left, bottom, right, top } = item.box;
  const box = [left - reach, bottom - reach, right + reach, top + reach].map((edge) => Number(written(edge)));
  const { dict } = item.content;
  dict.set(PDFName.of('Type'), PDFName.of('XObject'));
  dict.set(PDFName.of('Subtype'), PDFName.of('Form'));
  dict.set(PDFName.of('BBox'), context.obj(box));
  dict.set(PDFName.of('Resources'), resources(binding, {}));
  const form = context.register(item.content);
  binding.forms.set(item, form);
  return form;
}

function resources({ context, font }: Binding, forms: Record<string, PDFRef>): PDFDict {
  return context.obj({ Font: { [FONT_KEY]: font }, XObject: forms });
}

function rectangle({ left, bottom, right, top }: Box): string {
  return [left, bottom, right - left, top - bottom].map(written).join(' ');
}

/** To 4 decimals of a point. */
function points(length: Mm): number {
  return Number(written(length * POINTS_PER_MM));
}
