import type { TubeSolution } from '../../saddle/solve.ts';
import type { Language } from '../../words/language.ts';
import {
  endKindAt,
  type HeaderKind,
  headerKindAt,
  partPaths,
  type SectionKind,
  sectionKindAt,
} from '../form/kinds.ts';
import type { DocPath, JobDoc } from './job-doc.ts';
import { workOut } from './outcome.ts';

const SECTIONS: Readonly<Record<SectionKind, string>> = {
  round: 'od: 38.1',
  rectangular: 'section: { wide: 38.1, deep: 38.1, corner: 4 }',
};

const LANDINGS: Readonly<Record<HeaderKind, string>> = {
  round: 'onto: { od: 44.5 }, angle: 60',
  box: 'onto: { box: { wide: 44.5, deep: 44.5, corner: 5 } }, angle: 60',
  plate: 'onto: { plate: {} }, angle: 60',
  bend: 'onto: { bend: { od: 44.5, radius: 150, centre: 180 } }, angle: 80',
  mitre: 'onto: { mitre: { turn: 60 } }',
};

/** A job like the one of a tube before anything is filled in: its kinds, in usual sizes. */
export function exampleOf(doc: JobDoc, tube: DocPath): string {
  const ends = (['A', 'B'] as const).map((name) => {
    const end = [...tube, 'ends', name];
    const kind = endKindAt(doc, end);
    if (kind === 'plain') return `${name}: plain`;
    const [part = end] = partPaths(doc, end);
    return `${name}: { ${LANDINGS[kind === 'none' ? 'round' : headerKindAt(doc, part)]} }`;
  });
  return `copeleaf: 1\ntube: { ${SECTIONS[sectionKindAt(doc, tube)]}, between: 400, ends: { ${ends.join(', ')} } }\n`;
}

/** The tube of an example, to look at before anything is filled in. */
export function ghostTube(example: string, words: Language): TubeSolution {
  const outcome = workOut(example, words);
  const [solution] = outcome.kind === 'read' ? outcome.solutions : [];
  if (!solution) throw new Error('the example is a job');
  return solution;
}
