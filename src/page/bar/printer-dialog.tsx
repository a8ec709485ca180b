import { inkPdf } from '../../ink/pdf.ts';
import type { SheetAsk } from '../../job/job.ts';
import type { Printer } from '../../job/paper/printer.ts';
import { rulerSheet } from '../../tiler/aids/ruler.ts';
import { asWritten } from '../../words/said.ts';
import { Action } from '../action.tsx';
import { openTab } from '../job/save.ts';
import { useWords } from '../words.ts';
import { Dialog } from './dialog.tsx';
import { NewPrinter } from './new-printer.tsx';

interface PrinterDialogProps {
  readonly sheet: SheetAsk;
  readonly printers: readonly Printer[];
  readonly chosen: Printer | undefined;
  readonly onSave: (printers: readonly Printer[]) => void;
  readonly onChoose: (printer: Printer | undefined) => void;
  readonly onClose: () => void;
}

/** Sets up a printer that is off: print the bars, type what they measure, and sheets are drawn for it. */
export function PrinterDialog(props: PrinterDialogProps) {
  const { sheet, printers, chosen, onSave, onChoose, onClose } = props;
  const language = useWords();
  const words = language.page.bar.printer;
  const openSheet = async (): Promise<void> => {
    openTab(await inkPdf(rulerSheet(sheet, language), { title: words.sheet, jobName: 'ruler' }));
  };
  return (
    <Dialog title={words.title} onClose={onClose}>
      <SavedPrinters printers={printers} chosen={chosen} onSave={onSave} onChoose={onChoose} />
      <h3>{words.off}</h3>
      <p>{words.measure}</p>
      <Action words={words.openSheet} onAct={() => void openSheet()} />
      <NewPrinter
        onAdd={(printer) => {
          onSave([...printers.filter(({ name }) => name !== printer.name), printer]);
          onChoose(printer);
        }}
      />
    </Dialog>
  );
}

type SavedPrintersProps = Pick<PrinterDialogProps, 'printers' | 'chosen' | 'onSave' | 'onChoose'>;

/** Which of the saved printers sheets are drawn for, and it forgotten. */
function SavedPrinters({ printers, chosen, onSave, onChoose }: SavedPrintersProps) {
  const { page, paper } = useWords();
  const words = page.bar.printer;
  const forget = (): void => {
    onSave(printers.filter((each) => each.name !== chosen?.name));
    onChoose(undefined);
  };
  return (
    <>
      <label class="entry">
        <span>{words.drawFor}</span>
        <select
          value={chosen?.name ?? ''}
          onChange={(event) => onChoose(printers.find(({ name }) => name === event.currentTarget.value))}
        >
          <option value="">{words.none}</option>
          {printers.map(({ name, across, up }) => (
            <option key={name} value={name}>
              {words.one(asWritten(name), paper.measured(across), paper.measured(up))}
            </option>
          ))}
        </select>
      </label>
      {chosen && <Action words={words.forget(asWritten(chosen.name))} onAct={forget} kind="quiet" />}
    </>
  );
}
