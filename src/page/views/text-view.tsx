import { useState } from 'preact/hooks';
import { useBench } from '../bench.ts';
import { takeJob } from '../job/opened.ts';
import { useWords } from '../words.ts';

/** The job file itself. What is typed is taken as soon as it can be read as one. Where it stands twice each has its own id. */
export function TextView({ id = 'job-text' }: { readonly id?: string }) {
  const { text, writeWhole } = useBench();
  const words = useWords();
  const [draft, setDraft] = useState<string | undefined>(undefined);
  const { label, wrong } = words.page.views.file;
  const taken = draft === undefined ? undefined : takeJob(draft, words);
  return (
    <div class="job-text">
      <label for={id}>{label}</label>
      <textarea
        id={id}
        rows={22}
        spellcheck={false}
        value={draft ?? text}
        aria-invalid={taken && !taken.ok ? 'true' : undefined}
        aria-describedby={`${id}-wrong`}
        onInput={(event) => {
          const written = event.currentTarget.value;
          const read = takeJob(written, words);
          setDraft(read.ok ? undefined : written);
          if (read.ok) writeWhole(written, 'job-text');
        }}
      />
      <p class="wrong" id={`${id}-wrong`}>
        {taken && !taken.ok && wrong(taken.why)}
      </p>
    </div>
  );
}
