import { MM_PER_INCH, type Mm } from '../../measure/units.ts';
import { inchFraction, millimetres } from '../../measure/write.ts';
import { inOrder, type OrdinateTable } from '../../saddle/ordinates.ts';
import type { Notes } from '../job/notes.ts';
import type { Shown } from '../job/shown.ts';

const SPACING = { perTurn: 24, apart: 10 };

/** What `check` says, and the setbacks at equal stations, to lay out with tape and marker. */
export function NumbersView({ shown, notes }: { readonly shown: Shown; readonly notes: Notes }) {
  const { job, solution } = shown;
  return (
    <div class="numbers">
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
  const say = (mm: Mm | undefined): string =>
    mm === undefined ? '' : units === 'in' ? (mm / MM_PER_INCH).toFixed(3) : mm.toFixed(2);
  const angles = solution.section.stations === 'angles';
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: as above.
    <section class="scrolls" tabIndex={0} aria-label={`Setbacks of end ${end}`}>
      <table>
        <caption>
          End {end}: setbacks in {units === 'in' ? 'inches' : 'mm'} from the work point, positive towards the
          tube’s body
        </caption>
        <thead>
          <tr>
            <th scope="col">{angles ? 'station' : 'mm round'}</th>
            <th scope="col">outside</th>
            {cope.inside && <th scope="col">inside</th>}
            {cope.square && <th scope="col">square</th>}
            <th scope="col">cut to</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ place, outside, inside, square, cut, contact }) => (
            <tr key={place}>
              <th scope="row">
                {millimetres(place)}
                {angles ? '°' : ''}
              </th>
              <td>{say(outside)}</td>
              {cope.inside && <td>{say(inside)}</td>}
              {cope.square && <td>{say(square)}</td>}
              <td>
                {units === 'in' ? inchFraction(cut) : say(cut)}
                {contact ? '' : ' misses'}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
