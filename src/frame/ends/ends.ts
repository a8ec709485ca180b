import { complain } from '../../job/text/desk.ts';
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

export function endsOf(tubes: readonly Stood[], nodes: ReadonlyMap<string, Node>): EndFinder {
  const byName = new Map(tubes.map((tube) => [tube.name, tube]));
  const done = new Map<string, CutEnd | undefined>();
  const under: StoodEnd[] = [];
  const find: EndFinder = (own) => {
    const key = `${own.tube.place}${own.end}`;
    if (done.has(key)) return done.get(key);
    const again = under.findIndex(({ tube, end }) => tube === own.tube && end === own.end);
    if (again >= 0) {
      const { spot } = askedEnd(own);
      const { frame } = spot.desk.words.job;
      const names = [...under.slice(again), own].map(({ tube, end }) =>
        frame.endOf(end, asWritten(tube.name)),
      );
      return complain(spot, 'circle', frame.circle(names));
    }
    under.push(own);
    const cut = cutOf({ byName, nodes, find }, own);
    under.pop();
    done.set(key, cut);
    return cut;
  };
  return find;
}

function cutOf(surroundings: Surroundings, own: StoodEnd): CutEnd | undefined {
  const { nodes } = surroundings;
  const { cut, spot, inside: sleeve } = askedEnd(own);
  const node = nodes.get(nodeKey(own));
  const inside = sleeve && named(surroundings, sleeve);
  if (!node || (sleeve && !inside)) return undefined;
  if (cut.kind === 'plain' || inside || isSplicedAt(node, own)) return plain(own, node, inside);
  if (cut.kind === 'flat') return flat(own, cut.way);
  if (cut.kind === 'onto') return cutOnto(surroundings, node, own, cut.names);
  const partner = partnerOf(node, own);
  if (partner) return mitred(own, partner);
  if (cut.mitre) return complain(spot, 'mitre', spot.desk.words.job.frame.noMitre);
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
  const headers = names.flatMap((name) => named(surroundings, name) ?? []);
  if (headers.length < names.length) return undefined;
  const { spot } = names[0] ?? askedEnd(own);
  if (headers.includes(own.tube)) return complain(spot, 'onto', spot.desk.words.job.frame.ontoItself);
  const candidates = headers.map((tube) => stoppedAt(node, tube));
  const found = coped(surroundings, own, candidates);
  return found === 'untouched' ? undefined : found;
}

function named({ byName }: Surroundings, name: Named): Stood | undefined {
  return byName.get(name.name) ?? unknownName(name, 'tube', byName.keys());
}
