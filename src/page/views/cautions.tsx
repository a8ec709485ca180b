import { useWords } from '../words.ts';

/** What has to be said before anybody cuts. */
export function Cautions() {
  const { summary, all } = useWords().page.views.cautions;
  return (
    <details class="cautions">
      <summary>{summary}</summary>
      <p>{all}</p>
    </details>
  );
}
