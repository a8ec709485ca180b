import { expect, it } from 'vitest';
import { attachedJob } from '../../src/ink/attached.ts';
import { inkPdf } from '../../src/ink/pdf.ts';
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
