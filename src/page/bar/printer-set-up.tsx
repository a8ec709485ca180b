import { useState } from 'preact/hooks';
import type { SheetAsk } from '../../job/job.ts';
import { keepPrinters, keptPrinters } from '../job/keep.ts';
import { printersAsText, printersIn } from '../job/printers.ts';
import type { Printing } from '../job/printing.ts';
import { PrinterDialog } from './printer-dialog.tsx';

interface PrinterSetUpProps {
  readonly open: boolean;
  readonly sheet: SheetAsk;
  readonly printing: Printing;
  readonly onPrinting: (printing: Printing) => void;
  readonly onClose: () => void;
}

/** The printers that this browser keeps, or this page where the browser keeps nothing, and the window that sets them up. */
export function PrinterSetUp({ open, sheet, printing, onPrinting, onClose }: PrinterSetUpProps) {
  const [printers, setPrinters] = useState(() => printersIn(keptPrinters()));
  if (!open) return null;
  return (
    <PrinterDialog
      sheet={sheet}
      printers={printers}
      chosen={printing.printer}
      onSave={(next) => {
        setPrinters(next);
        keepPrinters(printersAsText(next));
      }}
      onChoose={(printer) => onPrinting({ footprints: printing.footprints, ...(printer && { printer }) })}
      onClose={onClose}
    />
  );
}
