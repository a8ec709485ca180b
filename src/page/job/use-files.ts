import { useEffect, useRef, useState } from 'preact/hooks';

/** Takes files that are dropped anywhere on the page. Gives whether one is held over it. */
export function useFiles(onFile: (file: File) => void): boolean {
  const [over, setOver] = useState(false);
  const latest = useRef(onFile);
  latest.current = onFile;
  useEffect(() => {
    const hold = (event: DragEvent): void => {
      if (!event.dataTransfer?.types.includes('Files')) return;
      event.preventDefault();
      setOver(true);
    };
    const leave = (event: DragEvent): void => {
      if (event.relatedTarget === null) setOver(false);
    };
    const drop = (event: DragEvent): void => {
      setOver(false);
      const [file] = event.dataTransfer?.files ?? [];
      if (!file) return;
      event.preventDefault();
      latest.current(file);
    };
    document.addEventListener('dragover', hold);
    document.addEventListener('dragleave', leave);
    document.addEventListener('drop', drop);
    return () => {
      document.removeEventListener('dragover', hold);
      document.removeEventListener('dragleave', leave);
      document.removeEventListener('drop', drop);
    };
  }, []);
  return over;
}
