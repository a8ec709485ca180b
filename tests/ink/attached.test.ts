import { deflateSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { attachedJob } from '../../src/ink/attached.ts';
import { inflated } from '../../src/ink/inflated.ts';
import { inkPdf } from '../../src/ink/pdf.ts';
import { jobInFragment } from '../../src/page/job/link.ts';
import type { Sheet } from '../../src/tiler/sheets.ts';
import { A4, drawing, INFO, sheet, words } from './drawn.ts';

/** Words that a PDF is made of, and an end of line of each kind. */
const WORDS = '# endstream endobj\r\n# << /Type /EmbeddedFile /Length 3 >> stream\n# muß 船\n\n';
/** Long enough to be deflated where the file is. */
const JOB = `copeleaf: 1\n${WORDS.repeat(30)}`;

/** Three thousand words a sheet: each is more than what is stored as it is. */
function heavy(count: number): Sheet[] {
  return Array.from({ length: count }, (_, n) => {
    const marks = Array.from({ length: 3000 }, (_, i) =>
      words(`${i} of ${n}`, 2, { x: (i % 60) * 3, y: i / 12 }),
    );
    return sheet(drawing(`heavy ${n}`, ...marks));
  });
}

const pdfOf = (sheets: readonly Sheet[]): Promise<Uint8Array> =>
  inkPdf({ ...A4, sheets }, { ...INFO, jobSource: JOB });

it.each([
  ['a light file, which holds it as it is', [sheet(drawing('blank'))]],
  ['a heavy file', heavy(3)],
])('a job comes out of %s as it went in, whatever words it holds', async (_, sheets) => {
  expect(attachedJob(await pdfOf(sheets))).toBe(JOB);
});

it('each sheet more of a heavy file adds a fraction of what the first took', async () => {
  const [one, four] = [await pdfOf(heavy(1)), await pdfOf(heavy(4))];
  const empty = await pdfOf([]);
  expect(four.length - one.length).toBeLessThan(one.length - empty.length);
});

describe('a file that is none of ours', () => {
  const MARK = '/Type /EmbeddedFile ';
  const opened = `1 0 obj ${MARK}/FlateDecode`;
  const stream = (bytes: Uint8Array): string =>
    `${opened} /Length ${bytes.length} stream\n${Buffer.from(bytes).toString('latin1')}\nendstream endobj\n`;

  // Each looked at anew for each of them takes half a minute and more, and once for all some hundredths of a second.
  it.each([
    ['bare marks', (count: number) => MARK.repeat(count)],
    [
      'marks before one stream',
      (count: number) => `${opened} ${MARK.repeat(count)} stream\nnothing endstream`,
    ],
    ['streams without an end', (count: number) => `${opened} stream\nnothing `.repeat(count)],
    ['streams of nothing', (count: number) => `${opened} stream\nnothing endstream `.repeat(count)],
    [
      'streams in one object',
      (count: number) =>
        `${opened} ${`${MARK}/Length${' '.repeat(200)}stream\n\xffendstream `.repeat(count)}`,
    ],
  ])('is looked through once, with 40,000 %s', { timeout: 10_000 }, (_, pretending) => {
    const text = `%PDF-1.7\n${pretending(40_000)}`;
    expect(attachedJob(Buffer.from(text, 'latin1'))).toBeUndefined();
    const real = deflateSync(JOB);
    expect(attachedJob(Buffer.from(`${stream(real)}${text}`, 'latin1'))).toBe(JOB);
  });

  const bomb = deflateSync(Buffer.alloc(100_000_000, 0xff), { level: 9 });

  it('is not inflated beyond what a job may have', () => {
    const allowance = { left: 8_000_000 };
    expect(() => inflated(bomb, allowance)).toThrow(RangeError);
    // Deflate makes at the most 1032 bytes of one.
    expect(allowance.left).toBeGreaterThan(-1032 * 1024);
    expect(attachedJob(Buffer.from(stream(bomb), 'latin1'))).toBeUndefined();
    expect(jobInFragment(`#job=${Buffer.from(bomb).toString('base64url')}`)).toBe('damaged');
  });

  it('hides no job behind a few such', () => {
    const text = `${stream(bomb).repeat(2)}${stream(deflateSync(JOB))}`;
    expect(attachedJob(Buffer.from(text, 'latin1'))).toBe(JOB);
  });
});
