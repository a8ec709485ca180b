import type { Said } from '../../../measure/said.ts';
import { asWritten, inColumn, say } from '../../said.ts';
import { quantities } from '../quantities.ts';

const { counted } = quantities;

/** What a command answers when it has done what it was asked. */
export const commandAnswers = {
  /** Leaves in a file, on so many sheets or on none. */
  /** Before a file that may be a mistake is made. */
  narrowMargin: (paper: string): Said =>
    say`few printers reach the rim of ${asWritten(paper)}: with a margin under 3 mm (1/8 in) what lies there is lost, or the sheet is shrunk`,
  manySheets: (sheets: number, ofOne: number): Said =>
    say`that makes ${counted(sheets, say`sheet`, say`sheets`)}${ofOne > 1 ? say`, ${ofOne} of them for one leaf` : say``}: are all sizes in the unit that is meant?`,
  printed: (file: string, leaves: number, hasPack: boolean, sheets: number | undefined): Said => {
    const pack = hasPack ? say` and the shop pack` : say``;
    const on = sheets === undefined ? say`at true size` : say`on ${counted(sheets, say`sheet`, say`sheets`)}`;
    return say`${asWritten(file)}: ${counted(leaves, say`leaf`, say`leaves`)}${pack} ${on}`;
  },
  /** What was printed before and is not to be used any more. */
  goneBy: (count: number): Said =>
    say`${counted(count, say`leaf or ticket`, say`leaves and tickets`)} printed before no longer ${count === 1 ? say`holds` : say`hold`}: throw away`,
  gone: (title: Said): Said => say`  ${title}`,
  nothingNew: (old: string): Said =>
    say`nothing to print: all leaves and tickets stand in ${asWritten(old)}; no file is written`,
  solids: (file: string, tubes: number): Said =>
    say`${asWritten(file)}: ${counted(tubes, say`tube`, say`tubes`)} as solids, in mm`,
  /** How many warnings follow, and each as `check` has it. */
  warned: (count: number): Said => counted(count, say`warning`, say`warnings`),
  /** The same of what is only to be known. */
  noted: (count: number): Said => counted(count, say`note`, say`notes`),
  warning: (tube: string, code: string, text: Said): Said =>
    say`${asWritten(tube)}: ${asWritten(code)}: ${text}`,
  tubesDone: (done: number, all: number): Said => say`${done} of ${all} tubes`,
  /** A sign that the font lacks. */
  lacking: (sign: string, code: string): Said =>
    say`The sheets' font has no ${asWritten(sign)}: it is printed as [${asWritten(code)}].`,

  pageWritten: (file: string): Said => say`${asWritten(file)}: open it in a browser; it needs no network`,
  pageServed: say`Open that address in a browser on this machine. Ctrl-C ends it.`,
  onlyPage: say`There is only one page here: /`,

  starterWritten: (file: string): Said => {
    const name = asWritten(file);
    return say`${name}: edit it, then copeleaf check ${name} and copeleaf print ${name}`;
  },

  /** `others`: how many more tubes of the frame are the same piece. */
  tubeWritten: (file: string, tube: string, others: number, isAlone: boolean): Said => {
    const same = others > 0 ? say` with the ${others} more that are the same piece` : say``;
    return isAlone
      ? say`${asWritten(file)}: ${asWritten(tube)}${same}, as a job of its own`
      : say`${asWritten(file)}: ${asWritten(tube)}${same} and the tubes that shape its ends; print it with --only`;
  },
  frameWritten: (file: string, tubes: number, points: number): Said =>
    say`${asWritten(file)}: ${counted(tubes, say`tube`, say`tubes`)} between ${counted(points, say`point`, say`points`)}`,

  aidPrinted: (file: string, title: Said): Said =>
    say`${asWritten(file)}: ${asWritten(title.toLowerCase())} on 1 sheet`,

  printerSaved: (name: string, file: string): readonly Said[] => [
    say`${asWritten(name)} is saved in ${asWritten(file)}`,
    say`Print for it with --printer, at the same settings, and measure the bars again: they read true now.`,
  ],
  noPrinters: say`No printer is saved. \`copeleaf aid ruler\` prints the bars to measure, and says how.`,
  /** What was measured each way, the name in a column so many letters wide. */
  printer: (name: string, width: number, across: Said, up: Said): Said =>
    say`${inColumn(asWritten(name), width)}  across ${across}  up ${up}`,
  /** `factor` is how long a millimetre comes out. */
  measured: (measured: Said, factor: number): Said => {
    const percent = (factor - 1) * 100;
    if (Math.abs(percent) < 0.005) return say`${measured} (true)`;
    const way = percent < 0 ? say`short` : say`long`;
    return say`${measured} (${asWritten(Math.abs(percent).toFixed(2))} % ${way})`;
  },
  printerForgotten: (name: string): Said => say`${asWritten(name)} is forgotten.`,
};
