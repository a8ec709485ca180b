import { PAPERS } from '../../job/paper/paper.ts';
import type { Said } from '../../measure/said.ts';
import { asWritten } from '../../words/said.ts';
import { useBench } from '../bench.ts';
import { docWordsAt, hasAt } from '../job/job-doc.ts';
import { useWords } from '../words.ts';
import { Entry } from './entry.tsx';
import type { BlankOf, KeyAt } from './measure.ts';
import { StockFields } from './stock-fields.tsx';

const TITLE: BlankOf<KeyAt<'file'>> = { at: ['job'], name: 'title', reads: 'words' };
const PAPER: BlankOf<KeyAt<'file'>> = { at: ['paper'], name: 'paper', reads: 'words', list: 'papers' };
const MARGIN: BlankOf<KeyAt<'file'>> = { at: ['margin'], name: 'margin', reads: 'length' };
const THICKNESS: BlankOf<KeyAt<'file'>> = {
  at: ['paper-thickness'],
  name: 'paperThickness',
  reads: 'length',
};

/** The margin of each edge, where they are given one by one. */
const MARGINS: readonly BlankOf<KeyAt<'margin'>>[] = [
  { at: ['left'], name: 'marginLeft', reads: 'length' },
  { at: ['right'], name: 'marginRight', reads: 'length' },
  { at: ['top'], name: 'marginTop', reads: 'length' },
  { at: ['bottom'], name: 'marginBottom', reads: 'length' },
];

/** What holds for the whole job: its title, the unit of bare numbers, the paper. */
export function JobFields() {
  const { doc } = useBench();
  const words = useWords().page.form.job;
  const title = docWordsAt(doc, ['job']);
  const own = typeof doc.getIn(['margin']) === 'string' || !hasAt(doc, ['margin']);
  return (
    <details class="job">
      <summary>{words.summary(said(title), said(docWordsAt(doc, ['paper'])))}</summary>
      <div class="fields">
        <Entry base={[]} blank={TITLE} part="job" fullName={words.title} />
        <Entry base={[]} blank={PAPER} part="job" />
        <datalist id="papers">
          {PAPERS.map(({ name }) => (
            <option key={name} value={name} />
          ))}
        </datalist>
        {own ? (
          <Entry base={[]} blank={MARGIN} part="job" fullName={words.margin} />
        ) : (
          MARGINS.map((blank) => <Entry key={blank.name} base={['margin']} blank={blank} part="job" />)
        )}
        <Entry base={[]} blank={THICKNESS} part="job" />
        <StockFields />
      </div>
    </details>
  );
}

function said(words: string): Said | undefined {
  return words.trim() === '' ? undefined : asWritten(words);
}
