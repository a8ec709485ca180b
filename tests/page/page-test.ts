import { expect, test } from 'vitest';
import { type Opened, type Opening, openPage, theBrowser } from './browser.ts';

/** A test at the page, opened from the disk with the network off: nothing may be asked for, nothing go wrong. */
export function atThePage(name: string, run: (opened: Opened) => Promise<void>, opening: Opening = {}): void {
  test(name, async (context) => {
    const browser = await theBrowser();
    if (!browser) return context.skip();
    const opened = await openPage(browser, opening);
    try {
      await run(opened);
      expect(opened.requests).toEqual([]);
      expect(opened.troubles).toEqual([]);
    } finally {
      await opened.context.close();
    }
  });
}
