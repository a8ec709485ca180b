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
    (name: string, before: readonly string[] = []) => [...before, name],
  );
}

/** Of a job's pieces those that are asked for by name, both hands of each. Throws `Refusal` at a name that no tube has. */
export function onlyAsked(
  job: Job,
  pieces: readonly TubeSolution[],
  only: readonly string[] | undefined,
): readonly TubeSolution[] {
  if (only === undefined) return pieces;
  const known = new Map(
    pieces.flatMap((piece) => namesOfPiece(job, piece)).map((name) => [plainName(name), name]),
  );
  const names = only.map((asked) => {
    const name = known.get(plainName(asked));
    if (name !== undefined) return name;
    const near = nearest(asked, [...known.values()]);
    const objection = job.words.commandFaults.noTube(near, [...known.values()]);
    throw refuseArgument('unknown-name', `--only ${asked}`, objection, job.words);
  });
  return piecesNamed(job, pieces, new Set(names));
}
