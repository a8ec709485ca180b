import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';

interface FoldProps {
  readonly summary: ComponentChildren;
  /** Something in it is filled in, so that it opens by itself. */
  readonly told: boolean;
  readonly children: ComponentChildren;
}

/** What is seldom asked. It does not shut by itself, as where its only value is wiped out to be typed anew. */
export function Fold({ summary, told, children }: FoldProps) {
  const [open, setOpen] = useState(told);
  return (
    <details open={open || told} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{summary}</summary>
      {children}
    </details>
  );
}
