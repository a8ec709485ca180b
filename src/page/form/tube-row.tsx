import { useBench } from '../bench.ts';
import { countAt, type DocPath, docWordsAt, hasAt, type JobDoc, keysAt } from '../job/job-doc.ts';
import { useWords } from '../words.ts';
import { Entry, idOf } from './entry.tsx';
import { Fold } from './fold.tsx';
import { EDGE_SIGNS, KindChoice, SECTION_SIGNS } from './kind-choice.tsx';
import {
  endKindAt,
  ownKeys,
  SECTION_FIELDS,
  SECTION_KINDS,
  type SectionKind,
  sectionKindAt,
} from './kinds.ts';
import type { BlankOf, KeyAt, Measure } from './measure.ts';
import { MeasureRow } from './measure-row.tsx';
import { ALLOWANCE, BETWEEN, FROM, LAND, ROOT, WALL } from './measures.ts';

const NAME: BlankOf<KeyAt<'tube'>> = { at: ['name'], name: 'name', reads: 'words' };
const COPIES: BlankOf<KeyAt<'tube'>> = { at: ['copies'], name: 'copies', reads: 'count' };
const NOTE: BlankOf<KeyAt<'tube'>> = { at: ['note'], name: 'note', reads: 'words' };
const OF_ITS_EDGES: readonly Measure[] = [LAND, FROM, ROOT];
const SELDOM = [...OF_ITS_EDGES, ALLOWANCE].map(({ keys: [key] }) => key);

/** All that is asked about the tube between its ends. */
export function TubeFields() {
  const { doc, tube } = useBench();
  const { tube: words, of } = useWords().page.form;
  const kind = sectionKindAt(doc, tube);
  const { within, measures } = SECTION_FIELDS[kind];
  const both =
    endKindAt(doc, [...tube, 'ends', 'A']) !== 'none' && endKindAt(doc, [...tube, 'ends', 'B']) !== 'none';
  const byPipe = ownKeys(kind).includes('pipe') && hasAt(doc, [...tube, 'pipe']);
  return (
    <>
      <h2>{words.title}</h2>
      <div class="fields naming">
        <Entry base={tube} blank={NAME} part="tube" fullName={words.name} />
        <Entry base={tube} blank={COPIES} part="tube" fullName={words.copies} />
        <PairBox />
      </div>
      <TubeShapes kind={kind} />
      <div class="fields">
        {measures.map((measure) => (
          <MeasureRow
            key={measure.name}
            base={[...tube, ...within]}
            measure={measure}
            part="tube.size"
            of={of.tube}
          />
        ))}
        {(!byPipe || hasAt(doc, [...tube, 'wall'])) && (
          <MeasureRow base={tube} measure={WALL} part="tube.wall" of={of.tube} />
        )}
        {both && <MeasureRow base={tube} measure={BETWEEN} part="tube.between" of={of.tube} />}
      </div>
      <Fold summary={words.more} told={[...SELDOM, 'note'].some((key) => hasAt(doc, [...tube, key]))}>
        <div class="fields">
          {OF_ITS_EDGES.map((measure) => (
            <MeasureRow key={measure.name} base={tube} measure={measure} part="tube.edge" of={of.tube} />
          ))}
          <MeasureRow base={tube} measure={ALLOWANCE} part="tube.between" of={of.tube} />
        </div>
        {isLine(doc, [...tube, 'note']) ? (
          <Entry base={tube} blank={NOTE} part="tube" fullName={words.note} />
        ) : (
          <p class="aside">{words.noteInFile}</p>
        )}
      </Fold>
    </>
  );
}

/** Whether a note has no more lines than one. */
function isLine(doc: JobDoc, path: DocPath): boolean {
  return countAt(doc, path) === 0 && keysAt(doc, path).length === 0;
}

/** What kind of tube it is, and how its edges are made. */
function TubeShapes({ kind }: { readonly kind: SectionKind }) {
  const { doc, tube, write } = useBench();
  const words = useWords().page.form.tube;
  const edge =
    docWordsAt(doc, [...tube, 'edge'])
      .trim()
      .toLowerCase() === 'square'
      ? 'square'
      : 'bevel';
  return (
    <div class="shapes">
      <KindChoice
        legend={words.section}
        name={idOf([...tube, 'section-kind'])}
        kinds={SECTION_KINDS}
        chosen={kind}
        labels={words.sections}
        signs={SECTION_SIGNS}
        onChoose={turn}
      />
      <KindChoice
        legend={words.edge}
        name={idOf([...tube, 'edge-kind'])}
        kinds={['bevel', 'square']}
        chosen={edge}
        labels={words.edges}
        signs={EDGE_SIGNS}
        onChoose={(chosen) => write([[[...tube, 'edge'], chosen]])}
      />
    </div>
  );

  function turn(to: SectionKind): void {
    if (to === kind) return;
    const { within } = SECTION_FIELDS[to];
    const cleared = SECTION_KINDS.filter((other) => other !== to)
      .flatMap(ownKeys)
      .filter((key) => hasAt(doc, [...tube, key]))
      .map((key): [DocPath, undefined] => [[...tube, key], undefined]);
    write([...cleared, ...(within.length > 0 ? [[[...tube, ...within], {}] as const] : [])]);
  }
}

/** Also the opposite hand. What the head of the file says holds where the tube says nothing. */
function PairBox() {
  const { doc, tube, write } = useBench();
  const words = useWords().page.form.tube;
  const path = hasAt(doc, [...tube, 'pair']) ? [...tube, 'pair'] : ['pair'];
  const checked = /^\s*(true|yes)\s*$/i.test(docWordsAt(doc, path));
  return (
    <label class="tick beside">
      <input
        type="checkbox"
        checked={checked}
        onChange={() => write([[[...tube, 'pair'], checked ? 'false' : 'true']])}
      />
      <span>{words.pair}</span>
    </label>
  );
}
