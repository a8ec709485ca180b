import { Command, Option } from 'commander';
import { addAidCommands } from './aid/aid-commands.ts';
import type { CheckOptions } from './check.ts';
import type { CutListOptions } from './cutlist.ts';
import type { FrameOptions } from './frame.ts';
import { onlyOption } from './only.ts';
import { asOption, seatedOption, withJob } from './options.ts';
import type { OrdinatesOptions } from './ordinates.ts';
import type { PrintOptions } from './print.ts';
import { addPrinterCommands } from './printer/printer-commands.ts';
import type { Shell } from './shell.ts';
import { VERSION } from './version.ts';

/** The command's words and flags. Each action loads what it does only when it is run; it leaves its exit code in `end`. */
export function programOf(shell: Shell, end: (code: number) => void): Command {
  const { command } = shell.words;
  const program = new Command('copeleaf')
    .description(command.about)
    .version(VERSION, '--version', command.version)
    .helpOption('-h, --help', command.help)
    .addOption(new Option('--errors <format>', command.errors).choices(['text', 'json']).default('text'))
    .addHelpText('after', command.cautions)
    .showSuggestionAfterError()
    .configureHelp({ helpWidth: 100, showGlobalOptions: true });
  addPrint(program, shell);
  addOrdinates(program, shell);
  addCheck(program, shell, end);
  addCutList(program, shell);
  addFrame(program, shell);
  addStarter(program, shell);
  addPage(program, shell);
  addPrinterCommands(program, shell);
  addAidCommands(program, shell);
  return program;
}

function addPrint(program: Command, shell: Shell): void {
  const { print: words } = shell.words.command;
  withJob(program.command('print').description(words.about), shell.words)
    .addOption(asOption(words.as, ['pdf', 'svg', 'dxf', 'stl']))
    .addOption(onlyOption(shell.words))
    .option('--footprints', words.footprints, false)
    .option('--leaves-only', words.leavesOnly, false)
    .addOption(new Option('--pack', words.pack).default(false).conflicts('leavesOnly'))
    .addOption(seatedOption(shell.words))
    .option('--printer <name>', words.printer)
    .option('--since <file>', words.since)
    .option('--out <file>', words.out)
    .action(async (job: string | undefined, options: PrintOptions) => {
      const { print } = await import('./commands.ts');
      await print(job, options, shell);
    });
}

function addOrdinates(program: Command, shell: Shell): void {
  const { ordinates: words } = shell.words.command;
  withJob(program.command('ordinates').description(words.about), shell.words)
    .option('--every <step>', words.every)
    .addOption(onlyOption(shell.words))
    .addOption(asOption(words.as, ['text', 'json', 'csv']))
    .option('--out <file>', words.out, '-')
    .action(async (job: string | undefined, options: OrdinatesOptions) => {
      const { ordinates } = await import('./commands.ts');
      await ordinates(job, options, shell);
    });
}

function addCheck(program: Command, shell: Shell, end: (code: number) => void): void {
  const { check: words } = shell.words.command;
  withJob(program.command('check').description(words.about), shell.words)
    .addOption(asOption(words.as, ['text', 'json']))
    .addOption(onlyOption(shell.words))
    .addOption(seatedOption(shell.words))
    .option('--strict', words.strict, false)
    .action(async (job: string | undefined, options: CheckOptions) => {
      const { check } = await import('./commands.ts');
      end(await check(job, options, shell));
    });
}

function addCutList(program: Command, shell: Shell): void {
  const { cutlist: words } = shell.words.command;
  program
    .command('cutlist')
    .description(words.about)
    .argument('<job>', words.job)
    .addOption(asOption(words.as, ['text', 'csv', 'json']))
    .addOption(onlyOption(shell.words))
    .addOption(seatedOption(shell.words))
    .option('--out <file>', words.out, '-')
    .action(async (job: string, options: CutListOptions) => {
      const { cutlist } = await import('./commands.ts');
      await cutlist(job, options, shell);
    });
}

function addFrame(program: Command, shell: Shell): void {
  const { frame: words } = shell.words.command;
  program
    .command('frame')
    .description(words.about)
    .argument('<file>', words.file)
    .addOption(new Option('--units <unit>', words.units).choices(['mm', 'cm', 'm', 'in', 'ft']))
    .addOption(new Option('--up <axis>', words.up).choices(['y', 'z']))
    .option('--od <length>', words.od)
    .option('--wall <length>', words.wall)
    .option('--snap <length>', words.snap)
    .option('--keep-pieces', words.keepPieces, false)
    .option('--tube <name>', words.tube)
    .option('--out <file>', words.out)
    .action(async (file: string, options: FrameOptions) => {
      const { writeFrame } = await import('./commands.ts');
      await writeFrame(file, options, shell);
    });
}

function addStarter(program: Command, shell: Shell): void {
  const { starter: words } = shell.words.command;
  program
    .command('starter')
    .description(words.about)
    .argument('[name]', words.name)
    .option('--out <file>', words.out)
    .action(async (name: string | undefined, options: { out?: string }) => {
      const { starter } = await import('./commands.ts');
      await starter(name, options, shell);
    });
}

function addPage(program: Command, shell: Shell): void {
  const { page: words } = shell.words.command;
  program
    .command('page')
    .description(words.about)
    .option('--out <file>', words.out)
    .action(async (options: { out?: string }) => {
      const { page } = await import('./commands.ts');
      await page(options, shell);
    });
}
