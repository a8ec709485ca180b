/** What this browser keeps of the page; a browser that keeps nothing is no mistake. */
function kept(key: string): string | undefined {
  try {
    return localStorage.getItem(key) ?? undefined;
  } catch {
    return undefined;
  }
}

/** Gives whether it was kept. */
function keep(key: string, text: string): boolean {
  try {
    localStorage.setItem(key, text);
    return true;
  } catch {
    return false;
  }
}

const JOB = 'copeleaf.job';
const PRINTERS = 'copeleaf.printers';

/** The last job, as it was left. */
export function keptJob(): string | undefined {
  return kept(JOB);
}

export function keepJob(text: string): boolean {
  return keep(JOB, text);
}

/** The saved printers, in the words in which `printers.ts` writes them. */
export function keptPrinters(): string | undefined {
  return kept(PRINTERS);
}

export function keepPrinters(text: string): boolean {
  return keep(PRINTERS, text);
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
