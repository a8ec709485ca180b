import { PAPERS, type Paper } from './paper.ts';

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

/** The office paper of a region by its two letters (ISO 3166-1); A4 for any that is not known. */
export function paperOfRegion(region: string): Paper {
  const name = LETTER_REGIONS.has(region) ? 'letter' : 'A4';
  const paper = PAPERS.find((candidate) => candidate.name === name);
  if (!paper) throw new Error(`the table of papers lacks ${name}`);
  return paper;
}
