import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { decodePDFRawStream, PDFArray, PDFDict, PDFDocument, PDFName, PDFRawStream } from 'pdf-lib';
import { beforeAll, describe, expect, it } from 'vitest';
import { main } from '../../src/cli/main.ts';
import type { Shell } from '../../src/cli/shell.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { DEEP, howMany } from '../count.ts';
import { copeleaf, copeleafBytes, folderWith, namesIn } from './run-command.ts';

/** A point is 1/72 in (ISO 32000-1, 8.3.2.3). ISO 216: A4 is 210 x 297 mm. ANSI/ASME Y14.1: letter is 8.5 x 11 in. */
const PAPERS = {
  letter: [612, 792],
  A4: [(210 / 25.4) * 72, (297 / 25.4) * 72],
  legal: [612, 1008],
} as const;

/** Enough leaves for more than one sheet, one of them in tiles. */
const JOB = `\ufeffcopeleaf: 1\r
# Träger für zwei Boote, ось\r
job: sea kayak trailer\r
pair: true\r
tubes:\r
  - { name: Träger, od: 31.75, between: 500, ends: { A: { onto: { od: 38.1 }, angle: 60 }, B: { onto: { od: 44.5 }, angle: 50 } } }\r
  - { name: mast foot, od: 139.7, ends: { A: { onto: { od: 168.3 }, angle: 50 } } }\r
\r
`;

const ONE_END = '--od 38.1 --wall 2.4 --onto 44.5 --angle 60'.split(' ');

function key(name: string): PDFName {
  return PDFName.of(name);
}

/** Reads with a general PDF library's own parser. */
async function reread(pdf: Uint8Array): Promise<PDFDocument> {
  return PDFDocument.load(pdf, { updateMetadata: false });
}

async function printed(job: string, ...more: string[]): Promise<Buffer> {
  const folder = folderWith({ 'job.yaml': job });
  const { code, out, err } = await copeleaf(folder, ['print', 'job.yaml', ...more]);
  expect({ code, out, err }).toEqual({ code: 0, out: '', err: expect.stringMatching(/^job\.pdf: /) });
  return readFileSync(join(folder, 'job.pdf'));
}

/** The command's standard output as bytes. */
async function bytesOf(args: readonly string[], env: Readonly<Record<string, string>> = {}): Promise<Buffer> {
  const { code, bytes } = await copeleafBytes(folderWith(), args, { env });
  expect(code).toBe(0);
  return bytes;
}

/** The bytes of the only file that travels in a PDF. */
function attachmentOf({ catalog }: PDFDocument): Buffer {
  const names = catalog
    .lookup(key('Names'), PDFDict)
    .lookup(key('EmbeddedFiles'), PDFDict)
    .lookup(key('Names'), PDFArray);
  expect(names.size()).toBe(2);
  const file = names.lookup(1, PDFDict).lookup(key('EF'), PDFDict).lookup(key('F'));
  if (!(file instanceof PDFRawStream)) throw new Error('no embedded file');
  return Buffer.from(decodePDFRawStream(file).decode());
}

/** The sides of the first page, short before long, in points. */
async function sidesOf(pdf: Uint8Array): Promise<number[]> {
  const { width, height } = (await reread(pdf)).getPage(0).getSize();
  return [width, height].sort((a, b) => a - b);
}

function expectPaper(sides: readonly number[], paper: keyof typeof PAPERS): void {
  PAPERS[paper].forEach((side, i) => {
    expect(Math.abs((sides[i] ?? Number.NaN) - side), paper).toBeLessThan(0.01);
  });
}

