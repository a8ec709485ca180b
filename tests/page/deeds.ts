import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { enter, focused, keptJob, reach, type Stop, stops } from './by-keyboard.ts';

/** Does by keys what the thing with the focus is for, sees that it is done, and leaves the job as it was. */
export async function act(page: Page, { name, kind, idle }: Stop): Promise<void> {
  const before = await keptJob(page);
  if (idle) {
    await page.keyboard.press('Enter');
    await expect.poll(() => keptJob(page), { message: name }).toBe(before);
  } else {
    await BY_KIND[kind](page, name);
    // What is kept may be a step of typing behind.
    await expect.poll(() => keptJob(page), { message: name }).toBe(before);
  }
}

const undo = (page: Page): Promise<void> => page.keyboard.press('Control+z');

async function changes(page: Page, name: string, key: string): Promise<void> {
  const before = await keptJob(page);
  await page.keyboard.press(key);
  await expect.poll(() => keptJob(page), { message: `${key} at ${name}` }).not.toBe(before);
}

const BY_KIND: Readonly<Record<Stop['kind'], (page: Page, name: string) => Promise<void>>> = {
  async text(page, name) {
    if (name === 'The job file') {
      await page.keyboard.press('Control+End');
      await changes(page, name, '#');
    } else await changes(page, name, '7');
    await undo(page);
    await expect.poll(() => focused(page)).toBe(name);
  },
  async select(page, name) {
    const chosen = () =>
      page.evaluate(() => {
        const { activeElement: on } = document;
        return on instanceof HTMLSelectElement ? on.value : undefined;
      });
    const first = await chosen();
    await page.keyboard.press('ArrowDown');
    const key = (await chosen()) === first ? 'ArrowUp' : 'ArrowDown';
    if (key === 'ArrowUp') await page.keyboard.press(key);
    await expect.poll(() => chosen(), { message: name }).not.toBe(first);
    await expect.poll(() => focused(page)).toBe(name);
    if (name === 'Tube') await page.keyboard.press(key === 'ArrowUp' ? 'ArrowDown' : 'ArrowUp');
    else await undo(page);
    await expect.poll(chosen, { message: name }).toBe(first);
    await expect.poll(() => focused(page)).toBe(name);
  },
  async checkbox(page, name) {
    await changes(page, name, 'Space');
    await undo(page);
    await expect.poll(() => focused(page)).toBe(name);
  },
  async radio(page, name) {
    const group = async (): Promise<readonly string[]> => {
      const { all, at } = await stops(page);
      return all.filter((each) => each.group === all[at]?.group).map((each) => each.name);
    };
    const members = await group();
    const seen: string[] = [];
    for (const _ of members) {
      await changes(page, name, 'ArrowRight');
      seen.push(await focused(page));
    }
    expect(seen.toSorted()).toEqual(members.toSorted());
    for (const _ of members) await undo(page);
    await expect.poll(() => group()).toEqual(members);
  },
  async summary(page, name) {
    const open = () => page.evaluate(() => document.activeElement?.closest('details')?.open);
    const first = await open();
    for (const key of ['Enter', 'Space']) {
      const was = await open();
      await page.keyboard.press(key);
      await expect.poll(() => open(), { message: name }).toBe(!was);
    }
    await expect.poll(() => open()).toBe(first);
  },
  async tab(page, name) {
    const { all, at } = await stops(page);
    const names = all.filter(({ group }) => group === all[at]?.group).map((each) => each.name);
    const seen: string[] = [];
    for (const _ of names) {
      await page.keyboard.press('ArrowRight');
      seen.push(await focused(page));
      await expect.poll(() => page.getByRole('tab', { selected: true }).textContent()).toBe(seen.at(-1));
      await expect.poll(() => page.getByRole('tabpanel', { name: seen.at(-1) ?? '' }).count()).toBe(1);
    }
    expect(seen.toSorted()).toEqual(names.toSorted());
    await expect.poll(() => focused(page)).toBe(name);
  },
  async jump(page, name) {
    await page.keyboard.press('Enter');
    const { all, at } = await stops(page);
    expect(all[at]?.kind, `where ${name} leads`).toMatch(/text|select/);
    await reach(page, name);
  },
  async button(page, name) {
    await press(page, name);
    await expect.poll(() => focused(page)).toBe(name);
  },
  /** What scrolls or is turned; its keys are tried by themselves. */
  async region() {},
};

/** Presses the button that has the focus, sees what it is for come about, and takes it back. */
export async function press(page: Page, name: string): Promise<void> {
  const deed = IN_SPACE.has(name) ? turnsSpace : DEEDS[name];
  if (!deed) throw new Error(`No deed is known of the button ${name}: say here what it does`);
  await deed(page, name);
}

