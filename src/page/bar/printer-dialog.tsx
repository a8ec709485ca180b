import { useState } from 'preact/hooks';
import { inkPdf } from '../../ink/pdf.ts';
import type { SheetAsk } from '../../job/job.ts';
import type { Printer } from '../../job/paper/printer.ts';
import { rulerSheet } from '../../tiler/aids/ruler.ts';
import { asWritten } from '../../words/said.ts';
import { Action } from '../action.tsx';
import { useBench } from '../bench.ts';
import { keep, kept } from '../job/keep.ts';
import { printersAsText, printersIn } from '../job/printers.ts';
import { openTab } from '../job/save.ts';
import { useWords } from '../words.ts';
import { Dialog } from './dialog.tsx';
import { NewPrinter } from './new-printer.tsx';

interface PrinterDialogProps {
  readonly open: boolean;
  /** What the bars are printed on. */
  readonly sheet: SheetAsk;
  readonly onClose: () => void;
}

/**
 * Sets up a printer that is off: print the bars, type what they measure, and sheets are drawn for it. Printers are kept by the browser or,
 * where that keeps nothing, by the page: so it stands while it is not open.
 */
export function PrinterDialog({ open, sheet, onClose }: PrinterDialogProps) {
  const { printing, setPrinting } = useBench();
  const language = useWords();
  const [printers, setPrinters] = useState(() => printersIn(kept('printers')));
  if (!open) return null;
  const words = language.page.bar.printer;
  const save = (next: readonly Printer[], chosen: Printer | undefined): void => {
    setPrinters(next);
    keep('printers', printersAsText(next));
    choose(chosen);
  };
  const choose = (printer: Printer | undefined): void =>
    setPrinting({ footprints: printing.footprints, ...(printer && { printer }) });
  const without = (name: string): readonly Printer[] => printers.filter((each) => each.name !== name);
  const openSheet = async (): Promise<void> => {
    openTab(await inkPdf(rulerSheet(sheet, language), { title: words.sheet, jobName: 'ruler' }));
  };
  return (
    <Dialog title={words.title} onClose={onClose}>
      <SavedPrinters
        printers={printers}
        chosen={printing.printer}
        onChoose={choose}
        onForget={(name) => save(without(name), undefined)}
      />
      <h3>{words.off}</h3>
      <p>{words.measure}</p>
      <Action words={words.openSheet} onAct={() => void openSheet()} />
      <NewPrinter onAdd={(printer) => save([...without(printer.name), printer], printer)} />
    </Dialog>
  );
}

interface SavedPrintersProps {
  readonly printers: readonly Printer[];
  readonly chosen: Printer | undefined;
  readonly onChoose: (printer: Printer | undefined) => void;
  readonly onForget: (name: string) => void;
}

/** Which of the saved printers sheets are drawn for, and it forgotten. */
function SavedPrinters({ printers, chosen, onChoose, onForget }: SavedPrintersProps) {
  const { page, paper } = useWords();
  const words = page.bar.printer;
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
      {chosen && (
        <Action
          words={words.forget(asWritten(chosen.name))}
          onAct={() => onForget(chosen.name)}
          kind="quiet"
        />
      )}
    </>
  );
}
