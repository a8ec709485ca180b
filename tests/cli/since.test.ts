import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readFrame } from '../../src/frame/read-frame.ts';
import type { Job } from '../../src/job/job.ts';
import type { Leaf } from '../../src/leaf/leaf.ts';
import { contextOf, leavesOf } from '../../src/leaf/leaves-of.ts';
import { solvePieces } from '../../src/together/pieces.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { someOf } from '../count.ts';
import { A4 } from '../job/sample.ts';
import { copeleaf, folderWith, namesIn } from './run-command.ts';

const JOB = `copeleaf: 1
tubes:
  - { name: stay, od: 30, wall: 2, between: 400, pair: true, ends: { A: { onto: { od: 40 }, angle: 55, clock: 20 }, B: { onto: { od: 40 }, angle: 80 } } }
  - { name: rung, od: 25, wall: 2, between: 500, ends: { A: { onto: { od: 40 }, angle: 90 }, B: plain } }
  - { name: web, od: 25, wall: 2, between: 300, ends: { A: { onto: { od: 40 }, angle: 70 }, B: plain } }
`;

/** A sill and a rail on each side, a stay and a lace between them, and ties from side to side. */
const FRAME = `copeleaf: 1
frame:
  points: { a: [0, 0, 0], b: [0, 900, 0], c: [0, 300, 0], d: [0, 700, 0], near: [400, 0, 500], far: [480, 900, 560], top: { on: rail, at: 420 }, high: { on: rail, at: 700 } }
  mirror: { x: 600 }
  tubes:
    - { name: sill, along: [a, b], od: 40, wall: 2 }
    - { name: rail, along: [near, far], od: 40, wall: 2 }
    - { name: stay, along: [c, top], od: 25, wall: 2 }
    - { name: lace, along: [d, high], od: 20, wall: 2 }
    - { name: tie, along: [d, "d'"], od: 20, wall: 2 }
`;

/** The file printed as it is, then again with something else in it, against what was printed before. */
async function since(text: string, to: (text: string) => string, ...args: string[]) {
  const folder = folderWith({ 'old.yaml': text, 'new.yaml': to(text) });
  expect((await copeleaf(folder, ['print', 'old.yaml'])).code).toBe(0);
  const run = await copeleaf(folder, ['print', 'new.yaml', '--since', 'old.pdf', ...args]);
  return {
    ...run,
    folder,
    gone: [...run.err.matchAll(/^ {2}(.*) \([34679A-Y]{4}\)$/gm)].map(([, title]) => title),
  };
}

const leavesIn = (text: string): readonly Leaf[] => {
  const job: Job = readFrame(text, 'f.yaml', { words: ENGLISH, paper: A4 });
  return solvePieces(job).flatMap((piece) => leavesOf(piece, { ...contextOf(job), ticketed: true }, false));
};

/** All that is drawn on a leaf but whose it is and its mark. */
const drawnOn = ({ wrap }: Leaf): string =>
  JSON.stringify(
    wrap.marks.filter((mark) => mark.kind !== 'words' || !['name', 'mark', 'hand'].includes(mark.fact)),
  );
const marksOf = (leaf: Leaf): string[] => [
  leaf.wrap.marks
    .flatMap((mark) => (mark.kind === 'words' && mark.fact === 'mark' ? [mark.text] : []))
    .join(' '),
];

describe('marks', () => {
  it('stand on each leaf, four signs that are not mistaken, and differ where leaves do', () => {
    const leaves = [...leavesIn(JOB), ...leavesIn(FRAME)];
    const marks = leaves.map((leaf) => marksOf(leaf));
    for (const mark of marks)
      expect(mark).toEqual([expect.stringMatching(/^code [34679ACDEFHJKMNPRTWXY]{4}$/)]);
    // An end that is its own mirror image has one mark, though its seam may lie on the other side.
    const drawn = leaves.filter(({ title }) => !title.includes('opposite'));
    expect(new Set(drawn.flatMap(marksOf)).size).toBe(new Set(drawn.map(drawnOn)).size);
  });

  it('are of numbers, not of names, titles or what else is in the file', () => {
    const other = JOB.replaceAll('stay', 'brace').replace('tubes:', 'job: another\npaper: letter\ntubes:');
    expect(leavesIn(other).map(marksOf)).toEqual(leavesIn(JOB).map(marksOf));
    const [first] = JOB.split('  - { name: rung');
    expect(leavesIn(first ?? '').map(marksOf)).toEqual(leavesIn(JOB).slice(0, 3).map(marksOf));
  });
});

