import type { Warning } from '../../fit/warnings.ts';

/** What can be cut as asked but may disappoint, beside what causes it. */
export function Watch({ warnings }: { readonly warnings: readonly Warning[] }) {
  if (warnings.length === 0) return null;
  return (
    <ul class="watch">
      {warnings.map(({ code, text }) => (
        <li key={code}>
          <strong>{code}</strong> {text}
        </li>
      ))}
    </ul>
  );
}
