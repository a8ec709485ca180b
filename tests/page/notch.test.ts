import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { choose, fill, fromMenu, press, savedJob } from './at-the-page.ts';
import { alsoAtThePage, atOnePage } from './page-test.ts';

const WAYS = 'how the angle of end A was measured';
const LENGTHS = 'lengths to the cut edge, end A';
/** Of a tube of 33.7 mm cut for 48.3 mm at 63 degrees, along it every 30 degrees, to half a millimetre. */
const READ = ['144.5', '147', '154', '160.5', '163', '162', '161.5', '162', '162.5', '161', '154', '147'];

const field = (page: Page) => page.getByRole('textbox', { name: LENGTHS, exact: true });

async function fillTube(page: Page): Promise<void> {
  await fill(page, 'outside diameter, the tube', '33.7');
  await fill(page, 'wall, the tube', '2.6');
  await choose(page, WAYS, 'lengths to a cut edge');
}

atOnePage('lengths to a cut edge', {
  'a cope that exists is read back from them, with how sure each value is': async ({ page }) => {
    await fillTube(page);
    await expect.poll(() => page.locator('.lacking').textContent()).toContain('end A, lengths to a cut edge');
    await field(page).fill(READ.slice(0, -1).join(', '));
    await field(page).press('End');
    await field(page).pressSequentially(`, ${READ.at(-1)}`);
    await expect.poll(() => field(page).inputValue()).toBe(READ.join(', '));
    await fill(page, 'outside diameter, end A', '48.3');
    await fill(page, 'offset, end A', '0');
    const angle = page.getByRole('group', { name: 'angle, end A', exact: true });
    await expect
      .poll(() => angle.textContent())
      .toMatch(/angle: notch of 12 lengths, that is 6[23][.\d]*° ± 0\.\d+°/);
    await expect.poll(() => angle.textContent()).toMatch(/clocking: notch of 12 lengths/);
    await expect.poll(() => page.getByRole('button', { name: 'Save PDF' }).isEnabled()).toBe(true);
    const { bytes } = await savedJob(page);
    expect(String(bytes)).toContain(`notch: [ ${READ.join(', ')} ]`);
    await press(page, 'Undo');
    await press(page, 'Undo');
    await press(page, 'Undo');
    await expect.poll(() => field(page).inputValue()).not.toContain('147');
  },
  'one that can’t be read, or lies beside the others, is told at the field': async ({ page }) => {
    await fromMenu(page, 'New job');
    await fillTube(page);
    const told = async (): Promise<string> =>
      (await page.locator(`#${await field(page).getAttribute('aria-describedby')}`).allTextContents()).join();
    await fill(page, LENGTHS, READ.with(2, '15o').join(' '));
    await expect.poll(() => field(page).getAttribute('aria-invalid')).toBe('true');
    await expect.poll(told).toMatch(/Write /);
    await fill(page, LENGTHS, READ.with(2, '154 mm').with(3, '148').join('; '));
    await expect.poll(told).toMatch(/Length 4, at 90°, does not lie with the others/);
    await choose(page, WAYS, 'angle to the header');
    await expect
      .poll(() => page.getByRole('textbox', { name: 'angle, end A', exact: true }).inputValue())
      .toBe('');
    await press(page, 'Undo');
    await expect.poll(() => field(page).inputValue()).toContain('148');
  },
});

alsoAtThePage('decimal commas and fractions stay in one piece', async ({ page }) => {
  await fillTube(page);
  await fill(page, LENGTHS, '144,5 147 5 3/4in 160,5 163 162 161,5 162');
  const { bytes } = await savedJob(page);
  expect(String(bytes)).toContain('notch: [ "144,5", 147, 5 3/4in, "160,5", 163, 162, "161,5", 162 ]');
});
