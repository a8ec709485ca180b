import { readFile } from 'node:fs/promises';
import { openPage, startBrowser } from '../page/browser.ts';
import { type Bench, median } from './row.ts';

const BAR = 16;
const ROUNDS = 200;

/**
 * From a changed number to the redrawn leaf, measured in the browser on the brace sample: from the input event, as typing makes
 * it, until the new leaf stands in the page and is laid out. The angle of the end whose leaf is shown changes each time.
 */
export const bench: Bench = async () => {
  const browser = await startBrowser();
  const what = `from a changed number to the redrawn leaf, in the browser, ${ROUNDS} rounds`;
  if (!browser) return [{ what, measured: 'left out: no browser', bar: `${BAR} ms`, holds: true }];
  const job = await readFile(
    new URL('../../samples/brace.yaml', `file://${process.cwd()}/tests/bench/`),
    'utf8',
  );
  const { page } = await openPage(browser);
  await page.evaluate((text) => localStorage.setItem('copeleaf.job', text), job);
  await page.reload();
  await page.locator('.paper svg').first().waitFor();
  const times = await page.evaluate(measure, ROUNDS);
  await browser.close();
  const middle = median(times);
  const worst = Math.max(...times);
  return [
    {
      what,
      measured: `${middle.toFixed(1)} ms at the median, ${worst.toFixed(1)} at most`,
      bar: `${BAR} ms at the median`,
      holds: middle <= BAR,
    },
  ];
};

/** Runs in the page. */
async function measure(rounds: number): Promise<number[]> {
  const field = document.getElementById('at-tube-ends-A-angle');
  const paper = document.querySelector('.paper');
  if (!(field instanceof HTMLInputElement) || !paper) throw new Error('the page shows no leaf of end A');
  const times: number[] = [];
  for (let i = 0; i < rounds; i++) {
    const redrawn = new Promise<void>((done) => {
      const watcher = new MutationObserver(() => {
        watcher.disconnect();
        done();
      });
      watcher.observe(paper, { childList: true });
    });
    const start = performance.now();
    field.value = `${45 + (i % 40) + 0.25}deg`;
    field.dispatchEvent(new Event('input', { bubbles: true }));
    await redrawn;
    paper.getBoundingClientRect();
    times.push(performance.now() - start);
    // What comes after a change, as after any key: the frame that shows it.
    await new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
  }
  return times;
}
