import { inkPdf } from '../../ink/pdf.ts';
import type { SheetAsk } from '../../job/job.ts';
import type { Printer } from '../../job/paper/printer.ts';
import { bevelSheet } from '../../tiler/aids/bevel.ts';
import { girthSheet } from '../../tiler/aids/girth.ts';
import { rulerSheet } from '../../tiler/aids/ruler.ts';
import type { LaidSheets } from '../../tiler/lay-sheets.ts';
import { writeResult } from '../files.ts';
import { printerNamed } from '../printer/printer.ts';
import type { Shell } from '../shell.ts';
import { type AidPaper, askForAid } from './aid-paper.ts';

export interface AidOptions extends AidPaper {
  readonly printer?: string;
  readonly out?: string;
}

interface Aid {
  readonly title: string;
  readonly lay: (ask: SheetAsk, printer?: Printer) => LaidSheets;
}

const AIDS: Readonly<Record<string, Aid>> = {
  ruler: { title: 'Scale sheet', lay: rulerSheet },
  girth: { title: 'Girth strip', lay: girthSheet },
  bevel: { title: 'Bevel card', lay: bevelSheet },
};

/** `copeleaf aid`: one measuring aid on one sheet. */
export async function aid(name: string, options: AidOptions, shell: Shell): Promise<void> {
  const chosen = AIDS[name];
  if (chosen === undefined) throw new Error(`no aid is named ${name}`);
  const printer = options.printer === undefined ? undefined : await printerNamed(options.printer, shell);
  const set = chosen.lay(askForAid(options, shell, printer), printer);
  const target = options.out ?? `${name}.pdf`;
  await writeResult(target, await inkPdf(set, { title: chosen.title, jobName: name }), shell);
  if (target !== '-') shell.err(`${target}: ${chosen.title.toLowerCase()} on 1 sheet\n`);
}
