import { useRef, useState } from 'preact/hooks';
import { asWritten } from '../../words/said.ts';
import { Action } from '../action.tsx';
import { useBench } from '../bench.ts';
import { save } from '../job/save.ts';
import { useWords } from '../words.ts';
import { LicencesDialog } from './licences-dialog.tsx';
import { LinkDialog } from './link-dialog.tsx';
import { Menu } from './menu.tsx';
import type { Outputs } from './outputs.ts';

/** What the menu leaves to the page. */
export interface JobMenuDeeds {
  readonly onNew: () => void;
  readonly onOpen: (file: File) => void;
  readonly onPrinter: () => void;
}

interface JobMenuProps extends JobMenuDeeds {
  /** Of the job's files, without an ending. */
  readonly name: string;
  readonly outputs: Outputs;
}

/** What is less often done with the job as a whole. */
export function JobMenu({ name, outputs, onNew, onOpen, onPrinter }: JobMenuProps) {
  const { text, printing, setPrinting, tell } = useBench();
  const { bar, notices } = useWords().page;
  const words = bar.menu;
  const picker = useRef<HTMLInputElement>(null);
  const [open, setOpen] = useState<'link' | 'licences' | undefined>(undefined);
  const saveJob = (): void => {
    save(`${name}.yaml`, text, 'application/yaml');
    tell(notices.saved(asWritten(`${name}.yaml`)));
  };
  return (
    <>
      <Menu name={words.name}>
        <Action words={words.newJob} onAct={onNew} />
        <Action words={words.open} onAct={() => picker.current?.click()} />
        <Action words={words.saveJob} onAct={saveJob} />
        <Action words={words.link} onAct={() => setOpen('link')} />
        <Action words={words.saveSvg} onAct={() => void outputs.saveSvg()} enabled={outputs.ready} />
        <Action words={words.saveDxf} onAct={() => void outputs.saveDxf()} enabled={outputs.ready} />
        <Action words={words.printer} onAct={onPrinter} />
        <Action words={words.licences} onAct={() => setOpen('licences')} />
        <label class="tick beside">
          <input
            type="checkbox"
            checked={printing.footprints}
            onChange={(event) => setPrinting({ ...printing, footprints: event.currentTarget.checked })}
          />
          <span>{words.footprints}</span>
        </label>
      </Menu>
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
      {open === 'licences' && <LicencesDialog onClose={() => setOpen(undefined)} />}
      {open === 'link' && <LinkDialog text={text} onClose={() => setOpen(undefined)} />}
    </>
  );
}
