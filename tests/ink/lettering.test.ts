import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { inflateSync } from 'node:zlib';
import { create } from 'fontkit';
import { describe, expect, test } from 'vitest';
import type { Words } from '../../src/draw/drawing.ts';
import { CAP_HEIGHT, letterOf, missingSigns, spelled, widthOf } from '../../src/draw/letters.ts';
import { CODE_POINTS } from '../../src/draw/metrics.generated.ts';
import { FONT_DEFLATED, FONT_LENGTH } from '../../src/ink/font.generated.ts';
import { asWritten } from '../../src/words/said.ts';
import { A4, a4, drawing, sheet, words } from './drawn.ts';
import { inkAt, inksFrom, type Raster, rasterOf, textOf } from './raster.ts';

/** Alphabets as their speakers write them (from memory), and what the trade writes. */
const WRITTEN: Readonly<Record<string, string>> = {
  English:
    'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789 !"#$%&\'()*+,-./:;<=>?@[\\]^_`{|}~',
  German: 'ÄÖÜẞäöüß',
  French: 'ÀÂÆÇÉÈÊËÎÏÔŒÙÛÜŸàâæçéèêëîïôœùûüÿ',
  Spanish: 'ÁÉÍÑÓÚÜáéíñóúü¿¡ªº',
  Portuguese: 'ÃÕãõ',
  Nordic: 'ÅÆØÞÐåæøþð',
  Polish: 'ĄĆĘŁŃÓŚŹŻąćęłńóśźż',
  Czech: 'ČĎĚŇŘŠŤŮŽčďěňřšťůž',
  Hungarian: 'ŐŰőű',
  Romanian: 'ĂÂÎȘȚăâîșț',
  Baltic: 'ĀĒĪŪĢĶĻŅāēīūģķļņĖĮŲėįų',
  Turkish: 'ĞİŞğış',
  Azerbaijani: 'Əə',
  Vietnamese:
    'ĂÂĐÊÔƠƯăâđêôơưẠẢẤẦẨẪẬẮẰẲẴẶẸẺẼẾỀỂỄỆỈỊỌỎỐỒỔỖỘỚỜỞỠỢỤỦỨỪỬỮỰỲỴỶỸạảấầẩẫậắằẳẵặẹẻẽếềểễệỉịọỏốồổỗộớờởỡợụủứừửữựỳỵỷỹ',
  Pinyin: 'ǍǎǏǐǑǒǓǔǗǘǙǚǛǜ',
  Hausa: 'ƁɓƊɗƘƙƳƴ',
  Ewe: 'ƉɖƐɛƑƒƔɣŊŋƆɔƲʋ',
  Welsh: 'ŴŶŵŷẀẁẂẃẄẅỲỳ',
  Greek: 'ΑΒΓΔΕΖΗΘΙΚΛΜΝΞΟΠΡΣΤΥΦΧΨΩαβγδεζηθικλμνξοπρσςτυφχψωΆΈΉΊΌΎΏΪΫάέήίόύώϊϋΐΰ',
  Russian: 'АБВГДЕЁЖЗИЙКЛМНОПРСТУФХЦЧШЩЪЫЬЭЮЯабвгдеёжзийклмнопрстуфхцчшщъыьэюя',
  Ukrainian: 'ҐЄІЇґєії',
  Serbian: 'ЂЈЉЊЋЏђјљњћџ',
  Kazakh: 'ӘҒҚҢӨҰҮҺәғқңөұүһ',
  Tajik: 'ҒӢҚӮҲҶғӣқӯҳҷ',
  trade: '⌀Ø∅°×÷±−≤≥≈√∞№€″′½¼¾⅛⅜⅝⅞⅓⅔²³⁴₂←↑→↓↔↕▲▼◄►☐☑✓∠⊥∥–—‘’“”„‚«»‹›…•·§©®™µ‰\u00a0\u2009\u202f\u2011',
};

const SIGNS = [...new Set(Object.values(WRITTEN).join(''))];
const INKED = SIGNS.filter((sign) => sign.trim() !== '');

test.each(Object.entries(WRITTEN))('%s can be written', (_, text) => {
  expect(missingSigns(text)).toEqual([]);
  expect(spelled(asWritten(text))).toBe(text.normalize('NFC'));
  for (const sign of text.normalize('NFC')) expect(letterOf(sign).glyph).toBeGreaterThan(0);
});

/** One sign a cell, 8 mm wide and 10 high, so that each can be looked for where it should be. */
function cellOf(index: number): Words['at'] {
  return { x: 10 + (index % 24) * 8, y: 280 - Math.floor(index / 24) * 10 };
}

function isInked(raster: Raster, index: number): boolean {
  const { x, y } = cellOf(index);
  const inks = Array.from({ length: 24 }, (_, step) =>
    inksFrom(raster, 'across', y - 1.5 + step / 4, x - 1, x + 6.5),
  );
  return inks.flat().some((ink) => ink > 0.5);
}

