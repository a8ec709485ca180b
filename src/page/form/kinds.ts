import { isMap, isScalar, isSeq } from 'yaml';
import type { Header, TubeSection } from '../../job/job.ts';
import type { KeyPlace } from '../../job/text/keys.ts';
import { type DocPath, docWordsAt, hasAt, type JobDoc, keysAt, nodeAt, type Value } from '../job/job-doc.ts';
import type { KeyAt, MeasureOf } from './measure.ts';
import {
  BOX_WALL,
  CENTRE,
  CORNER,
  DEEP,
  HEADER_SIZE,
  PIECES,
  RADIUS,
  ROLL,
  TUBE_SIZE,
  TURN,
  WIDE,
} from './measures.ts';

export type HeaderKind = Header['kind'];
export type SectionKind = TubeSection['kind'];
export type EndKind = 'none' | 'plain' | 'one' | 'several';

/** What is asked for at a place, and the key of the place round it under which it stands; none where it is the same place. */
interface Asked<Round extends KeyPlace, Place extends KeyPlace> {
  readonly within: readonly [] | readonly [KeyAt<Round>];
  readonly measures: readonly MeasureOf<KeyAt<Place>>[];
}

/** What a header of each kind asks for, and under which key its own values stand. */
export const HEADERS: {
  readonly [Kind in HeaderKind]: Asked<'onto', Kind extends 'round' ? 'onto' : Kind>;
} = {
  round: { within: [], measures: [HEADER_SIZE] },
  box: { within: ['box'], measures: [WIDE, DEEP, BOX_WALL, CORNER, ROLL] },
  plate: { within: ['plate'], measures: [] },
  bend: { within: ['bend'], measures: [HEADER_SIZE, RADIUS, CENTRE] },
  mitre: { within: ['mitre'], measures: [TURN, PIECES, RADIUS] },
};

export const HEADER_KINDS: readonly HeaderKind[] = ['round', 'box', 'plate', 'bend', 'mitre'];

export function headerKindAt(doc: JobDoc, part: DocPath): HeaderKind {
  const keys = keysAt(doc, [...part, 'onto']);
  return HEADER_KINDS.find((kind) => kind !== 'round' && keys.includes(kind)) ?? 'round';
}

/** What a header of this kind is before anything is filled in. */
export function newHeader(kind: HeaderKind): Value {
  return kind === 'round' ? {} : { [kind]: {} };
}

/** What a tube of each kind asks for, and under which key its own values stand: the one of its name, but for the first two. */
export const SECTION_FIELDS: {
  readonly [Kind in SectionKind]: Asked<'tube', Kind extends keyof Places ? Places[Kind] : Kind & KeyPlace>;
} = {
  round: { within: [], measures: [TUBE_SIZE] },
  rectangular: { within: ['section'], measures: [WIDE, DEEP, CORNER] },
};

interface Places {
  readonly round: 'tube';
  readonly rectangular: 'section';
}

export const SECTION_KINDS: readonly SectionKind[] = Object.keys(SECTION_FIELDS).filter(isSectionKind);

function isSectionKind(key: string): key is SectionKind {
  return key in SECTION_FIELDS;
}

export function sectionKindAt(doc: JobDoc, tube: DocPath): SectionKind {
  return (
    SECTION_KINDS.find((kind) => SECTION_FIELDS[kind].within.some((key) => hasAt(doc, [...tube, key]))) ??
    'round'
  );
}

/** The keys of a tube by which this kind of it is told. */
export function ownKeys(kind: SectionKind): DocPath {
  const { within, measures } = SECTION_FIELDS[kind];
  return within.length > 0 ? within : measures.flatMap(({ keys }) => keys);
}

export function endKindAt(doc: JobDoc, end: DocPath): EndKind {
  const node = nodeAt(doc, end);
  if (isSeq(node)) return 'several';
  if (isMap(node)) return 'one';
  if (isScalar(node) && docWordsAt(doc, end).trim().toLowerCase() === 'plain') return 'plain';
  return node === undefined ? 'none' : 'one';
}

/** Where each header of an end stands. */
export function partPaths(doc: JobDoc, end: DocPath): readonly DocPath[] {
  const node = nodeAt(doc, end);
  if (isSeq(node)) return node.items.map((_, i) => [...end, i]);
  return [end];
}

/** A mitre has an angle of its own, and neither it nor a plate has an axis to be beside of. */
export function asksAngle(kind: HeaderKind): boolean {
  return kind !== 'mitre';
}

export function asksOffset(kind: HeaderKind): boolean {
  return kind !== 'mitre' && kind !== 'plate';
}
