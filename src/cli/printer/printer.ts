import {
  type MeasuredBar,
  type Printer,
  type PrinterAxis,
  readMeasured,
  readPrinter,
} from '../../job/paper/printer.ts';
import { Refusal } from '../../job/text/complaint.ts';
import { nearest } from '../../job/text/nearest.ts';
import type { Said } from '../../measure/said.ts';
import type { Language } from '../../words/language.ts';
import { endedLines } from '../../words/said.ts';
import type { Shell } from '../shell.ts';
import { refuseArgument } from '../trouble.ts';
import { changePrinters, printerFileOf, readPrinters } from './printer-file.ts';
import { LONGEST_PRINTER_NAME, wrongWithName } from './printer-name.ts';

export interface PrinterReadings {
  readonly across: string;
  readonly up: string;
}

/** `copeleaf printer add`: saves what was measured on a printer's bars, in place of an earlier reading. */
export async function addPrinter(name: string, readings: PrinterReadings, shell: Shell): Promise<void> {
  const { env, words } = shell;
  const printer = printerFrom(plainName(name, words), readings, words);
  const file = printerFileOf(env);
  const withIt = (printers: readonly Printer[]): readonly Printer[] =>
    [...without(printer.name, printers), printer].sort((a, b) => (a.name < b.name ? -1 : 1));
  await changePrinters(file, withIt, words);
  shell.err(endedLines(words.commandAnswers.printerSaved(printer.name, file)));
}

/** `copeleaf printer list`: the saved printers and what was measured on each. */
export async function listPrinters(shell: Shell): Promise<void> {
  const { commandAnswers: answers, paper } = shell.words;
  const printers = await readPrinters(printerFileOf(shell.env), shell.words);
  if (printers.length === 0) return shell.err(endedLines([answers.noPrinters]));
  const wide = Math.max(...printers.map(({ name }) => name.length));
  const measured = (bar: MeasuredBar): Said => answers.measured(paper.measured(bar), bar.factor);
  const lines = printers.map(({ name, across, up }) =>
    answers.printer(name, wide, measured(across), measured(up)),
  );
  await shell.out(endedLines(lines));
}

/** `copeleaf printer remove`: forgets a saved printer. */
export async function removePrinter(name: string, shell: Shell): Promise<void> {
  const { env, words } = shell;
  const file = printerFileOf(env);
  const printers = await readPrinters(file, words);
  const { name: known } = named(
    plainName(name, words),
    printers,
    words.commandFaults.printerToRemove(name),
    words,
  );
  await changePrinters(file, (now) => without(known, now), words);
  shell.err(endedLines([words.commandAnswers.printerForgotten(known)]));
}

/** The saved printer that `--printer` names. Throws `Refusal` where there is none of that name. */
export async function printerNamed(name: string, { env, words }: Shell): Promise<Printer> {
  const printers = await readPrinters(printerFileOf(env), words);
  return named(plainName(name, words), printers, `--printer ${name}`, words);
}

function without(name: string, printers: readonly Printer[]): readonly Printer[] {
  return printers.filter((printer) => printer.name !== name);
}

function named(name: string, printers: readonly Printer[], read: string, words: Language): Printer {
  const printer = printers.find((each) => each.name === name);
  if (printer !== undefined) return printer;
  const names = printers.map((each) => each.name);
  const why = words.commandFaults.noPrinter(nearest(name, names), names);
  throw refuseArgument('printer', read, why, words);
}

/** Reads both axes, and tells what is wrong with either. */
function printerFrom(name: string, { across, up }: PrinterReadings, words: Language): Printer {
  const first = readMeasured('across', across);
  const second = readMeasured('up', up);
  if (first.ok && second.ok) {
    const printer = readPrinter(name, first.value, second.value);
    if (printer.ok) return printer.value;
    throw refuseArgument('wrong-setting', printer.read, printer.fault(words), words);
  }
  const wrong = (axis: PrinterAxis, text: string, reading: typeof first) =>
    reading.ok
      ? []
      : refuseArgument('measured', `--${axis} ${text}`.trim(), reading.fault(words), words).complaints;
  const [one, ...more] = [...wrong('across', across, first), ...wrong('up', up, second)];
  throw one === undefined ? new Error('neither reading is wrong') : new Refusal([one, ...more]);
}

/** A name that stands on one line of a sheet, in one spelling. */
function plainName(text: string, words: Language): string {
  const { commandFaults: faults } = words;
  const name = text.normalize('NFC').trim();
  const wrong = wrongWithName(name);
  if (wrong === undefined) return name;
  const why = wrong === 'longName' ? faults.longName(LONGEST_PRINTER_NAME) : faults[wrong];
  throw refuseArgument('printer-name', text, { why, instead: faults.shortName }, words);
}
