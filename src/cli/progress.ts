import { asWritten } from '../words/said.ts';
import type { Shell } from './shell.ts';

export interface Progress {
  step(): void;
  end(): void;
}

/** Fewer than this are done before anyone could read a count. */
const WORTH_TELLING = 50;

/** A count of tubes on the terminal for a long run; silent when nobody watches. */
export function progressOn({ overwrite, words }: Shell, total: number): Progress {
  if (!overwrite || total < WORTH_TELLING) return { step() {}, end() {} };
  let done = 0;
  return {
    step() {
      done += 1;
      if (done % 10 === 0 || done === total) overwrite(words.commandAnswers.tubesDone(done, total));
    },
    end() {
      overwrite(asWritten(''));
    },
  };
}
