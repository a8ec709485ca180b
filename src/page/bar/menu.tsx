import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import type { Said } from '../../measure/said.ts';

/** Less used actions behind one word; closed by one of them, by Escape, by a press elsewhere and by going on to what follows. */
export function Menu({ name, children }: { readonly name: Said; readonly children: ComponentChildren }) {
  const menu = useRef<HTMLDetailsElement>(null);
  /** The focus would be lost with what it is on. */
  const close = (): void => {
    if (!menu.current) return;
    menu.current.open = false;
    menu.current.querySelector('summary')?.focus();
  };
  useEffect(() => {
    const shut = ({ target }: Event): void => {
      if (!(target instanceof Element)) return;
      const inside = menu.current?.contains(target) ?? false;
      if (!inside) menu.current?.removeAttribute('open');
      else if (target.closest('button')) close();
    };
    // Before the entry does its work: a window that it opens gives the focus back to what had it.
    document.addEventListener('click', shut, true);
    return () => document.removeEventListener('click', shut, true);
  }, []);
  return (
    <details
      class="more"
      ref={menu}
      onKeyDown={(event) => {
        if (event.key === 'Escape' && menu.current?.open) close();
      }}
      onFocusOut={({ currentTarget, relatedTarget }) => {
        if (relatedTarget instanceof Node && !currentTarget.contains(relatedTarget))
          currentTarget.open = false;
      }}
    >
      <summary class="button">{name}</summary>
      <div class="sheaf">{children}</div>
    </details>
  );
}