describe.each(['letter', 'A4'] as const)('a job printed on %s', (paper) => {
  let pdf: Buffer;
  beforeAll(async () => {
    pdf = await printed(JOB, '--paper', paper);
  });

  it('has pages of that size to 0.01 pt, all one way round, with no turn and no unit of their own', async () => {
    const pages = (await reread(pdf)).getPages();
    expect(pages.length).toBeGreaterThan(2);
    const sizes = pages.map((page) => page.getMediaBox());
    expect(sizes).toEqual(pages.map(() => sizes[0]));
    expect([sizes[0]?.x, sizes[0]?.y]).toEqual([0, 0]);
    expectPaper(await sidesOf(pdf), paper);
    for (const { node } of pages) {
      for (const name of ['Rotate', 'UserUnit', 'CropBox']) expect(node.get(key(name)), name).toBeUndefined();
    }
    const { catalog } = await reread(pdf);
    expect(catalog.Pages().get(key('Rotate'))).toBeUndefined();
  });

  it('asks viewers for actual size, one side and the paper it was drawn for (ISO 32000-1, 12.2)', async () => {
    const preferences = (await reread(pdf)).catalog.lookup(key('ViewerPreferences'), PDFDict);
    expect(preferences.get(key('PrintScaling'))).toBe(key('None'));
    expect(preferences.get(key('Duplex'))).toBe(key('Simplex'));
    expect(`${preferences.get(key('PickTrayByPDFSize'))}`).toBe('true');
  });

  it('comes out byte for byte the same a second time', async () => {
    expect((await printed(JOB, '--paper', paper)).equals(pdf)).toBe(true);
  });

  it('carries the job file, byte for byte', async () => {
    expect(attachmentOf(await reread(pdf)).equals(Buffer.from(JOB))).toBe(true);
  });
});

describe('an end printed from flags', () => {
  it('carries a job that prints the same file again', async () => {
    const pdf = await bytesOf(['print', ...ONE_END, '--out', '-']);
    const folder = folderWith({ 'cope.yaml': attachmentOf(await reread(pdf)) });
    expect((await copeleaf(folder, ['print', 'cope.yaml', '--leaves-only'])).code).toBe(0);
    expect(readFileSync(join(folder, 'cope.pdf')).equals(pdf)).toBe(true);
  });

  it('is one sheet with no pack on every paper that has room; with --pack it is what its job file prints', async () => {
    for (const paper of ['letter', 'A4', 'legal', 'tabloid']) {
      const pdf = await bytesOf(['print', ...ONE_END, '--paper', paper, '--out', '-']);
      expect((await reread(pdf)).getPageCount(), paper).toBe(1);
    }
    const pdf = await bytesOf(['print', ...ONE_END, '--pack', '--out', '-']);
    const folder = folderWith({ 'cope.yaml': attachmentOf(await reread(pdf)) });
    expect((await copeleaf(folder, ['print', 'cope.yaml'])).code).toBe(0);
    expect(readFileSync(join(folder, 'cope.pdf')).equals(pdf)).toBe(true);
  });

  it('can have a pack or be without it, not both', async () => {
    const { code, err } = await copeleaf(folderWith(), ['print', ...ONE_END, '--pack', '--leaves-only']);
    expect(code).toBe(2);
    expect(err).toContain('--leaves-only');
  });
});

describe('where the sheets go', () => {
  const job = 'copeleaf: 1\ntube: { od: 30, ends: { A: { onto: { od: 40 }, angle: 70 } } }\n';

  it("is a file of the job's name in the current folder, and standard error says so and how many", async () => {
    const elsewhere = folderWith({ 'side rail.v2.yaml': job });
    const folder = folderWith();
    const { code, out, err } = await copeleaf(folder, ['print', join(elsewhere, 'side rail.v2.yaml')]);
    expect({ code, out, err }).toEqual({
      code: 0,
      out: '',
      err: 'side rail.v2.pdf: 1 leaf and the shop pack on 2 sheets\n',
    });
    expect([namesIn(folder), namesIn(elsewhere)]).toEqual([['side rail.v2.pdf'], ['side rail.v2.yaml']]);
  });

  it.each([
    ['flags', ONE_END, '', '1 leaf on 1 sheet'],
    ['standard input', ['-'], job, '1 leaf and the shop pack on 2 sheets'],
  ] as const)('is cope.pdf for %s', async (_, args, input, what) => {
    const folder = folderWith();
    const { code, out, err } = await copeleaf(folder, ['print', ...args], { input });
    expect({ code, out, err }).toEqual({ code: 0, out: '', err: `cope.pdf: ${what}\n` });
    expect(namesIn(folder)).toEqual(['cope.pdf']);
  });

  it('is the file that --out names, in place of an older one', async () => {
    const folder = folderWith({ 'job.yaml': job, 'mine.pdf': 'old' });
    const { err } = await copeleaf(folder, ['print', 'job.yaml', '--out', 'mine.pdf']);
    expect(err).toBe('mine.pdf: 1 leaf and the shop pack on 2 sheets\n');
    expect(readFileSync(join(folder, 'mine.pdf')).subarray(0, 5).toString()).toBe('%PDF-');
    expect(namesIn(folder)).toEqual(['job.yaml', 'mine.pdf']);
  });

  it('is standard output for --out -, with nothing else on it, and nothing is said', async () => {
    const folder = folderWith();
    const { code, err } = await copeleaf(folder, ['print', ...ONE_END, '--out', '-']);
    expect({ code, err, files: namesIn(folder) }).toEqual({ code: 0, err: '', files: [] });
    await copeleaf(folder, ['print', ...ONE_END]);
    const bytes = await bytesOf(['print', ...ONE_END, '--out', '-']);
    expect(bytes.equals(readFileSync(join(folder, 'cope.pdf')))).toBe(true);
  });
});

