import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { decodePDFRawStream, PDFDocument, PDFName, PDFRawStream } from 'pdf-lib';
import { expect, test } from 'vitest';
import { copeleaf, folderWith } from '../cli/run-command.ts';
import { howMany, someOf } from '../count.ts';
import { drawnFrames } from './random-frames.ts';
import { readText } from './read-lines.ts';

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

const PAPERS = ['A4', 'letter'];

/** Prints a tube from its frame's file and from its own, both files of one name and so of one title: what is drawn on their pages. */
async function printedTwice(frame: string, name: string) {
  const [whole, own] = [folderWith({ 'job.yaml': frame }), folderWith()];
  const run = async (folder: string, ...args: string[]): Promise<string> => {
    const { code, err } = await copeleaf(folder, args);
    expect({ code, err }).toEqual({ code: 0, err: expect.any(String) });
    return err;
  };
  const told = await run(whole, 'frame', 'job.yaml', '--tube', name, '--out', join(own, 'job.yaml'));
  const alone = told.includes('as a job of its own');
  const only = ['--only', name];
  await run(whole, 'print', 'job.yaml', ...only, '--out', 'job.pdf');
  await run(own, 'print', 'job.yaml', ...(alone ? [] : only), '--out', 'job.pdf');
  return { alone, wanted: await streamsOf(whole, 'job.pdf'), found: await streamsOf(own, 'job.pdf') };
}

test.each([
  ['stay', true],
  ['web', false],
])(
  '%s from its own file is printed as --only prints it',
  async (name, isAlone) => {
    const { alone, wanted, found } = await printedTwice(FRAME, name);
    expect(alone).toBe(isAlone);
    expect(wanted.length).toBeGreaterThan(1);
    expect(found).toEqual(wanted);
  },
  60_000,
);

/** Tubes with an end that is cut, which are those that are printed. */
const printedTubes = (frame: string): readonly string[] =>
  readText(frame).tubes.flatMap(({ name, ends: { A, B } }) =>
    A?.kind === 'coped' || B?.kind === 'coped' ? [name] : [],
  );

const HOME = new URL('../../', import.meta.url);

const OURS = ['samples/kayak-rack', 'templates/gate', 'templates/rack-bay', 'templates/table'].flatMap(
  (file) => {
    const frame = readFileSync(new URL(`${file}.yaml`, HOME), 'utf8');
    return printedTubes(frame).map((name) => ({ file, frame, name }));
  },
);

test('so is every tube of the frames that the program comes with', async () => {
  for (const [i, { file, frame, name }] of someOf(OURS, { short: 1 }).entries()) {
    const text = frame.replace(/^paper: .*\n/m, '').replace(/^units: .*$/m, `$&\npaper: ${PAPERS[i % 2]}`);
    const { wanted, found } = await printedTwice(text, name);
    expect(found, `${name} of ${file}`).toEqual(wanted);
  }
}, 1_800_000);

test('so are tubes of random frames', async () => {
  const drawn = fc.sample(drawnFrames, {
    numRuns: howMany({ short: 1, deep: 4, asked: 'ONE_TUBES' }),
    seed: Number(process.env.FRAME_SEED ?? 4711),
  });
  for (const [i, { text }] of drawn.entries()) {
    const frame = text.replace(/^units: mm$/m, `$&\njob: drawn\npaper: ${PAPERS[i % 2]}`);
    for (const name of someOf(printedTubes(frame), { short: 1 })) {
      const { wanted, found } = await printedTwice(frame, name);
      expect(found, `${name} of\n${frame}`).toEqual(wanted);
    }
  }
}, 1_800_000);

test('a frame of which only some tubes are printed has no sheet of views', async () => {
  const folder = folderWith({ 'rack.yaml': FRAME });
  const sheets = async (...args: string[]): Promise<number> => {
    const { err } = await copeleaf(folder, ['print', 'rack.yaml', ...args, '--out', 'some.pdf']);
    return Number(/on (\d+) sheets?/.exec(err)?.[1]);
  };
  const names = ['sill', 'top', 'stay', 'web'].flatMap((name) => ['--only', name]);
  expect(await sheets(...names)).toBe((await sheets()) - 1);
}, 60_000);
