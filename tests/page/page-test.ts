import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Opened, type Opening, openPage, startBrowser } from './browser.ts';

type PageTest = (name: string, run: (opened: Opened) => Promise<void>, opening?: Opening) => void;

/**
 * Starts a browser for a file of tests. Gives what makes a test at the page, opened from the disk with the network off: nothing may
 * be asked for, nothing go wrong.
 */
export function pageTests(): PageTest {
  let browser: Browser | undefined;
  beforeAll(async () => {
    browser = await startBrowser();
  });
  afterAll(async () => browser?.close());
  return (name, run, opening = {}) =>
    test(name, async (context) => {
      if (!browser) return context.skip();
      const opened = await openPage(browser, opening);
      await run(opened);
      expect(opened.requests).toEqual([]);
      expect(opened.troubles).toEqual([]);
      await opened.context.close();
    });
}
