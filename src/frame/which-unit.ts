import { isScalar, isSeq } from 'yaml';
import { complain, type Spot } from '../job/text/desk.ts';
import type { AskedFrame } from './asked.ts';
import { type Node, nodeKey } from './nodes.ts';
import type { Stood, StoodEnd } from './stood.ts';

/** No frame is made of tubes that are all as short against their own diameter. Common practice, no source. */
const SHORTEST = 6;
/** Fewer tubes than these, joined at both ends, are a sample of a joint and no frame. */
const FEWEST = 3;

/**
 * Asks about points whose numbers have no unit where every tube is stubby by them: mostly they are in the next larger unit. One number with
 * its unit is enough to be taken at its word; so are stubs that are drawn for the joint at one of their ends. Whether it asked.
 */
export function askUnitOfPoints(
  { points, tubes }: AskedFrame,
  standing: readonly Stood[],
  nodes: ReadonlyMap<string, Node>,
): boolean {
  const spots = [
    ...points.flatMap(({ way, spot }) => (way.kind === 'at' ? [spot] : [])),
    ...tubes.flatMap(({ along }) => along.flatMap((ask) => ('place' in ask ? [ask.spot] : []))),
  ];
  const [first] = spots;
  const isStubby = standing.every(({ length, outline }) => length < SHORTEST * 2 * outline.reach);
  if (!first || !isStubby || !spots.every(isBare)) return false;
  const isMet = (end: StoodEnd): boolean => {
    const node = nodes.get(nodeKey(end));
    return node !== undefined && node.ending.length + node.spliced.length + node.passing.length > 1;
  };
  const closed = standing.filter((tube) => isMet({ tube, end: 'A' }) && isMet({ tube, end: 'B' }));
  if (closed.length < FEWEST) return false;
  const longest = Math.max(...standing.map(({ length }) => length));
  const { words, bareUnit } = first.desk;
  complain(first, 'which-unit', words.job.frame.stubby(longest, bareUnit));
  return true;
}

function isBare({ node }: Spot): boolean {
  return (
    isSeq(node) && node.items.every((item) => isScalar(item) && !/[\p{L}"'′″]/u.test(String(item.value)))
  );
}