describe('words on a page', () => {
  test('show ink at each sign, in every script', async () => {
    const marks = INKED.map((sign, index) => words(sign, 5, cellOf(index)));
    const pdf = await a4(sheet(drawing('signs', ...marks)));
    const raster = await rasterOf(pdf, 0, 300);
    expect(INKED.filter((_, index) => !isInked(raster, index))).toEqual([]);
    expect(isInked(raster, INKED.length + 1)).toBe(false);
  });

  test('can be copied out again as they were written, whether stored once or shown on two sheets', async () => {
    const lines = [
      'Ø 38.1 × 2.4 mm, ⌀ 1-1/2″ at 62°',
      'Träger für zwei Seekajaks',
      'Ποδήλατο με καρότσα',
      'Прицеп для каяков №2',
      'Đường ống ½″',
    ];
    const shown = drawing(
      'lines',
      ...lines.map((text, index) => words(text, 5, { x: 20, y: 250 - index * 12 })),
    );
    const pdf = await a4(sheet(shown), sheet(shown));
    for (const page of [0, 1]) {
      expect((await textOf(pdf, page)).trim().split(/[\r\n]+/)).toEqual(lines);
    }
  });

  test('are as wide as they were measured, and capitals as high', async () => {
    const text = 'HHLÄΩЖ—38.1″H';
    const size = 10;
    const at = { x: 20, y: 100 };
    const raster = await rasterOf(await a4(sheet(drawing('line', words(`${text}H`, size, at)))), 0, 600);
    const level = at.y + 0.3 * size;
    const first = firstInk(raster, level, at.x);
    // The last letter is the first again, so its stem stands as far from where it starts.
    const last = firstInk(raster, level, at.x + widthOf(text, size));
    expect(Math.abs(last - first - widthOf(text, size))).toBeLessThan(25.4 / 600);
    const heights = inksFrom(raster, 'up', first + 0.3, at.y - 2, at.y + size).filter(
      (ink) => ink > 0.5,
    ).length;
    expect(Math.abs(heights / raster.up - CAP_HEIGHT * size)).toBeLessThan(25.4 / 600);
  });

  test.each([
    [0, 1, 1],
    [1, -1, 1],
    [2, -1, -1],
    [3, 1, -1],
  ] as const)('turned by %d quarters run the right way from their foot', async (turn, right, up) => {
    const at = { x: 100, y: 150 };
    const raster = await rasterOf(await a4(sheet(drawing('line', words('LLLL', 10, at, turn)))), 0, 150);
    expect(inkIn(raster, at.x, at.y, right, up)).toBeGreaterThan(100);
    expect(inkIn(raster, at.x, at.y, -right, up) + inkIn(raster, at.x, at.y, right, -up)).toBeLessThan(5);
  });
});

/** Where the ink starts on a level line, from a given place rightwards, mm. */
function firstInk(raster: Raster, y: number, from: number): number {
  const inks = inksFrom(raster, 'across', y, from, A4.width);
  return Math.floor(from * raster.across + inks.findIndex((ink) => ink > 0.5)) / raster.across;
}

/** Sum of the ink in the quarter of the page that lies this way of a point. */
function inkIn(raster: Raster, x: number, y: number, right: number, up: number): number {
  let sum = 0;
  for (let column = 1; column < 50 * raster.across; column++) {
    for (let row = 1; row < 50 * raster.up; row++) {
      sum += inkAt(
        raster,
        Math.floor(x * raster.across) + right * column,
        raster.height - 1 - Math.floor(y * raster.up) - up * row,
      );
    }
  }
  return sum;
}

test('widths are those of the whole face to half a thousandth of the em, read by a font library from the file its makers ship', async () => {
  const file = createRequire(import.meta.url).resolve('dejavu-fonts-ttf/ttf/DejaVuSansCondensed.ttf');
  const face = create(await readFile(file));
  for (const sign of SIGNS) {
    const units = face.glyphForCodePoint(sign.codePointAt(0) ?? 0).advanceWidth;
    expect(Math.abs(widthOf(sign, 1000) - (units * 1000) / face.unitsPerEm)).toBeLessThanOrEqual(0.5);
  }
});

test('the font that is embedded holds each sign of the table, under the number the table gives it', () => {
  const bytes = inflateSync(Buffer.from(FONT_DEFLATED, 'base64'));
  expect(bytes.length).toBe(FONT_LENGTH);
  const face = create(bytes);
  expect(CODE_POINTS.length).toBe(new Set(CODE_POINTS).size);
  for (const codePoint of CODE_POINTS) {
    const sign = String.fromCodePoint(codePoint);
    const glyph = face.glyphForCodePoint(codePoint);
    expect(letterOf(sign).glyph).toBe(glyph.id);
    expect(glyph.id).toBeGreaterThan(0);
    expect(Number.isFinite(glyph.bbox.maxX)).toBe(sign.trim() !== '');
  }
});

describe('a sign that the font lacks', () => {
  test('is spelled out where it stands', () => {
    expect(spelled(asWritten('漢 38.1'))).toBe('[U+6F22] 38.1');
    expect(spelled(asWritten('a🚲b'))).toBe('a[U+1F6B2]b');
    expect(spelled(asWritten('שלום'))).toBe('[U+05E9][U+05DC][U+05D5][U+05DD]');
    expect(spelled(asWritten('tab\there'))).toBe('tab[U+0009]here');
  });

  test('is told once, in the order they come', () => {
    expect(missingSigns('漢字漢 x')).toEqual(['漢', '字']);
  });

  test('can be measured as it is spelled, and never as it is not', () => {
    expect(widthOf(spelled(asWritten('漢')), 4)).toBeCloseTo(widthOf('[U+6F22]', 4), 12);
    expect(() => widthOf('漢', 4)).toThrow('[U+6F22]');
  });

  test('is not what composes into one it has', () => {
    expect(spelled(asWritten('e\u0301 A\u030a o\u031b\u0323'))).toBe('é Å ợ');
    expect(spelled(asWritten('x\u0301'))).toBe('x[U+0301]');
  });
});
