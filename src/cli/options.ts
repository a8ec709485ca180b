import { type Command, Option } from 'commander';
import type { EndFlags } from '../job/flags.ts';
import type { Said } from '../measure/said.ts';
import type { Language } from '../words/language.ts';

/** The flags for one end, and what each takes. Names are the command's grammar, and the same in every language. */
const FLAGS = [
  ['od', 'length'],
  ['wall', 'length'],
  ['pipe', 'size'],
  ['onto', 'length'],
  ['angle', 'angle'],
  ['offset', 'length'],
  ['clock', 'angle'],
  ['edge', 'way'],
  ['land', 'length'],
  ['from', 'side'],
  ['root', 'length'],
  ['end', 'name'],
  ['units', 'unit'],
  ['margin', 'length'],
  ['paper', 'name'],
] as const satisfies readonly (readonly [keyof EndFlags, string])[];

/** A command that takes a job, or in its place the flags for one end. */
export function withJob(command: Command, { command: { end } }: Language): Command {
  command.argument('[job]', end.job);
  for (const [flag, value] of FLAGS) command.option(`--${flag} <${value}>`, end[flag]);
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
