import { Command, Option } from 'commander';
import { addAidCommands } from './aid/aid-commands.ts';
import type { CheckOptions } from './check.ts';
import type { CutListOptions } from './cutlist.ts';
import type { OrdinatesOptions } from './ordinates.ts';
import type { PrintOptions } from './print.ts';
import { addPrinterCommands } from './printer/printer-commands.ts';
import type { Shell } from './shell.ts';
import { VERSION } from './version.ts';

const ABOUT = `Wrap templates for tube that is coped by hand.

Write down the tube, what each end lands on and at which angle; get leaves to print at true
scale, wrap round the tube, mark and cut. Begin with one of these:

  copeleaf print --od 38.1 --wall 2.4 --onto 44.5 --angle 60   one end, straight to paper
  copeleaf starter                                             jobs to begin from
  copeleaf check my-job.yaml                                   what follows, what to watch
  copeleaf print my-job.yaml                                   all its leaves in one PDF

Print at 100 % and measure the bars on the sheet before you cut.`;

const CAUTIONS = `
Wear eye, ear, hand and lung protection; keep fire away from what burns; zinc and plating give off
poisonous fume; vent sealed tube before welding. What carries people or loads follows local code
and is designed and welded by those licensed for it: a paper template proves neither strength nor
weld.`;

/** The command's words and flags. Each action loads what it does only when it is run; it leaves its exit code in `end`. */
export function programOf(shell: Shell, end: (code: number) => void): Command {
  const program = new Command('copeleaf')
    .description(ABOUT)
    .version(VERSION, '--version', 'print the version')
    .helpOption('-h, --help', 'print this help')
    .addOption(
      new Option('--errors <format>', 'how to report mistakes').choices(['text', 'json']).default('text'),
    )
    .addHelpText('after', CAUTIONS)
    .showSuggestionAfterError()
    .configureHelp({ helpWidth: 100, showGlobalOptions: true });

  withJob(program.command('print').description('print the leaves of a job, or of one end given by flags'))
    .addOption(new Option('--as <format>', 'what to make').choices(['pdf', 'svg', 'dxf']).default('pdf'))
    .option(
      '--footprints',
      'also the outline that each end leaves on its header, to mark the landing and the vent',
      false,
    )
    .option(
      '--leaves-only',
      'leave out the shop pack: cut list, order of work, stock, a ticket for each tube',
      false,
    )
    .addOption(seatedOption())
    .option('--printer <name>', 'draw for a saved printer, so that its bars read true')
    .option('--out <file>', "where to; - is standard output (default: the job's name, in this folder)")
    .action(async (job: string | undefined, options: PrintOptions) => {
      const { print } = await import('./commands.ts');
      await print(job, options, shell);
    });

  withJob(
    program
      .command('ordinates')
      .description('print the setbacks at equal stations, to lay out with tape and marker'),
  )
    .option('--every <step>', 'from station to station (default: 15deg, or 10mm round a rectangular tube)')
    .addOption(
      new Option('--as <format>', 'how to write them').choices(['text', 'json', 'csv']).default('text'),
    )
    .option('--out <file>', 'where to; - is standard output', '-')
    .action(async (job: string | undefined, options: OrdinatesOptions) => {
      const { ordinates } = await import('./commands.ts');
      await ordinates(job, options, shell);
    });

  withJob(
    program
      .command('check')
      .description('say what was understood, what follows and what to watch; writes no file'),
  )
    .addOption(new Option('--as <format>', 'how to say it').choices(['text', 'json']).default('text'))
    .addOption(seatedOption())
    .option('--strict', 'exit with 2 if there is a warning', false)
    .action(async (job: string | undefined, options: CheckOptions) => {
      const { check } = await import('./commands.ts');
      end(await check(job, options, shell));
    });

  program
    .command('cutlist')
    .description('print what to cut: blanks, lengths, angles, and from which of the stock that the job tells')
    .argument('<job>', 'a job file, or - for standard input')
    .addOption(
      new Option('--as <format>', 'how to write it').choices(['text', 'csv', 'json']).default('text'),
    )
    .addOption(seatedOption())
    .option('--out <file>', 'where to; - is standard output', '-')
    .action(async (job: string, options: CutListOptions) => {
      const { cutlist } = await import('./commands.ts');
      await cutlist(job, options, shell);
    });

  program
    .command('starter')
    .description('list the jobs to begin from, or write one into this folder')
    .argument('[name]', 'which one')
    .option('--out <file>', 'where to; - is standard output')
    .action(async (name: string | undefined, options: { out?: string }) => {
      const { starter } = await import('./commands.ts');
      await starter(name, options, shell);
    });

  program
    .command('page')
    .description('show the page: the same tool in a browser, on this machine alone')
    .option('--out <file>', 'write it as one file instead; - is standard output')
    .action(async (options: { out?: string }) => {
      const { page } = await import('./commands.ts');
      await page(options, shell);
    });

  addPrinterCommands(program, shell);
  addAidCommands(program, shell);
  return program;
}

function seatedOption(): Option {
  const what = "after the first cut: along the spine, from end A's edge to end B's length mark";
  return new Option('--seated <length>', what);
}

/** A job, or in its place the flags for one end. */
function withJob(command: Command): Command {
  return command
    .argument('[job]', 'a job file, or - for standard input; in its place the flags below give one end')
    .option('--od <length>', "the tube's outside diameter: 38.1, 1-1/2in")
    .option('--wall <length>', "the tube's wall: 2.4, .095in")
    .option('--pipe <size>', 'in place of --od and --wall: NPS 1-1/2 sch 40, EN 48.3 x 2.6')
    .option('--onto <length>', "the header's outside diameter")
    .option('--angle <angle>', "between the tube and the header's axis: 60, 60deg, 60°30'")
    .option('--offset <length>', "from the tube's axis to the header's, positive to the right of the heel")
    .option('--clock <angle>', 'the station of the heel, round the tube from its spine')
    .option('--edge <way>', 'bevel (grind the inner edge back) or square (leave the face square)')
    .option('--blunt <length>', 'with bevel: the land left on thin edges')
    .option('--from <side>', 'with square: outside, or inside for a torch held radially')
    .option('--root <length>', 'a gap left for the weld, taken off along the tube')
    .option('--end <name>', 'A or B')
    .option('--units <unit>', 'mm or in, for numbers without a unit')
    .option('--margin <length>', "what the printer can't reach, on all four sides")
    .option('--paper <name>', 'letter, A4, legal, tabloid, A3, A2, A0, arch-d, 300x400mm or roll 610mm');
}
