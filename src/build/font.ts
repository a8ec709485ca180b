import { createHash } from 'node:crypto';
import { readFile, rename, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';
import { deflateSync } from 'node:zlib';
import type { Font } from 'fontkit';

const FONT_FILE = createRequire(import.meta.url).resolve('dejavu-fonts-ttf/ttf/DejaVuSansCondensed.ttf');
const THIS_FILE = fileURLToPath(import.meta.url);
const METRICS_MODULE = fileURLToPath(new URL('../draw/metrics.generated.ts', import.meta.url));
const FONT_MODULE = fileURLToPath(new URL('../ink/font.generated.ts', import.meta.url));

/** Letters of living languages that need no combining marks, first and last code point of each run. */
const RUNS: readonly (readonly [first: number, last: number])[] = [
  [0x20, 0x7e], // Basic Latin
  [0xa0, 0x17f], // Latin-1, Latin Extended-A
  [0x181, 0x181], // of Latin Extended-B: African letters
  [0x186, 0x187],
  [0x189, 0x18a],
  [0x18e, 0x194],
  [0x196, 0x199],
  [0x19d, 0x19d],
  [0x1a0, 0x1a1], // Vietnamese
  [0x1af, 0x1b7],
  [0x1cd, 0x1ef], // Pinyin, Sami, Romani
  [0x1f4, 0x1f5],
  [0x1f8, 0x21b], // Nordic, South Slavic, Romanian
  [0x21e, 0x21f],
  [0x224, 0x233], // Livonian and others
  [0x384, 0x38a], // Greek with tonos
  [0x38c, 0x38c],
  [0x38e, 0x3a1],
  [0x3a3, 0x3ce],
  [0x400, 0x45f], // Cyrillic without its historic letters
  [0x48a, 0x4ff],
  [0x1e00, 0x1ef9], // Latin Extended Additional without the medievalist ones
  [0x2002, 0x200a], // spaces by width
  [0x2010, 0x2016], // dashes
  [0x2018, 0x2022], // quotes, daggers, bullet
  [0x2070, 0x2071], // superscripts and subscripts
  [0x2074, 0x208e],
  [0x2150, 0x215f], // vulgar fractions
];

/** The African letters of the phonetic alphabet, two modifier letters, and the trade's signs. */
const SIGNS = 'ɓɔɖɗəɛɣɩɲʋʒʻʼ…‰′″‴‹›⁄€№™←↑→↓↔↕↖↗↘↙↺↻∅∆−√∞∠∡∥≈≠≤≥⊕⊗⊙⊥⌀■□▲△▶►▼▽◀◄◆◇○●☐☑☒✂✓✗\u202f\u2219\u2189';

const CODE_POINTS = [
  ...RUNS.flatMap(([first, last]) => Array.from({ length: last - first + 1 }, (_, step) => first + step)),
  ...Array.from(SIGNS, (sign) => sign.codePointAt(0) ?? 0),
].sort((a, b) => a - b);

/**
 * Cuts the font down to the letters and signs that people write on a leaf, and writes two modules: the widths for
 * draw/ and the font itself for ink/, deflated, as it goes into a PDF. Does nothing where both were already cut from this
 * font by this script. Throws where the font lacks a sign that is asked of it.
 */
export async function makeFont(): Promise<void> {
  const whole = await readFile(FONT_FILE);
  const stamp = `// cut down ${createHash('sha256')
    .update(whole)
    .update(await readFile(THIS_FILE))
    .digest('hex')}\n`;
  if ((await startsWith(METRICS_MODULE, stamp)) && (await startsWith(FONT_MODULE, stamp))) return;

  const { create } = await import('fontkit');
  lackNone(create(whole));
  const bytes = await cutDown(whole);
  const font = create(bytes);
  await replace(METRICS_MODULE, stamp + metricsModule(font));
  await replace(FONT_MODULE, stamp + fontModule(font, bytes));
}

async function startsWith(file: string, stamp: string): Promise<boolean> {
  const text = await readFile(file, 'utf8').catch(() => '');
  return text.startsWith(stamp);
}

function lackNone(font: Font): void {
  const has = new Set(font.characterSet);
  const lacking = CODE_POINTS.filter((codePoint) => !has.has(codePoint));
  if (lacking.length > 0) {
    throw new Error(`${FONT_FILE} lacks ${lacking.map((codePoint) => codePoint.toString(16)).join(' ')}`);
  }
}

/** Signs are set one by one, with neither kerning nor ligatures, so those tables go; browsers need the others. */
async function cutDown(whole: Uint8Array): Promise<Uint8Array> {
  const { default: subsetFont } = await import('subset-font');
  return subsetFont(whole, String.fromCodePoint(...CODE_POINTS), {
    targetFormat: 'sfnt',
    noHinting: true,
    noLayoutClosure: true,
    keepFeatures: [],
    preserveNameIds: [14],
    dropTables: ['GDEF', 'GPOS', 'GSUB', 'kern', 'FFTM', 'MATH', 'gasp'],
  });
}

function metricsModule(font: Font): string {
  const glyphs = CODE_POINTS.map((codePoint) => font.glyphForCodePoint(codePoint));
  return [
    `export const UNITS_PER_EM = ${font.unitsPerEm};`,
    `export const ASCENT_UNITS = ${font.ascent};`,
    `export const DESCENT_UNITS = ${-font.descent};`,
    `export const CAP_HEIGHT_UNITS = ${capHeight(font)};`,
    '/** Code points, glyph ids and advance widths in 1/1000 em, in step with one another. */',
    `export const CODE_POINTS: readonly number[] = [${CODE_POINTS}];`,
    `export const GLYPHS: readonly number[] = [${glyphs.map((glyph) => glyph.id)}];`,
    `export const ADVANCES: readonly number[] = [${glyphs.map((glyph) => perMille(glyph.advanceWidth, font))}];`,
    '',
  ].join('\n');
}

function fontModule(font: Font, bytes: Uint8Array): string {
  const { minX, minY, maxX, maxY } = font.bbox;
  return [
    '/** A subset is named by a tag of six letters (ISO 32000-1, 9.6.4). */',
    `export const FONT_NAME = 'CPLEAF+DejaVuSansCondensed';`,
    '/** Of the whole face, in 1/1000 em: left, bottom, right, top. */',
    `export const FONT_BOX: readonly number[] = [${[minX, minY, maxX, maxY].map((units) => perMille(units, font))}];`,
    '/** Bytes of the TrueType file before it was deflated. */',
    `export const FONT_LENGTH = ${bytes.length};`,
    '/** The TrueType file, deflated (zlib), in base64. */',
    `export const FONT_DEFLATED = '${deflateSync(bytes, { level: 9 }).toString('base64')}';`,
    '',
  ].join('\n');
}

/** Whole thousandths: viewers drop what is below them, and a line measured otherwise would not be as long as it is drawn. */
function perMille(units: number, font: Font): number {
  return Math.round((units * 1000) / font.unitsPerEm);
}

/** This face does not state its cap height; an H is as tall. */
function capHeight(font: Font): number {
  return font.glyphForCodePoint('H'.codePointAt(0) ?? 0).bbox.maxY;
}

/** Several test runs may build at once; none may see half a file. */
async function replace(file: string, text: string): Promise<void> {
  const beside = `${file}.${process.pid}`;
  await writeFile(beside, text);
  await rename(beside, file);
}
