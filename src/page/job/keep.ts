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
