import { useEffect, useState } from 'preact/hooks';
import { useWords } from '../words.ts';

/** What has to be said before anybody cuts; it opens by itself once, when there is something to cut by. */
export function Cautions({ printed }: { readonly printed: boolean }) {
  const { summary, all } = useWords().page.views.cautions;
  const [open, setOpen] = useState(false);
  useEffect(() => setOpen(printed), [printed]);
  return (
    <details class="cautions beware" open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{summary}</summary>
      <p>{all}</p>
    </details>
  );
}
