import { type Command, CommanderError } from 'commander';
import { nearest } from '../job/text/nearest.ts';
import type { Said } from '../measure/said.ts';
import type { Language } from '../words/language.ts';
import { asWritten } from '../words/said.ts';
import { programOf } from './program.ts';
import { plainShell, type Shell } from './shell.ts';
import { DONE, refuseArgument, tell } from './trouble.ts';

/** Runs the command with these arguments and gives its exit code: 0 done, 2 wrong input, 1 anything else. */
export async function main(args: readonly string[], anyShell: Shell): Promise<number> {
  const shell = plainShell(anyShell);
  try {
    return await exitOf(args, shell);
  } catch (error) {
    return tell(error, shell, wantsJson(args));
  }
}

/** Throws what stands in the way, of whatever kind. */
async function exitOf(args: readonly string[], shell: Shell): Promise<number> {
  let exit = DONE;
  const program = programOf(shell, (code) => {
    exit = code;
  });
  let help = '';
  quietly(program, (text) => {
    help += text;
  });
  try {
    await program.parseAsync(args, { from: 'user' });
    return exit;
  } catch (error) {
    if (!(error instanceof CommanderError)) throw error;
    const strange = noSuchCommand(program, args, shell.words);
    if (error.exitCode === 0 && strange === undefined) {
      await shell.out(asWritten(help));
      return DONE;
    }
    const why = strange ?? whyOf(error, args, shell.words);
    throw usageTrouble(why, program, args, shell.words);
  }
}

/** Commander is kept from ending the process and from writing by itself. */
function quietly(command: Command, write: (text: string) => void): void {
  command.exitOverride().configureOutput({ writeOut: write, writeErr: () => {} });
  for (const sub of command.commands) quietly(sub, write);
}

function usageTrouble(why: Said, program: Command, args: readonly string[], words: Language): Error {
  const instead = words.commandFaults.seeHelp(namedIn(program, args).join(' '));
  return refuseArgument('usage', ['copeleaf', ...args].join(' '), { why, instead }, words);
}

/** The command, and the one below it, that the arguments begin with. */
function namedIn(command: Command, [name, ...rest]: readonly string[]): readonly string[] {
  const sub = command.commands.find((each) => each.name() === name);
  return sub && name !== undefined ? [name, ...namedIn(sub, rest)] : [];
}

/** Why a command that help is asked of is none. Commander would show the help of the whole. */
function noSuchCommand(program: Command, args: readonly string[], words: Language): Said | undefined {
  const [name] = args[0] === 'help' ? args.slice(1) : args;
  const known = program.commands.map((each) => each.name());
  if (name === undefined || name.startsWith('-') || name === 'help' || known.includes(name)) return undefined;
  return words.commandFaults.unknownCommand(name, nearest(name, known));
}

function whyOf({ code, message }: CommanderError, args: readonly string[], words: Language): Said {
  if (args.length === 0 || code === 'commander.help') return words.commandFaults.noCommand;
  return asWritten(
    message
      .replace(/^error: /, '')
      .replace(/\s+/g, ' ')
      .trim(),
  );
}

/** Read by eye, since it has to hold even where the arguments can't be parsed. */
function wantsJson(args: readonly string[]): boolean {
  const at = args.indexOf('--errors');
  return args.includes('--errors=json') || (at >= 0 && args[at + 1] === 'json');
}
