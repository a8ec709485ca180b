import type { Said } from '../measure/said.ts';
import type { Language } from '../words/language.ts';

/** The process as a command sees it, so that tests can run commands without starting one. */
export interface Shell {
  readonly cwd: string;
  /** The folder of the package, where the starters are. */
  readonly home: URL;
  readonly env: Readonly<Record<string, string | undefined>>;
  /** Whether a person watches standard error. */
  readonly watched: boolean;
  /** The language in which it is answered. */
  readonly words: Language;
  /** Results: what a person reads, or data. */
  out(result: Said | Uint8Array): Promise<void>;
  /** Everything else. */
  err(text: Said): void;
  /** Standard input; of more than so many bytes, not all. */
  input(most: number): Promise<Uint8Array>;
}

/** The shell of the running process. */
export function processShell(home: URL, words: Language): Shell {
  return {
    cwd: process.cwd(),
    home,
    env: process.env,
    watched: process.stderr.isTTY === true,
    words,
    out: written,
    err: (text) => process.stderr.write(text),
    input: (most) => inputOf(process.stdin, most),
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
