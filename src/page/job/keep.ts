/** What this browser keeps of the page: the last job as it was left, and the saved printers in the words of `printers.ts`. */
type What = 'job' | 'printers';

/** What was kept, if anything was; a browser that keeps nothing is no mistake. */
export function kept(what: What): string | undefined {
  try {
    return localStorage.getItem(`copeleaf.${what}`) ?? undefined;
  } catch {
    return undefined;
  }
}

export function keep(what: What, text: string): void {
  try {
    localStorage.setItem(`copeleaf.${what}`, text);
  } catch {}
}

const LINK = 'copeleaf.link';

/**
 * Notes in this tab that a link's job is begun with, and gives whether that was so before and the page never came to show it: what held
 * it up then would do so at each reload.
 */
export function heldUpBy(fragment: string): boolean {
  try {
    const before = sessionStorage.getItem(LINK) === fragment;
    if (before) sessionStorage.removeItem(LINK);
    else sessionStorage.setItem(LINK, fragment);
    return before;
  } catch {
    return false;
  }
}

/** Notes that the page shows the job. */
export function cameToShow(): void {
  try {
    sessionStorage.removeItem(LINK);
  } catch {}
}
