import type { Command } from 'commander';
import type { Shell } from '../shell.ts';
import type { PrinterReadings } from './printer.ts';

/** The words and flags of `copeleaf printer`. Each action loads what it does when it is run. */
export function addPrinterCommands(program: Command, shell: Shell): void {
  const printer = program
    .command('printer')
    .description('save what a printer makes of the bars, so that its sheets come out true');

  printer
    .command('add')
    .description('save a printer, by what was measured on the bars of `copeleaf aid ruler`')
    .argument('<name>', 'what to call it')
    .requiredOption(
      '--across <reading>',
      'a bar named across: 99.3mm on the one of 100 mm, 3.97in on the one of 4 in, 189.1mm/190mm on another',
    )
    .requiredOption('--up <reading>', 'a bar named up, likewise')
    .action(async (name: string, readings: PrinterReadings) => {
      const { addPrinter } = await import('../commands.ts');
      await addPrinter(name, readings, shell);
    });

  printer
    .command('list')
    .description('list the saved printers and what was measured on each')
    .action(async () => {
      const { listPrinters } = await import('../commands.ts');
      await listPrinters(shell);
    });

  printer
    .command('remove')
    .description('forget a saved printer')
    .argument('<name>', 'which one')
    .action(async (name: string) => {
      const { removePrinter } = await import('../commands.ts');
      await removePrinter(name, shell);
    });
}
