/**
 * What the commands do, loaded when one of them is run: to open a file for each part that some of them share takes a process longer
 * than to read what the others need.
 */
export { aid } from './aid/aid.ts';
export { check } from './check.ts';
export { cutlist } from './cutlist.ts';
export { writeFrame } from './frame.ts';
export { ordinates } from './ordinates.ts';
export { page } from './page.ts';
export { print } from './print.ts';
export { addPrinter, listPrinters, removePrinter } from './printer/printer.ts';
export { starter } from './starter.ts';
