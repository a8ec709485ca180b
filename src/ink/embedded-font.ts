import { type PDFContext, type PDFDict, type PDFRef, PDFString } from 'pdf-lib';
import { ASCENT, CAP_HEIGHT, DESCENT, letterOf } from '../draw/letters.ts';
import type { UsedGlyphs } from './content.ts';
import { FONT_BOX, FONT_DEFLATED, FONT_LENGTH, FONT_NAME } from './font.generated.ts';
import type { Store } from './stored.ts';

/** Font flags of ISO 32000-1, table 123: the signs are not those of the standard Latin set alone. */
const SYMBOLIC = 4;

/** Stem width, which a TrueType file does not state; viewers use it only where they substitute the font. */
const STEM = 80;

/**
 * The font as a composite font whose codes are its glyph numbers (ISO 32000-1, 9.7.4: CIDFontType2, Identity-H), with the
 * widths of the glyphs used, and a table from glyphs back to signs (9.10.3) so that words can be searched for and copied.
 */
export function embedFont(context: PDFContext, store: Store, used: UsedGlyphs): PDFRef {
  const glyphs = [...used].sort(([a], [b]) => a - b);
  const descendant = context.obj({
    Type: 'Font',
    Subtype: 'CIDFontType2',
    BaseFont: FONT_NAME,
    CIDSystemInfo: { Registry: PDFString.of('Adobe'), Ordering: PDFString.of('Identity'), Supplement: 0 },
    FontDescriptor: context.register(descriptor(context)),
    CIDToGIDMap: 'Identity',
    W: glyphs.flatMap(([glyph, sign]) => [glyph, [Math.round(letterOf(sign).advance * 1000)]]),
  });
  return context.register(
    context.obj({
      Type: 'Font',
      Subtype: 'Type0',
      BaseFont: FONT_NAME,
      Encoding: 'Identity-H',
      DescendantFonts: [context.register(descendant)],
      ToUnicode: context.register(store.stream(signTable(glyphs))),
    }),
  );
}

function descriptor(context: PDFContext): PDFDict {
  const file = context.stream(bytesOfBase64(FONT_DEFLATED), {
    Length1: FONT_LENGTH,
    Filter: 'FlateDecode',
  });
  return context.obj({
    Type: 'FontDescriptor',
    FontName: FONT_NAME,
    Flags: SYMBOLIC,
    FontBBox: [...FONT_BOX],
    ItalicAngle: 0,
    Ascent: Math.round(ASCENT * 1000),
    Descent: Math.round(-DESCENT * 1000),
    CapHeight: Math.round(CAP_HEIGHT * 1000),
    StemV: STEM,
    FontFile2: context.register(file),
  });
}

/** Sign by sign: a callback for each takes a process that has just begun ten times as long. */
function bytesOfBase64(text: string): Uint8Array {
  const signs = atob(text);
  const bytes = new Uint8Array(signs.length);
  for (let i = 0; i < bytes.length; i++) bytes[i] = signs.charCodeAt(i);
  return bytes;
}

/** A block of a CMap may hold 100 entries at most (Adobe Technical Note 5014, from memory). */
const BLOCK = 100;

function signTable(glyphs: readonly (readonly [number, string])[]): string {
  const blocks: string[] = [];
  for (let first = 0; first < glyphs.length; first += BLOCK) {
    const entries = glyphs
      .slice(first, first + BLOCK)
      .map(([glyph, sign]) => `<${hex(glyph)}> <${utf16(sign)}>`);
    blocks.push(`${entries.length} beginbfchar`, ...entries, 'endbfchar');
  }
  return [
    '/CIDInit /ProcSet findresource begin',
    '12 dict begin',
    'begincmap',
    '/CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def',
    '/CMapName /Adobe-Identity-UCS def',
    '/CMapType 2 def',
    '1 begincodespacerange',
    '<0000> <FFFF>',
    'endcodespacerange',
    ...blocks,
    'endcmap',
    'CMapName currentdict /CMap defineresource pop',
    'end',
    'end',
  ].join('\n');
}

function utf16(sign: string): string {
  return Array.from({ length: sign.length }, (_, index) => hex(sign.charCodeAt(index))).join('');
}

function hex(value: number): string {
  return value.toString(16).padStart(4, '0');
}
