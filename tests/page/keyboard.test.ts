import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { DEEP } from '../count.ts';
import { BRACE } from './at-the-page.ts';
import type { Opening } from './browser.ts';
import {
  choose,
  enter,
  focused,
  keptJob,
  LOOK_ROUND,
  placeNow,
  pressableOnly,
  reach,
  reachAgain,
  type Stop,
  type Stops,
  stops,
  unreached,
  walk,
  write,
} from './by-keyboard.ts';
import { act, press, seenFrom } from './deeds.ts';
import { atThePage } from './page-test.ts';

// Nothing here is clicked, and no script moves the focus: all is done by the keys of the keyboard.

/** Of situations that are much alike, or that other tests come to by the pointer, a short run tries some. */
const alike: typeof byKeyboard = DEEP ? byKeyboard : (name) => test.skip(name);

function byKeyboard(name: string, run: (page: Page) => Promise<void>, opening: Opening = {}): void {
  atThePage(name, ({ page }) => run(page), { ...opening, script: LOOK_ROUND() });
}

/** What the brace has is shown from the first. */
const WITH_BRACE: Opening = { job: BRACE };

async function fillBrace(page: Page): Promise<void> {
  await write(page, 'outside diameter, the tube', '31.75');
  await write(page, 'wall, the tube', '2.4');
  await write(page, 'outside diameter, end A', '38.1');
  await write(page, 'angle, end A', '62');
  await choose(page, 'End B', 'lands on a');
  await expect.poll(() => focused(page)).toBe('End B');
  await write(page, 'outside diameter, end B', '44.5');
  await write(page, 'angle, end B', '48');
  await write(page, 'between work points, the tube', '619');
}

/**
 * Everything of the page as it stands is reached by Tab, and back again where that is asked for, with the focus in sight, and what is
 * in this place of it does what it is for; in a short run, one of each kind.
 */
async function everything(page: Page, within?: Stop['place'], back = DEEP): Promise<void> {
  expect(await pressableOnly(page)).toEqual([]);
  const there = await walk(page);
  expect(unreached(there)).toEqual([]);
  expect(
    there.filter(({ unseen }) => unseen !== '').map(({ all, at, unseen }) => `${all[at]?.name}: ${unseen}`),
  ).toEqual([]);
  const places = there.map(({ at }) => at);
  const begins = places.indexOf(Math.min(...places));
  const inOrder = [...places.slice(begins), ...places.slice(0, begins)];
  expect(inOrder).toEqual(inOrder.toSorted((a, b) => a - b));
  if (back) expect(unreached(await walk(page, 'Shift+Tab'))).toEqual([]);
  const own = there.filter(({ all, at }) => within === undefined || all[at]?.place === within);
  for (const { all, at } of DEEP ? own : oneOfEachKind(own)) {
    const stop = all[at];
    if (!stop) continue;
    await unfold(page, all, at);
    await reachAgain(page, all, at);
    await act(page, stop);
  }
}

/** Of each kind that which stands in the middle. */
function oneOfEachKind(own: readonly Stops[]): readonly Stops[] {
  const kindOf = ({ all, at }: Stops) => all[at]?.kind;
  return own.filter((each) => {
    const alike = own.filter((other) => kindOf(other) === kindOf(each));
    return each === alike[Math.floor(alike.length / 2)];
  });
}

/** A fold that went with what another choice took away comes back shut: what was in it is shown again. */
async function unfold(page: Page, all: readonly Stop[], at: number): Promise<void> {
  if (placeNow((await stops(page)).all, all, at) >= 0) return;
  const fold = all.slice(0, at).findLast(({ kind }) => kind === 'summary');
  await enter(page, fold?.name ?? 'a fold');
  await expect
    .poll(async () => placeNow((await stops(page)).all, all, at), { message: all[at]?.name ?? '' })
    .toBeGreaterThanOrEqual(0);
}

