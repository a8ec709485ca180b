import { type Document, LineCounter, parseDocument, type YAMLParseError, type YAMLWarning } from 'yaml';
import { type Complaint, type Misreading, Refusal } from './complaint.ts';
import { onOneLine, shortened } from './quoting.ts';

export interface JobText {
  readonly file: string;
  readonly source: string;
  readonly document: Document.Parsed;
  readonly lines: LineCounter;
}

/** Signs a file may have: ten thousand tubes take about a tenth of it. */
const LONGEST = 20_000_000;

/** Deeper than any job, and shallow enough for the parser, which calls itself at each level. */
const DEEPEST_BRACKETS = 40;
const DEEPEST_INDENT = 120;

/**
 * Parses the text of a job file. Every value stays the text it was written as (the failsafe schema), so that `38.10`
 * or `0x1F` is judged as the person sees it. Throws `Refusal` where the text is no YAML; only the first mistake
 * is told then, since the others mostly follow from it.
 */
export function parseJobText(source: string, file: string): JobText {
  const unusable = notReadable(source);
  if (unusable) throw refusal(file, source, unusable.code, unusable.at, unusable);
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
  if (mistake) throw refusal(file, source, 'not-yaml', mistake.pos[0], inWords(mistake, source));
  if (document.contents === null) {
    throw refusal(file, source, 'empty', 0, {
      read: '',
      why: 'the file holds only comments',
      instead: WHOLE_JOB,
    });
  }
  return { file, source, document, lines };
}

const WHOLE_JOB = 'a job that begins with `copeleaf: 1`; `copeleaf starter` lists some to begin from';

interface Unusable extends Misreading {
  readonly code: string;
  readonly at: number;
}

function notReadable(source: string): Unusable | undefined {
  if (source.trim() === '') {
    return { code: 'empty', at: 0, read: '', why: 'the file is empty', instead: WHOLE_JOB };
  }
  const read = firstLine(source, 0);
  if (/^\s*%PDF-/.test(source)) {
    const instead = 'the job file; one that was printed is attached to its PDF';
    return { code: 'not-text', at: 0, read, why: 'this is a PDF and not a job file', instead };
  }
  const stray = strayControl(source);
  if (stray >= 0) {
    const why = 'the file is not plain text in UTF-8';
    return {
      code: 'not-text',
      at: stray,
      read: firstLine(source, stray),
      why,
      instead: 'a job file saved as UTF-8 text',
    };
  }
  if (source.length > LONGEST) {
    return {
      code: 'too-large',
      at: 0,
      read,
      why: 'the file is too large for a job',
      instead: 'several smaller jobs',
    };
  }
  const deep = tooDeep(source);
  if (deep < 0) return undefined;
  const why = 'it is nested too deeply for a job';
  return {
    code: 'too-deep',
    at: deep,
    read: firstLine(source, deep),
    why,
    instead: 'the few levels that a job has',
  };
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

/** Where the text nests too deeply, or -1. Brackets in comments and quotes count too, which does no harm. */
function tooDeep(source: string): number {
  let open = 0;
  for (let i = 0; i < source.length; i++) {
    const sign = source[i];
    if (sign === '[' || sign === '{') open++;
    else if (sign === ']' || sign === '}') open = Math.max(0, open - 1);
    if (open > DEEPEST_BRACKETS) return i;
  }
  return source.search(
    new RegExp(`^(?:[ \\t]|[-?:](?=[ \\t])){${DEEPEST_INDENT}}(?=[ \\t]*[^ \\t\\r\\n])`, 'm'),
  );
}

const MISTAKES: Readonly<Record<string, readonly [why: string, instead: string]>> = {
  TAB_AS_INDENT: ['YAML does not take tabs at the start of a line', 'spaces'],
  MULTIPLE_DOCS: ['`---` begins a second document', 'one job in one file'],
  BAD_SCALAR_START: ['a value can not begin with this sign unless it is quoted', 'the value in quotes'],
  MULTILINE_IMPLICIT_KEY: ['the line has no `key: value`', 'a colon and a space after the key'],
  BLOCK_AS_IMPLICIT_KEY: [
    'there is a second colon in the value',
    'one `key: value` a line, or the value in quotes',
  ],
  BAD_ALIAS: [
    '`*` and `&` at the start of a value have a meaning in YAML',
    'the value in quotes, or written out',
  ],
  TAG_RESOLVE_FAILED: ['`!` at the start of a value has a meaning in YAML', 'the value in quotes'],
  BAD_DIRECTIVE: ['`%` at the start of a line has a meaning in YAML', 'the line without it'],
  MISSING_CHAR: ['a closing sign or a separator is missing', 'the missing quote, bracket, comma or colon'],
  BAD_INDENT: [
    'the lines are not indented alike, or a bracket is not closed',
    'the same indent for keys of one level',
  ],
  UNEXPECTED_TOKEN: [
    'something follows where the value should be over',
    'the whole value in one pair of quotes',
  ],
};

function inWords(mistake: YAMLParseError | YAMLWarning, text: string): Misreading {
  const [why, instead] = MISTAKES[mistake.code] ?? [
    'this is not written as YAML',
    'lines of the form `key: value`',
  ];
  return { read: firstLine(text, mistake.pos[0]), why, instead };
}

/** The line round a place, cut to what a message can hold. */
export function firstLine(source: string, at: number): string {
  const begin = source.lastIndexOf('\n', Math.max(0, at - 1)) + 1;
  const line = source.slice(begin, begin + 200).split(/[\r\n]/)[0] ?? '';
  return shortened(onOneLine(line.replace('\uFEFF', ' ')).trim());
}

function refusal(file: string, source: string, code: string, at: number, misreading: Misreading): Refusal {
  const before = source.slice(0, at).split('\n');
  const place = { line: before.length, column: (before.at(-1)?.length ?? 0) + 1 };
  const { why, instead } = misreading;
  const complaint: Complaint = { code, file, ...place, read: misreading.read || 'nothing', why, instead };
  return new Refusal([complaint]);
}
