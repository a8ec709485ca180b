import type { Page } from 'playwright-core';
import { PNG } from 'pngjs';
import { describe, expect } from 'vitest';
import { fragmentOf } from '../../src/page/job/link.ts';
import { workOut } from '../../src/page/job/outcome.ts';
import { type Model, modelOf } from '../../src/page/space/model.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { DEEP } from '../count.ts';
import { BRACE, fill, fillBrace, fromMenu, pick, press } from './at-the-page.ts';
import { leave, openPage } from './browser.ts';
import { keptJob } from './by-keyboard.ts';
import { seenFrom } from './deeds.ts';
import { alsoAtThePage, atOnePage, atThePage } from './page-test.ts';

atOnePage(
  'what is said and shown of the job',
  {
    'a mistake stands under its field and is tied to it; the joint stays': async ({ page }) => {
      await fill(page, 'angle, end A', '480');
      const field = page.getByRole('textbox', { name: 'angle, end A', exact: true });
      await expect.poll(() => field.getAttribute('aria-invalid')).toBe('true');
      const told = page.locator(`#${await field.getAttribute('aria-describedby')}`);
      await expect.poll(() => told.textContent()).toMatch(/under 180 degrees/);
      await expect.poll(() => page.getByRole('button', { name: 'Save PDF' }).isDisabled()).toBe(true);
      await fill(page, 'angle, end A', '48');
      await expect.poll(() => field.getAttribute('aria-invalid')).toBeNull();
      await expect.poll(() => page.getByRole('button', { name: 'Save PDF' }).isEnabled()).toBe(true);
    },
    'warnings stand beside the end that causes them': async ({ page }) => {
      await fill(page, 'angle, end B', '20');
      await page.locator('.end-B .watch', { hasText: 'sharp heel' }).waitFor();
      await expect.poll(() => page.locator('.end-A .watch').count()).toBe(0);
    },
    'a mistake that only two ends together make stands under the length': async ({ page }) => {
      await fill(page, 'between work points, the tube', '25');
      await expect.poll(() => page.locator('.fields .wrong').textContent()).toMatch(/cross/);
      await fill(page, 'between work points, the tube', '619');
    },
    'a rectangular tube runs on between its ends as wide as its joints show it': async ({ page }) => {
      await pick(page, 'rectangular', 'Section of the tube');
      await fill(page, 'width, the tube', '50');
      await fill(page, 'depth, the tube', '30');
      await fill(page, 'clocking, end B', '');
      await page.locator('.paper svg').first().waitFor();
      const sides = (of: string): Promise<readonly number[]> =>
        page
          .locator(of)
          .first()
          .evaluate((each) => [each.getBoundingClientRect().left, each.getBoundingClientRect().right]);
      const joint = await sides('.end-A .joint .tube');
      for (const of of ['.end-A .body .tube', '.row.tube .body .tube', '.end-B .body .tube']) {
        const body = await sides(of);
        for (const [i, x] of body.entries()) expect(x, of).toBeCloseTo(joint[i] ?? Number.NaN, 0);
      }
    },
    'undo takes back a field, redo brings it again, by button and by keys': async ({ page }) => {
      await fromMenu(page, 'New job');
      const field = page.getByRole('textbox', { name: 'wall, the tube', exact: true });
      await field.pressSequentially('2.4');
      await field.blur();
      await press(page, 'Undo');
      await expect.poll(() => field.inputValue()).toBe('');
      await press(page, 'Redo');
      await expect.poll(() => field.inputValue()).toBe('2.4');
      await page.keyboard.press('Control+z');
      await expect.poll(() => field.inputValue()).toBe('');
      await page.keyboard.press('Control+Shift+Z');
      await expect.poll(() => field.inputValue()).toBe('2.4');
    },
  },
  { job: BRACE },
);

/** Runs in the page: what its worker answers is kept back while `held` is true. */
function holdBack(): void {
  const kept: (() => void)[] = [];
  let held = false;
  Object.defineProperty(globalThis, 'held', {
    set(hold: boolean) {
      held = hold;
      if (!hold) for (const hand of kept.splice(0)) hand();
    },
  });
  const Own = Worker;
  globalThis.Worker = class extends Own {
    constructor(address: string | URL) {
      super(address);
      this.addEventListener('message', (event) => {
        if (!held) return;
        event.stopImmediatePropagation();
        kept.push(() => this.dispatchEvent(new MessageEvent('message', { data: event.data })));
      });
    }
  };
}

/** Both ends on bends: what takes long to look at, were it not kept back. */
const ON_BENDS = `copeleaf: 1
units: mm
tube:
  od: 21.5
  wall: 2
  between: 745.6
  edge: square
  ends:
    A: { onto: { bend: { od: 72, radius: 329, centre: 150 } }, angle: 60, offset: -2 }
    B: { onto: { bend: { od: 75.4, radius: 284, centre: 180 } }, angle: 60, offset: 0.3 }
paper: A4
`;

