import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';

/** Less used actions behind one word; closed by one of them, by Escape and by a press elsewhere. */
export function Menu({ name, children }: { readonly name: string; readonly children: ComponentChildren }) {
  const menu = useRef<HTMLDetailsElement>(null);
  useEffect(() => {
    const shut = (event: Event): void => {
      const inside = event.target instanceof Node && menu.current?.contains(event.target);
      const pressed = event.target instanceof Element && event.target.closest('button') !== null;
      if (!inside || (event.type === 'click' && pressed)) menu.current?.removeAttribute('open');
    };
    document.addEventListener('click', shut);
    return () => document.removeEventListener('click', shut);
  }, []);
  return (
    <details
      class="more"
      ref={menu}
      onKeyDown={(event) => {
        if (event.key !== 'Escape' || !menu.current?.open) return;
        menu.current.open = false;
        menu.current.querySelector('summary')?.focus();
      }}
    >
      <summary class="button">{name}</summary>
      <div class="sheaf">{children}</div>
    </details>
  );
}
