import { useState } from 'preact/hooks';
import type { Printer } from '../../job/paper/printer.ts';
import type { Said } from '../../measure/said.ts';
import { asWritten } from '../../words/said.ts';
import { Action } from '../action.tsx';
import { printerFrom } from '../job/printers.ts';
import { useWords } from '../words.ts';

const EMPTY = { name: '', across: '', up: '' };

/** What came of the last try. */
interface Told {
  readonly wrong?: Said;
  readonly saved?: Said;
}

/** A printer by its name and what a rule read on its bars. */
export function NewPrinter({ onAdd }: { readonly onAdd: (printer: Printer) => void }) {
  const words = useWords();
  const labels = words.page.bar.printer;
  const [typed, setTyped] = useState(EMPTY);
  const [told, tell] = useState<Told>({});
  const add = (): void => {
    const printer = printerFrom(typed.name, typed.across, typed.up);
    if (!printer.ok) {
      const { why, instead } = printer.fault(words);
      tell({ wrong: words.page.notices.wrong(asWritten(printer.read), why, instead) });
      return;
    }
    onAdd(printer.value);
    tell({ saved: labels.saved(asWritten(printer.value.name)) });
    setTyped(EMPTY);
  };
  const field = (key: keyof typeof EMPTY, label: Said) => (
    <div class="entry">
      <label for={`printer-${key}`}>{label}</label>
      <input
        id={`printer-${key}`}
        value={typed[key]}
        placeholder={labels.examples[key]}
        autocomplete="off"
        aria-describedby="printer-wrong"
        onInput={(event) => setTyped({ ...typed, [key]: event.currentTarget.value })}
      />
    </div>
  );
  return (
    <>
      <div class="fields">
        {field('name', labels.nameOf)}
        {field('across', labels.across)}
        {field('up', labels.up)}
      </div>
      <Action words={labels.save} onAct={add} kind="main" />
      <p class="aside">{labels.kept}</p>
      <p class="wrong" id="printer-wrong" role="alert">
        {told.wrong}
      </p>
      <p class="aside" role="status">
        {told.saved}
      </p>
    </>
  );
}
