import { complain, type Desk } from '../../job/text/desk.ts';
import { asWritten } from '../../words/said.ts';
import type { Named } from '../asked.ts';
import { unknownName } from '../names.ts';
import { type Node, nodeKey } from '../nodes.ts';
import { askedEnd, type Stood, type StoodEnd } from '../stood.ts';
import { candidatesFor, stoppedAt } from './candidates.ts';
import { coped } from './coped.ts';
import type { CutEnd, EndFinder, Surroundings } from './cut-end.ts';
import { isSplicedAt, plain } from './plain.ts';
import { flat, mitred, partnerOf } from './planes.ts';

export function endsOf(desk: Desk, tubes: readonly Stood[], nodes: ReadonlyMap<string, Node>): EndFinder {
  const byName = new Map(tubes.map((tube) => [tube.name, tube]));
  const done = new Map<string, CutEnd | undefined>();
  const under: StoodEnd[] = [];
  const find: EndFinder = (own) => {
    const key = `${own.tube.place}${own.end}`;
    if (done.has(key)) return done.get(key);
    const again = under.findIndex(({ tube, end }) => tube === own.tube && end === own.end);
    if (again >= 0) {
      const names = [...under.slice(again), own].map(({ tube, end }) =>
        desk.words.job.frame.endOf(end, asWritten(tube.name)),
      );
      return complain(desk, askedEnd(own).spot, 'circle', desk.words.job.frame.circle(names));
    }
    under.push(own);
    const cut = cutOf({ desk, byName, nodes, find }, own);
    under.pop();
    done.set(key, cut);
    return cut;
  };
  return find;
}

function cutOf(surroundings: Surroundings, own: StoodEnd): CutEnd | undefined {
  const { desk, nodes } = surroundings;
  const { cut, spot, inside: sleeve } = askedEnd(own);
  const node = nodes.get(nodeKey(own));
  const inside = sleeve && named(surroundings, sleeve);
  if (!node || (sleeve && !inside)) return undefined;
  if (cut.kind === 'plain' || inside || isSplicedAt(node, own)) return plain(own, node, inside);
  if (cut.kind === 'flat') return flat(surroundings, own, cut.way);
  if (cut.kind === 'onto') return cutOnto(surroundings, node, own, cut.names);
  const partner = partnerOf(node, own);
  if (partner) return mitred(surroundings, own, partner);
  if (cut.mitre) return complain(desk, spot, 'mitre', desk.words.job.frame.noMitre);
  const found = coped(surroundings, own, candidatesFor(surroundings, node, own));
  return found === 'untouched' ? plain(own, node, undefined) : found;
}

/** An end whose headers the file names. */
function cutOnto(
  surroundings: Surroundings,
  node: Node,
  own: StoodEnd,
  names: readonly Named[],
): CutEnd | undefined {
  const { desk } = surroundings;
  const headers = names.flatMap((name) => named(surroundings, name) ?? []);
  if (headers.length < names.length) return undefined;
  if (headers.includes(own.tube))
    return complain(desk, names[0]?.spot ?? askedEnd(own).spot, 'onto', desk.words.job.frame.ontoItself);
  const candidates = headers.map((tube) => stoppedAt(node, tube));
  const found = coped(surroundings, own, candidates);
  return found === 'untouched' ? undefined : found;
}

function named({ desk, byName }: Surroundings, name: Named): Stood | undefined {
  return byName.get(name.name) ?? unknownName(desk, name, 'tube', byName.keys());
}
