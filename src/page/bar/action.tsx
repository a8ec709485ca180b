import type { Said } from '../../measure/said.ts';

interface ActionProps {
  readonly words: Said;
  readonly onAct: () => void;
  readonly enabled?: boolean;
  readonly kind?: 'main';
}

/** A button that keeps the focus when it can't be used for now: its last use may have left it there. */
export function Action({ words, onAct, enabled = true, kind }: ActionProps) {
  return (
    <button
      type="button"
      class={kind}
      aria-disabled={enabled ? undefined : 'true'}
      onClick={() => {
        if (enabled) onAct();
      }}
    >
      {words}
    </button>
  );
}
