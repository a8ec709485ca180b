import { dot, norm } from '../../space/vector.ts';
import { type Node, nodeKey } from '../nodes.ts';
import { bodyOf, type Stood, type StoodEnd } from '../stood.ts';
import type { Surroundings } from './cut-end.ts';

/** A tube that an end may land on, and which of its ends stops it there. */
export interface PossibleHeader {
  readonly tube: Stood;
  readonly end?: 'A' | 'B';
  readonly near?: true;
}

/** What an end copes onto where its file names nothing: all that come before it at its point, or have the point inside them. */
export function candidatesFor(
  surroundings: Surroundings,
  node: Node,
  own: StoodEnd,
): readonly PossibleHeader[] {
  return [...before(node, own), ...nearTo(surroundings, node, own)].filter(
    ({ tube }) => !isSleeveOn(own.tube, tube),
  );
}

/** Whether a tube sits inside this one, which does not land on it for that. */
function isSleeveOn({ name }: Stood, { asked }: Stood): boolean {
  return asked.ends.A.inside?.name === name || asked.ends.B.inside?.name === name;
}

/** A header that ends at the point counts only where it stands. */
export function stoppedAt({ ending }: Node, tube: Stood): PossibleHeader {
  const own = ending.find((each) => each.tube === tube);
  return own ? { tube, end: own.end } : { tube };
}

function before(node: Node, own: StoodEnd): readonly PossibleHeader[] {
  const { passing, ending } = node;
  const place = ending.findIndex(({ tube, end }) => tube === own.tube && end === own.end);
  return [...passing.map((tube) => ({ tube: pieceUnder(node, tube, own) })), ...ending.slice(0, place)];
}

/** Of two tubes that are spliced the one to whose side an end leans. */
function pieceUnder({ spliced }: Node, tube: Stood, own: StoodEnd): Stood {
  const place = spliced.findIndex((each) => each.tube === tube);
  const [first, second] = place < 0 ? [] : [spliced[place], spliced[place + 1]];
  if (!first || !second) return tube;
  const body = bodyOf(own);
  return dot(body, bodyOf(second)) > dot(body, bodyOf(first)) + 1e-9 ? second.tube : tube;
}

/** Tubes that have the point inside them; of two whose ends lie in one another the later one copes. */
function nearTo({ nodes }: Surroundings, { around, point }: Node, own: StoodEnd): readonly PossibleHeader[] {
  return around.flatMap((tube): PossibleHeader[] => {
    const both = (['A', 'B'] as const).some((end) => {
      const its = nodes.get(nodeKey({ tube, end }));
      const isNear =
        its &&
        norm([its.point[0] - point[0], its.point[1] - point[1], its.point[2] - point[2]]) <
          tube.outline.reach + own.tube.outline.reach;
      return isNear && its.around.includes(own.tube);
    });
    return both && tube.place > own.tube.place ? [] : [{ tube, near: true }];
  });
}
