import { type Command, CommanderError } from 'commander';
import { programOf } from './program.ts';
import type { Shell } from './shell.ts';
import { DONE, refuse, tell } from './trouble.ts';

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
      await shell.out(help);
      return DONE;
    }
    const trouble = error instanceof CommanderError ? usageTrouble(error, args) : error;
    return tell(trouble, shell, wantsJson(args));
  }
}

/** Commander is kept from ending the process and from writing by itself. */
function quietly(command: Command, write: (text: string) => void): void {
  command.exitOverride().configureOutput({ writeOut: write, writeErr: () => {} });
  for (const sub of command.commands) quietly(sub, write);
}

function usageTrouble(error: CommanderError, args: readonly string[]): Error {
  const why = error.message
    .replace(/^error: /, '')
    .replace(/\s+/g, ' ')
    .trim();
  const read = ['copeleaf', ...args].join(' ');
  const unhelped = args[0] === 'help' ? args[1] : undefined;
  const bare = args.length === 0 || error.code === 'commander.help';
  return refuse(
    'usage',
    'command line',
    read,
    unhelped !== undefined ? `unknown command '${unhelped}'` : bare ? 'no command was given' : why,
    '`copeleaf --help` and `copeleaf print --help` show what there is',
  );
}

/** Read by eye, since it has to hold even where the arguments can't be parsed. */
function wantsJson(args: readonly string[]): boolean {
  const at = args.indexOf('--errors');
  return args.includes('--errors=json') || (at >= 0 && args[at + 1] === 'json');
}
