import { useEffect, useRef, useState } from 'preact/hooks';
import { inkSheetSvg } from '../../ink/svg-sheet.ts';
import type { LaidSheets } from '../../tiler/lay-sheets.ts';
import { useWords } from '../words.ts';

/** More than fit on a screen are not drawn; the PDF has them all. */
const MOST = 24;

/** Every sheet as it will be printed, small. `lay` gives them. */
export function SheetsView({ lay }: { readonly lay: () => LaidSheets }) {
  const words = useWords().page.views.sheets;
  const room = useRef<HTMLUListElement>(null);
  const [count, setCount] = useState<number | undefined>(undefined);
  useEffect(() => {
    // After the leaf and the form are drawn: laying sheets takes longer than they do.
    const waiting = setTimeout(() => {
      const set = lay();
      const shown: HTMLLIElement[] = [];
      for (const sheet of set.sheets) {
        if (shown.length === MOST) break;
        const number = shown.length + 1;
        const svg = inkSheetSvg(set, sheet, `sheet-${number}`, window);
        svg.setAttribute('role', 'img');
        svg.setAttribute('aria-label', words.one(number, set.count));
        const item = document.createElement('li');
        item.append(svg);
        shown.push(item);
      }
      room.current?.replaceChildren(...shown);
      setCount(set.count);
    }, 150);
    return () => clearTimeout(waiting);
  }, [lay, words]);
  return (
    <>
      <p class="aside">{count === undefined ? words.laying : words.count(count, MOST)}</p>
      <ul class="sheets" ref={room} />
    </>
  );
}