atThePage(
  'typing goes on while a fit is looked at, however long that takes',
  async ({ page }) => {
    await page.getByRole('tab', { name: 'Numbers' }).click();
    const numbers = page.locator('.numbers pre');
    const before = (await numbers.textContent()) ?? '';
    const hold = (held: boolean) => page.evaluate((to) => Reflect.set(globalThis, 'held', to), held);
    await hold(true);
    await fill(page, 'offset, end A', '-2.5');
    await fill(page, 'name of the tube', 'typed meanwhile');
    await expect.poll(() => page.evaluate(() => localStorage.getItem('copeleaf.job'))).toContain('meanwhile');
    // Looked at in the page itself, it would have been told by now.
    await expect.poll(() => numbers.textContent()).toBe(before);
    await hold(false);
    await expect.poll(() => numbers.textContent()).not.toBe(before);
  },
  { job: DEEP ? ON_BENDS : BRACE, script: `(${holdBack})()` },
);

const RAIL_AND_POST = `copeleaf: 1
units: mm
frame:
  points: { left: [0, 0, 0], right: [900, 0, 0], foot: { on: rail, at: 400 }, top: [400, 0, 700] }
  tubes:
    - { name: rail, along: [left, right], od: 42.4, wall: 2.6 }
    - { name: post, along: [foot, top], od: 33.7, wall: 2.6 }
`;

atThePage(
  'a frame is opened at its first tube that has a leaf',
  async ({ page }) => {
    const chosen = page.getByLabel('Tube');
    await expect.poll(() => chosen.locator('option:checked').textContent()).toBe('post');
    await chosen.selectOption('rail');
    await page.locator('.paper svg').waitFor({ state: 'detached' });
  },
  { job: RAIL_AND_POST },
);

describe('the last job', () => {
  atThePage('is there on return, and a link does not overwrite it unasked', async (opened) => {
    const { page, context } = opened;
    const browser = context.browser();
    if (!browser) throw new Error('the page is in no browser');
    await fillBrace(page);
    // What the other tests begin with is what this form makes.
    await expect.poll(() => keptJob(page)).toBe(BRACE);
    await fromMenu(page, 'Link to this job');
    const link = await page.getByRole('textbox', { name: 'link' }).inputValue();
    await page.keyboard.press('Escape');
    await page.locator('dialog').waitFor({ state: 'detached' });
    await fill(page, 'name of the tube', 'my own');
    await page.locator('.paper', { hasText: 'my own' }).waitFor();
    await leave(page);

    const fragment = link.slice(link.indexOf('#'));
    const linked = await openPage(browser, { context, fragment });
    const name = linked.page.getByRole('textbox', { name: 'name of the tube', exact: true });
    await expect.poll(() => name.inputValue()).toBe('bunk stay');
    await fill(linked.page, 'wall, the tube', '3');
    await leave(linked.page);

    const back = await openPage(browser, { context });
    const own = back.page.getByRole('textbox', { name: 'name of the tube', exact: true });
    await expect.poll(() => own.inputValue()).toBe('my own');
    await leave(back.page);

    const again = await openPage(browser, { context, fragment });
    await press(again.page, 'Keep this one in its place');
    await leave(again.page);
    const kept = await openPage(browser, { context });
    await expect
      .poll(() => kept.page.getByRole('textbox', { name: 'name of the tube', exact: true }).inputValue())
      .toBe('bunk stay');
  });

  alsoAtThePage('that came by a link is kept once it is changed', async ({ page, context }) => {
    const browser = context.browser();
    if (!browser) throw new Error('the page is in no browser');
    const kept = (at: Page) => at.evaluate(() => localStorage.getItem('copeleaf.job'));
    await page.evaluate(() => localStorage.clear());
    const linked = await openPage(browser, { context, fragment: fragmentOf(BRACE) });
    const name = linked.page.getByRole('textbox', { name: 'name of the tube', exact: true });
    await expect.poll(() => name.inputValue()).toBe('bunk stay');
    await expect.poll(() => kept(linked.page)).toBe(null);
    await fill(linked.page, 'wall, the tube', '3');
    await expect.poll(() => kept(linked.page)).toContain('wall: 3');
  });

  atThePage(
    'is there where a link’s job held the page up before, and that link is tried again after that',
    async ({ page }) => {
      const name = page.getByRole('textbox', { name: 'name of the tube', exact: true });
      await page.locator('.paper svg').first().waitFor();
      await expect.poll(() => name.inputValue()).toBe('bunk stay');
      // As if the page had been shut before it came to show the job.
      await page.evaluate(() => sessionStorage.setItem('copeleaf.link', location.hash));
      await page.reload();
      await expect.poll(() => page.locator('.notice').textContent()).toMatch(/stopped the page last time/);
      await expect.poll(() => name.inputValue()).toBe('');
      await page.reload();
      await expect.poll(() => name.inputValue()).toBe('bunk stay');
    },
    { fragment: fragmentOf(BRACE) },
  );

  atThePage(
    'is not lost to a damaged link',
    async ({ page }) => {
      await expect.poll(() => page.locator('.notice').textContent()).toMatch(/can’t be read/);
      await expect.poll(() => page.getByRole('textbox', { name: 'wall, the tube' }).count()).toBe(1);
    },
    { fragment: '#job=eJwLcut' },
  );
});

