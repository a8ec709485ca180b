import { type Command, CommanderError } from 'commander';
import type { Said } from '../measure/said.ts';
import type { Language } from '../words/language.ts';
import { asWritten } from '../words/said.ts';
import { programOf } from './program.ts';
import type { Shell } from './shell.ts';
import { DONE, refuseArgument, tell } from './trouble.ts';

/** Runs the command with these arguments and gives its exit code: 0 done, 2 wrong input, 1 anything else. */
export async function main(args: readonly string[], shell: Shell): Promise<number> {
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
    if (error instanceof CommanderError && error.exitCode === 0) {
      await shell.out(asWritten(help));
      return DONE;
    }
    const trouble = error instanceof CommanderError ? usageTrouble(error, args, shell.words) : error;
    return tell(trouble, shell, wantsJson(args));
  }
}

/** Commander is kept from ending the process and from writing by itself. */
function quietly(command: Command, write: (text: string) => void): void {
  command.exitOverride().configureOutput({ writeOut: write, writeErr: () => {} });
  for (const sub of command.commands) quietly(sub, write);
}

function usageTrouble(error: CommanderError, args: readonly string[], words: Language): Error {
  const { seeHelp: instead } = words.commandFaults;
  const read = ['copeleaf', ...args].join(' ');
  return refuseArgument('usage', read, { why: whyOf(error, args, words), instead }, words);
}

function whyOf({ code, message }: CommanderError, args: readonly string[], words: Language): Said {
  const { noCommand, unknownCommand } = words.commandFaults;
  const unhelped = args[0] === 'help' ? args[1] : undefined;
  if (unhelped !== undefined) return unknownCommand(unhelped);
  if (args.length === 0 || code === 'commander.help') return noCommand;
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
