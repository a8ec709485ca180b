import { useCallback, useState } from 'preact/hooks';
import { missingSigns } from '../../draw/letters.ts';
import { ownWordsOf } from '../../job/text/note.ts';
import { asWritten } from '../../words/said.ts';
import { useBench } from '../bench.ts';
import { Lacking } from '../form/lacking.tsx';
import { nameOf } from '../job/job-name.ts';
import { sheetsOfJob } from '../job/printed.ts';
import type { Shown } from '../job/shown.ts';
import { useWords } from '../words.ts';
import { Cautions } from './cautions.tsx';
import { Leaves } from './leaves.tsx';
import { NumbersView } from './numbers-view.tsx';
import { SheetsView } from './sheets-view.tsx';
import { SpaceView } from './space-view.tsx';
import { Tabs } from './tabs.tsx';
import { TextView } from './text-view.tsx';

const NAMES = ['leaf', 'sheets', 'space', 'numbers', 'file'] as const;

/** What comes of the last job that could be read, one view at a time; `printed` once something was made of it to cut by. */
export function Views({ printed }: { readonly printed: boolean }) {
  const { shown: current, last: shown } = useBench();
  const stale = current === undefined;
  const words = useWords().page.views;
  const [name, setName] = useState<(typeof NAMES)[number]>('leaf');
  return (
    <section class={`views stack${stale && shown ? ' is-stale' : ''}`} aria-label={words.name}>
      <Tabs label={words.name} names={NAMES} words={words.tabs} chosen={name} onChoose={setName}>
        <Lacking />
        <StrangeSigns shown={shown} />
        {stale && shown && <p class="aside">{words.stale}</p>}
        {!shown && name !== 'file' && <p class="opening">{words.opening}</p>}
        {name === 'file' ? <TextView /> : shown && <ShownView shown={shown} name={name} />}
        <Cautions printed={printed} />
      </Tabs>
    </section>
  );
}

function ShownView({ shown, name }: { shown: Shown; name: (typeof NAMES)[number] }) {
  const { doc, notes, printing } = useBench();
  const { footprints, printer } = printing;
  const called = nameOf(doc);
  const lay = useCallback(
    () => sheetsOfJob(shown.job, shown.solutions, called, footprints, printer),
    [shown, called, footprints, printer],
  );
  switch (name) {
    case 'leaf':
      return <Leaves shown={shown} />;
    case 'sheets':
      return <SheetsView lay={lay} />;
    case 'space':
      return <SpaceView solution={shown.solution} />;
    default:
      return <NumbersView shown={shown} notes={notes} />;
  }
}

/** What the sheets' font lacks is printed as its code, and said. */
function StrangeSigns({ shown }: { readonly shown: Shown | undefined }) {
  const { noSigns } = useWords().page.views;
  if (!shown) return null;
  const signs = missingSigns(ownWordsOf(shown.job));
  if (signs.length === 0) return null;
  return <p class="aside">{noSigns(asWritten(signs.join(' ')))}</p>;
}
