import type { Said } from '../measure/said.ts';

interface ActionProps {
  readonly words: Said;
  readonly onAct: () => void;
  /** A name that says more than the words that are shown. */
  readonly fullName?: Said;
  readonly kind?: 'main' | 'quiet' | 'jump';
  readonly enabled?: boolean;
  /** Of a button that stays down. */
  readonly pressed?: boolean;
}

/** A button. One that can't be used for now keeps the focus: its last use may have left it there. */
export function Action({ words, onAct, fullName, kind, enabled = true, pressed }: ActionProps) {
  return (
    <button
      type="button"
      class={kind}
      aria-label={fullName}
      aria-pressed={pressed}
      aria-disabled={enabled ? undefined : 'true'}
      onClick={() => {
        if (enabled) onAct();
      }}
    >
      {words}
    </button>
  );
}
