import type { Node } from '../nodes.ts';
import { askedEnd, type Stood, type StoodEnd } from '../stood.ts';
import { type CutEnd, workPointAt } from './cut-end.ts';
import { pastOf } from './past.ts';

export function plain(own: StoodEnd, node: Node, inside: Stood | undefined): CutEnd {
  const { cut } = askedEnd(own);
  const told = cut.kind === 'plain' || cut.kind === 'found' ? cut.past?.mm : undefined;
  const spliced = isSplicedAt(node, own);
  const past = told ?? (spliced || inside ? 0 : pastOf(own, landersOn(node, own)));
  return {
    end: { kind: 'plain' },
    workPoint: workPointAt(own, 0 - past),
    headers: [],
    past,
    ...(!spliced && !inside && { open: true }),
    ...(inside && { inside }),
    near: [],
  };
}

export function isSplicedAt({ spliced }: Node, { tube, end }: StoodEnd): boolean {
  return spliced.some((each) => each.tube === tube && each.end === end);
}

/** What lands on a plain end: whatever comes after it at its point and is told nothing else. */
function landersOn({ ending }: Node, own: StoodEnd): readonly StoodEnd[] {
  const place = ending.findIndex(({ tube, end }) => tube === own.tube && end === own.end);
  return ending.filter((end, i) => {
    const { cut, inside } = askedEnd(end);
    if (end.tube === own.tube || inside) return false;
    return cut.kind === 'onto'
      ? cut.names.some(({ name }) => name === own.tube.name)
      : cut.kind === 'found' && i > place;
  });
}
