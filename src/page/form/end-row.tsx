import type { EndName } from '../../job/job.ts';
import { KEYS } from '../../job/text/keys.ts';
import { useBench } from '../bench.ts';
import { type DocPath, hasAt, valueAt } from '../job/job-doc.ts';
import { useWords } from '../words.ts';
import { idOf } from './entry.tsx';
import { Fold } from './fold.tsx';
import { AddHeader, HeaderFields } from './header-fields.tsx';
import { type EndKind, endKindAt, partPaths } from './kinds.ts';
import type { Measure } from './measure.ts';
import { MeasureRow } from './measure-row.tsx';
import { EDGE, FROM, LAND, ROOT, SEAM, TO } from './measures.ts';

/** All that is asked about one end: what it lands on, how it is turned, how its edge is made. */
export function EndFields({ name }: { readonly name: EndName }) {
  const { doc, tube } = useBench();
  const end = [...tube, 'ends', name];
  const kind = endKindAt(doc, end);
  return (
    <>
      <EndKindChoice end={end} name={name} kind={kind} />
      {(kind === 'one' || kind === 'several') &&
        partPaths(doc, end).map((part, i, all) => (
          <HeaderFields key={idOf(part)} part={part} name={name} place={i} of={all.length} />
        ))}
      {kind === 'several' && <AddHeader end={end} name={name} />}
      {kind === 'one' && <EdgeFields end={end} name={name} />}
    </>
  );
}

function EndKindChoice({ end, name, kind }: { end: DocPath; name: EndName; kind: EndKind }) {
  const { doc, write } = useBench();
  const words = useWords().page.form;
  const kinds: readonly EndKind[] = ['one', 'several', 'plain', 'none'];
  const turn = (to: EndKind): void => {
    const [first = end] = partPaths(doc, end);
    const kept =
      kind === 'one' || kind === 'several' ? valueAt(doc, first, KEYS[to === 'one' ? 'end' : 'part']) : {};
    if (to === 'none') write([[end, undefined]]);
    if (to === 'plain') write([[end, 'plain']]);
    if (to === 'one') write([[end, kept]]);
    if (to === 'several') write([[end, [kept, {}]]]);
  };
  return (
    <div class="end-kind beside">
      <label for={`kind-${name}`}>{words.board.end(name)}</label>
      <select
        id={`kind-${name}`}
        value={kind}
        onChange={(event) => {
          const chosen = kinds.find((each) => each === event.currentTarget.value);
          if (chosen) turn(chosen);
        }}
      >
        {kinds.map((each) => (
          <option key={each} value={each}>
            {words.end.kinds[each]}
          </option>
        ))}
      </select>
    </div>
  );
}

const OF_ITS_EDGE: readonly Measure[] = [EDGE, LAND, FROM, ROOT, TO, SEAM];

/** How this end's edge is made where it is not as the tube says, and where the leaf's seam lies. */
function EdgeFields({ end, name }: { end: DocPath; name: EndName }) {
  const { doc } = useBench();
  const words = useWords().page.form;
  const told = OF_ITS_EDGE.some(({ keys: [key] }) => hasAt(doc, [...end, key]));
  const [part, of] = [`${name}.edge`, words.of.end(name)];
  return (
    <Fold summary={words.end.more(name)} told={told}>
      <div class="fields">
        {OF_ITS_EDGE.map((measure) => (
          <MeasureRow key={measure.name} base={end} measure={measure} part={part} of={of} />
        ))}
      </div>
    </Fold>
  );
}