describe('the paper', () => {
  it.each([
    [{ LANG: 'en_US.UTF-8' }, 'letter'],
    [{ LANG: 'es_MX.UTF-8' }, 'letter'],
    [{ LANG: 'en_GB.UTF-8' }, 'A4'],
    [{ LANG: 'pt_BR' }, 'A4'],
    [{ LANG: 'en_US.UTF-8', LC_PAPER: 'de_DE.UTF-8' }, 'A4'],
    [{ LANG: 'de_DE.UTF-8', LC_ALL: 'en_CA.UTF-8' }, 'letter'],
  ] as const)('follows the region: %o prints on %s', async (env, paper) => {
    expectPaper(await sidesOf(await bytesOf(['print', ...ONE_END, '--out', '-'], env)), paper);
  });

  it("is the job's own, whatever the region; and --paper's, whatever the job", async () => {
    const job =
      'copeleaf: 1\npaper: letter\ntube: { od: 30, ends: { A: { onto: { od: 40 }, angle: 70 } } }\n';
    expectPaper(await sidesOf(await printed(job)), 'letter');
    expectPaper(await sidesOf(await printed(job, '--paper', 'legal')), 'legal');
  });
});

/** So many rungs, all of different angles. */
function rungs(count: number): string {
  const tubes = Array.from(
    { length: count },
    (_, i) =>
      `  - { name: rung ${i}, od: 25.4, ends: { A: { onto: { od: 42.4 }, angle: ${50 + i / 8} } } }\n`,
  );
  return `copeleaf: 1\ntubes:\n${tubes.join('')}`;
}

describe('a long run', () => {
  const MANY = howMany({ short: 30, deep: 200 });

  it(`of ${MANY} tubes tells no count of what is done when nobody watches`, async () => {
    const folder = folderWith({ 'many.yaml': rungs(MANY) });
    const { code, out, err } = await copeleaf(folder, ['print', 'many.yaml']);
    expect({ code, out }).toEqual({ code: 0, out: '' });
    const sheets = (await reread(readFileSync(join(folder, 'many.pdf')))).getPageCount();
    const many = sheets > 40 ? `that makes ${sheets} sheets: are all sizes in the unit that is meant?\n` : '';
    expect(err).toBe(`${many}many.pdf: ${MANY} leaves and the shop pack on ${sheets} sheets\n`);
    expect(sheets).toBeGreaterThan(10);
  });

  it('of 60 tubes counts them on a terminal, in one line that is wiped in the end', async () => {
    const folder = folderWith({ 'many.yaml': rungs(60), 'frame.yaml': ladder(60) });
    let said = '';
    const lines: string[] = [];
    const shell: Shell = {
      words: ENGLISH,
      cwd: folder,
      home: new URL('../../', import.meta.url),
      env: { LANG: 'de_DE.UTF-8' },
      out: async () => {},
      err: (text) => {
        said += text;
      },
      overwrite: (text) => lines.push(text),
      input: async () => Buffer.from(''),
    };
    expect(await main(['print', 'many.yaml'], shell)).toBe(0);
    expect(lines).toEqual([...Array.from({ length: 6 }, (_, i) => `${(i + 1) * 10} of 60 tubes`), '']);
    expect(said).toMatch(
      /^that makes \d+ sheets[^\n]*\nmany\.pdf: 60 leaves and the shop pack on \d+ sheets\n$/,
    );
    if (DEEP) {
      lines.length = 0;
      expect(await main(['check', 'many.yaml'], shell)).toBe(0);
      expect(lines).toEqual([...Array.from({ length: 6 }, (_, i) => `${(i + 1) * 10} of 60 tubes`), '']);
    }
    // The two rails are one piece, and so are all rungs.
    lines.length = 0;
    expect(await main(['check', 'frame.yaml'], shell)).toBe(0);
    expect(lines).toEqual(['62 of 62 tubes', '']);
  });
});

