import { useEffect, useLayoutEffect, useRef } from 'preact/hooks';

interface Focused {
  readonly element: HTMLElement;
  /** What can have the focus before it, the nearest last. */
  readonly before: readonly HTMLElement[];
}

const FOCUSABLE = ['a[href]', 'button', 'input', 'select', 'textarea', 'summary', '[tabindex="0"]'].join();

/**
 * Keeps the focus where what has it is taken away by a change: it goes to the same field made anew elsewhere, else to what stood
 * before it. Without that, who works by keys would be sent back to the beginning of the page.
 */
export function useKeptFocus(): void {
  const focused = useRef<Focused | undefined>(undefined);
  useEffect(() => {
    const note = ({ target }: FocusEvent): void => {
      if (!(target instanceof HTMLElement)) return;
      const all = Array.from(document.querySelectorAll<HTMLElement>(FOCUSABLE));
      focused.current = { element: target, before: all.slice(0, all.indexOf(target)) };
    };
    document.addEventListener('focusin', note);
    return () => document.removeEventListener('focusin', note);
  }, []);
  useLayoutEffect(() => {
    const { current } = focused;
    if (!current || current.element.isConnected || document.activeElement !== document.body) return;
    const again = current.element.id === '' ? null : document.getElementById(current.element.id);
    const next = again ?? current.before.findLast((each) => each.checkVisibility());
    next?.focus();
  });
}