async function writes(page: Page, name: string): Promise<void> {
  await changes(page, name, 'Enter');
  await expect.poll(() => focused(page)).toBe(name);
  await undo(page);
}

/** It goes with what it takes away; the focus must go on from there. */
async function removes(page: Page, name: string): Promise<void> {
  await changes(page, name, 'Space');
  await expect.poll(() => focused(page), { message: `the focus after ${name}` }).not.toBe('');
  await undo(page);
  await expect.poll(async () => (await stops(page)).all.map((each) => each.name)).toContain(name);
  await reach(page, name);
}

/** The unit that is not in use asks what becomes of the sizes, where there are some. */
async function goesOver(page: Page, name: string): Promise<void> {
  const pressed = page.getByRole('button', { name, exact: true }).and(page.locator('[aria-pressed=true]'));
  if ((await pressed.count()) > 0) return;
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: 'Keep the sizes' }).waitFor();
  await page.keyboard.press('Escape');
}

async function downloads(page: Page, name: string): Promise<void> {
  const [file] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Enter')]);
  const ending = { 'Save PDF': 'pdf', 'Save job file': 'yaml', 'Save SVG': 'svg', 'Save DXF': 'dxf' }[name];
  expect(file.suggestedFilename()).toMatch(new RegExp(`\\.${ending}$`));
}

async function choosesLeaf(page: Page, name: string): Promise<void> {
  const leaf = () => page.locator('.paper svg').first().getAttribute('aria-label');
  await enter(page, name === 'End A’s leaf' ? 'End B’s leaf' : 'End A’s leaf');
  const before = await leaf();
  await enter(page, name);
  await expect.poll(leaf).not.toBe(before);
}

async function enlarges(page: Page, name: string): Promise<void> {
  const wide = () =>
    page
      .locator('.paper svg')
      .first()
      .evaluate((each) => each.clientWidth);
  const before = await wide();
  await page.keyboard.press('Enter');
  await expect.poll(wide).toBeGreaterThan(before);
  await expect.poll(() => focused(page)).toBe(name);
  await page.keyboard.press('Enter');
  await expect.poll(wide).toBe(before);
}

const IN_SPACE = new Set([
  'Whole',
  'Look at end A',
  'Look at end B',
  'On the spine',
  'turn left',
  'turn right',
  'turn up',
  'turn down',
  'nearer',
  'farther',
]);

/** The words on the picture lie where the eye sees what they name. */
export const seenFrom = (page: Page): Promise<string> => page.locator('.afloat').innerHTML();

async function turnsSpace(page: Page, name: string): Promise<void> {
  if (name === 'Whole') {
    await enter(page, 'turn left');
    await reach(page, name);
  }
  const before = await seenFrom(page);
  await page.keyboard.press('Enter');
  await expect.poll(() => seenFrom(page), { message: name }).not.toBe(before);
}

/** What each button does. */
const DEEDS: Readonly<Record<string, (page: Page, name: string) => Promise<void>>> = {
  async Undo(page, name) {
    await changes(page, name, 'Enter');
    await page.keyboard.press('Control+Shift+Z');
  },
  async Redo(page, name) {
    await undo(page);
    await changes(page, name, 'Enter');
  },
  async Print(page) {
    const [tab] = await Promise.all([page.context().waitForEvent('page'), page.keyboard.press('Enter')]);
    await tab.close();
  },
  'Save PDF': downloads,
  'Save job file': downloads,
  'Save SVG': downloads,
  'Save DXF': downloads,
  'Add a tube': writes,
  'Copy this tube': writes,
  'Remove this tube': removes,
  'Add a header to end A': writes,
  'Remove header 1 of end A': removes,
  'Remove header 2 of end A': removes,
  'Add a reading of the angle of end A': writes,
  'Remove reading 1 of the angle of end A': removes,
  'Remove reading 2 of the angle of end A': removes,
  async 'Add a stock length'(page) {
    const fields = page.getByRole('textbox', { name: /^stock length/ });
    const before = await fields.count();
    await page.keyboard.press('Enter');
    await expect.poll(() => fields.count()).toBeGreaterThanOrEqual(Math.max(1, before));
  },
  mm: goesOver,
  inches: goesOver,
  async Close(page) {
    await page.keyboard.press('Enter');
    await page.locator('.notice p').waitFor({ state: 'detached' });
  },
  'Large enough to read': enlarges,
  'End A’s leaf': choosesLeaf,
  'End B’s leaf': choosesLeaf,
};
