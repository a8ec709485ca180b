import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { decodePDFRawStream, PDFDocument, PDFName, PDFRawStream } from 'pdf-lib';
import { expect, test } from 'vitest';
import { copeleaf, folderWith } from '../cli/run-command.ts';

const FRAME = `copeleaf: 1
job: rack
units: mm
paper: A4
frame:
  points: { a: [0, 0, 0], b: [1200, 0, 0], c: { on: sill, at: 305.125 }, d: [700, 588, 721], e: [100, 500, 600], f: [1100, 650, 800], g: [305, 650, 100] }
  tubes:
    - { name: sill, along: [a, b], od: 60, wall: 3 }
    - { name: top, along: [e, f], od: 42.4, wall: 3 }
    - { name: stay, along: [c, d], od: 33.7, wall: 2.6, edge: square, ends: { B: { onto: [top], edge: bevel, root: 1.5 } } }
    - { name: web, along: [c, g], od: 26.9, wall: 2 }
`;

/** What is drawn on the pages of a file, each stream as text. */
async function streamsOf(folder: string, name: string): Promise<readonly string[]> {
  const { context } = await PDFDocument.load(readFileSync(join(folder, name)), { updateMetadata: false });
  const isDrawn = ({ dict }: PDFRawStream): boolean =>
    !dict.has(PDFName.of('Length1')) && dict.get(PDFName.of('Type')) !== PDFName.of('EmbeddedFile');
  return context
    .enumerateIndirectObjects()
    .flatMap(([, object]) =>
      object instanceof PDFRawStream && isDrawn(object)
        ? [Buffer.from(decodePDFRawStream(object).decode()).toString('latin1')]
        : [],
    )
    .filter((text) => /\bBT\b/.test(text));
}

test.each([
  ['stay', 'as a job of its own'],
  ['web', 'web and the tubes that shape'],
])(
  'the leaves of %s from its own file are drawn as --only draws them',
  async (name, kind) => {
    const folder = folderWith({ 'rack.yaml': FRAME });
    const run = async (...args: string[]): Promise<string> => {
      const { code, err } = await copeleaf(folder, args);
      expect({ code, err }).toEqual({ code: 0, err: expect.any(String) });
      return err;
    };
    expect(await run('frame', 'rack.yaml', '--tube', name, '--out', 'own.yaml')).toContain(kind);
    for (const more of [['--leaves-only'], []]) {
      const sheets = [
        await run('print', 'rack.yaml', '--only', name, ...more, '--out', 'only.pdf'),
        await run('print', 'own.yaml', '--only', name, ...more, '--out', 'own.pdf'),
      ].map((said) => /on (\d+) sheets?/.exec(said)?.[1]);
      expect(sheets[1]).toBe(sheets[0]);
      if (more.length === 0) continue;
      const [only, own] = [await streamsOf(folder, 'only.pdf'), await streamsOf(folder, 'own.pdf')];
      expect(only.length).toBeGreaterThan(1);
      expect(own).toEqual(only);
    }
  },
  60_000,
);

test('a frame of which only some tubes are printed has no sheet of views', async () => {
  const folder = folderWith({ 'rack.yaml': FRAME });
  const sheets = async (...args: string[]): Promise<number> => {
    const { err } = await copeleaf(folder, ['print', 'rack.yaml', ...args, '--out', 'some.pdf']);
    return Number(/on (\d+) sheets?/.exec(err)?.[1]);
  };
  const names = ['sill', 'top', 'stay', 'web'].flatMap((name) => ['--only', name]);
  expect(await sheets(...names)).toBe((await sheets()) - 1);
}, 60_000);
