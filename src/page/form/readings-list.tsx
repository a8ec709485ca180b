import { useBench } from '../bench.ts';
import type { Path } from '../job/job-doc.ts';
import { Entry, idOf } from './entry.tsx';
import { type Measure, wayAt } from './measure.ts';
import { placesAt, readingAdded, readingOf, readingRemoved, readingTurned } from './readings.ts';
import { readingsTold } from './readings-told.ts';

interface ReadingsListProps {
  readonly base: Path;
  readonly measure: Measure;
  readonly part: string;
  readonly of: string;
}

/** A value that was measured in several ways: each with its fields, what it came to, and how it differs from the first. */
export function ReadingsList({ base, measure, part, of }: ReadingsListProps) {
  const { doc, write, outcome } = useBench();
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
            told={told[place] ?? ''}
          />
        ))}
      </ol>
      <button
        type="button"
        class="quiet"
        aria-label={`Add a reading of the ${measure.label} of ${of}`}
        onClick={() => write(readingAdded(doc, base, measure))}
      >
        Add a reading
      </button>
    </>
  );
}

interface ReadingProps extends ReadingsListProps {
  readonly place: number;
  readonly told: string;
}

function Reading({ base, measure, place, part, of, told }: ReadingProps) {
  const { doc, write } = useBench();
  const reading = readingOf(measure, place);
  const way = wayAt(doc, base, reading);
  const name = `reading ${place + 1}`;
  const id = `${idOf([...base, measure.keys[0], place])}-told`;
  const named = way.blanks.length === 1;
  return (
    <li>
      {/* biome-ignore lint/a11y/useSemanticElements: as for the value as a whole. */}
      <div
        class={named ? 'is-named' : ''}
        role="group"
        aria-label={`${measure.label}, ${name}, ${of}`}
        aria-describedby={told === '' ? undefined : id}
      >
        <div class="reading-way">
          <select
            class="way"
            aria-label={`how ${name} of the ${measure.label} of ${of} was measured`}
            value={way.name}
            onChange={(event) => write(readingTurned(base, measure, place, event.currentTarget.value))}
          >
            {reading.ways.map((each) => (
              <option key={each.name}>{each.name}</option>
            ))}
          </select>
          <button
            type="button"
            class="quiet"
            aria-label={`Remove ${name} of the ${measure.label} of ${of}`}
            onClick={() => write(readingRemoved(doc, base, measure, place))}
          >
            Remove
          </button>
        </div>
        <div class="fields">
          {way.blanks.map((blank) => (
            <Entry
              key={idOf(blank.at)}
              base={base}
              blank={blank}
              part={part}
              fullName={`${blank.label}, ${name}, ${of}`}
            />
          ))}
        </div>
        {told !== '' && (
          <p class="aside" id={id}>
            {told}
          </p>
        )}
      </div>
    </li>
  );
}
