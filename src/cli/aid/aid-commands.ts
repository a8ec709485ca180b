import { Argument, type Command } from 'commander';
import type { Shell } from '../shell.ts';
import type { AidName, AidOptions } from './aid.ts';

/** The words and flags of `copeleaf aid`. Its action loads what it does when it is run. */
export function addAidCommands(program: Command, shell: Shell): void {
  const { aid: words } = shell.words.command;
  program
    .command('aid')
    .description(words.about)
    .addArgument(new Argument('<which>', words.which).choices(['ruler', 'girth', 'bevel']))
    .option('--paper <name>', words.paper)
    .option('--margin <length>', words.margin)
    .option('--paper-thickness <length>', words.thickness)
    .option('--printer <name>', words.printer)
    .option('--out <file>', words.out)
    .action(async (which: AidName, options: AidOptions) => {
      const { aid } = await import('../commands.ts');
      await aid(which, options, shell);
    });
}
