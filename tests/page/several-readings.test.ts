import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { BRACE, choose, fill, press, savedJob } from './at-the-page.ts';
import { atOnePage } from './page-test.ts';

const WAYS = 'how the length of the tube was measured';
const FIRST = 'between work points, reading 1, the tube';
const SECOND = 'header to header, reading 2, the tube';

/** What is told of the value as a whole, as those hear it who come to its fields. */
async function toldOfWhole(page: Page): Promise<string> {
  const whole = page.getByRole('group', { name: 'length, the tube', exact: true });
  const id = await whole.getAttribute('aria-describedby');
  return id === null ? '' : ((await page.locator(`#${id}`).textContent()) ?? '');
}

const field = (page: Page, name: string) => page.getByRole('textbox', { name, exact: true });

atOnePage(
  'the length of the brace, measured a second time from header to header',
  {
    'two readings that differ are told below them, with what the second came to; so they agree once that is taken off':
      async ({ page }) => {
        await choose(page, WAYS, 'in several ways, compared');
        await choose(page, 'how reading 2 of the length of the tube was measured', 'between the faces');
        await fill(page, SECOND, '500');
        await expect.poll(() => field(page, FIRST).inputValue()).toBe('619');
        const differ =
          /^length: 619 mm and faces 500 mm, that is ([\d.]+) mm differ by .*may differ by 1\.5 mm at most/;
        await expect.poll(() => toldOfWhole(page)).toMatch(differ);
        await expect.poll(() => page.locator('.lacking').textContent()).toMatch(/tube, length/);
        const apart = Number(differ.exec(await toldOfWhole(page))?.[1]);
        await fill(page, SECOND, String(500 + 620 - apart));
        const second = page.getByRole('group', { name: 'length, reading 2, the tube', exact: true });
        await expect.poll(() => second.textContent()).toMatch(/1 mm more/);
        await expect.poll(() => page.locator('.lacking').count()).toBe(0);
        const { bytes } = await savedJob(page);
        expect(String(bytes)).toMatch(/between:\s+-\s+"?619"?\s+-\s+faces: /);
      },
    'a reading that can’t be read is told at its own field, and found from the list of mistakes': async ({
      page,
    }) => {
      await fill(page, SECOND, '5oo');
      await expect.poll(() => field(page, SECOND).getAttribute('aria-invalid')).toBe('true');
      const id = (await field(page, SECOND).getAttribute('aria-describedby')) ?? 'none';
      await expect.poll(() => page.locator(`#${id}`).textContent()).toMatch(/Write /);
      await press(page, 'tube, length, reading 2, header to header');
      const active = () => page.evaluate(() => document.activeElement?.getAttribute('aria-label'));
      await expect.poll(active).toBe(SECOND);
    },
    'a reading taken away leaves the other by itself, and comes back by undo': async ({ page }) => {
      await fill(page, SECOND, '551');
      await press(page, 'Remove reading 1 of the length of the tube');
      await expect.poll(() => page.getByRole('combobox', { name: WAYS }).inputValue()).toBe('faces');
      await expect.poll(() => field(page, 'header to header, the tube').inputValue()).toBe('551');
      await press(page, 'Undo');
      await expect.poll(() => field(page, FIRST).inputValue()).toBe('619');
      await expect.poll(() => field(page, SECOND).inputValue()).toBe('551');
      await press(page, 'Undo');
      await expect.poll(() => field(page, SECOND).inputValue()).toBe('5oo');
    },
  },
  { job: BRACE },
);
