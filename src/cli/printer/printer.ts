import {
  type Measured,
  measuredInWords,
  type Printer,
  type PrinterAxis,
  readMeasured,
  readPrinter,
} from '../../job/paper/printer.ts';
import { Refusal } from '../../job/text/complaint.ts';
import { nearest } from '../../job/text/nearest.ts';
import type { Language } from '../../words/language.ts';
import type { Shell } from '../shell.ts';
import { objectTo, refuse } from '../trouble.ts';
import { printerFileOf, readPrinters, savePrinters } from './printer-file.ts';

export interface PrinterReadings {
  readonly across: string;
  readonly up: string;
}

/** `copeleaf printer add`: saves what was measured on a printer's bars, in place of an earlier reading. */
export async function addPrinter(name: string, readings: PrinterReadings, shell: Shell): Promise<void> {
  const printer = printerFrom(plainName(name), readings, shell.words);
  const file = printerFileOf(shell.env);
  const others = (await readPrinters(file)).filter((other) => other.name !== printer.name);
  await savePrinters(
    file,
    [...others, printer].sort((a, b) => (a.name < b.name ? -1 : 1)),
  );
  shell.err(`${printer.name} is saved in ${file}\n`);
  shell.err(
    'Print for it with --printer, at the same settings, and measure the bars again: they read true now.\n',
  );
}

/** `copeleaf printer list`: the saved printers and what was measured on each. */
export async function listPrinters(shell: Shell): Promise<void> {
  const printers = await readPrinters(printerFileOf(shell.env));
  if (printers.length === 0) {
    shell.err('No printer is saved. `copeleaf aid ruler` prints the bars to measure, and says how.\n');
    return;
  }
  const wide = Math.max(...printers.map(({ name }) => name.length));
  const lines = printers.map(
    ({ name, across, up }) => `${name.padEnd(wide)}  across ${inWords(across)}  up ${inWords(up)}\n`,
  );
  await shell.out(lines.join(''));
}

/** `copeleaf printer remove`: forgets a saved printer. */
export async function removePrinter(name: string, shell: Shell): Promise<void> {
  const file = printerFileOf(shell.env);
  const printers = await readPrinters(file);
  const { name: known } = named(plainName(name), printers, `printer remove ${name}`);
  await savePrinters(
    file,
    printers.filter((printer) => printer.name !== known),
  );
  shell.err(`${known} is forgotten.\n`);
}

/** The saved printer that `--printer` names. Throws `Refusal` where there is none of that name. */
export async function printerNamed(name: string, shell: Shell): Promise<Printer> {
  return named(plainName(name), await readPrinters(printerFileOf(shell.env)), `--printer ${name}`);
}

function named(name: string, printers: readonly Printer[], read: string): Printer {
  const printer = printers.find((each) => each.name === name);
  if (printer !== undefined) return printer;
  const names = printers.map((each) => each.name);
  const close = nearest(name, names);
  const known = names.length > 0 ? `one of: ${names.join(', ')}` : 'first `copeleaf printer add`';
  const instead = close === undefined ? known : `${close}, if that is meant`;
  throw refuse('printer', 'command line', read, 'no printer of that name is saved', instead);
}

/** Reads both axes, and tells what is wrong with either. */
function printerFrom(name: string, { across, up }: PrinterReadings, words: Language): Printer {
  const first = readMeasured('across', across);
  const second = readMeasured('up', up);
  if (first.ok && second.ok) {
    const printer = readPrinter(name, first.value, second.value);
    if (printer.ok) return printer.value;
    throw objectTo('wrong-setting', 'command line', printer.read, printer.fault(words));
  }
  const wrong = (axis: PrinterAxis, text: string, reading: typeof first) =>
    reading.ok
      ? []
      : objectTo('measured', 'command line', `--${axis} ${text}`.trim(), reading.fault(words)).complaints;
  const [one, ...more] = [...wrong('across', across, first), ...wrong('up', up, second)];
  throw one === undefined ? new Error('neither reading is wrong') : new Refusal([one, ...more]);
}

const LONGEST_NAME = 40;

/** A name that stands on one line of a sheet, in one spelling. */
function plainName(text: string): string {
  const name = text.normalize('NFC').trim();
  const wrong = (why: string) =>
    refuse('printer-name', 'command line', text, why, 'a few words, such as "workshop laser"');
  if (name === '') throw wrong('a printer needs a name');
  if (name.length > LONGEST_NAME) throw wrong(`the name is longer than ${LONGEST_NAME} letters`);
  if (/[\p{Cc}\p{Cs}\u2028\u2029]/u.test(name)) throw wrong('the name does not stand on one line');
  return name;
}

function inWords(measured: Measured): string {
  const off = (measured.factor - 1) * 100;
  const way = off < 0 ? 'short' : 'long';
  return `${measuredInWords(measured)} (${Math.abs(off) < 0.005 ? 'true' : `${Math.abs(off).toFixed(2)} % ${way}`})`;
}