/** A frame of two rails and so many equal rungs from one to the other. */
function ladder(count: number): string {
  const places = Array.from({ length: count }, (_, i) => i);
  const on = (rail: string, i: number): string => `{ on: ${rail}, at: ${100 + 100 * i} }`;
  return `copeleaf: 1
frame:
  points:
    a: [0, 0, 0]
    b: [${100 * count + 200}, 0, 0]
    c: [0, 400, 0]
    d: [${100 * count + 200}, 400, 0]
${places.map((i) => `    p${i}: ${on('one', i)}\n    q${i}: ${on('other', i)}`).join('\n')}
  tubes:
    - { name: one, along: [a, b], od: 40, wall: 2 }
    - { name: other, along: [c, d], od: 40, wall: 2 }
${places.map((i) => `    - { name: rung ${i}, along: [p${i}, q${i}], od: 25, wall: 2 }`).join('\n')}
`;
}

describe('what check warns of', () => {
  const KNIFE = `copeleaf: 1
tube:
  name: low brace
  od: 40
  wall: 3
  between: 400
  pair: true
  ends: { A: { onto: { od: 42.4 }, angle: 25deg }, B: plain }
`;

  it('reaches standard error of print, word for word, once for both hands and with how many there are', async () => {
    const folder = folderWith({ 'job.yaml': KNIFE });
    const checked = await copeleaf(folder, ['check', 'job.yaml', '--as', 'json']);
    const { tubes }: { tubes: { warnings: { code: string; end: string; text: string }[] }[] } = JSON.parse(
      checked.out,
    );
    const wanted = tubes[0]?.warnings ?? [];
    expect(wanted.map(({ code }) => code)).toEqual(['heel-angle', 'feather']);
    for (const where of [[], ['--out', '-']]) {
      const { code, err } = await copeleaf(folder, ['print', 'job.yaml', ...where]);
      expect(code).toBe(0);
      const lines = err.trimEnd().split('\n');
      expect(lines.slice(0, 3)).toEqual([
        '2 warnings',
        ...wanted.map((each) => `low brace: ${each.code}: end ${each.end}: ${each.text}`),
      ]);
    }
  });

  it('is counted as `--strict` has it: what of a frame is only to be known is a note', async () => {
    const hoop = `copeleaf: 1
frame:
  points: { a: [0, 0, 0], b: [500, 0, 0], c: [500, 0, 400], d: [0, 0, 400] }
  tubes:
    - { name: low, along: [a, b], od: 30, wall: 2 }
    - { name: near side, along: [b, c], od: 30, wall: 2 }
    - { name: high, along: [c, d], od: 30, wall: 2 }
    - { name: far side, along: [d, a], od: 30, wall: 2 }
`;
    const across = '    - { name: bar, along: [[-50, 0, 200], [550, 0, 200]], od: 30, wall: 2 }\n';
    const folder = folderWith({ 'hoop.yaml': hoop, 'crossed.yaml': hoop + across });
    for (const [file, strict, told] of [
      ['hoop.yaml', 0, [/^1 note$/, /^sealed: /]],
      ['crossed.yaml', 2, [/^2 warnings$/, /^clash: /, /^clash: /, /^1 note$/, /^sealed: /]],
    ] as const) {
      expect((await copeleaf(folder, ['check', file, '--strict'])).code).toBe(strict);
      const { err } = await copeleaf(folder, ['print', file]);
      const lines = err.split('\n').slice(0, told.length);
      expect(lines).toEqual(told.map((each) => expect.stringMatching(each)));
    }
  });
});
