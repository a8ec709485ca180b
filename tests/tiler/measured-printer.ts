import {
  type MeasuredBar,
  type Printer,
  type PrinterAxis,
  readMeasured,
  readPrinter,
} from '../../src/job/paper/printer.ts';

/** A printer by what was measured on its bars of 100 mm. */
export function printerOf(across: string, up: string): Printer {
  const reading = readPrinter('workshop', measured('across', across), measured('up', up));
  if (!reading.ok) throw new Error(reading.read);
  return reading.value;
}

function measured(axis: PrinterAxis, text: string): MeasuredBar {
  const reading = readMeasured(axis, text);
  if (!reading.ok) throw new Error(reading.read);
  return reading.value;
}
