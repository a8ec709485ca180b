import type { Warning } from '../../fit/warnings.ts';
import { useWords } from '../words.ts';

/** What can be cut as asked but may disappoint, beside what causes it. */
export function Watch({ warnings }: { readonly warnings: readonly Warning[] }) {
  const words = useWords().page.form.warnings;
  if (warnings.length === 0) return null;
  return (
    <ul class="watch stack">
      {warnings.map(({ code, text }) => (
        <li class="beware" key={text}>
          <strong>{words[code]}</strong> {text}
        </li>
      ))}
    </ul>
  );
}
