import type { ComponentChildren } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import type { Said } from '../../measure/said.ts';

interface FoldProps {
  readonly summary: Said;
  /** Something in it is filled in, so that it opens by itself. */
  readonly told: boolean;
  readonly children: ComponentChildren;
}

/**
 * What is seldom asked. It never shuts by itself: what has the focus in it would lose it, as where its only value is wiped out to be
 * typed anew. Whether it is open only the browser knows, which may tell of it several keys later.
 */
export function Fold({ summary, told, children }: FoldProps) {
  const fold = useRef<HTMLDetailsElement>(null);
  useLayoutEffect(() => {
    if (told && fold.current) fold.current.open = true;
  }, [told]);
  return (
    <details ref={fold}>
      <summary>{summary}</summary>
      {children}
    </details>
  );
}
