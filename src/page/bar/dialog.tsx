import type { ComponentChildren } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import type { Said } from '../../measure/said.ts';
import { Action } from '../action.tsx';
import { useWords } from '../words.ts';

interface DialogProps {
  readonly title: Said;
  readonly onClose: () => void;
  readonly children: ComponentChildren;
}

/** A window over the page; the browser keeps the focus in it and closes it on Escape. */
export function Dialog({ title, onClose, children }: DialogProps) {
  const { close } = useWords().page.bar;
  const dialog = useRef<HTMLDialogElement>(null);
  useLayoutEffect(() => dialog.current?.showModal(), []);
  return (
    <dialog class="stack" ref={dialog} onClose={onClose} aria-labelledby="dialog-title">
      <div class="dialog-head beside">
        <h2 id="dialog-title">{title}</h2>
        <Action words={close} onAct={() => dialog.current?.close()} />
      </div>
      {children}
    </dialog>
  );
}
