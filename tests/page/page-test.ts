import { afterAll, describe, expect, type TestContext, test } from 'vitest';
import { DEEP } from '../count.ts';
import { type Opened, type Opening, openPage, theBrowser } from './browser.ts';

type Deed = (opened: Opened) => Promise<void>;

/** A test at the page, opened from the disk with the network off: nothing may be asked for, nothing go wrong. */
export function atThePage(name: string, run: Deed, opening: Opening = {}): void {
  test(name, async (context) => {
    const opened = await openHere(context, opening);
    try {
      await runAt(opened, run);
    } finally {
      await opened.context.close();
    }
  });
}

/** The same, of what another test at the page has for the most part: in a deep run only. */
export const alsoAtThePage: typeof atThePage = DEEP ? atThePage : (name) => test.skip(name);

/** The same for several tests at one page, each of which goes on where the one before it left off: to open a page takes long. */
export function atOnePage(what: string, tests: Readonly<Record<string, Deed>>, opening: Opening = {}): void {
  describe(what, () => {
    let opened: Opened | undefined;
    for (const [name, run] of Object.entries(tests))
      test(name, async (context) => {
        opened ??= await openHere(context, opening);
        await runAt(opened, run);
      });
    afterAll(async () => await opened?.context.close());
  });
}

async function openHere(context: TestContext, opening: Opening): Promise<Opened> {
  const browser = await theBrowser();
  return browser ? openPage(browser, opening) : context.skip();
}

async function runAt(opened: Opened, run: Deed): Promise<void> {
  await run(opened);
  expect(opened.requests).toEqual([]);
  expect(opened.troubles).toEqual([]);
}
