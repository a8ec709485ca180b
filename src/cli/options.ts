import { type Command, Option } from 'commander';
import { END_FLAGS } from '../job/end-flags.ts';
import type { Said } from '../measure/said.ts';
import type { Language } from '../words/language.ts';

/** A command that takes a job, or in its place the flags for one end. */
export function withJob(command: Command, { command: { end } }: Language): Command {
  command.argument('[job]', end.job);
  for (const [flag, value] of END_FLAGS) command.option(`--${flag} <${value}>`, end[flag]);
  // What `--land` was called before is taken for ever, and not shown.
  command.addOption(new Option('--blunt <length>').hideHelp());
  return command;
}

export function seatedOption({ command }: Language): Option {
  return new Option('--seated <length>', command.seated);
}

/** The formats that a command writes, the usual one first. */
export function asOption(what: Said, [usual, ...others]: readonly [string, ...string[]]): Option {
  return new Option('--as <format>', what).choices([usual, ...others]).default(usual);
}
