import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect } from 'vitest';
import { copeleaf, folderWith } from '../cli/run-command.ts';
import { someOf } from '../count.ts';
import {
  BRACE,
  choose,
  fill,
  fillBrace,
  fromMenu,
  pick,
  press,
  saved,
  savedJob,
  savedPdf,
} from './at-the-page.ts';
import type { Opened } from './browser.ts';
import { alsoAtThePage, atOnePage, atThePage } from './page-test.ts';

const FRAMES = [
  {
    frame: 'a stay from a sill to a rail',
    job: `copeleaf: 1
units: mm
frame:
  points: { a: [0, 0, 0], b: [0, 900, 0], near: [400, 0, 500], far: [480, 900, 560], c: [0, 300, 0], top: { on: rail, at: 400 } }
  tubes:
    - { name: sill, along: [a, b], od: 40, wall: 2 }
    - { name: rail, along: [near, far], od: 40, wall: 2 }
    - { name: stay, along: [c, top], od: 25, wall: 2 }
`,
    was: 'at: 400',
    is: 'at: 420',
    tube: 'stay',
  },
  {
    frame: 'a bay of a rack',
    job: readFileSync(new URL('../../templates/rack-bay.yaml', import.meta.url), 'utf8'),
    was: 'at: 400',
    is: 'at: 420',
    tube: 'diagonal',
  },
];

/** What the command makes of a job file that the page saved, beside what the page makes of it. */
async function expectSameAsCommand({ page }: Opened): Promise<void> {
  const job = await savedJob(page);
  const pdf = await savedPdf(page);
  const folder = folderWith({ [job.name]: job.bytes });
  expect((await copeleaf(folder, ['print', job.name])).err).toContain(pdf.name);
  expect(pdf.bytes.equals(readFileSync(join(folder, pdf.name)))).toBe(true);
}

describe('the PDF is the command’s, byte for byte', () => {
  for (const { frame, job, was, is, tube } of someOf(FRAMES, { short: 1 }))
    atThePage(
      `for a frame, ${frame}, whose points are edited as text`,
      async (opened) => {
        const file = opened.page.getByLabel('The job file');
        await file.fill((await file.inputValue()).replace(was, is));
        await opened.page.getByLabel('Tube').selectOption(tube);
        await expectSameAsCommand(opened);
      },
      { job },
    );

  alsoAtThePage('for one end, from an empty form', async (opened) => {
    const { page } = opened;
    await fill(page, 'outside diameter, the tube', '38,1');
    await fill(page, 'outside diameter, end A', '1-3/4"');
    await fill(page, 'angle, end A', "60°30'");
    await expectSameAsCommand(opened);
  });

  alsoAtThePage('for two ends of a pair, from an empty form', async (opened) => {
    await fillBrace(opened.page);
    await opened.page.getByText('also the opposite hand').click();
    await expectSameAsCommand(opened);
  });

  atThePage('for measured ways and every kind of header', async (opened) => {
    const { page } = opened;
    await choose(page, 'how the size of the tube was measured', 'girth, by a tape');
    await fill(page, 'girth, the tube', '120');
    await pick(page, 'box', 'What end A lands on');
    await fill(page, 'width, end A', '60');
    await fill(page, 'depth, end A', '80');
    await fill(page, 'wall of the box, end A', '4');
    await choose(page, 'how the angle of end A was measured', 'rise and run');
    await fill(page, 'rise, end A', '7in');
    await fill(page, 'run along the header, end A', '12in');
    await choose(page, 'End B', 'one');
    await pick(page, 'bend', 'What end B lands on');
    await fill(page, 'outside diameter, end B', '60.3');
    await fill(page, 'centre line radius, end B', '180');
    await fill(page, 'centre of the bend at, end B', '180');
    await fill(page, 'angle, end B', '75');
    await choose(page, 'how the length of the tube was measured', 'overall length');
    await fill(page, 'overall, the tube', '620');
    await press(page, 'Copy this tube');
    await pick(page, 'plate', 'What end A lands on');
    await pick(page, 'mitre', 'What end B lands on');
    await fill(page, 'change of direction, end B', '90');
    await expectSameAsCommand(opened);
  });
});

