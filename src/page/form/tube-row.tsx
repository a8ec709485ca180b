import { useBench } from '../bench.ts';
import { hasAt, type Path, wordsAt } from '../job/job-doc.ts';
import { Entry, idOf } from './entry.tsx';
import { Fold } from './fold.tsx';
import { EDGE_SIGNS, KindChoice, SECTION_SIGNS } from './kind-choice.tsx';
import { endKindAt, ownKeys, SECTION_KINDS, SECTIONS, type SectionKind, sectionKindAt } from './kinds.ts';
import { MeasureRow } from './measure-row.tsx';
import { ALLOWANCE, BETWEEN, BLUNT, ROOT, WALL } from './measures.ts';

const EDGES = { bevel: { name: 'bevelled' }, square: { name: 'left square' } } as const;
const NAME = { at: ['name'], label: 'name', reads: 'words', example: 'bunk stay' } as const;
const COPIES = { at: ['copies'], label: 'copies', reads: 'count', example: '1' } as const;
const FROM = {
  at: ['from'],
  label: 'square from',
  reads: ['', 'outside', 'inside'],
  example: '',
  optional: true,
} as const;

/** All that is asked about the tube between its ends. */
export function TubeFields({ tube }: { readonly tube: Path }) {
  const { doc, write } = useBench();
  const kind = sectionKindAt(doc, tube);
  const { within, measures } = SECTIONS[kind];
  const both =
    endKindAt(doc, [...tube, 'ends', 'A']) !== 'none' && endKindAt(doc, [...tube, 'ends', 'B']) !== 'none';
  const byPipe = ownKeys(kind).includes('pipe') && hasAt(doc, [...tube, 'pipe']);
  const edge =
    wordsAt(doc, [...tube, 'edge'])
      .trim()
      .toLowerCase() === 'square'
      ? 'square'
      : 'bevel';
  return (
    <>
      <h2>Tube</h2>
      <div class="fields naming">
        <Entry base={tube} blank={NAME} part="tube" fullName="name of the tube" />
        <Entry base={tube} blank={COPIES} part="tube" fullName="copies of the tube" />
        <PairBox tube={tube} />
      </div>
      <div class="shapes">
        <KindChoice
          legend="Section of the tube"
          name={idOf([...tube, 'section-kind'])}
          kinds={SECTION_KINDS}
          chosen={kind}
          labels={SECTIONS}
          signs={SECTION_SIGNS}
          onChoose={turn}
        />
        <KindChoice
          legend="How the edge is made"
          name={idOf([...tube, 'edge-kind'])}
          kinds={['bevel', 'square']}
          chosen={edge}
          labels={EDGES}
          signs={EDGE_SIGNS}
          onChoose={(chosen) => write([[[...tube, 'edge'], chosen]])}
        />
      </div>
      <div class="fields">
        {measures.map((measure) => (
          <MeasureRow
            key={measure.label}
            base={[...tube, ...within]}
            measure={measure}
            part="tube.size"
            of="the tube"
          />
        ))}
        {(!byPipe || hasAt(doc, [...tube, 'wall'])) && (
          <MeasureRow base={tube} measure={WALL} part="tube.wall" of="the tube" />
        )}
        {both && <MeasureRow base={tube} measure={BETWEEN} part="tube.between" of="the tube" />}
      </div>
      <Fold
        summary="Blunt, root and allowance"
        told={['blunt', 'from', 'root', 'allowance'].some((key) => hasAt(doc, [...tube, key]))}
      >
        <div class="fields">
          <MeasureRow base={tube} measure={BLUNT} part="tube.edge" of="the tube" />
          <Entry base={tube} blank={FROM} part="tube.edge" fullName="square from which side, the tube" />
          <MeasureRow base={tube} measure={ROOT} part="tube.edge" of="the tube" />
          <MeasureRow base={tube} measure={ALLOWANCE} part="tube.between" of="the tube" />
        </div>
      </Fold>
    </>
  );

  function turn(to: SectionKind): void {
    if (to === kind) return;
    const { within } = SECTIONS[to];
    const cleared = SECTION_KINDS.filter((other) => other !== to)
      .flatMap(ownKeys)
      .filter((key) => hasAt(doc, [...tube, key]))
      .map((key): [Path, undefined] => [[...tube, key], undefined]);
    write([...cleared, ...(within.length > 0 ? [[[...tube, ...within], {}] as const] : [])]);
  }
}

/** Also the opposite hand. What the head of the file says holds where the tube says nothing. */
function PairBox({ tube }: { readonly tube: Path }) {
  const { doc, write } = useBench();
  const path = hasAt(doc, [...tube, 'pair']) ? [...tube, 'pair'] : ['pair'];
  const checked = /^\s*(true|yes)\s*$/i.test(wordsAt(doc, path));
  return (
    <label class="tick">
      <input
        type="checkbox"
        checked={checked}
        onChange={() => write([[[...tube, 'pair'], checked ? 'false' : 'true']])}
      />
      <span>also the opposite hand</span>
    </label>
  );
}
