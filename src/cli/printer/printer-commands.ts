import type { Command } from 'commander';
import type { Shell } from '../shell.ts';
import type { PrinterReadings } from './printer.ts';

/** The words and flags of `copeleaf printer`. Each action loads what it does when it is run. */
export function addPrinterCommands(program: Command, shell: Shell): void {
  const { printer: words } = shell.words.command;
  const printer = program.command('printer').description(words.about);

  printer
    .command('add')
    .description(words.add)
    .argument('<name>', words.newName)
    .requiredOption('--across <reading>', words.across)
    .requiredOption('--up <reading>', words.up)
    .action(async (name: string, readings: PrinterReadings) => {
      const { addPrinter } = await import('../commands.ts');
      await addPrinter(name, readings, shell);
    });

  printer
    .command('list')
    .description(words.list)
    .action(async () => {
      const { listPrinters } = await import('../commands.ts');
      await listPrinters(shell);
    });

  printer
    .command('remove')
    .description(words.remove)
    .argument('<name>', words.name)
    .action(async (name: string) => {
      const { removePrinter } = await import('../commands.ts');
      await removePrinter(name, shell);
    });
}
