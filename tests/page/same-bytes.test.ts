import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, Download, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { copeleaf, folderWith } from '../cli/run-command.ts';
import { openPage, startBrowser } from './browser.ts';

let browser: Browser | undefined;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(async () => browser?.close());

describe('from an empty form with the network off', () => {
  test('one end becomes a PDF that is the command’s, byte for byte', async (context) => {
    if (!browser) return context.skip();
    const { page, requests, troubles } = await openPage(browser);
    await fill(page, 'outside diameter, the tube', '38,1');
    await fill(page, 'wall, the tube', '.095in');
    await fill(page, 'outside diameter, end A', '1-3/4"');
    await fill(page, 'angle, end A', "60°30'");
    const { job, pdf, name } = await savedBy(page);
    const folder = folderWith({ [`${name}.yaml`]: job });
    const run = copeleaf(folder, ['print', `${name}.yaml`]);
    expect(run.code).toBe(0);
    expect(pdf.equals(readFileSync(join(folder, `${name}.pdf`)))).toBe(true);
    expect(requests).toEqual([]);
    expect(troubles).toEqual([]);
  });
});

interface Saved {
  readonly name: string;
  readonly job: Buffer;
  readonly pdf: Buffer;
}

/** Types into the field of this name. */
async function fill(page: Page, name: string, words: string): Promise<void> {
  await page.getByRole('textbox', { name, exact: true }).fill(words);
}

async function savedBy(page: Page): Promise<Saved> {
  const job = await downloaded(page, 'Save job file');
  const pdf = await downloaded(page, 'Save PDF');
  return {
    name: job.suggestedFilename().replace(/\.yaml$/, ''),
    job: await bytes(job),
    pdf: await bytes(pdf),
  };
}

async function downloaded(page: Page, button: string): Promise<Download> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: button }).click(),
  ]);
  return download;
}

async function bytes(download: Download): Promise<Buffer> {
  return readFileSync(await download.path());
}
