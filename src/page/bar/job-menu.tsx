import { useRef } from 'preact/hooks';
import { Action } from '../action.tsx';
import { useWords } from '../words.ts';
import { Menu } from './menu.tsx';
import type { Outputs } from './outputs.ts';

interface JobMenuProps {
  readonly outputs: Outputs;
  readonly footprints: boolean;
  readonly onNew: () => void;
  readonly onOpen: (file: File) => void;
  readonly onSave: () => void;
  readonly onLink: () => void;
  readonly onPrinter: () => void;
  readonly onLicences: () => void;
  readonly onFootprints: (footprints: boolean) => void;
}

/** What is less often done with the job as a whole. */
export function JobMenu(props: JobMenuProps) {
  const { outputs, footprints, onNew, onOpen, onSave, onLink, onPrinter, onLicences, onFootprints } = props;
  const words = useWords().page.bar.menu;
  const picker = useRef<HTMLInputElement>(null);
  return (
    <>
      <Menu name={words.name}>
        <Action words={words.newJob} onAct={onNew} />
        <Action words={words.open} onAct={() => picker.current?.click()} />
        <Action words={words.saveJob} onAct={onSave} />
        <Action words={words.link} onAct={onLink} />
        <Action words={words.saveSvg} onAct={() => void outputs.saveSvg()} enabled={outputs.ready} />
        <Action words={words.saveDxf} onAct={() => void outputs.saveDxf()} enabled={outputs.ready} />
        <Action words={words.printer} onAct={onPrinter} />
        <Action words={words.licences} onAct={onLicences} />
        <label class="tick">
          <input
            type="checkbox"
            checked={footprints}
            onChange={(event) => onFootprints(event.currentTarget.checked)}
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
    </>
  );
}
