import { useState } from 'preact/hooks';
import { inkPdf } from '../../ink/pdf.ts';
import type { SheetAsk } from '../../job/job.ts';
import { measuredInWords, type Printer } from '../../job/paper/printer.ts';
import { rulerSheet } from '../../tiler/aids/ruler.ts';
import { printerFrom } from '../job/printers.ts';
import { openTab } from '../job/save.ts';
import { Dialog } from './dialog.tsx';

interface PrinterDialogProps {
  readonly sheet: SheetAsk;
  readonly printers: readonly Printer[];
  readonly chosen: Printer | undefined;
  readonly onSave: (printers: readonly Printer[]) => void;
  readonly onChoose: (printer: Printer | undefined) => void;
  readonly onClose: () => void;
}

const EMPTY = { name: '', across: '', up: '' };

/** Sets up a printer that is off: print the bars, type what they measure, and sheets are drawn for it. */
export function PrinterDialog(props: PrinterDialogProps) {
  const { sheet, printers, chosen, onSave, onChoose, onClose } = props;
  const [{ name, across, up }, setWords] = useState(EMPTY);
  const [wrong, setWrong] = useState('');
  const [saved, setSaved] = useState('');
  const type = (key: keyof typeof EMPTY) => (event: { currentTarget: HTMLInputElement }) =>
    setWords({ name, across, up, [key]: event.currentTarget.value });
  const add = (): void => {
    const printer = printerFrom(name, across, up);
    setWrong(printer.ok ? '' : `${printer.read}: ${printer.why}. Write ${printer.instead}.`);
    if (!printer.ok) return;
    onSave([...printers.filter((other) => other.name !== printer.value.name), printer.value]);
    onChoose(printer.value);
    setSaved(`${printer.value.name} is saved, and sheets are now drawn for it.`);
    setWords(EMPTY);
  };
  const field = (key: keyof typeof EMPTY, label: string, example: string) => (
    <div class="entry">
      <label for={`printer-${key}`}>{label}</label>
      <input
        id={`printer-${key}`}
        value={{ name, across, up }[key]}
        placeholder={example}
        autocomplete="off"
        aria-describedby="printer-wrong"
        onInput={type(key)}
      />
    </div>
  );
  return (
    <Dialog title="Printer" onClose={onClose}>
      <label class="entry">
        <span>draw sheets for</span>
        <select
          value={chosen?.name ?? ''}
          onChange={(event) => onChoose(printers.find((each) => each.name === event.currentTarget.value))}
        >
          <option value="">a printer that prints true</option>
          {printers.map(({ name: each, across: wide, up: high }) => (
            <option key={each} value={each}>
              {each}: across {measuredInWords(wide)}, up {measuredInWords(high)}
            </option>
          ))}
        </select>
      </label>
      {chosen && (
        <button
          type="button"
          class="quiet"
          onClick={() => {
            onSave(printers.filter((each) => each.name !== chosen.name));
            onChoose(undefined);
          }}
        >
          Forget {chosen.name}
        </button>
      )}
      <h3>One that is off</h3>
      <p>
        Print the scale sheet at 100 %, measure one bar each way with a steel rule, and type what you read.
      </p>
      <button type="button" onClick={() => void openScaleSheet(sheet)}>
        Open the scale sheet
      </button>
      <div class="fields">
        {field('name', 'name of the printer', 'workshop')}
        {field('across', 'bar across', '99.3mm')}
        {field('up', 'bar up', '100.1mm')}
      </div>
      <button type="button" class="main" onClick={add}>
        Save this printer
      </button>
      <p class="aside">Kept in this browser; no job, link or file carries it.</p>
      <p class="wrong" id="printer-wrong" role="alert">
        {wrong}
      </p>
      <p class="aside" role="status">
        {saved}
      </p>
    </Dialog>
  );
}

async function openScaleSheet(sheet: SheetAsk): Promise<void> {
  openTab(await inkPdf(rulerSheet(sheet), { title: 'Scale sheet', jobName: 'ruler' }));
}
