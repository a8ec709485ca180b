import { inkPdf } from '../../ink/pdf.ts';

import { bevelSheet } from '../../tiler/aids/bevel.ts';
import { girthSheet } from '../../tiler/aids/girth.ts';
import { rulerSheet } from '../../tiler/aids/ruler.ts';
import { endedLines } from '../../words/said.ts';

import { writeResult } from '../files.ts';
import { printerNamed } from '../printer/printer.ts';
import type { Shell } from '../shell.ts';
import { type AidPaper, askForAid } from './aid-paper.ts';

export interface AidOptions extends AidPaper {
  readonly printer?: string;
  readonly out?: string;
}

const AIDS = { ruler: rulerSheet, girth: girthSheet, bevel: bevelSheet };

export type AidName = keyof typeof AIDS;

/** `copeleaf aid`: one measuring aid on one sheet. */
export async function aid(name: AidName, options: AidOptions, shell: Shell): Promise<void> {
  const { commandAnswers: answers } = shell.words;
  const title = shell.words.aids[name].title;
  const printer = options.printer === undefined ? undefined : await printerNamed(options.printer, shell);
  const set = AIDS[name](askForAid(options, shell, printer), shell.words, printer);
  const target = options.out ?? `${name}.pdf`;
  await writeResult(target, await inkPdf(set, { title, jobName: name }), shell);
  if (target !== '-') shell.err(endedLines([answers.aidPrinted(target, title)]));
}
