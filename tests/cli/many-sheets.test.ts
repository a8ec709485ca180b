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
