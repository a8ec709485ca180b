import { Action } from '../action.tsx';
import { useBench } from '../bench.ts';
import { countAt, docWordsAt, hasAt } from '../job/job-doc.ts';
import { useWords } from '../words.ts';
import { Entry } from './entry.tsx';
import type { BlankOf, KeyAt } from './measure.ts';

const KERF: BlankOf<KeyAt<'file'>> = { at: ['kerf'], name: 'kerf', reads: 'length' };

/** What the shop has to cut from: lengths, each with how many there are. */
export function StockFields() {
  const { doc, write } = useBench();
  const { form } = useWords().page;
  const count = countAt(doc, ['stock']);
  const told = hasAt(doc, ['stock']);
  const add = (): void => {
    if (count > 0) write([[['stock', count], '']]);
    else write([[['stock'], told ? [docWordsAt(doc, ['stock']), ''] : ['']]]);
  };
  const places = count > 0 ? Array.from({ length: count }, (_, i) => ['stock', i]) : told ? [['stock']] : [];
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
      {told && <Entry base={[]} blank={KERF} part="job" />}
      <Action words={form.job.addStock} onAct={add} kind="quiet" />
    </>
  );
}
