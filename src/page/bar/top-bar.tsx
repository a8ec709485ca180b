import { useState } from 'preact/hooks';
import type { Said } from '../../measure/said.ts';
import { asWritten } from '../../words/said.ts';
import { Action } from '../action.tsx';
import { useBench } from '../bench.ts';
import type { Change, History } from '../job/history.ts';
import { nameOf } from '../job/job-name.ts';
import type { PdfMaker } from '../job/pdf-maker.ts';
import type { Printing } from '../job/printing.ts';
import { save } from '../job/save.ts';
import type { Shown } from '../job/shown.ts';
import { useWords } from '../words.ts';
import { JobMenu } from './job-menu.tsx';
import { LicencesDialog } from './licences-dialog.tsx';
import { LinkDialog } from './link-dialog.tsx';
import { outputsOf } from './outputs.ts';
import { UnitSwitch } from './unit-switch.tsx';

interface TopBarProps {
  readonly history: History;
  readonly change: (change: Change) => void;
  readonly shown: Shown | undefined;
  readonly printing: Printing;
  readonly makePdf: PdfMaker;
  readonly onPrinted: () => void;
  /** How many the job gives. */
  readonly warnings: number;
  readonly onOpen: (file: File) => void;
  readonly onNew: () => void;
  readonly onPrinter: () => void;
  readonly onFootprints: (footprints: boolean) => void;
  readonly tell: (words: Said) => void;
}

/** What is done with the job as a whole. */
export function TopBar(props: TopBarProps) {
  const { history, change, shown, printing, makePdf, warnings, tell } = props;
  const words = useWords();
  const { bar, notices } = words.page;
  const [linked, setLinked] = useState(false);
  const [licences, setLicences] = useState(false);
  const name = nameOf(useBench().doc);
  const outputs = outputsOf(shown, name, printing, makePdf, { tell, printed: props.onPrinted }, words);
  const saveJob = (): void => {
    save(`${name}.yaml`, history.present, 'application/yaml');
    tell(notices.saved(asWritten(`${name}.yaml`)));
  };
  return (
    <header class="top">
      <h1>{bar.name}</h1>
      <UnitSwitch />
      <div class="tools">
        <Action words={bar.undo} onAct={() => change({ kind: 'undo' })} enabled={history.past.length > 0} />
        <Action words={bar.redo} onAct={() => change({ kind: 'redo' })} enabled={history.future.length > 0} />
        <JobMenu
          outputs={outputs}
          footprints={printing.footprints}
          onNew={props.onNew}
          onOpen={props.onOpen}
          onSave={saveJob}
          onLink={() => setLinked(true)}
          onPrinter={props.onPrinter}
          onLicences={() => setLicences(true)}
          onFootprints={props.onFootprints}
        />
        <Action words={bar.print} onAct={() => void outputs.print()} enabled={outputs.ready} />
        <Action
          words={bar.savePdf}
          onAct={() => void outputs.savePdf()}
          enabled={outputs.ready}
          kind="main"
        />
        {warnings > 0 && <p class="count">{bar.warnings(warnings)}</p>}
      </div>
      {licences && <LicencesDialog onClose={() => setLicences(false)} />}
      {linked && <LinkDialog text={history.present} onClose={() => setLinked(false)} />}
    </header>
  );
}
