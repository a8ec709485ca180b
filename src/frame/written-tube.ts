import { isMap, isScalar, isSeq, Pair, Scalar, YAMLMap, type YAMLSeq } from 'yaml';
import type { Job } from '../job/job.ts';
import { plainName, primed } from './names.ts';

export type Yaml = Scalar | YAMLMap | YAMLSeq;

/** The tube of the file that this one is, or is the mirror image of. */
export function writtenTube(root: unknown, name: string, { words }: Job): YAMLMap | undefined {
  const list = isMap(root) ? root.getIn(['frame', 'tubes']) : undefined;
  if (!isSeq(list)) return undefined;
  const names = list.items.map((item, i) => {
    const own = isMap(item) ? item.get('name') : undefined;
    return typeof own === 'string' ? plainName(own) : words.job.unnamed(i + 1);
  });
  const at = names.indexOf(name);
  const item = list.items[at >= 0 ? at : names.findIndex((each) => primed(each) === name)];
  return isMap(item) ? item : undefined;
}

export function pairsOf(map: YAMLMap, key: string): Pair[] {
  return map.items.filter((each) => isScalar(each.key) && each.key.value === key);
}

export function yamlPair(key: string, value: string | Yaml): Pair {
  return new Pair(new Scalar(key), typeof value === 'string' ? new Scalar(value) : value);
}

export function yamlMap(items: readonly Pair[]): YAMLMap {
  const map = new YAMLMap();
  map.items = [...items];
  return map;
}

export function inBraces<Node extends YAMLMap | YAMLSeq>(node: Node): Node {
  node.flow = true;
  return node;
}

/** The head of a job's file without these keys, nor what stands above it, which is said of another file. */
export function headWithout(root: YAMLMap, keys: readonly string[]): Pair[] {
  const [first] = root.items;
  if (isScalar(first?.key)) first.key.commentBefore = null;
  return root.items.filter(({ key }) => isScalar(key) && !keys.includes(String(key.value)));
}
