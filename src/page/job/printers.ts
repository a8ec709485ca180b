import { asMeasured, type Printer, readMeasured, readPrinter } from '../../job/paper/printer.ts';
import { type Reading, refused } from '../../measure/reading.ts';
import type { Wording } from '../../words/language.ts';

/** A printer from its name and what a rule read on its bars. Does not throw. */
export function printerFrom(name: string, across: string, up: string): Reading<Printer, Wording> {
  const plain = name.normalize('NFC').trim();
  if (plain === '' || plain.length > 40) {
    return refused(name, ({ page }) => page.bar.printer.badName);
  }
  const [first, second] = [readMeasured('across', across), readMeasured('up', up)];
  if (!first.ok) return first;
  if (!second.ok) return second;
  return readPrinter(plain, first.value, second.value);
}

/** The saved printers as text, the name and both readings of each. */
export function printersAsText(printers: readonly Printer[]): string {
  return JSON.stringify(printers.map(({ name, across, up }) => [name, asMeasured(across), asMeasured(up)]));
}

/** The printers in such a text; those that can't be read are left out. */
export function printersIn(text: string | undefined): readonly Printer[] {
  return listIn(text).flatMap((each: unknown) => {
    if (!Array.isArray(each)) return [];
    const [name, across, up]: unknown[] = each;
    if (typeof name !== 'string' || typeof across !== 'string' || typeof up !== 'string') return [];
    const printer = printerFrom(name, across, up);
    return printer.ok ? [printer.value] : [];
  });
}

function listIn(text: string | undefined): readonly unknown[] {
  try {
    const data: unknown = JSON.parse(text ?? '[]');
    return Array.isArray(data) ? data : [];
  } catch {
    return [];
  }
}
