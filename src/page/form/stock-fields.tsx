import { useBench } from '../bench.ts';
import { countAt, hasAt, wordsAt } from '../job/job-doc.ts';
import { Entry } from './entry.tsx';

const KERF = { at: ['kerf'], label: 'kerf', reads: 'length', example: '3mm' } as const;

/** What the shop has to cut from: lengths, each with how many there are. */
export function StockFields() {
  const { doc, write } = useBench();
  const count = countAt(doc, ['stock']);
  const told = hasAt(doc, ['stock']);
  const add = (): void => {
    if (count > 0) write([[['stock', count], '']]);
    else write([[['stock'], told ? [wordsAt(doc, ['stock']), ''] : ['']]]);
  };
  const places = count > 0 ? Array.from({ length: count }, (_, i) => ['stock', i]) : told ? [['stock']] : [];
  return (
    <>
      {places.map((at, i) => (
        <Entry
          key={at.join()}
          base={[]}
          blank={{ at, label: `stock ${i + 1}`, reads: 'words', example: '6m x 3', optional: true }}
          part="job"
        />
      ))}
      {told && <Entry base={[]} blank={KERF} part="job" />}
      <button type="button" class="quiet" onClick={add}>
        Add a stock length
      </button>
    </>
  );
}
