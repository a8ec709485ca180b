import { partOf, type Said } from '../measure/said.ts';
import type { Language } from '../words/language.ts';

/** The process as a command sees it, so that tests can run commands without starting one. */
export interface Shell {
  readonly cwd: string;
  /** The folder of the package, where the starters are. */
  readonly home: URL;
  readonly env: Readonly<Record<string, string | undefined>>;
  /** The language in which it is answered. */
  readonly words: Language;
  /** Results: what a person reads, or data. */
  out(result: Said | Uint8Array): Promise<void>;
  /** Everything else. */
  err(text: Said): void;
  /** Writes over the line it wrote before, where a person watches standard error; nobody does where there is none. */
  readonly overwrite?: (text: Said) => void;
  /** Standard input; of more than so many bytes, not all. */
  input(most: number): Promise<Uint8Array>;
}

/** The shell of the running process. */
export function processShell(home: URL, words: Language): Shell {
  const { stderr } = process;
  // What is told beside the result is lost where nobody takes it: the result is not.
  stderr.on('error', () => {});
  return {
    cwd: workingFolder(),
    home,
    env: process.env,
    words,
    out: written,
    err: (text) => stderr.write(text),
    ...(stderr.isTTY && { overwrite: (text) => stderr.write(`\r\u001b[K${text}`) }),
    input: (most) => inputOf(process.stdin, most),
  };
}

/** One that was taken away meanwhile is named still: that nothing is there is told of each file. */
function workingFolder(): string {
  try {
    return process.cwd();
  } catch {
    return process.env.PWD || '/';
  }
}

/** The same shell, through which nothing that a person wrote, such as the name of a file or a folder, steers a terminal. */
export function plainShell(shell: Shell): Shell {
  const plain = (text: Said): Said => partOf(text, text.replace(/[^\P{Cc}\n]/gu, ' '));
  return {
    ...shell,
    out: (result) => shell.out(typeof result === 'string' ? plain(result) : result),
    err: (text) => shell.err(plain(text)),
  };
}

/** What comes, until it ends or is more than so many bytes. */
export async function inputOf(from: AsyncIterable<Uint8Array>, most: number): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  let length = 0;
  for await (const chunk of from) {
    chunks.push(chunk);
    length += chunk.length;
    if (length > most) break;
  }
  return Buffer.concat(chunks);
}

/** Nobody takes standard output any more: a full disk, a reader that has gone. */
export class OutputLost extends Error {
  readonly code: string;

  constructor({ code = '' }: NodeJS.ErrnoException) {
    super(code);
    this.code = code;
  }
}

/** Throws `OutputLost`. */
function written(data: Said | Uint8Array): Promise<void> {
  return new Promise((done, failed) => {
    // It is told twice, once as an event that nobody else hears.
    process.stdout.once('error', (error) => failed(new OutputLost(error)));
    process.stdout.write(data, (error) => (error ? failed(new OutputLost(error)) : done()));
  });
}
