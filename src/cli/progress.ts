import type { TubeSolution } from '../saddle/solve.ts';
import { asWritten } from '../words/said.ts';
import type { Shell } from './shell.ts';

/** Fewer than this are done before anyone could read a count. */
const WORTH_TELLING = 50;

/** Works on one piece after the other, with a count of tubes on the terminal, of a frame all that are one piece; silent when nobody watches. */
export function counting<Result>(
  { overwrite, words }: Shell,
  pieces: readonly TubeSolution[],
  work: (piece: TubeSolution) => Result,
): readonly Result[] {
  const total = pieces.reduce((sum, piece) => sum + tubesOf(piece), 0);
  if (!overwrite || total < WORTH_TELLING) return pieces.map(work);
  let done = 0;
  const results = pieces.map((piece) => {
    const result = work(piece);
    const tens = Math.floor(done / 10);
    done += tubesOf(piece);
    if (Math.floor(done / 10) > tens || done === total)
      overwrite(words.commandAnswers.tubesDone(done, total));
    return result;
  });
  overwrite(asWritten(''));
  return results;
}

function tubesOf({ places }: TubeSolution): number {
  return places?.length ?? 1;
}
