import { Action } from '../action.tsx';
import { useBench } from '../bench.ts';
import { nameOf } from '../job/job-name.ts';
import type { PdfMaker } from '../job/pdf-maker.ts';
import { useWords } from '../words.ts';
import { JobMenu, type JobMenuDeeds } from './job-menu.tsx';
import { outputsOf } from './outputs.ts';
import { UnitSwitch } from './unit-switch.tsx';

interface TopBarProps extends JobMenuDeeds {
  readonly makePdf: PdfMaker;
  readonly onPrinted: () => void;
  /** How many the job gives. */
  readonly warnings: number;
}

/** What is done with the job as a whole. */
export function TopBar({ makePdf, onPrinted, warnings, ...deeds }: TopBarProps) {
  const { doc, history, change, shown, printing, tell } = useBench();
  const words = useWords();
  const { bar } = words.page;
  const name = nameOf(doc);
  const outputs = outputsOf(shown, name, printing, makePdf, { tell, printed: onPrinted }, words);
  return (
    <header class="top">
      <h1>{bar.name}</h1>
      <UnitSwitch />
      <div class="tools">
        <Action words={bar.undo} onAct={() => change({ kind: 'undo' })} enabled={history.past.length > 0} />
        <Action words={bar.redo} onAct={() => change({ kind: 'redo' })} enabled={history.future.length > 0} />
        <JobMenu name={name} outputs={outputs} {...deeds} />
        <Action words={bar.print} onAct={() => void outputs.print()} enabled={outputs.ready} />
        <Action
          words={bar.savePdf}
          onAct={() => void outputs.savePdf()}
          enabled={outputs.ready}
          kind="main"
        />
        {warnings > 0 && <p class="count beware">{bar.warnings(warnings)}</p>}
      </div>
    </header>
  );
}
