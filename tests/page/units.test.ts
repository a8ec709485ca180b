import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { howMany } from '../count.ts';
import { fill, fromMenu, pick, press } from './at-the-page.ts';
import { atOnePage } from './page-test.ts';

const INCHES = { locale: 'en-US' };

async function fillInMm(page: Page): Promise<void> {
  await fill(page, 'outside diameter, the tube', '38.1');
  await fill(page, 'wall, the tube', '2.4');
  await fill(page, 'outside diameter, end A', '1-3/4in');
  await fill(page, 'angle, end A', '60');
}

const written = (page: Page, name: string): Promise<string> =>
  page.getByRole('textbox', { name, exact: true }).inputValue();

atOnePage(
  'the unit of numbers without one',
  {
    'stands in each field and in what is shown as an example': async ({ page }) => {
      const size = page.locator('.entry', {
        has: page.getByRole('textbox', { name: 'outside diameter, the tube' }),
      });
      await expect.poll(() => size.locator('.unit').textContent()).toBe('in');
      await expect.poll(() => size.locator('input').getAttribute('placeholder')).toBe('1-1/2');
      await press(page, 'mm');
      await expect.poll(() => size.locator('.unit').textContent()).toBe('mm');
      await expect.poll(() => size.locator('input').getAttribute('placeholder')).toBe('38.1');
      await fill(page, 'outside diameter, the tube', '1-1/2in');
      await expect.poll(() => size.locator('.unit').count()).toBe(0);
    },
    'is switched with the sizes kept': async ({ page }) => {
      await press(page, 'mm');
      await fillInMm(page);
      await press(page, 'inches');
      const asked = page.getByRole('dialog');
      await expect.poll(() => asked.textContent()).toContain('38.1 stays 38.1 mm');
      await expect.poll(() => asked.textContent()).toContain('38.1 becomes 38.1 in (967.74 mm)');
      await press(page, 'Keep the sizes');
      await expect.poll(() => written(page, 'outside diameter, the tube')).toBe('38.1mm');
      await expect.poll(() => written(page, 'wall, the tube')).toBe('2.4mm');
      await expect.poll(() => written(page, 'outside diameter, end A')).toBe('1-3/4in');
      await expect.poll(() => written(page, 'angle, end A')).toBe('60');
      await expect.poll(() => page.getByRole('button', { name: 'Save PDF' }).isEnabled()).toBe(true);
    },
    'is switched with the numbers read anew, and as one step that is undone': async ({ page }) => {
      await fillInMm(page);
      await press(page, 'mm');
      await expect.poll(() => page.getByRole('dialog').textContent()).toContain('38.1 becomes 38.1 mm.');
      await press(page, 'Read the numbers as mm');
      await expect.poll(() => written(page, 'outside diameter, the tube')).toBe('38.1');
      await expect
        .poll(() => page.getByRole('button', { name: 'mm', exact: true }).getAttribute('aria-pressed'))
        .toBe('true');
      await press(page, 'Undo');
      await expect
        .poll(() => page.getByRole('button', { name: 'inches' }).getAttribute('aria-pressed'))
        .toBe('true');
    },
    'that makes a size nobody has is asked about at its field, and nothing is printed meanwhile': async ({
      page,
    }) => {
      await fillInMm(page);
      const size = page.getByRole('textbox', { name: 'outside diameter, the tube' });
      await expect.poll(() => size.getAttribute('aria-invalid')).toBe('true');
      const told = page.locator(`#${await size.getAttribute('aria-describedby')}`);
      await expect.poll(() => told.textContent()).toContain('38.1mm or 38.1in (967.74 mm)');
      await expect.poll(() => page.getByRole('button', { name: 'Save PDF' }).isDisabled()).toBe(true);
    },
  },
  INCHES,
);

atOnePage('what a first visitor meets before a size is written', {
  'a job that names no paper says none': async ({ page }) => {
    await page.locator('details.job summary').click();
    await page.getByRole('combobox', { name: 'paper', exact: true }).fill('');
    await expect
      .poll(() => page.locator('details.job summary').textContent())
      .toBe('Job, paper and stock: no title');
  },
  'a mitre asks for nothing that has no field': async ({ page }) => {
    await pick(page, 'mitre', 'What end A lands on');
    const asked = () => page.locator('.lacking button').allTextContents();
    await expect.poll(asked).toEqual(['tube, size', 'end A, header, mitre, change of direction']);
  },
  'no key of the job file stands in the form': async ({ page }) => {
    await pick(page, 'bend', 'What end A lands on');
    const lacking = () => page.locator('.lacking').textContent();
    await expect.poll(lacking).toContain('bend');
    expect(await lacking()).not.toContain('`');
  },
  'a printer without a name is told so in a whole sentence': async ({ page }) => {
    await fromMenu(page, 'Printer set-up');
    await press(page, 'Save this printer');
    await expect.poll(() => page.locator('#printer-wrong').textContent()).toMatch(/^a printer needs a name/);
  },
});

const TUBES = howMany({ short: 15, deep: 40 });

