import type { EndName } from '../../job/job.ts';
import { Action } from '../action.tsx';
import { useBench } from '../bench.ts';
import { type DocPath, hasAt } from '../job/job-doc.ts';
import { useWords } from '../words.ts';
import { idOf } from './entry.tsx';
import { HEADER_SIGNS, KindChoice } from './kind-choice.tsx';
import {
  asksAngle,
  asksOffset,
  HEADER_KINDS,
  HEADERS,
  type HeaderKind,
  headerKindAt,
  newHeader,
  partPaths,
} from './kinds.ts';
import type { Measure } from './measure.ts';
import { MeasureRow } from './measure-row.tsx';
import { ANGLE, ANGLE_OR_NOTCH, CLOCK, CLOCK_AT_B, OFFSET, SHIFT } from './measures.ts';

/** One more header that the end lands on. */
export function AddHeader({ end, name }: { end: DocPath; name: EndName }) {
  const { doc, write } = useBench();
  const words = useWords().page.form.header;
  const next = partPaths(doc, end).length;
  return <Action words={words.add(name)} onAct={() => write([[[...end, next], {}]])} kind="quiet" />;
}

interface HeaderFieldsProps {
  readonly part: DocPath;
  readonly name: EndName;
  /** Which of the end's headers it is, counted from 0, and of how many. */
  readonly place: number;
  readonly of: number;
}

/** All that is asked about one header: its kind and size, and how the tube stands on it. */
export function HeaderFields({ part, name, place, of }: HeaderFieldsProps) {
  const { doc, write } = useBench();
  const words = useWords().page.form;
  const kind = headerKindAt(doc, part);
  const whose = of > 1 ? words.of.header(name, place + 1) : words.of.end(name);
  const turn = (to: HeaderKind): void => {
    const dropped = droppedBy(to).filter((key) => hasAt(doc, [...part, key]));
    write([
      [[...part, 'onto'], newHeader(to)],
      ...dropped.map((key) => [[...part, key], undefined] as const),
    ]);
  };
  return (
    <div class="stack">
      {of > 1 && (
        <p class="beside">
          <strong>{words.header.title(place + 1)}</strong>
          <Action
            words={words.header.remove}
            fullName={words.header.removeFrom(name, place + 1)}
            onAct={() => write([[part, undefined]])}
            kind="quiet"
          />
        </p>
      )}
      <KindChoice
        legend={words.header.landsOn(whose)}
        name={idOf([...part, 'kind'])}
        kinds={HEADER_KINDS}
        chosen={kind}
        labels={words.header.kinds}
        signs={HEADER_SIGNS}
        onChoose={turn}
      />
      <div class="fields">
        {askedOf(kind, name, of === 1).map(({ measure, within, aspect }) => (
          <MeasureRow
            key={measure.name}
            base={[...part, ...within]}
            measure={measure}
            part={`${name}.${aspect}`}
            of={whose}
          />
        ))}
      </div>
    </div>
  );
}

/** A value, where it stands, and what of the end's picture it belongs to. */
interface Asked {
  readonly measure: Measure;
  readonly within: DocPath;
  readonly aspect: 'header' | 'angle' | 'clock' | 'offset';
}

/** What is asked of a header of this kind, one of several or alone. */
function askedOf(kind: HeaderKind, name: EndName, alone: boolean): readonly Asked[] {
  const { within, measures } = HEADERS[kind];
  const own = (measure: Measure, aspect: Asked['aspect']): Asked => ({ measure, within: [], aspect });
  return [
    ...measures.map((measure) => ({ measure, within: ['onto', ...within], aspect: 'header' as const })),
    ...(asksAngle(kind) ? [own(alone && kind === 'round' ? ANGLE_OR_NOTCH : ANGLE, 'angle')] : []),
    own(name === 'B' && alone ? CLOCK_AT_B : CLOCK, 'clock'),
    ...(asksOffset(kind) ? [own(OFFSET, 'offset')] : []),
    ...(alone ? [] : [own(SHIFT, 'offset')]),
  ];
}

/** The keys that a header of this kind can't have. */
function droppedBy(kind: HeaderKind): readonly string[] {
  return [
    ...(asksOffset(kind) ? [] : OFFSET.keys),
    ...(asksAngle(kind) ? [] : ANGLE.keys),
    ...(kind === 'round' ? [] : ['notch']),
  ];
}
