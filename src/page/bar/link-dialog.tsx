import { useState } from 'preact/hooks';
import type { Said } from '../../measure/said.ts';
import { Action } from '../action.tsx';
import { fragmentOf } from '../job/link.ts';
import { useWords } from '../words.ts';
import { Dialog } from './dialog.tsx';

/** A link that carries the whole job; nothing is sent anywhere. */
export function LinkDialog({ text, onClose }: { readonly text: string; readonly onClose: () => void }) {
  const words = useWords().page.bar.link;
  const [told, tell] = useState<Said | undefined>(undefined);
  const [address = ''] = location.href.split('#');
  const link = address + fragmentOf(text);
  const copy = async (): Promise<void> => {
    try {
      await navigator.clipboard.writeText(link);
      tell(words.copied);
    } catch {
      tell(words.cantCopy);
    }
  };
  return (
    <Dialog title={words.title} onClose={onClose}>
      <p>{words.carries}</p>
      <div class="entry">
        <label for="link">{words.label}</label>
        <textarea
          id="link"
          readOnly
          rows={5}
          value={link}
          onFocus={(event) => event.currentTarget.select()}
        />
      </div>
      <Action words={words.copy} onAct={() => void copy()} kind="main" />
      <p class="aside" role="status">
        {told}
      </p>
    </Dialog>
  );
}
