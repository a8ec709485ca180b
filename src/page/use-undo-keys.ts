import { useEffect } from 'preact/hooks';
import type { Change } from './job/history.ts';

/** Undo and redo by the usual keys, in a field too: the page's own steps hold for every field. */
export function useUndoKeys(change: (change: Change) => void): void {
  useEffect(() => {
    const press = (event: KeyboardEvent): void => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
      const key = event.key.toLowerCase();
      const redo = key === 'y' || (key === 'z' && event.shiftKey);
      if (key !== 'z' && !redo) return;
      event.preventDefault();
      change({ kind: redo ? 'redo' : 'undo' });
    };
    document.addEventListener('keydown', press);
    return () => document.removeEventListener('keydown', press);
  }, [change]);
}
