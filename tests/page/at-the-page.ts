import { readFileSync } from 'node:fs';
import type { Download, Page } from 'playwright-core';

/** Types into the field of this name. */
export async function fill(page: Page, name: string, words: string): Promise<void> {
  await page.getByRole('textbox', { name, exact: true }).fill(words);
}

/** Chooses in the list of this name. */
export async function choose(page: Page, name: string, words: string): Promise<void> {
  await page.getByRole('combobox', { name, exact: true }).selectOption(words);
}

/** Chooses one of several shapes. */
export async function pick(page: Page, name: string, within: string): Promise<void> {
  await page.getByRole('group', { name: within, exact: true }).getByText(name, { exact: true }).click();
}

export async function press(page: Page, name: string): Promise<void> {
  await page.getByRole('button', { name, exact: true }).click();
}

/** Presses one of the less used buttons. */
export async function fromMenu(page: Page, name: string): Promise<void> {
  await page.locator('summary', { hasText: 'Job' }).first().click();
  await press(page, name);
}

/** The brace that the page is for: an end each on tubes of two sizes; as the page keeps it once it is filled in. */
export const BRACE = `copeleaf: 1
units: mm
tube:
  name: bunk stay
  od: 31,75
  wall: .095in
  between: 619
  ends:
    A: { onto: { od: 1-1/2" }, angle: 62 }
    B: { onto: { od: 44.5mm }, angle: 48°30', clock: 35, offset: -2.5 }
paper: A4
`;

/** Fills it in, field by field. */
export async function fillBrace(page: Page): Promise<void> {
  await fill(page, 'name of the tube', 'bunk stay');
  await fill(page, 'outside diameter, the tube', '31,75');
  await fill(page, 'wall, the tube', '.095in');
  await fill(page, 'outside diameter, end A', '1-1/2"');
  await fill(page, 'angle, end A', '62');
  await choose(page, 'End B', 'one');
  await fill(page, 'outside diameter, end B', '44.5mm');
  await fill(page, 'angle, end B', "48°30'");
  await fill(page, 'clocking, end B', '35');
  await fill(page, 'offset, end B', '-2.5');
  await fill(page, 'between work points, the tube', '619');
}

/** A file that the page hands out. */
export interface Saved {
  readonly name: string;
  readonly bytes: Buffer;
}

export async function saved(page: Page, act: () => Promise<void>): Promise<Saved> {
  const [download] = await Promise.all([page.waitForEvent('download'), act()]);
  return { name: download.suggestedFilename(), bytes: await bytesOf(download) };
}

async function bytesOf(download: Download): Promise<Buffer> {
  return readFileSync(await download.path());
}

export const savedJob = (page: Page): Promise<Saved> => saved(page, () => fromMenu(page, 'Save job file'));
export const savedPdf = (page: Page): Promise<Saved> => saved(page, () => press(page, 'Save PDF'));