alsoAtThePage(
  'a printer is set up by two readings, refused where they tell of a wrong setting, and kept',
  async ({ page }) => {
    await fromMenu(page, 'Printer set-up');
    await fill(page, 'name of the printer', 'workshop');
    await fill(page, 'bar across', '97.3mm');
    await fill(page, 'bar up', '100mm');
    await press(page, 'Save this printer');
    await expect
      .poll(() => page.locator('#printer-wrong').textContent())
      .toMatch(/letter page was shrunk onto A4/);
    await fill(page, 'bar across', '99.3mm');
    await press(page, 'Save this printer');
    await press(page, 'Close');
    await fill(page, 'outside diameter, the tube', '38.1');
    await fill(page, 'outside diameter, end A', '44.5');
    await fill(page, 'angle, end A', '60');
    await page.getByRole('tab', { name: 'Sheets' }).click();
    await page.locator('.sheets', { hasText: 'workshop' }).waitFor();
    await page.reload();
    await fromMenu(page, 'Printer set-up');
    await expect
      .poll(() => page.getByRole('combobox', { name: 'draw sheets for' }).textContent())
      .toContain('workshop');
  },
);

describe('the joint in space', () => {
  atThePage(
    'is turned by keys, pointer and wheel, and is there again when the graphics card is',
    async ({ page }) => {
      await page.getByRole('tab', { name: '3D' }).click();
      const canvas = page.locator('.stage canvas');
      await page.locator('.afloat span', { hasText: 'spine' }).waitFor();
      const first = await canvas.screenshot();
      const wordsLie = () => seenFrom(page);
      const isMovedBy = async (deed: string, act: () => Promise<void>): Promise<void> => {
        const before = await wordsLie();
        await act();
        await expect.poll(wordsLie, { message: deed }).not.toBe(before);
      };
      await canvas.focus();
      await isMovedBy('key', () => page.keyboard.press('ArrowLeft'));
      for (const button of ['left', 'right', 'middle'] as const) {
        await canvas.hover();
        await page.mouse.down({ button });
        await isMovedBy(button, () => canvas.hover({ position: { x: 200, y: 150 } }));
        await page.mouse.up({ button });
      }
      await isMovedBy('wheel', () => page.mouse.wheel(0, 300));
      const last = await canvas.screenshot();
      expect(last.equals(first)).toBe(false);
      await canvas.evaluate(cardTakenAwayAndBack);
      await expect.poll(async () => (await canvas.screenshot()).equals(last)).toBe(true);
    },
    { job: BRACE },
  );

  alsoAtThePage(
    'a face looked at straight is as light as the cosine of its angle to the light, shown by the curve of sRGB',
    async ({ page }) => {
      await page.getByRole('tab', { name: '3D' }).click();
      await press(page, 'On the spine');
      // The light stands a step behind the eye, less than one to its right and above, and shines on end A's work point.
      const { middle, reach } = spaceOf(SQUARE);
      const cosine = (5.2 * reach + 1) / Math.hypot(5.2 * reach + 1, 0.4, middle[2] + 0.8);
      const bright = (1.3 + 2.4 * cosine) / Math.PI;
      const offBy = async (): Promise<number> => {
        const { width, height, data } = PNG.sync.read(await page.locator('.stage canvas').screenshot());
        // Beside the spine, which runs up the middle, and off its word.
        const at = 4 * (width * Math.round(height / 2 + 60) + Math.round(width / 2 + 8));
        const offs = [0xb9, 0xc4, 0xcc].map((steel, i) => {
          const light = bright * ((steel / 255 + 0.055) / 1.055) ** 2.4;
          return Math.abs((data[at + i] ?? 0) - 255 * (1.055 * light ** (1 / 2.4) - 0.055));
        });
        return Math.max(...offs);
      };
      await expect.poll(offBy).toBeLessThan(1);
    },
    { job: SQUARE },
  );
});

