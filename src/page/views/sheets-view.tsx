import { useEffect, useRef, useState } from 'preact/hooks';
import { inkSheetSvg } from '../../ink/svg-sheet.ts';
import type { LaidSheets } from '../../tiler/lay-sheets.ts';

/** More than fit on a screen are not drawn; the PDF has them all. */
const MOST = 24;

/** Every sheet as it will be printed, small. `lay` gives them. */
export function SheetsView({ lay }: { readonly lay: () => LaidSheets }) {
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
        svg.setAttribute('aria-label', `Sheet ${number} of ${set.count}`);
        const item = document.createElement('li');
        item.append(svg);
        shown.push(item);
      }
      room.current?.replaceChildren(...shown);
      setCount(set.count);
    }, 150);
    return () => clearTimeout(waiting);
  }, [lay]);
  return (
    <>
      <p class="aside">
        {count === undefined ? 'Laying the sheets' : `${count} ${count === 1 ? 'sheet' : 'sheets'}`}
        {count !== undefined && count > MOST ? `, of which the first ${MOST} are shown` : ''}
      </p>
      <ul class="sheets" ref={room} />
    </>
  );
}