describe('--since', () => {
  it('nothing changed: says so, and writes nothing', async () => {
    for (const text of [JOB, FRAME]) {
      const { code, err, folder } = await since(text, (same) => `${same}# looked at again\n`);
      expect(code).toBe(0);
      expect(err).toBe('nothing to print: all leaves and tickets stand in old.pdf; no file is written\n');
      expect(namesIn(folder)).toEqual(['new.yaml', 'old.pdf', 'old.yaml']);
    }
  });

  const POINTS = [
    ['a point that three tubes share', 'd: [0, 700, 0]', 'd: [0, 705, 0]'],
    ['a point on a tube', 'at: 420', 'at: 425'],
  ] as const;
  it.each(someOf(POINTS, { short: 1 }))(
    '%s moved by 5 mm: exactly the leaves that changed',
    async (_, was, is) => {
      const moved = FRAME.replace(was, is);
      const [before, after] = [leavesIn(FRAME), leavesIn(moved)];
      const old = new Set(before.map(drawnOn));
      const now = new Set(after.map(drawnOn));
      const changed = after.filter((leaf) => !old.has(drawnOn(leaf)));
      expect(changed.length).toBeGreaterThan(0);
      expect(changed.length).toBeLessThan(after.length);
      const { code, err, gone } = await since(FRAME, () => moved);
      expect(code).toBe(0);
      expect(err).toContain(`new.pdf: ${changed.length} leaves and the shop pack`);
      expect(gone.filter((title) => !title?.startsWith('ticket'))).toEqual(
        before.filter((leaf) => !now.has(drawnOn(leaf))).map(({ title }) => title),
      );
    },
  );

  it('a changed end B takes end A along, for its base edge is so far from the other', async () => {
    const { err, gone } = await since(JOB, (text) => text.replace('angle: 80', 'angle: 60'));
    expect(gone).toEqual([
      'stay, end A',
      'stay, end B',
      // End B serves both hands.
      'stay, end A, opposite hand',
      'ticket of stay',
    ]);
    expect(err).toContain('new.pdf: 3 leaves and the shop pack');
  });

  it('more copies change the ticket alone; a tube that is gone is told', async () => {
    const more = await since(JOB, (text) => text.replace('name: web,', 'name: web, copies: 2,'));
    expect(more.gone).toEqual(['ticket of web']);
    expect(more.err).toContain('new.pdf: 0 leaves and the shop pack on 1 sheet');
    const fewer = await since(JOB, (text) => text.split('  - { name: web')[0] ?? '');
    expect(fewer.gone).toEqual(['web, end A', 'ticket of web']);
    expect(fewer.err).toContain('nothing to print');
    expect(existsSync(join(fewer.folder, 'new.pdf'))).toBe(false);
  });

  it('other words in a note change the ticket alone, and not its mark', async () => {
    const noted = JOB.replace('name: web,', 'name: web, note: to the left,');
    const { gone, err } = await since(noted, (text) => text.replace('to the left', 'to the right'));
    expect(gone).toEqual(['ticket of web']);
    expect(err).toContain('new.pdf: 0 leaves and the shop pack on 1 sheet');
  });

  it('with --only and --leaves-only: of what changed, only this', async () => {
    const change = (text: string): string =>
      text.replace('angle: 80', 'angle: 60').replace('angle: 70', 'angle: 72');
    const { err } = await since(JOB, change, '--only', 'web', '--leaves-only');
    expect(err).toContain('new.pdf: 1 leaf on 1 sheet');
  });

  it('a file with no job in it is wrong input', async () => {
    const folder = folderWith({ 'job.yaml': JOB, 'old.pdf': '%PDF-1.7\nnothing\n%%EOF\n' });
    const { code, err } = await copeleaf(folder, ['print', 'job.yaml', '--since', 'old.pdf']);
    expect(code).toBe(2);
    expect(err).toContain('no job travels in this file');
    expect(namesIn(folder)).toEqual(['job.yaml', 'old.pdf']);
    expect((await copeleaf(folder, ['print', 'job.yaml', '--since', 'none.pdf'])).code).toBe(2);
  });

  it('what is printed travels with the whole job, and stands the next time', async () => {
    const { folder } = await since(JOB, (text) => text.replace('angle: 70', 'angle: 72'));
    const again = await copeleaf(folder, ['print', 'new.yaml', '--since', 'new.pdf']);
    expect(again.err).toContain('nothing to print');
    expect(readFileSync(join(folder, 'new.pdf')).length).toBeGreaterThan(1000);
  });
});
