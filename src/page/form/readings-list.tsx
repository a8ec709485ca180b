import type { Said } from '../../measure/said.ts';
import { Action } from '../action.tsx';
import { useBench } from '../bench.ts';
import { useWords } from '../words.ts';
import { Entry, idOf } from './entry.tsx';
import { type MeasureProps, wayAt } from './measure.ts';
import { placesAt, readingAdded, readingOf, readingRemoved, readingTurned } from './readings.ts';
import { readingsTold } from './readings-told.ts';
import { WayChoice } from './way-choice.tsx';

/** A value that was measured in several ways: each with its fields, what it came to, and how it differs from the first. */
export function ReadingsList(props: MeasureProps) {
  const { base, measure, of } = props;
  const { doc, write, outcome } = useBench();
  const { form, measures } = useWords().page;
  const { readings } = form;
  const places = placesAt(doc, base, measure);
  const told = readingsTold(outcome, [...base, measure.keys[0]]);
  return (
    <>
      <ol class="readings stack">
        {places.map((place) => (
          <Reading key={place} {...props} place={place} told={told[place]} />
        ))}
      </ol>
      <Action
        words={readings.add}
        fullName={readings.addTo(measures.fields[measure.name].label, of)}
        onAct={() => write(readingAdded(doc, base, measure))}
        kind="quiet"
      />
    </>
  );
}

interface ReadingProps extends MeasureProps {
  readonly place: number;
  readonly told: Said | undefined;
}

function Reading({ base, measure, place, part, of, told }: ReadingProps) {
  const { doc, write } = useBench();
  const { form, measures } = useWords().page;
  const { readings } = form;
  const { label } = measures.fields[measure.name];
  const reading = readingOf(measure, place);
  const way = wayAt(doc, base, reading);
  const name = measures.items.reading(place + 1);
  const whose = form.fieldOf(name, of);
  const id = `${idOf([...base, measure.keys[0], place])}-told`;
  const named = way.blanks.length === 1;
  return (
    <li>
      {/* biome-ignore lint/a11y/useSemanticElements: as for the value as a whole. */}
      <div
        class={named ? 'is-named' : ''}
        role="group"
        aria-label={form.fieldOf(label, whose)}
        aria-describedby={told === undefined ? undefined : id}
      >
        <div class="reading-way beside">
          <WayChoice
            label={readings.measured(label, name, of)}
            ways={reading.ways.map((each) => each.name)}
            chosen={way.name}
            onChoose={(chosen) => write(readingTurned(base, measure, place, chosen))}
          />
          <Action
            words={readings.remove}
            fullName={readings.removeFrom(label, name, of)}
            onAct={() => write(readingRemoved(doc, base, measure, place))}
            kind="quiet"
          />
        </div>
        <div class="fields">
          {way.blanks.map((blank) => (
            <Entry key={idOf(blank.at)} base={base} blank={blank} part={part} of={whose} />
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
