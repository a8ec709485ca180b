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
  /** All of standard input. */
  input(): Promise<string>;
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
    async input() {
      const chunks: Uint8Array[] = [];
      for await (const chunk of process.stdin) chunks.push(chunk);
      return Buffer.concat(chunks).toString('utf8');
    },
  };
}

function written(data: Said | Uint8Array): Promise<void> {
  // A reader that has seen enough, such as `head`, closes the pipe: that is no failure of ours.
  process.stdout.once('error', (error: NodeJS.ErrnoException) => {
    if (error.code === 'EPIPE') process.exit(0);
  });
  return new Promise((done, failed) =>
    process.stdout.write(data, (error) => (error ? failed(error) : done())),
  );
}
