import { useState } from 'preact/hooks';
import { Action } from '../action.tsx';
import { useBench } from '../bench.ts';
import { countAt, type DocPath, docWordsAt, hasAt } from '../job/job-doc.ts';
import { useWords } from '../words.ts';
import { Entry } from './entry.tsx';
import type { BlankOf, KeyAt } from './measure.ts';

const KERF: BlankOf<KeyAt<'file'>> = { at: ['kerf'], name: 'kerf', reads: 'length' };

/** What the shop has to cut from: lengths, each with how many there are. A length begins in an empty field, and stands in the job once it is written. */
export function StockFields() {
  const { doc, write } = useBench();
  const { form } = useWords().page;
  const [openAt, setOpenAt] = useState(-1);
  const single = docWordsAt(doc, ['stock']);
  const count = countAt(doc, ['stock']);
  const add = (): void => {
    if (single !== '') write([[['stock'], [single]]]);
    setOpenAt(single === '' ? count : 1);
  };
  const places: readonly DocPath[] = [
    ...(single === '' ? [] : [['stock']]),
    ...Array.from({ length: openAt === count ? count + 1 : count }, (_, i) => ['stock', i]),
  ];
  return (
    <>
      {places.map((at, i) => (
        <Entry
          key={at.join()}
          base={[]}
          blank={{ at, name: 'stock', reads: 'words', optional: true }}
          label={form.job.stock(i + 1)}
          part="job"
        />
      ))}
      {hasAt(doc, ['stock']) && <Entry base={[]} blank={KERF} part="job" />}
      <Action words={form.job.addStock} onAct={add} kind="quiet" />
    </>
  );
}
