import { expect, test } from 'vitest';
import { copeleaf, folderWith } from './run-command.ts';

const tube = (od: string): string =>
  `copeleaf: 1\npaper: A4\ntube: { od: ${od}, wall: 3mm, ends: { A: { onto: { od: 1600mm }, angle: 60 } } }\n`;

test('a leaf of more than twelve sheets is said to be so before it is printed', async () => {
  const large = await copeleaf(folderWith({ 'job.yaml': tube('968mm') }), ['print', 'job.yaml']);
  expect(large.code).toBe(0);
  expect(large.err).toMatch(
    /^that makes \d+ sheets, \d+ of them for one leaf: are all sizes in the unit that is meant\?\n/,
  );
  const usual = await copeleaf(folderWith({ 'job.yaml': tube('60mm') }), ['print', 'job.yaml']);
  expect(usual.err).not.toContain('that makes');
});

// Office printers leave a few millimetres of their sheets blank; a roll's and a sheet of one's own are a plotter's.
test.each([
  ['A4', '0', true],
  ['letter', '2.5', true],
  ['A4', '3', false],
  ['roll 610mm', '0', false],
  ['300x400mm', '0', false],
])('on %s a margin of %s mm is said once to be lost on most printers: %s', async (paper, margin, told) => {
  const job = tube('60mm').replace('paper: A4', `paper: ${paper}\nmargin: ${margin}`);
  const { code, err } = await copeleaf(folderWith({ 'job.yaml': job }), ['print', 'job.yaml']);
  expect(code).toBe(0);
  expect(err.split('few printers reach the rim')).toHaveLength(told ? 2 : 1);
});
