import { Option } from 'commander';
import { plainName } from '../frame/names.ts';
import type { Job } from '../job/job.ts';
import { nearest } from '../job/text/nearest.ts';
import type { TubeSolution } from '../saddle/solve.ts';
import { namesOfPiece, piecesNamed } from '../together/pieces-named.ts';
import type { Language } from '../words/language.ts';
import { refuseArgument } from './trouble.ts';

/** The tubes that are asked for by name; none named is all of them. */
export interface Only {
  readonly only?: readonly string[];
}

export function onlyOption({ command }: Language): Option {
  return new Option('--only <name>', command.only).argParser(
    // Added to, not made anew for each name: a script may ask for thousands.
    (name: string, before: string[] = []) => {
      before.push(name);
      return before;
    },
  );
}

/** Of a job's pieces those that are asked for by name, both hands of each. Throws `Refusal` at a name that no tube has. */
export function onlyAsked(
  job: Job,
  pieces: readonly TubeSolution[],
  only: readonly string[] | undefined,
): readonly TubeSolution[] {
  if (only === undefined) return pieces;
  const known = [...new Set(pieces.flatMap((piece) => namesOfPiece(job, piece)))];
  const names = only.map((asked) => nameAsked('--only', asked, known, job.words));
  return piecesNamed(job, pieces, new Set(names));
}

/** Of these names of tubes the one that is asked for by a flag. Throws `Refusal` where none is, with the nearest. */
export function nameAsked(flag: string, asked: string, names: readonly string[], words: Language): string {
  const plain = plainName(asked);
  const name = names.find((each) => plainName(each) === plain);
  if (name !== undefined) return name;
  const objection = words.commandFaults.noTube(nearest(asked, names), names);
  throw refuseArgument('unknown-name', `${flag} ${asked}`, objection, words);
}
