import { PAPERS, type Paper } from '../job/paper.ts';

/** Where letter is the office paper; A4 is nearly everywhere else (common practice, no source). */
const LETTER_REGIONS = new Set([
  'US',
  'CA',
  'MX',
  'CL',
  'CO',
  'CR',
  'GT',
  'NI',
  'PA',
  'PH',
  'PR',
  'SV',
  'VE',
  'DO',
]);

/** The paper that the system's region uses: by the environment's locale, else by the machine's. */
export function regionalPaper(env: Readonly<Record<string, string | undefined>>): Paper {
  const asked = env.LC_ALL || env.LC_PAPER || env.LANG || '';
  const region = /^[a-z]{2,3}[_-]([A-Z]{2})\b/.exec(asked)?.[1] ?? machineRegion();
  const name = LETTER_REGIONS.has(region) ? 'letter' : 'A4';
  const paper = PAPERS.find((candidate) => candidate.name === name);
  if (!paper) throw new Error(`the table of papers lacks ${name}`);
  return paper;
}

function machineRegion(): string {
  return new Intl.Locale(Intl.DateTimeFormat().resolvedOptions().locale).region ?? '';
}
