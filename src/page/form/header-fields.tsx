import type { EndName } from '../../job/job.ts';
import { Action } from '../action.tsx';
import { useBench } from '../bench.ts';
import { type DocPath, hasAt } from '../job/job-doc.ts';
import { useWords } from '../words.ts';
import { idOf } from './entry.tsx';
import { HEADER_SIGNS, KindChoice } from './kind-choice.tsx';
import { asksAngle, asksOffset, HEADER_KINDS, HEADERS, headerKindAt, newHeader, partPaths } from './kinds.ts';
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
  const { within, measures } = HEADERS[kind];
  const whose = of > 1 ? words.of.header(name, place + 1) : words.of.end(name);
  const base = [...part, 'onto', ...within];
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
        onChoose={(chosen) => write([[[...part, 'onto'], newHeader(chosen)], ...droppedBy(part, chosen)])}
      />
      <div class="fields">
        {measures.map((measure) => (
          <MeasureRow key={measure.name} base={base} measure={measure} part={`${name}.header`} of={whose} />
        ))}
        {asksAngle(kind) && (
          <MeasureRow
            base={part}
            measure={of === 1 && kind === 'round' ? ANGLE_OR_NOTCH : ANGLE}
            part={`${name}.angle`}
            of={whose}
          />
        )}
        <MeasureRow
          base={part}
          measure={name === 'B' && of === 1 ? CLOCK_AT_B : CLOCK}
          part={`${name}.clock`}
          of={whose}
        />
        {asksOffset(kind) && <MeasureRow base={part} measure={OFFSET} part={`${name}.offset`} of={whose} />}
        {of > 1 && <MeasureRow base={part} measure={SHIFT} part={`${name}.offset`} of={whose} />}
      </div>
    </div>
  );

  /** What the chosen kind can't have. */
  function droppedBy(at: DocPath, chosen: (typeof HEADER_KINDS)[number]): [DocPath, undefined][] {
    const keys = [
      ...(asksOffset(chosen) ? [] : OFFSET.keys),
      ...(asksAngle(chosen) ? [] : ANGLE.keys),
      ...(chosen === 'round' ? [] : ['notch']),
    ];
    return keys.filter((key) => hasAt(doc, [...at, key])).map((key) => [[...at, key], undefined]);
  }
}
