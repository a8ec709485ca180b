import { Argument, type Command } from 'commander';
import type { Shell } from '../shell.ts';
import type { AidOptions } from './aid.ts';

/** The words and flags of `copeleaf aid`. Its action loads what it does when it is run. */
export function addAidCommands(program: Command, shell: Shell): void {
  program
    .command('aid')
    .description('print a measuring aid: a scale sheet, a strip for diameters, a card for a bevel')
    .addArgument(
      new Argument(
        '<which>',
        'ruler (bars to measure the printer by), girth (a strip that reads a diameter) or bevel (a card that reads an angle)',
      ).choices(['ruler', 'girth', 'bevel']),
    )
    .option('--paper <name>', 'letter, A4, legal, tabloid, A3, A2, A0, arch-d, 300x400mm, or roll 610mm')
    .option('--margin <length>', "what the printer can't reach, on all four sides")
    .option('--paper-thickness <length>', 'of the paper that is wrapped round a tube (default: 0.10mm)')
    .option('--printer <name>', 'draw it for a saved printer')
    .option('--out <file>', "where to; - is standard output (default: the aid's name, in this folder)")
    .action(async (which: string, options: AidOptions) => {
      const { aid } = await import('../commands.ts');
      await aid(which, options, shell);
    });
}
