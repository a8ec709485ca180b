import { useRef, useState } from 'preact/hooks';
import { inkDxf } from '../../ink/dxf.ts';
import { inkSvg } from '../../ink/svg.ts';
import { useBench } from '../bench.ts';
import type { Change, History } from '../job/history.ts';
import { nameOf } from '../job/job-name.ts';
import { leavesOfJob, pdfOfJob, sheetsOfJob } from '../job/printed.ts';
import type { Printing } from '../job/printing.ts';
import { openTab, save } from '../job/save.ts';
import type { Shown } from '../job/shown.ts';
import { LinkDialog } from './link-dialog.tsx';
import { Menu } from './menu.tsx';

interface TopBarProps {
  readonly history: History;
  readonly change: (change: Change) => void;
  readonly shown: Shown | undefined;
  readonly printing: Printing;
  readonly onOpen: (file: File) => void;
  readonly onNew: () => void;
  readonly onPrinter: () => void;
  readonly onFootprints: (footprints: boolean) => void;
  readonly say: (words: string) => void;
}

/** What is done with the job as a whole. */
export function TopBar(props: TopBarProps) {
  const { history, change, shown, printing, onOpen, onNew, onPrinter, onFootprints, say } = props;
  const { doc } = useBench();
  const picker = useRef<HTMLInputElement>(null);
  const [linked, setLinked] = useState(false);
  const name = nameOf(doc);
  const ready =
    shown?.solutions.some(({ ends: { A, B } }) => A?.kind === 'coped' || B?.kind === 'coped') ?? false;
  const pdf = async (job: Shown): Promise<Uint8Array> => {
    const sheets = sheetsOfJob(job.job, job.solutions, name, printing.footprints, printing.printer);
    return pdfOfJob(job.job, sheets, name);
  };
  /** Such as a paper that a printer's factor leaves too small. */
  const sayWhyNot = (error: unknown): undefined => {
    if (!(error instanceof RangeError)) throw error;
    say(`This can’t be printed so: ${error.message}`);
  };
  const out = (ending: string, make: (job: Shown) => Promise<[string | Uint8Array, string]>) => async () => {
    if (!shown) return;
    try {
      const [data, type] = await make(shown);
      save(`${name}.${ending}`, data, type);
      say(`${name}.${ending} is saved.`);
    } catch (error) {
      sayWhyNot(error);
    }
  };
  const print = async (): Promise<void> => {
    if (!shown) return;
    const opened = openTab(await pdf(shown));
    say(
      opened ? 'The PDF is in a new tab: print it at 100 %.' : 'The browser kept the tab shut: save the PDF.',
    );
  };
  const savePdf = out('pdf', async (job) => [await pdf(job), 'application/pdf']);
  const leaves = ({ job, solutions }: Shown) => leavesOfJob(job, solutions, printing.footprints);
  const saveSvg = out('svg', async (job) => [inkSvg(leaves(job), window), 'image/svg+xml']);
  const saveDxf = out('dxf', async (job) => [inkDxf(leaves(job)), 'application/dxf']);
  /** One that can't be used for now keeps the focus, which its last use may have left on it. */
  const button = (words: string, act: () => void, enabled = true, kind = '') => (
    <button
      type="button"
      class={kind}
      aria-disabled={enabled ? undefined : 'true'}
      onClick={() => {
        if (enabled) act();
      }}
    >
      {words}
    </button>
  );
  return (
    <header class="top">
      <h1>Copeleaf</h1>
      <div class="tools">
        {button('Undo', () => change({ kind: 'undo' }), history.past.length > 0)}
        {button('Redo', () => change({ kind: 'redo' }), history.future.length > 0)}
        <Menu name="Job">
          {button('New job', onNew)}
          {button('Open a job file or PDF', () => picker.current?.click())}
          {button('Save job file', () => {
            save(`${name}.yaml`, history.present, 'application/yaml');
            say(`${name}.yaml is saved.`);
          })}
          {button('Link to this job', () => setLinked(true))}
          {button('Save SVG', () => void saveSvg(), ready)}
          {button('Save DXF', () => void saveDxf(), ready)}
          {button('Printer set-up', onPrinter)}
          <label class="tick">
            <input
              type="checkbox"
              checked={printing.footprints}
              onChange={(event) => onFootprints(event.currentTarget.checked)}
            />
            <span>with the headers’ footprints</span>
          </label>
        </Menu>
        {button('Print', () => void print(), ready)}
        {button('Save PDF', () => void savePdf(), ready, 'main')}
      </div>
      <input
        ref={picker}
        type="file"
        hidden
        accept=".yaml,.yml,.pdf,application/pdf,application/yaml,text/yaml"
        onChange={(event) => {
          const [file] = event.currentTarget.files ?? [];
          if (file) onOpen(file);
          event.currentTarget.value = '';
        }}
      />
      {linked && <LinkDialog text={history.present} onClose={() => setLinked(false)} />}
    </header>
  );
}
