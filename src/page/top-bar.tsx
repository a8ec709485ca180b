import { useBench } from './bench.ts';
import type { Change, History } from './history.ts';
import { nameOf } from './job-name.ts';
import { pdfOfJob, sheetsOfJob } from './printed.ts';
import { save } from './save.ts';
import type { Shown } from './shown.ts';

interface TopBarProps {
  readonly history: History;
  readonly change: (change: Change) => void;
  readonly shown: Shown | undefined;
}

/** What is done with the job as a whole. */
export function TopBar({ history, change, shown }: TopBarProps) {
  const { doc } = useBench();
  const name = nameOf(doc);
  const savePdf = async (): Promise<void> => {
    if (!shown) return;
    const sheets = sheetsOfJob(shown.job, shown.solutions, name, false);
    save(`${name}.pdf`, await pdfOfJob(shown.job, sheets, name), 'application/pdf');
  };
  return (
    <header class="top">
      <h1>Copeleaf</h1>
      <div class="tools">
        <button type="button" disabled={history.past.length === 0} onClick={() => change({ kind: 'undo' })}>
          Undo
        </button>
        <button type="button" disabled={history.future.length === 0} onClick={() => change({ kind: 'redo' })}>
          Redo
        </button>
        <button type="button" onClick={() => save(`${name}.yaml`, history.present, 'application/yaml')}>
          Save job file
        </button>
        <button type="button" class="main" disabled={!shown} onClick={() => void savePdf()}>
          Save PDF
        </button>
      </div>
    </header>
  );
}