describe.runIf(DEEP)('the eye on the joint in space', () => {
  const atTheSpine = (name: string, run: (page: Page, ends: () => Promise<Ends>) => Promise<void>): void =>
    atThePage(
      name,
      async ({ page }) => {
        await page.getByRole('tab', { name: '3D' }).click();
        await page.locator('.afloat span', { hasText: 'spine' }).waitFor();
        await press(page, 'On the spine');
        await run(page, () => endsSeen(page));
      },
      { job: SQUARE },
    );

  atTheSpine(
    'keeps the tube in the middle, B above, and a quarter nearer it is a quarter larger',
    async (page, ends) => {
      const first = await ends();
      expect([first.A[0], first.B[0], first.A[1] + first.B[1]]).toEqual(
        [0, 0, 0].map((at) => expect.closeTo(at, 0)),
      );
      expect(first.B[1]).toBeLessThan(0);
      await page.locator('.stage canvas').press('+');
      expect((await ends()).B[1] / first.B[1]).toBeCloseTo(1.25, 3);
    },
  );

  atTheSpine('never goes over the tube’s end', async (page, ends) => {
    const first = await ends();
    for (const key of ['ArrowUp', 'ArrowDown']) {
      for (let i = 0; i < 20; i++) await page.locator('.stage canvas').press(key);
      const { A, B } = await ends();
      expect(A[1] - B[1]).toBeLessThan((first.A[1] - first.B[1]) / 100);
      expect(A[1] - B[1]).toBeGreaterThan(-1e-3);
    }
  });

  atTheSpine('comes nearer by two fingers, and the finger that stays begins anew', async (page, ends) => {
    const first = await ends();
    const box = await page.locator('.stage canvas').boundingBox();
    const fingers = await page.context().newCDPSession(page);
    const finger = (id: number, x: number, y: number) => ({ id, x: (box?.x ?? 0) + x, y: (box?.y ?? 0) + y });
    const touch = (
      type: 'touchStart' | 'touchMove' | 'touchEnd',
      ...touchPoints: ReturnType<typeof finger>[]
    ): Promise<unknown> => fingers.send('Input.dispatchTouchEvent', { type, touchPoints });
    await touch('touchStart', finger(0, 200, 160));
    await touch('touchStart', finger(0, 200, 160), finger(1, 200, 240));
    await touch('touchMove', finger(0, 200, 120), finger(1, 200, 280));
    await expect.poll(async () => (await ends()).B[1] / first.B[1]).toBeCloseTo(2, 2);
    await touch('touchEnd', finger(1, 200, 280));
    const nearer = await seenFrom(page);
    await touch('touchMove', finger(0, 240, 120));
    await expect.poll(() => seenFrom(page)).not.toBe(nearer);
    // Turned from where the finger lay first, the tube would lean.
    expect((await ends()).B[1] / first.B[1]).toBeCloseTo(2, 2);
  });
});

/** Where the letters of a tube's ends lie from the middle of the picture, in pixels, to the right and down. */
type Ends = Readonly<Record<'A' | 'B', readonly [right: number, down: number]>>;

async function endsSeen(page: Page): Promise<Ends> {
  const seen = (name: string): Promise<readonly [number, number]> =>
    page.locator('.afloat .letter', { hasText: name }).evaluate((span) => {
      const { m41, m42 } = new DOMMatrix(span.getAttribute('style')?.match(/translate\([^)]*\)/)?.[0]);
      const canvas = document.querySelector('.stage canvas');
      return [m41 - (canvas?.clientWidth ?? 0) / 2, m42 - (canvas?.clientHeight ?? 0) / 2];
    });
  return { A: await seen('A'), B: await seen('B') };
}

const SQUARE = `copeleaf: 1
units: mm
tube:
  section: { wide: 50, deep: 50, corner: 5 }
  wall: 2.5
  between: 200
  ends:
    A: { onto: { od: 60.3 }, angle: 90 }
    B: { onto: { od: 60.3 }, angle: 90 }
`;

/** What is shown in space of the one tube of a job. */
function spaceOf(job: string): Model {
  const outcome = workOut(job, ENGLISH);
  const [solution] = outcome.kind === 'read' ? outcome.solutions : [];
  if (!solution) throw new Error('not read');
  return modelOf(solution, ENGLISH);
}

/** Runs in the page: the browser may take a graphics card away at any time, and give it back. */
function cardTakenAwayAndBack(canvas: HTMLElement | SVGElement): Promise<void> {
  if (!(canvas instanceof HTMLCanvasElement)) throw new Error('no canvas');
  const card = canvas.getContext('webgl2')?.getExtension('WEBGL_lose_context');
  return new Promise((done) => {
    canvas.addEventListener('webglcontextlost', () => setTimeout(() => card?.restoreContext()));
    canvas.addEventListener('webglcontextrestored', () => done());
    card?.loseContext();
  });
}
