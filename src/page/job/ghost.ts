import type { TubeSolution } from '../../saddle/solve.ts';
import type { Language } from '../../words/language.ts';
import { workOut } from './outcome.ts';

const EXAMPLE = `copeleaf: 1
tube:
  od: 38.1
  between: 400
  ends:
    A: { onto: { od: 44.5 }, angle: 60 }
    B: { onto: { od: 44.5 }, angle: 60 }
`;

/** A joint to look at before anything is filled in. */
export function ghostTube(words: Language): TubeSolution {
  const outcome = workOut(EXAMPLE, words);
  const [solution] = outcome.kind === 'read' ? outcome.solutions : [];
  if (!solution) throw new Error('the example is a job');
  return solution;
}
