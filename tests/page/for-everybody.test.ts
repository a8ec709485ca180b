import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';
import { describe, expect } from 'vitest';
import { DEEP, someOf } from '../count.ts';
import { BRACE, choose, fill, fromMenu, press } from './at-the-page.ts';
import type { Opened } from './browser.ts';
import { atOnePage, atThePage } from './page-test.ts';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** What axe finds on the page by the rules of WCAG 2.2 at levels A and AA, and its own best practice. */
async function findings(page: Page): Promise<readonly string[]> {
  // Put in by the debugger, once: the page's own policy would refuse it.
  if (!(await page.evaluate(() => Reflect.has(globalThis, 'axe')))) await page.evaluate(AXE);
  return page.evaluate(async () => {
    const axe: unknown = Reflect.get(globalThis, 'axe');
    if (typeof axe !== 'object' || axe === null) throw new Error('axe did not load');
    const run: unknown = Reflect.get(axe, 'run');
    if (typeof run !== 'function') throw new Error('axe does not run');
    const { violations } = await run(document, { resultTypes: ['violations'] });
    return violations.map(
      ({ id, nodes }: { id: string; nodes: { html: string }[] }) =>
        `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(' | ')}`,
    );
  });
}

const WINDOWS = [
  [390, 844, true],
  [1280, 900, false],
  [1280, 900, true],
  [390, 844, false],
] as const;

describe.each(DEEP ? WINDOWS : WINDOWS.slice(0, 1))('axe at %i x %i, dark: %s', (width, height, dark) => {
  const what = 'with a mistake, several readings and a warning, in the numbers, in a window';
  const run = async ({ page }: Opened) => {
    await choose(page, 'how the angle of end A was measured', 'in several ways, compared');
    await fill(page, 'angle, reading 2, end A', '62.5');
    await fill(page, 'angle, end B', '20');
    await page.locator('.watch').first().waitFor();
    await page.getByRole('tab', { name: 'Numbers' }).click();
    await fill(page, 'wall, the tube', 'thick');
    expect(await findings(page)).toEqual([]);
    await fromMenu(page, 'Printer set-up');
    expect(await findings(page)).toEqual([]);
  };
  atThePage(`finds nothing: ${what}`, run, { width, height, dark, job: BRACE });
});

atThePage(
  'axe finds nothing in any view',
  async ({ page }) => {
    // In a short run the leaf is looked at in a narrow window alone.
    for (const view of someOf(['3D', 'Leaf', 'Sheets', 'Job file'], { short: 1 })) {
      await page.getByRole('tab', { name: view }).click();
      await page
        .locator({ Leaf: '.paper svg', Sheets: '.sheets svg', '3D': '.afloat span' }[view] ?? '#job-text')
        .first()
        .waitFor();
      expect(await findings(page), view).toEqual([]);
    }
  },
  { job: BRACE },
);

atOnePage('axe in an empty form', {
  'finds nothing': async ({ page }) => expect(await findings(page)).toEqual([]),
  'does find what is wrong: a field without its name': async ({ page }) => {
    await page.evaluate(() => document.querySelector('main')?.append(document.createElement('input')));
    expect(await findings(page)).toMatchObject([expect.stringContaining('label')]);
  },
});

/** The size in pixels of the smallest letters on the leaf, and of those in which the page says what it understood. */
function letters(page: Page): Promise<{ readonly onLeaf: number; readonly onPage: number }> {
  return page.evaluate(() => {
    const onLeaf = Array.from(document.querySelectorAll<SVGTextElement>('.paper text'), (each) => {
      const svg = each.ownerSVGElement;
      const size = Number.parseFloat(each.getAttribute('font-size') ?? '');
      return svg ? (size * svg.clientWidth) / svg.viewBox.baseVal.width : 0;
    });
    const echo = document.querySelector('.echo');
    return {
      onLeaf: Math.min(...onLeaf),
      onPage: echo ? Number.parseFloat(getComputedStyle(echo).fontSize) : Number.NaN,
    };
  });
}

describe.each(someOf([320, 390, 640], { short: 1 }))('in a window %i pixels wide', (width) => {
  const leafIsWhole = async ({ page }: Opened) => {
    const small = await letters(page);
    expect(small.onLeaf).toBeLessThan(small.onPage);
    await press(page, 'Large enough to read');
    await expect
      .poll(async () => (await letters(page)).onLeaf)
      .toBeGreaterThan((await letters(page)).onPage - 0.1);
    await expect
      .poll(() => page.evaluate(() => document.documentElement.scrollWidth))
      .toBeLessThanOrEqual(width);
    expect(await findings(page)).toEqual([]);
  };
  const nothingReachesOut = async ({ page }: Opened) => {
    for (const view of ['Leaf', 'Sheets', '3D', 'Numbers', 'Job file']) {
      await page.getByRole('tab', { name: view }).click();
      const wide = await page.evaluate(() => document.documentElement.scrollWidth);
      expect(wide, view).toBeLessThanOrEqual(width);
    }
    const outside = (): Promise<readonly string[]> =>
      page.evaluate(() =>
        Array.from(document.querySelectorAll('.sheaf > *, dialog *'))
          .filter((each) => each.checkVisibility())
          .filter((each) => {
            const { left, right } = each.getBoundingClientRect();
            return left < 0 || right > document.documentElement.clientWidth;
          })
          .map((each) => each.outerHTML.slice(0, 80)),
      );
    await page.locator('summary', { hasText: 'Job' }).first().click();
    await expect.poll(() => outside()).toEqual([]);
    await page.getByRole('button', { name: 'Printer set-up' }).click();
    await expect.poll(() => outside()).toEqual([]);
  };
  atOnePage(
    'with two ends',
    {
      // In a window of 640 pixels the letters are large enough as they are.
      ...(width < 640 && {
        'the leaf is whole, and its smallest letters as large as the page’s once that is asked for':
          leafIsWhole,
      }),
      'nothing reaches past its side': nothingReachesOut,
    },
    { width, height: 800, job: BRACE },
  );
});

describe.each(someOf([1280, 390], { short: 1 }))('in a window %i pixels wide', (width) => {
  const run = async ({ page }: Opened) => {
    const beside = ['outside diameter, end B', 'angle, end B'];
    const boxes = (): Promise<unknown> =>
      Promise.all(
        beside.map((name) =>
          page.getByRole('textbox', { name, exact: true }).evaluate((each) => {
            const { left, top, width: wide } = each.getBoundingClientRect();
            return [left, top + scrollY, wide];
          }),
        ),
      );
    const before = await boxes();
    await fill(page, 'outside diameter, end B', '44,5 inchs');
    await expect.poll(() => boxes()).toEqual(before);
    const widths = await page
      .locator('.fields > .wrong')
      .evaluate((each) => [each.clientWidth, each.parentElement?.clientWidth ?? 0]);
    expect(widths[0]).toBeGreaterThan(0.95 * (widths[1] ?? 0));
  };
  atThePage('what is wrong takes the width of its row, and the fields stay where they are', run, {
    width,
    height: 900,
    job: BRACE,
  });
});
