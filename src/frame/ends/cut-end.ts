import { isOntoBox, noFlat } from '../../job/flat.ts';
import type { CopedEnd, End, Part } from '../../job/job.ts';
import { prepare } from '../../job/preparation.ts';
import { complain } from '../../job/text/desk.ts';
import type { Mm } from '../../measure/units.ts';
import type { Node } from '../nodes.ts';
import { askedEnd, type Stood, type StoodEnd } from '../stood.ts';

/** How one end of a frame's tube is cut, and onto what. */
export interface CutEnd {
  readonly end: End;
  /** Where its work point lies, along its tube's axis from the first point. */
  readonly workPoint: Mm;
  readonly headers: readonly Stood[];
  readonly past?: Mm;
  readonly open?: true;
  readonly inside?: Stood;
  /** Tubes that it copes onto although its point is not on their axes. */
  readonly near: readonly Stood[];
}

/** The ends of a frame's tubes, each found when it is first asked for: undefined where it is complained about. */
export type EndFinder = (own: StoodEnd) => CutEnd | undefined;

/** What is known of a frame while its ends are found. */
export interface Surroundings {
  readonly byName: ReadonlyMap<string, Stood>;
  readonly nodes: ReadonlyMap<string, Node>;
  readonly find: EndFinder;
}

/** What lands at a lesser angle was mostly not meant to: common practice, no source. */
export const LEAST = (15 * Math.PI) / 180 - 1e-9;

/** Along the axis from the first point: so far into the body from the end's own. */
export function workPointAt({ tube, end }: StoodEnd, inwards: Mm): Mm {
  return end === 'A' ? inwards : tube.length - inwards;
}

export function endOf(
  own: StoodEnd,
  parts: readonly Part[],
  headers: readonly Stood[],
  inwards: Mm,
): CutEnd | undefined {
  const ask = askedEnd(own);
  const { asked } = own.tube;
  const { frame } = ask.spot.desk.words.job;
  if (ask.cut.kind === 'found' && ask.cut.past) return complain(ask.spot, 'past', frame.noPast);
  const preparation = prepare(ask.edges, asked.edges, asked.wall);
  const [first, ...others] = parts;
  if (!first || !preparation) return undefined;
  const onBox = isOntoBox(parts);
  if (ask.toFlat && !onBox) return noFlat(ask.spot);
  const root = ask.root ?? asked.root;
  const end: CopedEnd = {
    kind: 'coped',
    parts: [first, ...others],
    preparation,
    ...(root && { root }),
    ...((ask.toFlat ?? asked.toFlat) && onBox && { toFlat: true }),
    ...(ask.seam && { seam: ask.seam }),
  };
  return { end, workPoint: workPointAt(own, inwards), headers, near: [] };
}
