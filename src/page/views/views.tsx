import { useCallback, useState } from 'preact/hooks';
import { lacking } from '../../draw/letters.ts';
import { useBench } from '../bench.ts';
import { Lacking } from '../form/lacking.tsx';
import { nameOf } from '../job/job-name.ts';
import type { Notes } from '../job/notes.ts';
import { sheetsOfJob } from '../job/printed.ts';
import type { Printing } from '../job/printing.ts';
import type { Shown } from '../job/shown.ts';
import { Cautions } from './cautions.tsx';
import { Leaves } from './leaves.tsx';
import { NumbersView } from './numbers-view.tsx';
import { SheetsView } from './sheets-view.tsx';
import { SpaceView } from './space-view.tsx';
import { Tabs } from './tabs.tsx';
import { TextView } from './text-view.tsx';

interface ViewsProps {
  /** The last job that could be read. */
  readonly shown: Shown | undefined;
  /** What is in the form now can't be read. */
  readonly stale: boolean;
  readonly notes: Notes;
  readonly text: string;
  readonly printing: Printing;
  readonly onWrite: (text: string, typing: string) => void;
}

const NAMES = ['Leaf', 'Sheets', '3D', 'Numbers', 'Job file'] as const;

/** What comes of the job, one view at a time. */
export function Views(props: ViewsProps) {
  const { shown, stale, text, onWrite } = props;
  const [name, setName] = useState<(typeof NAMES)[number]>('Leaf');
  return (
    <section class={`views${stale && shown ? ' is-stale' : ''}`} aria-label="Views">
      <Tabs label="Views" names={NAMES} chosen={name} onChoose={setName}>
        <Lacking />
        <StrangeSigns shown={shown} />
        {stale && shown && <p class="aside">Below is the joint as it was before.</p>}
        {!shown && name !== 'Job file' && <Opening />}
        {name === 'Job file' ? (
          <TextView text={text} onWrite={onWrite} />
        ) : (
          shown && <ShownView {...props} shown={shown} name={name} />
        )}
        <Cautions />
      </Tabs>
    </section>
  );
}

/** For those who have never seen a leaf. */
function Opening() {
  return (
    <p class="opening">
      The leaf appears here as soon as the joint is known: paper to print at 100 %, wrap round the tube and
      cut along, so that the end of the tube sits on what it meets.
    </p>
  );
}

type ShownViewProps = ViewsProps & { readonly shown: Shown; readonly name: (typeof NAMES)[number] };

function ShownView({ shown, notes, printing, name }: ShownViewProps) {
  const { doc } = useBench();
  const { footprints, printer } = printing;
  const called = nameOf(doc);
  const lay = useCallback(
    () => sheetsOfJob(shown.job, shown.solutions, called, footprints, printer),
    [shown, called, footprints, printer],
  );
  switch (name) {
    case 'Leaf':
      return <Leaves shown={shown} />;
    case 'Sheets':
      return <SheetsView lay={lay} />;
    case '3D':
      return <SpaceView solution={shown.solution} />;
    default:
      return <NumbersView shown={shown} notes={notes} />;
  }
}

/** What the sheets' font lacks is printed as its code, and said. */
function StrangeSigns({ shown }: { readonly shown: Shown | undefined }) {
  if (!shown) return null;
  const signs = lacking([shown.job.title ?? '', ...shown.job.tubes.map(({ name }) => name)].join(''));
  if (signs.length === 0) return null;
  return <p class="aside">The sheets’ font has no {signs.join(' ')}: printed as a code in its place.</p>;
}
