import type { Paper } from '../job/paper/paper.ts';
import { paperOfRegion } from '../job/paper/regional-paper.ts';

/** The paper that the system's region uses: by the environment's locale, else by the machine's. */
export function regionalPaper(env: Readonly<Record<string, string | undefined>>): Paper {
  const asked = env.LC_ALL || env.LC_PAPER || env.LANG || '';
  return paperOfRegion(/^[a-z]{2,3}[_-]([A-Z]{2})\b/.exec(asked)?.[1] ?? machineRegion());
}

function machineRegion(): string {
  return new Intl.Locale(Intl.DateTimeFormat().resolvedOptions().locale).region ?? '';
}
