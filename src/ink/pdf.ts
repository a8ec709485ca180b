import { PDFContext, type PDFDict, PDFHexString, PDFName, type PDFRef, PDFWriter } from 'pdf-lib';
import type { Said } from '../measure/said.ts';
import type { SheetSet } from '../tiler/sheets.ts';
import { attach } from './attachment.ts';
import { embedFont } from './embedded-font.ts';
import { inventoryOf } from './inventory.ts';
import { addPage } from './page.ts';
import { type Store, storeOf } from './stored.ts';

/** What a PDF says about itself. */
export interface PdfInfo {
  readonly title: string;
  /** The job file as the person wrote it; it travels inside the PDF, byte for byte. Sheets of no job have none. */
  readonly jobSource?: string;
  /** What the job file inside is, for those who find it there. */
  readonly about?: Said;
  /** The job file's name without its ending. */
  readonly jobName: string;
}

/**
 * Sheets as a PDF file, one page each, at true size in pure black. The sheets are walked through once. The same sheets and
 * info give the same bytes. Throws where words hold a sign that the font lacks, a number is none, or two different
 * drawings have one name: mistakes of the program, none of the person's.
 */
export async function inkPdf(set: SheetSet, info: PdfInfo): Promise<Uint8Array> {
  const context = PDFContext.create();
  const store = storeOf(context);
  const { sheets, used } = await inventoryOf(store, set.sheets);
  const parent = context.nextRef();
  const font = embedFont(context, store, used);
  const { width, height, stretch } = set;
  const binding = { context, parent, font, width, height, stretch, forms: new Map() };
  const pages = sheets.map((sheet) => addPage(binding, sheet));
  context.assign(parent, context.obj({ Type: 'Pages', Kids: pages, Count: pages.length }));
  context.trailerInfo.Root = context.register(catalog(context, store, parent, info));
  context.trailerInfo.Info = context.register(
    context.obj({ Title: PDFHexString.fromText(info.title), Producer: PDFHexString.fromText('Copeleaf') }),
  );
  // A plain cross-reference table: compressing it too saves 3 % of the file and costs a process 6 ms at its start.
  return PDFWriter.forContext(context, Number.POSITIVE_INFINITY).serializeToBuffer();
}

/** Asks viewers to print as drawn (ISO 32000-1, 12.2), and carries the job. */
function catalog(context: PDFContext, store: Store, pages: PDFRef, info: PdfInfo): PDFDict {
  const catalog = context.obj({
    Type: 'Catalog',
    Pages: pages,
    ViewerPreferences: { PrintScaling: 'None', Duplex: 'Simplex', PickTrayByPDFSize: true },
  });
  if (info.jobSource === undefined) return catalog;
  const name = `${info.jobName}.copeleaf.yaml`;
  const job = attach(context, store, name, info.jobSource, info.about);
  catalog.set(
    PDFName.of('Names'),
    context.obj({ EmbeddedFiles: { Names: [PDFHexString.fromText(name), job] } }),
  );
  catalog.set(PDFName.of('AF'), context.obj([job]));
  return catalog;
}
