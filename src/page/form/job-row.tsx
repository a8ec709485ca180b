import { PAPERS } from '../../job/paper/paper.ts';
import { useBench } from '../bench.ts';
import { hasAt, unitsOf, wordsAt } from '../job/job-doc.ts';
import { Entry } from './entry.tsx';
import { StockFields } from './stock-fields.tsx';

const TITLE = { at: ['job'], label: 'job', reads: 'words', example: 'sea kayak trailer' } as const;
const PAPER = { at: ['paper'], label: 'paper', reads: 'words', example: 'A4', list: 'papers' } as const;
const MARGIN = { at: ['margin'], label: 'margin', reads: 'length', example: '10mm' } as const;
const THICKNESS = {
  at: ['paper-thickness'],
  label: 'paper thickness',
  reads: 'length',
  example: '0.10mm',
} as const;

const EDGES = ['left', 'right', 'top', 'bottom'] as const;

/** What holds for the whole job: its title, the unit of bare numbers, the paper. */
export function JobFields() {
  const { doc, write } = useBench();
  const units = unitsOf(doc);
  const own = typeof doc.getIn(['margin']) === 'string' || !hasAt(doc, ['margin']);
  return (
    <details class="job">
      <summary>
        Job and paper: {wordsAt(doc, ['job']) || 'no title'}, {wordsAt(doc, ['paper'])}, bare numbers in{' '}
        {units === 'in' ? 'inches' : 'mm'}
      </summary>
      <div class="fields">
        <Entry base={[]} blank={TITLE} part="job" fullName="title of the job" />
        <div class="entry">
          <label for="at-units">bare numbers in</label>
          <select
            id="at-units"
            value={units}
            onChange={(event) => write([[['units'], event.currentTarget.value]])}
          >
            <option value="mm">mm</option>
            <option value="in">inches</option>
          </select>
        </div>
        <Entry base={[]} blank={PAPER} part="job" />
        <datalist id="papers">
          {PAPERS.map(({ name }) => (
            <option key={name} value={name} />
          ))}
        </datalist>
        {own && <Entry base={[]} blank={MARGIN} part="job" fullName="margin on all four sides" />}
        {!own &&
          EDGES.map((edge) => (
            <Entry
              key={edge}
              base={['margin']}
              blank={{
                at: [edge],
                label: `margin ${edge}`,
                reads: 'length',
                example: edge === 'bottom' ? '17mm' : '10mm',
              }}
              part="job"
            />
          ))}
        <Entry base={[]} blank={THICKNESS} part="job" />
        <StockFields />
      </div>
    </details>
  );
}
