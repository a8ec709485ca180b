import {
  decodePDFRawStream,
  PDFArray,
  PDFDict,
  PDFDocument,
  PDFHexString,
  PDFName,
  PDFRawStream,
} from 'pdf-lib';
import { describe, expect, test, vi } from 'vitest';
import { inkPdf } from '../../src/ink/pdf.ts';
import { A4, a4, drawing, INFO, LETTER, line, sheet, words } from './drawn.ts';
import { pageCountOf } from './raster.ts';

const BLANK = sheet(drawing('blank'));

/** Reads with pdf-lib's own parser, which ink/ does not use. */
async function reread(pdf: Uint8Array): Promise<PDFDocument> {
  return PDFDocument.load(pdf, { updateMetadata: false });
}

function key(name: string): PDFName {
  return PDFName.of(name);
}

describe('a page', () => {
  // A point is 1/72 in (ISO 32000-1, 8.3.2.3). ISO 216: A4 is 210 x 297 mm. ANSI Y14.1: letter is 8.5 x 11 in (from memory).
  test.each([
    ['A4', A4, (210 / 25.4) * 72, (297 / 25.4) * 72],
    ['letter', LETTER, 612, 792],
  ])('of %s has its size to 0.01 pt, upright, in points', async (_, paper, width, height) => {
    const document = await reread(await inkPdf({ ...paper, sheets: [BLANK, BLANK] }, INFO));
    expect(document.getPageCount()).toBe(2);
    for (const page of document.getPages()) {
      const box = page.getMediaBox();
      expect([box.x, box.y]).toEqual([0, 0]);
      expect(Math.abs(box.width - width)).toBeLessThan(0.01);
      expect(Math.abs(box.height - height)).toBeLessThan(0.01);
      expect(page.node.has(key('Rotate'))).toBe(false);
      expect(page.node.has(key('UserUnit'))).toBe(false);
    }
  });
});

describe('the file', () => {
  test('asks viewers for actual size, one side and the paper it was drawn for', async () => {
    const { catalog } = await reread(await a4(BLANK));
    const preferences = catalog.lookup(key('ViewerPreferences'), PDFDict);
    expect(preferences.toString().split(/\s+/)).toEqual(
      '<< /PrintScaling /None /Duplex /Simplex /PickTrayByPDFSize true >>'.split(' '),
    );
  });

  test('says its title, in any script, and who made it, and no date', async () => {
    const document = await reread(
      await inkPdf({ ...A4, sheets: [BLANK] }, { ...INFO, title: 'Träger für 船 ⌀38' }),
    );
    expect(document.getTitle()).toBe('Träger für 船 ⌀38');
    expect(document.getProducer()).toBe('Copeleaf');
    expect(document.getCreationDate()).toBeUndefined();
    expect(document.getModificationDate()).toBeUndefined();
  });

  test('comes out byte for byte the same from the same sheets', async () => {
    const make = () =>
      a4(sheet(drawing('one', line('cut', { x: 1, y: 2 }, { x: 3, y: 4 }), words('Ω', 5, { x: 1, y: 9 }))));
    const first = await make();
    vi.setSystemTime('2031-05-04T03:02:01Z');
    const later = await make();
    vi.useRealTimers();
    expect(later).toEqual(first);
  });

  test('gives the job back byte for byte', async () => {
    const jobSource = '\ufeffcopeleaf: 1\r\n# Bügel, (ось) \\ 船\n\ttube: { od: 1-1/4in }\n\n';
    const jobName = 'Träger (2) \\ 船';
    const { catalog } = await reread(
      await inkPdf({ ...A4, sheets: [BLANK] }, { ...INFO, jobSource, jobName }),
    );
    const names = catalog
      .lookup(key('Names'), PDFDict)
      .lookup(key('EmbeddedFiles'), PDFDict)
      .lookup(key('Names'), PDFArray);
    const specification = names.lookup(1, PDFDict);
    const file = specification.lookup(key('EF'), PDFDict).lookup(key('F'));
    if (!(file instanceof PDFRawStream)) throw new Error('no embedded file');
    expect(decodePDFRawStream(file).decode()).toEqual(new TextEncoder().encode(jobSource));
    expect(specification.lookup(key('UF'), PDFHexString).decodeText()).toBe(`${jobName}.copeleaf.yaml`);
    expect(specification.get(key('AFRelationship'))).toBe(key('Source'));
    expect(catalog.lookup(key('AF'), PDFArray).lookup(0)).toBe(specification);
  });

  test('stores a drawing once however often it is shown, and one shown once in its page', async () => {
    const note = drawing('note', words('measure before cutting', 4, { x: 20, y: 20 }));
    const sheets = [1, 2, 3].map((number) =>
      sheet(note, drawing(`leaf ${number}`, words(`leaf ${number}`, 4, { x: 20, y: 90 }))),
    );
    const pdf = await a4(...sheets);
    expect(await pageCountOf(pdf)).toBe(3);
    const streams = (await reread(pdf)).context.enumerateIndirectObjects().map(([, object]) => object);
    const forms = streams.filter(
      (object) => object instanceof PDFRawStream && object.dict.get(key('Subtype')) === key('Form'),
    );
    expect(forms).toHaveLength(1);
  });

  test('can be made from sheets that come one by one', async () => {
    const sheets = [1, 2, 3].map((number) =>
      sheet(drawing(`leaf ${number}`, words(`${number}`, 4, { x: 20, y: 90 }))),
    );
    const oneByOne = (function* () {
      yield* sheets;
    })();
    expect(await inkPdf({ ...A4, sheets: oneByOne }, INFO)).toEqual(await a4(...sheets));
  });
});

describe('a mistake of the program stops the file', () => {
  test('when words hold a sign that the font lacks', async () => {
    await expect(a4(sheet(drawing('one', words('船', 4, { x: 20, y: 20 }))))).rejects.toThrow('[U+8239]');
  });

  test('when a point is no number', async () => {
    await expect(
      a4(sheet(drawing('one', line('cut', { x: Number.NaN, y: 0 }, { x: 1, y: 1 })))),
    ).rejects.toThrow('NaN');
  });

  test('when two different drawings have one name', async () => {
    const short = drawing('leaf', line('cut', { x: 0, y: 0 }, { x: 1, y: 1 }));
    const long = drawing('leaf', line('cut', { x: 0, y: 0 }, { x: 2, y: 2 }));
    await expect(a4(sheet(short), sheet(long))).rejects.toThrow('"leaf"');
  });
});
