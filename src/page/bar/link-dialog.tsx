import { useState } from 'preact/hooks';
import { fragmentOf } from '../job/link.ts';
import { Dialog } from './dialog.tsx';

/** A link that carries the whole job; nothing is sent anywhere. */
export function LinkDialog({ text, onClose }: { readonly text: string; readonly onClose: () => void }) {
  const [said, say] = useState('');
  const link = location.href.replace(/#.*$/, '') + fragmentOf(text);
  const copy = async (): Promise<void> => {
    try {
      await navigator.clipboard.writeText(link);
      say('Copied.');
    } catch {
      say('This browser does not let a page copy: mark the link and copy it.');
    }
  };
  return (
    <Dialog title="Link to this job" onClose={onClose}>
      <p>
        The whole job is in the link itself, after the #. Whoever opens it with the same page sees this job.
      </p>
      <div class="entry">
        <label for="link">link</label>
        <textarea
          id="link"
          readOnly
          rows={5}
          value={link}
          onFocus={(event) => event.currentTarget.select()}
        />
      </div>
      <button type="button" class="main" onClick={() => void copy()}>
        Copy
      </button>
      <p class="aside" role="status">
        {said}
      </p>
    </Dialog>
  );
}