describe('an end that lands on several headers, of a rectangular tube', () => {
  alsoAtThePage('is filled in header by header, and its PDF is the command’s', async (opened) => {
    const { page } = opened;
    await pick(page, 'rectangular', 'Section of the tube');
    await fill(page, 'width, the tube', '40');
    await fill(page, 'depth, the tube', '30');
    await fill(page, 'wall, the tube', '2');
    await choose(page, 'End A', 'several');
    await fill(page, 'outside diameter, end A, header 1', '60.3');
    await fill(page, 'angle, end A, header 1', '45');
    await pick(page, 'plate', 'What end A, header 2 lands on');
    await fill(page, 'angle, end A, header 2', '60');
    await fill(page, 'shift along the tube, end A, header 2', '-5');
    await expectSameAsCommand(opened);
  });
});

atOnePage(
  'of a job that is there',
  {
    'SVG and DXF are the command’s DXF and an SVG of the same size': async ({ page }) => {
      const job = await savedJob(page);
      const dxf = await saved(page, () => fromMenu(page, 'Save DXF'));
      const svg = await saved(page, () => fromMenu(page, 'Save SVG'));
      const folder = folderWith({ [job.name]: job.bytes });
      await copeleaf(folder, ['print', job.name, '--as', 'dxf', '--out', 'ours.dxf']);
      await copeleaf(folder, ['print', job.name, '--as', 'svg', '--out', 'ours.svg']);
      expect(dxf.bytes.equals(readFileSync(join(folder, 'ours.dxf')))).toBe(true);
      const size = (text: string): string | undefined => /viewBox="([^"]*)"/.exec(text)?.[1];
      expect(size(svg.bytes.toString())).toBe(size(readFileSync(join(folder, 'ours.svg'), 'utf8')));
    },
    'Print opens a new tab with the PDF that would be saved': async ({ page, context }) => {
      const pdf = await savedPdf(page);
      // This browser has no viewer for PDF: what the tab would show comes as a file, under its address.
      const [tab, shown] = await Promise.all([
        context.waitForEvent('page'),
        page.waitForEvent('download'),
        press(page, 'Print'),
      ]);
      expect(shown.url()).toMatch(/^blob:/);
      expect(readFileSync(await shown.path()).equals(pdf.bytes)).toBe(true);
      await expect.poll(() => page.locator('.notice').textContent()).toMatch(/new tab: print it at 100 %/);
      await tab.close();
    },
    'a PDF that is opened gives back the job it was printed from, by picking and by dropping': async ({
      page,
    }) => {
      const job = await savedJob(page);
      const pdf = await savedPdf(page);
      await fromMenu(page, 'New job');
      const picker = page.locator('input[type=file]');
      await picker.setInputFiles({ name: 'old.pdf', mimeType: 'application/pdf', buffer: pdf.bytes });
      await page.locator('.notice', { hasText: 'old.pdf is open' }).waitFor();
      expect((await savedJob(page)).bytes.equals(job.bytes)).toBe(true);
      await fromMenu(page, 'New job');
      await page.evaluate((text) => {
        const transfer = new DataTransfer();
        transfer.items.add(new File([text], 'dropped.yaml'));
        document.body.dispatchEvent(new DragEvent('drop', { dataTransfer: transfer, bubbles: true }));
      }, job.bytes.toString('utf8'));
      await page.locator('.notice', { hasText: 'dropped.yaml is open' }).waitFor();
      expect((await savedJob(page)).bytes.equals(job.bytes)).toBe(true);
    },
    'stock lengths and a margin of one’s own are in the job file': async (opened) => {
      const { page } = opened;
      await page.locator('details.job summary').click();
      await press(page, 'Add a stock length');
      await fill(page, 'stock length 1', '6m x 3');
      await press(page, 'Add a stock length');
      await fill(page, 'stock length 2', '1.2m');
      await fill(page, 'margin on all four sides', '12');
      expect((await savedJob(page)).bytes.toString()).toContain('6m x 3');
      await expectSameAsCommand(opened);
    },
    'what is opened and is no job says why and leaves the job as it is': async ({ page }) => {
      await fill(page, 'name of the tube', 'mine');
      const picker = page.locator('input[type=file]');
      await picker.setInputFiles({ name: 'x.yaml', mimeType: 'text/yaml', buffer: Buffer.from('a: [') });
      await page.locator('.notice.is-bad', { hasText: 'x.yaml can’t be opened' }).waitFor();
      await expect
        .poll(() => page.getByRole('textbox', { name: 'name of the tube', exact: true }).inputValue())
        .toBe('mine');
    },
  },
  { job: BRACE },
);