describe('by keyboard alone, everything is reached, seen and done', () => {
  alike('in an empty form', (page) => everything(page, 'views', true));

  byKeyboard('with two ends, and every fold open', async (page) => {
    await fillBrace(page);
    for (const fold of ['Land, root gap, allowance and note', 'Edge and seam', 'Before you cut']) {
      const { all } = await stops(page);
      for (const { name } of all) if (name.startsWith(fold)) await enter(page, name);
    }
    await everything(page);
  });

  alike(
    'in every view, with a mistake, and with several tubes',
    async (page) => {
      for (const view of ['3D', 'Sheets', 'Numbers', 'Job file']) {
        await reach(page, view);
        await everything(page, 'views');
      }
      await write(page, 'angle, end A', '480');
      await enter(page, 'Copy this tube');
      for (const name of ['Add a tube', 'Copy this tube', 'Remove this tube', 'Tube']) {
        const { all } = await stops(page);
        const there = all.find((each) => each.name === name);
        if (!there) throw new Error(`${name} is not there`);
        await reach(page, name);
        await act(page, there);
      }
      await everything(page, 'views');
    },
    WITH_BRACE,
  );

  alike('on several headers, of a rectangular tube, with stock to cut from', async (page) => {
    await reach(page, 'rectangular of Section of the tube');
    await choose(page, 'End A', 'lands on several');
    await reach(page, 'bend of What end A, header 1 lands on');
    await reach(page, 'box of What end A, header 2 lands on');
    const { all } = await stops(page);
    const fold = all.find(({ name }) => name.startsWith('Job, paper and stock'));
    await enter(page, fold?.name ?? '');
    await enter(page, 'Add a stock length');
    await everything(page, 'form');
  });

  alike('with several readings of one value', async (page) => {
    const ways = 'how the angle of end A was measured';
    await write(page, 'angle, end A', '62');
    await choose(page, ways, 'in several');
    await expect.poll(() => focused(page)).toBe(ways);
    await expect
      .poll(() => page.getByRole('textbox', { name: 'angle, reading 1, end A' }).inputValue())
      .toBe('62');
    await choose(page, 'how reading 2 of the angle of end A was measured', 'lean');
    await write(page, 'lean from square, reading 2, end A', '28');
    await everything(page, 'form');
  });

  alike('on a mitre, by measured ways', async (page) => {
    await reach(page, 'mitre of What end A lands on');
    await choose(page, 'how the size of the tube was measured', 'girth');
    await choose(page, 'End B', 'lands on a');
    await choose(page, 'how the angle of end B was measured', 'three');
    await choose(page, 'how the length of the tube was measured', 'along');
    await everything(page, 'form');
  });
});

byKeyboard(
  'a fold that was opened stays open round the focus, however late the page hears of it',
  async (page) => {
    // After a key the browser holds such news back until the next picture, which a busy machine is long about.
    await page.evaluate(() =>
      document.addEventListener('toggle', (event) => event.stopImmediatePropagation(), true),
    );
    const field = 'land, the tube';
    await enter(page, 'Land, root gap, allowance and note');
    await reach(page, field);
    const before = await keptJob(page);
    await page.keyboard.press('7');
    await expect.poll(() => keptJob(page)).not.toBe(before);
    await page.keyboard.press('Control+z');
    await expect.poll(() => keptJob(page)).toBe(before);
    await expect.poll(() => focused(page)).toBe(field);
    await page.keyboard.press('Control+Shift+z');
    await page.keyboard.press('Backspace');
    await expect.poll(() => focused(page)).toBe(field);
  },
);

byKeyboard(
  'every entry of the menu does its work and gives the focus back to the menu',
  async (page) => {
    await reach(page, 'Job');
    const closed = (await stops(page)).all.map(({ name }) => name);
    await page.keyboard.press('Enter');
    const open = await walk(page);
    // The walk goes on to what follows, and so shuts it.
    await expect.poll(() => page.locator('details.more[open]').count()).toBe(0);
    const entries = (open[0]?.all ?? []).filter(({ name }) => !closed.includes(name));
    expect(entries.length).toBeGreaterThan(5);
    for (const { name } of entries) {
      await enter(page, 'Job');
      await reach(page, name);
      await expect.poll(async () => (await stops(page)).unseen, { message: name }).toBe('');
      await chooseEntry(page, name);
      await page.keyboard.press('Escape');
      await expect.poll(() => focused(page), { message: name }).toBe('Job');
      await expect.poll(() => page.locator('details.more[open]').count()).toBe(0);
    }
  },
  WITH_BRACE,
);

byKeyboard('the printer’s window: two readings saved, chosen and forgotten', async (page) => {
  await enter(page, 'Job');
  await enter(page, 'Printer set-up');
  await expect.poll(() => page.locator('dialog').count()).toBe(1);
  await write(page, 'name of the printer', 'workshop');
  await write(page, 'bar across', 'wide');
  await enter(page, 'Save this printer');
  await expect.poll(() => page.locator('#printer-wrong').textContent()).toMatch(/wide/);
  await expect.poll(() => focused(page)).toBe('Save this printer');
  await write(page, 'bar across', '99.3mm');
  await write(page, 'bar up', '100.1mm');
  await enter(page, 'Save this printer', 'Space');
  await expect.poll(() => page.locator('dialog [role=status]').textContent()).toMatch(/workshop is saved/);
  const there = await walk(page);
  expect(unreached(there)).toEqual([]);
  expect(there.map(({ all, at }) => all[at]?.name)).toHaveLength(8);
  expect(there.filter(({ unseen }) => unseen !== '')).toEqual([]);
  const [tab] = await Promise.all([page.context().waitForEvent('page'), enter(page, 'Open the scale sheet')]);
  await tab.close();
  const printer = page.getByRole('combobox', { name: 'draw sheets for' });
  await expect.poll(() => printer.inputValue()).toBe('workshop');
  await choose(page, 'draw sheets for', 'a printer');
  await expect.poll(() => printer.inputValue()).toBe('');
  await page.keyboard.press('ArrowDown');
  await enter(page, 'Forget workshop');
  await expect.poll(() => page.locator('dialog option').count()).toBe(1);
  await expect
    .poll(() => focused(page), { message: 'the focus after what had it is gone' })
    .toBe('draw sheets for');
  await enter(page, 'Close');
  await page.locator('dialog').waitFor({ state: 'detached' });
  await expect.poll(() => focused(page)).toBe('Job');
});

