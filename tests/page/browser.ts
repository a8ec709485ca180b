import { existsSync } from 'node:fs';
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';

/** Where a Chromium of the system's may be. */
const ON_THE_SYSTEM = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];

/** WebGL without a graphics card, the rest drawn without its make-believe; nothing that loosens what a page may do. */
const ARGS = [
  '--no-sandbox',
  '--use-angle=swiftshader',
  '--enable-unsafe-swiftshader',
  '--ignore-gpu-blocklist',
  '--disable-gpu-compositing',
];

/** The page as it is built. */
export const PAGE = new URL('../../dist/copeleaf.html', import.meta.url).href;

let starting: Promise<Browser | undefined> | undefined;

/**
 * The Chromium that comes from the registry, else the system's: one for all files of tests that a worker runs, started when it is
 * first asked for; it ends with the worker. Where neither starts, gives undefined and says so; with COPELEAF_NEED_BROWSER set it
 * throws instead, so that a machine that has to run these tests can't leave them out.
 */
export function theBrowser(): Promise<Browser | undefined> {
  starting ??= startBrowser();
  return starting;
}

/** The same, for one use and to be closed. */
export async function startBrowser(): Promise<Browser | undefined> {
  const failures: string[] = [];
  for (const path of await paths(failures)) {
    try {
      return await chromium.launch({ executablePath: path, args: ARGS });
    } catch (error) {
      failures.push(`${path}: ${String(error).split('\n')[0]}`);
    }
  }
  const why = failures.length > 0 ? failures.join('; ') : 'none was found';
  if (process.env.COPELEAF_NEED_BROWSER) throw new Error(`No Chromium starts: ${why}`);
  console.warn(`LEFT OUT: the tests of the page in a browser, for no Chromium starts here (${why}).`);
  return undefined;
}

async function paths(failures: string[]): Promise<readonly string[]> {
  return [...(await fromRegistry(failures)), ...ON_THE_SYSTEM.filter((path) => existsSync(path))];
}

async function fromRegistry(failures: string[]): Promise<readonly string[]> {
  // It unpacks the libraries that it needs on a bare system only where it believes itself there.
  process.env.AWS_LAMBDA_JS_RUNTIME ??= 'nodejs20.x';
  try {
    const { default: packed } = await import('@sparticuz/chromium');
    return [await packed.executablePath()];
  } catch (error) {
    failures.push(String(error).split('\n')[0] ?? '');
    return [];
  }
}

export interface Opening {
  readonly width?: number;
  readonly height?: number;
  readonly dark?: boolean;
  readonly locale?: string;
  /** The job that was worked on here before; else the form is empty. */
  readonly job?: string;
  /** What comes after the address of the page. */
  readonly fragment?: string;
  /** What runs in the page before its own scripts. */
  readonly script?: string;
  /** A browser that was here before. */
  readonly context?: BrowserContext;
}

/** A page and what went on round it. */
export interface Opened {
  readonly page: Page;
  readonly context: BrowserContext;
  /** Every address that was asked for, but for the page's own. */
  readonly requests: readonly string[];
  /** Whatever was thrown or refused by the content policy. */
  readonly troubles: readonly string[];
}

/** Opens the built page from the disk with the network off. */
export async function openPage(browser: Browser, opening: Opening = {}): Promise<Opened> {
  const { width = 1280, height = 900, dark = false, locale = 'de-DE', fragment = '' } = opening;
  const context =
    opening.context ??
    (await browser.newContext({
      viewport: { width, height },
      colorScheme: dark ? 'dark' : 'light',
      locale,
      offline: true,
      acceptDownloads: true,
    }));
  context.setDefaultTimeout(60_000);
  if (opening.script) await context.addInitScript(opening.script);
  if (opening.job) await context.addInitScript(keepFirst, opening.job);
  const page = await context.newPage();
  const requests: string[] = [];
  const troubles: string[] = [];
  page.on('request', (request) => {
    const address = request.url();
    if (!address.startsWith(PAGE) && !/^(blob:|data:|about:blank)/.test(address)) requests.push(address);
  });
  page.on('pageerror', (error) => troubles.push(String(error)));
  page.on('console', (message) => {
    if (message.type() === 'error') troubles.push(message.text());
  });
  await page.goto(`${PAGE}${fragment}`);
  if (opening.job) await page.locator('.paper svg').first().waitFor();
  return { page, context, requests, troubles };
}

/** Runs in the page before its own scripts. */
function keepFirst(job: string): void {
  if (location.protocol !== 'file:' || localStorage.getItem('copeleaf.job') !== null) return;
  localStorage.setItem('copeleaf.job', job);
}

/** Goes away from the page as people do, so that the browser has what the page kept. */
export async function leave(page: Page): Promise<void> {
  await page.goto('about:blank');
  await page.close();
}
