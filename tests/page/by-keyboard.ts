import type { Page } from 'playwright-core';

/** What can be worked on the page as it stands, and where the focus is among it. */
export interface Stops {
  /** Everything that is shown and takes keys, in the order of the page; only what is in a window where one is open. */
  readonly all: readonly Stop[];
  /** Which of them has the focus; -1 where none has. */
  readonly at: number;
  /** Why the focus is not seen; empty where it is. */
  readonly unseen: string;
}

export interface Stop {
  readonly name: string;
  readonly kind: 'text' | 'select' | 'checkbox' | 'radio' | 'summary' | 'tab' | 'button' | 'jump' | 'region';
  /** Stands there, but does nothing for now. */
  readonly idle: boolean;
  readonly place: 'top' | 'form' | 'views' | 'window';
  /** What the arrow keys go through together with it. */
  readonly group: string;
}

export async function stops(page: Page): Promise<Stops> {
  return JSON.parse(await page.evaluate<string>('lookRound()'));
}

/** Run in the page before its own scripts, so that `stops` need not send it every time. */
export const LOOK_ROUND = (): string =>
  `globalThis.lookRound = () => JSON.stringify((${lookRound})('${CAN}'));`;

/** Presses Tab until everything that Tab leads to has had the focus once. Gives the places in `all`, in the order of Tab. */
export async function walk(page: Page, key = 'Tab'): Promise<readonly Stops[]> {
  const seen: Stops[] = [];
  const places = new Set<number>();
  for (let i = 0; i < 400; i++) {
    await page.keyboard.press(key);
    const now = await stops(page);
    if (now.at < 0) continue;
    if (places.has(now.at)) return seen;
    places.add(now.at);
    seen.push(now);
  }
  throw new Error('Tab never comes round');
}

/** What Tab and the arrow keys never lead to, by name. */
export function unreached(walked: readonly Stops[]): readonly string[] {
  const reached = new Set(walked.map(({ at }) => at));
  const groups = new Set(walked.flatMap(({ all, at }) => all[at]?.group ?? []));
  const all = walked.at(-1)?.all ?? [];
  return all
    .filter(({ group }, i) => !reached.has(i) && !(group !== '' && groups.has(group)))
    .map(({ name }) => name);
}

/** Moves the focus by Tab to what has this name. */
export async function reach(page: Page, name: string): Promise<void> {
  const named = ({ all, at }: Stops): number =>
    all[at]?.name === name ? at : all.findIndex((each) => each.name === name);
  await goTo(page, named, name);
}

/** Moves the focus by Tab to what stood at this place of `then`. */
export async function reachAgain(page: Page, then: readonly Stop[], at: number): Promise<void> {
  await goTo(page, ({ all }) => placeNow(all, then, at), `${then[at]?.name} again`);
}

/** Where what stood at a place stands now, -1 where it is gone: what the page has said since may stand before it. */
export function placeNow(now: readonly Stop[], then: readonly Stop[], at: number): number {
  const name = then[at]?.name;
  const before = then.slice(0, at).filter((each) => each.name === name).length;
  return now.flatMap((each, i) => (each.name === name ? [i] : []))[before] ?? -1;
}

async function goTo(page: Page, find: (now: Stops) => number, what: string): Promise<void> {
  for (let i = 0; i < 400; i++) {
    const now = await shows(page, find, what);
    const { all, at } = now;
    const target = find(now);
    const stop = all[target];
    if (!stop || at === target) return;
    if (stop.group !== '' && all[at]?.group === stop.group) await page.keyboard.press('ArrowRight');
    else for (const key of tabs(all, at, target)) await page.keyboard.press(key);
  }
  throw new Error(`no way by keys to ${what}`);
}

/** What the page has yet to show, for it measures its pictures first, is waited for. */
async function shows(page: Page, find: (now: Stops) => number, what: string): Promise<Stops> {
  for (let i = 0; i < 600; i++) {
    const now = await stops(page);
    if (find(now) >= 0) return now;
    await page.waitForTimeout(100);
  }
  const { all } = await stops(page);
  throw new Error(`${what} is not on the page: ${all.map(({ name }) => name).join(', ')}`);
}

/** As many presses of Tab as lie between two places: a group takes one. Where they lead is looked at after them. */
function tabs(all: readonly Stop[], from: number, to: number): readonly string[] {
  const way = from < to ? all.slice(from + 1, to + 1) : all.slice(to, from);
  const single = way.filter(({ group }) => group === '').length;
  const groups = new Set(way.map(({ group }) => group).filter((group) => group !== all[from]?.group));
  groups.delete('');
  return Array.from({ length: Math.max(1, single + groups.size) }, () => (from < to ? 'Tab' : 'Shift+Tab'));
}

export async function enter(page: Page, name: string, key = 'Enter'): Promise<void> {
  await reach(page, name);
  await page.keyboard.press(key);
}

/** Writes into the field of this name in place of what is there. */
export async function write(page: Page, name: string, words: string): Promise<void> {
  await reach(page, name);
  await page.keyboard.press('Control+a');
  await page.keyboard.type(words);
}

/** Chooses in the list of this name by the letters of what is chosen. */
export async function choose(page: Page, name: string, words: string): Promise<void> {
  await reach(page, name);
  await page.keyboard.type(words);
}

/** The name of what has the focus; empty where nothing has. */
export async function focused(page: Page): Promise<string> {
  const { all, at } = await stops(page);
  return all[at]?.name ?? '';
}

