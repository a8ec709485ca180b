import type { Mm } from '../../measure/units.ts';
import { inOrder, type OrdinateTable } from '../../saddle/ordinates.ts';
import type { Notes } from '../job/notes.ts';
import type { Shown } from '../job/shown.ts';
import { useWords } from '../words.ts';

const SPACING = { perTurn: 24, apart: 10 };

/** What `check` says, and the setbacks at equal stations, to lay out with tape and marker. */
export function NumbersView({ shown, notes }: { readonly shown: Shown; readonly notes: Notes }) {
  const { job, solution } = shown;
  return (
    <div class="numbers stack">
      {notes.aloud !== undefined && (
        // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls has to be reached by keys.
        <pre tabIndex={0}>{notes.aloud}</pre>
      )}
      {inOrder([solution], SPACING).map((table) => (
        <Ordinates key={table.end} table={table} units={job.units} />
      ))}
    </div>
  );
}

function Ordinates({ table, units }: { readonly table: OrdinateTable; readonly units: 'mm' | 'in' }) {
  const { end, rows, solution, cope } = table;
  const words = useWords().page.views.numbers;
  const written = (mm: Mm | undefined) => mm !== undefined && words.setback(mm, units);
  const angles = solution.section.stations === 'angles';
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: as above.
    <section class="scrolls" tabIndex={0} aria-label={words.ofEnd(end)}>
      <table>
        <caption>{words.caption(end, units)}</caption>
        <thead>
          <tr>
            <th scope="col">{angles ? words.station : words.around}</th>
            <th scope="col">{words.outside}</th>
            {cope.inside && <th scope="col">{words.inside}</th>}
            {cope.square && <th scope="col">{words.square}</th>}
            <th scope="col">{words.cutTo}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ place, outside, inside, square, cut, contact }, i) => (
            <tr key={i}>
              <th scope="row">{words.place(place, angles)}</th>
              <td>{written(outside)}</td>
              {cope.inside && <td>{written(inside)}</td>}
              {cope.square && <td>{written(square)}</td>}
              <td>{words.cut(cut, units, contact)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
