import { type Document, LineCounter, parseDocument } from 'yaml';
import { type Reading, refused, taken } from '../../measure/reading.ts';
import type { Language } from '../../words/language.ts';
import { asWritten, type Objection } from '../../words/said.ts';
import type { Complaint } from './complaint.ts';
import { excessOf } from './limits.ts';
import { clipped, onOneLine } from './quoting.ts';

export interface JobText {
  readonly file: string;
  /** As it was written, but for lines that ended with a return alone. */
  readonly source: string;
  readonly document: Document.Parsed;
  readonly lines: LineCounter;
}

/** A complaint about a text that is no job file, which waits for its language. */
type Unparsed = (words: Language) => Complaint;

/**
 * Parses the text of a job file. Every value stays the text it was written as (the failsafe schema), so that `38.10`
 * or `0x1F` is judged as the person sees it. Of a text that is no YAML only the first mistake is told, since the others
 * mostly follow from it. Does not throw.
 */
export function parseJobText(written: string, file: string): Reading<JobText, Unparsed> {
  const source = inLines(written);
  const refuse = ({ code, at, read, said }: Unusable) =>
    refused(read, (words: Language): Complaint => {
      const quoted = read === '' ? words.job.text.nothing : asWritten(read);
      return { code, file, ...placeIn(source, at), read: quoted, ...said(words.job.text) };
    });
  const unusable = notReadable(source);
  if (unusable) return refuse(unusable);
  const lines = new LineCounter();
  const document = parseDocument(source, {
    schema: 'failsafe',
    uniqueKeys: false,
    prettyErrors: false,
    // Under `silent` a second document in the file would go unseen.
    logLevel: 'error',
    lineCounter: lines,
  });
  const mistake = document.errors[0] ?? document.warnings[0];
  if (mistake) {
    const [at] = mistake.pos;
    const said = (text: Words): Objection => text.notYaml(mistake.code);
    return refuse({ code: 'not-yaml', at, read: firstLine(source, at), said });
  }
  if (document.contents === null) {
    return refuse({ code: 'empty', at: 0, read: '', said: (text) => text.onlyComments });
  }
  return taken({ file, source, document, lines });
}

/** The same where lines end as some programs end them (YAML 1.2, 5.4), which the parser does not take; no sign comes to stand elsewhere. */
function inLines(text: string): string {
  return text.replace(/\r(?!\n)/g, '\n');
}

type Words = Language['job']['text'];

interface Unusable {
  readonly code: string;
  readonly at: number;
  readonly read: string;
  readonly said: (text: Words) => Objection;
}

function notReadable(source: string): Unusable | undefined {
  if (source.trim() === '') return { code: 'empty', at: 0, read: '', said: (text) => text.empty };
  const read = firstLine(source, 0);
  if (/^\s*%PDF-/.test(source)) return { code: 'not-text', at: 0, read, said: (text) => text.pdf };
  const stray = strayControl(source);
  if (stray >= 0) {
    return { code: 'not-text', at: stray, read: firstLine(source, stray), said: (text) => text.notText };
  }
  const excess = excessOf(source);
  return excess && { ...excess, read: firstLine(source, excess.at) };
}

/** Control characters that no text has, and what stands for bytes that are not UTF-8. */
function strayControl(source: string): number {
  for (let i = 0; i < source.length; i++) {
    const code = source.charCodeAt(i);
    if (code === 0xfffd || code === 0x7f || (code < 0x20 && code !== 0x09 && code !== 0x0a && code !== 0x0d))
      return i;
  }
  return -1;
}

/** The line round a place, cut to what a message can hold. */
export function firstLine(source: string, at: number): string {
  const begin = source.lastIndexOf('\n', Math.max(0, at - 1)) + 1;
  const line = source.slice(begin, begin + 200).split(/[\r\n]/)[0] ?? '';
  return clipped(onOneLine(line.replace('\uFEFF', ' ')).trim());
}

function placeIn(source: string, at: number): { line: number; column: number } {
  const before = source.slice(0, at).split('\n');
  return { line: before.length, column: (before.at(-1)?.length ?? 0) + 1 };
}