/** The job as the page keeps it at once. */
export async function keptJob(page: Page): Promise<string> {
  return page.evaluate(() => localStorage.getItem('copeleaf.job') ?? '');
}

const CAN = 'a[href], area[href], button, input, select, textarea, summary, [tabindex], [contenteditable]';
const PRESSES = ['click', 'dblclick', 'mousedown', 'mouseup', 'pointerdown', 'touchstart'];

/** What takes presses of a pointer without being of a kind that keys can lead to, as the browser's debugger knows it. */
export async function pressableOnly(page: Page): Promise<readonly string[]> {
  const debug = await page.context().newCDPSession(page);
  const { result } = await debug.send('Runtime.evaluate', { expression: 'document.documentElement' });
  const { listeners } = await debug.send('DOMDebugger.getEventListeners', {
    objectId: result.objectId ?? '',
    depth: -1,
  });
  const nodes = new Set(
    listeners
      .filter(({ type }) => PRESSES.includes(type))
      .flatMap(({ backendNodeId }) => backendNodeId ?? []),
  );
  const found: string[] = [];
  for (const backendNodeId of nodes) {
    const { object } = await debug.send('DOM.resolveNode', { backendNodeId });
    const { result: said } = await debug.send('Runtime.callFunctionOn', {
      objectId: object.objectId ?? '',
      functionDeclaration: 'function (can) { return this.matches(can) ? "" : this.outerHTML.slice(0, 120); }',
      arguments: [{ value: CAN }],
      returnByValue: true,
    });
    if (said.value !== '') found.push(String(said.value));
  }
  await debug.detach();
  return found;
}

/** Runs in the page. */
function lookRound(can: string): Stops {
  const within = Array.from(document.querySelectorAll('dialog')).findLast((each) => each.open) ?? document;
  const shown = Array.from(within.querySelectorAll<HTMLElement>(can)).filter(
    (each) => each.checkVisibility({ visibilityProperty: true }) && !each.matches(':disabled'),
  );
  const kindOf = (each: HTMLElement): Stop['kind'] => {
    if (each.matches('[type=radio]')) return 'radio';
    if (each.matches('[type=checkbox]')) return 'checkbox';
    if (each.matches('input, textarea, [contenteditable]')) return 'text';
    if (each.matches('select')) return 'select';
    if (each.matches('summary')) return 'summary';
    if (each.matches('[role=tab]')) return 'tab';
    if (each.matches('.jump')) return 'jump';
    return each.matches('button, a, area') ? 'button' : 'region';
  };
  const nameOf = (each: HTMLElement): string => {
    const label = 'labels' in each && each.labels instanceof NodeList ? each.labels[0] : undefined;
    const words = Array.from(label instanceof HTMLElement ? label.childNodes : [])
      .filter((part) => !part.contains(each))
      .map(({ textContent }) => textContent)
      .join('');
    const own = each.getAttribute('aria-label') ?? (label ? words : (each.textContent ?? ''));
    const legend = each.matches('[type=radio]')
      ? each.closest('fieldset')?.querySelector('legend')
      : undefined;
    return `${own.trim() || each.id || each.tagName}${legend ? ` of ${legend.textContent}` : ''}`.slice(
      0,
      90,
    );
  };
  const groupOf = (each: HTMLElement): string => {
    if (each instanceof HTMLInputElement && each.type === 'radio') return `radio ${each.name}`;
    return each.closest('[role=tablist]') ? 'tabs' : '';
  };
  const placeOf = (each: HTMLElement): Stop['place'] => {
    if (each.closest('dialog')) return 'window';
    if (each.closest('header')) return 'top';
    return each.closest('.views') ? 'views' : 'form';
  };
  /** Empty where the mark of the focus is drawn and nothing lies over it. */
  const whyUnseen = (each: HTMLElement): string => {
    const marked = [each, each.closest('label')].find((one) => {
      const style = one && getComputedStyle(one);
      return style && style.outlineStyle !== 'none' && Number.parseFloat(style.outlineWidth) >= 2;
    });
    if (!marked) return 'it has no outline';
    const { outlineOffset, outlineWidth } = getComputedStyle(marked);
    const out = Number.parseFloat(outlineOffset) + Number.parseFloat(outlineWidth);
    const box = marked.getBoundingClientRect();
    for (let round = marked.parentElement; round && round !== document.body; round = round.parentElement) {
      if (getComputedStyle(round).overflow === 'visible') continue;
      const edge = round.getBoundingClientRect();
      if (box.left - out < edge.left - 0.5 || box.right + out > edge.right + 0.5)
        return `its outline is cut off at the side of ${round.className || round.tagName}`;
    }
    const [left, right] = [Math.max(box.left, 0), Math.min(box.right, innerWidth)];
    const [top, bottom] = [Math.max(box.top, 0), Math.min(box.bottom, innerHeight)];
    if (right - left < 1 || bottom - top < 1) return 'it is out of the window';
    const over = document.elementFromPoint((left + right) / 2, (top + bottom) / 2);
    return over && (marked.contains(over) || over.contains(marked))
      ? ''
      : `${over?.outerHTML.slice(0, 80)} lies over it`;
  };
  const active = document.activeElement;
  const at = active instanceof HTMLElement ? shown.indexOf(active) : -1;
  return {
    all: shown.map((each) => ({
      name: nameOf(each),
      kind: kindOf(each),
      idle: each.getAttribute('aria-disabled') === 'true',
      place: placeOf(each),
      group: groupOf(each),
    })),
    at,
    unseen: active instanceof HTMLElement && at >= 0 ? whyUnseen(active) : '',
  };
}
