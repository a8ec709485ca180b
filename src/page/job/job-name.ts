import { docWordsAt, type JobDoc, tubePaths } from './job-doc.ts';

/** What a job's files are called, without an ending: its tube where there is one, else its title. */
export function nameOf(doc: JobDoc): string {
  const [first = ['tube'], ...others] = tubePaths(doc);
  const tube = others.length === 0 ? docWordsAt(doc, [...first, 'name']) : '';
  return fileName(tube) || fileName(docWordsAt(doc, ['job'])) || 'cope';
}

/** Words as every system takes them in a file's name. */
function fileName(words: string): string {
  return words
    .normalize('NFC')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '')
    .slice(0, 60);
}
