import type { Said } from '../../measure/said.ts';
import { useBench } from '../bench.ts';
import type { Path } from '../job/job-doc.ts';
import { useWords } from '../words.ts';
import { Entry, idOf } from './entry.tsx';
import { type Measure, wayAt } from './measure.ts';
import { placesAt, readingAdded, readingOf, readingRemoved, readingTurned } from './readings.ts';
import { readingsTold } from './readings-told.ts';

interface ReadingsListProps {
  readonly base: Path;
  readonly measure: Measure;
  readonly part: string;
  readonly of: Said;
}

/** A value that was measured in several ways: each with its fields, what it came to, and how it differs from the first. */
export function ReadingsList({ base, measure, part, of }: ReadingsListProps) {
  const { doc, write, outcome } = useBench();
  const { form, measures } = useWords().page;
  const { readings } = form;
  const places = placesAt(doc, base, measure);
  const told = readingsTold(outcome, [...base, measure.keys[0]]);
  return (
    <>
      <ol class="readings">
        {places.map((place) => (
          <Reading
            key={place}
            base={base}
            measure={measure}
            place={place}
            part={part}
            of={of}
            told={told[place]}
          />
        ))}
      </ol>
      <button
        type="button"
        class="quiet"
        aria-label={readings.addTo(measures.fields[measure.name].label, of)}
        onClick={() => write(readingAdded(doc, base, measure))}
      >
        {readings.add}
      </button>
    </>
  );
}

interface ReadingProps extends ReadingsListProps {
  readonly place: number;
  readonly told: Said | undefined;
}

function Reading({ base, measure, place, part, of, told }: ReadingProps) {
  const { doc, write } = useBench();
  const { form, measures } = useWords().page;
  const { readings } = form;
  const { fields, items, ways } = measures;
  const { label } = fields[measure.name];
  const reading = readingOf(measure, place);
  const way = wayAt(doc, base, reading);
  const name = items.reading(place + 1);
  const id = `${idOf([...base, measure.keys[0], place])}-told`;
  const named = way.blanks.length === 1;
  return (
    <li>
      {/* biome-ignore lint/a11y/useSemanticElements: as for the value as a whole. */}
      <div
        class={named ? 'is-named' : ''}
        role="group"
        aria-label={readings.label(label, name, of)}
        aria-describedby={told === undefined ? undefined : id}
      >
        <div class="reading-way">
          <select
            class="way"
            aria-label={readings.measured(label, name, of)}
            value={way.name}
            onChange={(event) => write(readingTurned(base, measure, place, event.currentTarget.value))}
          >
            {reading.ways.map((each) => (
              <option key={each.name} value={each.name}>
                {ways[each.name]}
              </option>
            ))}
          </select>
          <button
            type="button"
            class="quiet"
            aria-label={readings.removeFrom(label, name, of)}
            onClick={() => write(readingRemoved(doc, base, measure, place))}
          >
            {readings.remove}
          </button>
        </div>
        <div class="fields">
          {way.blanks.map((blank) => (
            <Entry
              key={idOf(blank.at)}
              base={base}
              blank={blank}
              part={part}
              fullName={readings.label(fields[blank.name].label, name, of)}
            />
          ))}
        </div>
        {told !== undefined && (
          <p class="aside" id={id}>
            {told}
          </p>
        )}
      </div>
    </li>
  );
}