atOnePage('what a first visitor meets from the first size to the first large job', {
  'a box is asked for its wall, and is shown as a box from the start': async ({ page }) => {
    const round = await page.locator('.end-A .joint').innerHTML();
    await pick(page, 'box', 'What end A lands on');
    await expect.poll(() => page.locator('.end-A .joint').innerHTML()).not.toBe(round);
    await expect.poll(() => page.locator('.lacking').textContent()).toContain('end A, header, box, wall');
    await fill(page, 'outside diameter, the tube', '38.1');
    await fill(page, 'angle, end A', '60');
    await fill(page, 'width, end A', '50');
    await fill(page, 'depth, end A', '50');
    await fill(page, 'wall of the box, end A', '3');
    await expect.poll(() => page.getByRole('button', { name: 'Save PDF' }).isEnabled()).toBe(true);
  },
  'the cautions open once, when the first sheet is saved': async ({ page }) => {
    await fromMenu(page, 'New job');
    await fillInMm(page);
    const open = () => page.locator('details.cautions').evaluate((each) => each.hasAttribute('open'));
    await expect.poll(() => open()).toBe(false);
    await Promise.all([page.waitForEvent('download'), press(page, 'Save PDF')]);
    await expect.poll(open).toBe(true);
    await page.locator('details.cautions summary').click();
    await Promise.all([page.waitForEvent('download'), press(page, 'Save PDF')]);
    await page.locator('.notice p').waitFor();
    await expect.poll(() => open()).toBe(false);
  },
  'what was said goes with the next change, or when it is closed': async ({ page }) => {
    await fillInMm(page);
    const notice = page.locator('.notice p');
    for (const away of [() => press(page, 'Close'), () => fill(page, 'angle, end A', '61')]) {
      await Promise.all([page.waitForEvent('download'), press(page, 'Save PDF')]);
      await notice.waitFor();
      await away();
      await notice.waitFor({ state: 'detached' });
    }
  },
  'a file with mistakes is told to be open with them, and one without is open': async ({ page }) => {
    const open = async (angle: string): Promise<void> => {
      const text = `copeleaf: 1\nunits: mm\ntube:\n  od: 38.1\n  ends: { A: { onto: { od: 44.5 }, angle: ${angle} } }\n`;
      const buffer = Buffer.from(text);
      await page
        .locator('input[type=file]')
        .setInputFiles({ name: 'stay.yaml', mimeType: 'text/yaml', buffer });
    };
    const notice = () => page.locator('.notice').textContent();
    await open('sixty');
    await expect.poll(notice).toContain('stay.yaml is open, but 1 value in it can’t be read.');
    await open('60');
    await expect.poll(notice).toContain('stay.yaml is open.');
  },
  'what was mostly meant otherwise is told at its end, and counted': async ({ page }) => {
    await fillInMm(page);
    await fill(page, 'outside diameter, end A', '45.4');
    await fill(page, 'clocking, end A', '3');
    const told = () => page.locator('.end-A .watch').textContent();
    await expect.poll(told).toContain('45.4 mm is no usual size; 44.5 is.');
    await expect.poll(told).toContain("3 o'clock would be 90°.");
    await expect.poll(() => page.locator('.top .count').textContent()).toBe('2 warnings');
  },
  'warnings are counted beside what saves the job': async ({ page }) => {
    await fillInMm(page);
    await fill(page, 'outside diameter, end A', '35');
    await fill(page, 'angle, end A', '25');
    const shown = () => page.locator('.watch li').count();
    await expect.poll(shown).toBeGreaterThan(1);
    await expect
      .poll(async () => `${await shown()} warnings` === (await page.locator('.top .count').textContent()))
      .toBe(true);
  },
  'an empty stock length is in nobody’s way': async ({ page }) => {
    await fillInMm(page);
    await page.locator('details.job summary').click();
    await press(page, 'Add a stock length');
    await expect.poll(() => page.getByRole('button', { name: 'Save PDF' }).isEnabled()).toBe(true);
    await fill(page, 'stock length 1', '6m');
    await fill(page, 'stock length 1', '');
    await expect.poll(() => page.getByRole('button', { name: 'Save PDF' }).isEnabled()).toBe(true);
  },
  'a large job is made into a PDF beside the page, which goes on': async ({ page }) => {
    const tubes = Array.from(
      { length: TUBES },
      (_, i) =>
        `  - { name: stay ${i}, od: ${30 + i / 10}mm, wall: 2mm, ends: { A: { onto: { od: 60mm }, angle: 60 } } }`,
    );
    await page.getByRole('tab', { name: 'Job file' }).click();
    await page
      .getByRole('textbox', { name: 'The job file' })
      .fill(`copeleaf: 1\ntubes:\n${tubes.join('\n')}\n`);
    const [file] = await Promise.all([
      page.waitForEvent('download'),
      (async () => {
        await press(page, 'Save PDF');
        await page.locator('.notice', { hasText: new RegExp(`of ${TUBES} tubes are drawn`) }).waitFor();
      })(),
    ]);
    expect(file.suggestedFilename()).toMatch(/\.pdf$/);
  },
});