alike(
  'the link’s window: the link is marked and copied, and a link’s job is kept or left',
  async (page) => {
    await enter(page, 'Job');
    await enter(page, 'Link to this job');
    expect(unreached(await walk(page))).toEqual([]);
    await reach(page, 'link');
    const link = await page.evaluate(() => getSelection()?.toString() ?? '');
    expect(link).toMatch(/#job=/);
    await enter(page, 'Copy');
    await page.locator('dialog [role=status]', { hasText: /\w/ }).waitFor();
    await enter(page, 'Close', 'Space');
    await expect.poll(() => focused(page)).toBe('Job');
    await write(page, 'wall, the tube', '3');
    // What is kept may be a step of typing behind.
    await expect.poll(() => keptJob(page)).toContain('wall: 3\n');
    for (const [answer, wall] of [
      ['Back to my last job', '3'],
      ['Keep this one in its place', '.095in'],
    ] as const) {
      await page.goto('about:blank');
      await page.goto(link);
      await page.getByRole('button', { name: answer }).waitFor();
      await enter(page, answer);
      await expect.poll(() => focused(page), { message: answer }).not.toBe('');
      await expect.poll(() => keptJob(page)).toContain(`wall: ${wall}\n`);
    }
  },
  WITH_BRACE,
);

byKeyboard(
  'on a phone the leaf is made large, and scrolled in its own box',
  async (page) => {
    await reach(page, 'Large enough to read');
    await press(page, 'Large enough to read');
    await page.keyboard.press('Enter');
    await reach(page, 'The leaf');
    await expect.poll(async () => (await stops(page)).unseen).toBe('');
    const scrolled = () => page.evaluate(() => [document.activeElement?.scrollLeft ?? 0, scrollX]);
    await page.keyboard.press('ArrowRight');
    await expect.poll(async () => (await scrolled())[0]).toBeGreaterThan(0);
    expect((await scrolled())[1]).toBe(0);
  },
  { ...WITH_BRACE, width: 390, height: 844 },
);

alike(
  'the joint in space is turned and brought nearer, and what is long is scrolled',
  async (page) => {
    await reach(page, '3D');
    const canvas = 'The joint in three dimensions. Arrow keys turn it, plus and minus come nearer.';
    await reach(page, canvas);
    for (const key of ['ArrowLeft', 'ArrowUp', 'ArrowRight', 'ArrowDown', '+', '-']) {
      const before = await seenFrom(page);
      await page.keyboard.press(key);
      await expect.poll(() => seenFrom(page), { message: key }).not.toBe(before);
    }
    await page.setViewportSize({ width: 320, height: 500 });
    await reach(page, 'Numbers');
    await reach(page, 'Setbacks of end A');
    const scrolled = (): Promise<number> => page.evaluate(() => document.activeElement?.scrollLeft ?? 0);
    await page.keyboard.press('ArrowRight');
    await expect.poll(scrolled).toBeGreaterThan(0);
  },
  WITH_BRACE,
);

/** Presses Enter on an entry of the menu, and sees what it is for come about. */
async function chooseEntry(page: Page, name: string): Promise<void> {
  const before = await keptJob(page);
  if (name === 'with the headers’ footprints') {
    const box = page.getByRole('checkbox', { name });
    await page.keyboard.press('Space');
    await expect.poll(() => box.isChecked()).toBe(true);
    await page.keyboard.press('Space');
    await expect.poll(() => box.isChecked()).toBe(false);
  } else if (name === 'Open a job file or PDF') {
    const choosing = page.waitForEvent('filechooser');
    await reach(page, name);
    await page.keyboard.press('Enter');
    const chooser = await choosing;
    await chooser.setFiles({ name: 'other.yaml', mimeType: 'text/yaml', buffer: Buffer.from(before) });
    await page.locator('.notice', { hasText: 'other.yaml is open' }).waitFor();
  } else if (name === 'New job') {
    await page.keyboard.press('Enter');
    await expect.poll(() => keptJob(page)).not.toBe(before);
    await page.keyboard.press('Control+z');
    await expect.poll(() => keptJob(page)).toBe(before);
  } else if (name in WINDOWS) {
    await page.keyboard.press('Enter');
    await expect.poll(() => page.getByRole('dialog', { name: WINDOWS[name] ?? '' }).count()).toBe(1);
    await expect.poll(async () => (await stops(page)).at).toBeGreaterThanOrEqual(0);
  } else {
    await press(page, name);
  }
}

const WINDOWS: Readonly<Record<string, string>> = {
  Licences: 'Licences',
  'Link to this job': 'Link to this job',
  'Printer set-up': 'Printer',
};
