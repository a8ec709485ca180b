import type { ComponentChildren } from 'preact';
import { useRef } from 'preact/hooks';
import type { Said } from '../../measure/said.ts';

interface TabsProps<Name extends string> {
  readonly label: Said;
  readonly names: readonly Name[];
  readonly words: Readonly<Record<Name, Said>>;
  readonly chosen: Name;
  readonly onChoose: (name: Name) => void;
  readonly children: ComponentChildren;
}

/** One of several views, chosen by pointer or by the arrow keys (WAI-ARIA tabs pattern, from memory). */
export function Tabs<Name extends string>(props: TabsProps<Name>) {
  const { label, names, words, chosen, onChoose, children } = props;
  const list = useRef<HTMLDivElement>(null);
  const step = (event: KeyboardEvent): void => {
    const at = names.indexOf(chosen);
    const to = { ArrowRight: at + 1, ArrowLeft: at - 1, Home: 0, End: names.length - 1 }[event.key];
    const name = to === undefined ? undefined : names[(to + names.length) % names.length];
    if (name === undefined) return;
    event.preventDefault();
    onChoose(name);
    const tab = list.current?.children[names.indexOf(name)];
    if (tab instanceof HTMLElement) tab.focus();
  };
  return (
    <>
      <div class="tabs" role="tablist" aria-label={label} ref={list} onKeyDown={step}>
        {names.map((name) => (
          <button
            type="button"
            role="tab"
            key={name}
            id={idOf(name)}
            aria-selected={name === chosen}
            aria-controls="view"
            tabIndex={name === chosen ? 0 : -1}
            onClick={() => onChoose(name)}
          >
            {words[name]}
          </button>
        ))}
      </div>
      <div class="view stack" role="tabpanel" id="view" aria-labelledby={idOf(chosen)}>
        {children}
      </div>
    </>
  );
}

function idOf(name: string): string {
  return `tab-${name}`;
}
