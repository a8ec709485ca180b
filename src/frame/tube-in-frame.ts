import {
  Document,
  isMap,
  isScalar,
  isSeq,
  type Pair,
  parseDocument,
  Scalar,
  type YAMLMap,
  YAMLSeq,
} from 'yaml';
import type { EndName, Job, Seat, Tube } from '../job/job.ts';
import { tubeFactsOf } from '../job/sections.ts';
import type { Mm } from '../measure/units.ts';
import { byLine, norm, type Vector, wayTo } from '../space/vector.ts';
import { endPointOf } from './end-point.ts';
import { exactLength } from './exact-text.ts';
import { plainName, primed } from './names.ts';
import { headWithout, inBraces, pairsOf, writtenTube, type Yaml, yamlMap, yamlPair } from './written-tube.ts';

const ENDS = ['A', 'B'] as const;
const SIZE = ['od', 'pipe', 'section', 'wall'];
const EDGE = ['edge', 'land', 'from', 'root', 'to'];

/**
 * A frame of these tubes, by their places in the job, and all that shapes their ends: what meets at their points as it is cut there, and
 * what these ends land on. Points are written out; other ends of these tubes are plain. Undefined where the job is no frame.
 */
export function frameOfTubes(job: Job, places: Iterable<number>): string | undefined {
  const { tubes, frame } = job;
  const root = parseDocument(job.source, { schema: 'failsafe' }).contents;
  const asked = isMap(root) ? root.get('frame') : undefined;
  if (!frame || !isMap(root) || !isMap(asked)) return undefined;
  const nodes = [...places].flatMap((place) => {
    const own = frame.seats[place];
    return own ? ENDS.map((end) => endPointOf(own, end).place) : [];
  });
  const isKept = (seat: Seat, end: EndName): boolean =>
    nodes.some((node) => norm(wayTo(node, endPointOf(seat, end).place)) < SAME);
  const near = frame.seats.map((seat, i) => nodes.some((node) => holds(tubes[i], seat, node)));
  const landed = frame.seats.flatMap((seat) =>
    ENDS.filter((end) => isKept(seat, end)).flatMap((end) => [
      ...seat.ends[end].headers,
      ...(seat.ends[end].inside === undefined ? [] : [seat.ends[end].inside]),
    ]),
  );
  const taken = frame.seats.flatMap((seat, i) =>
    near[i] || landed.includes(i) || ENDS.some((end) => isKept(seat, end)) ? [i] : [],
  );
  const names = new Set(taken.map((i) => tubes[i]?.name ?? ''));
  const list = new YAMLSeq();
  const points = new Map<string, YAMLSeq>();
  for (const i of taken) {
    const [tube, seat] = [tubes[i], frame.seats[i]];
    const written = tube && writtenTube(root, tube.name, job);
    if (!tube || !seat || !written) return undefined;
    for (const [k, end] of ENDS.entries()) {
      const name = seat.along[k] ?? '';
      points.set(name, placeText(frame.points.get(name) ?? endPointOf(seat, end).place, job.units));
    }
    const isTwin = plainName(String(written.get('name') ?? tube.name)) !== tube.name;
    const named = naming(isTwin, names, asked.get('mirror'));
    list.items.push(inBraces(ownTube(tube, seat, written, isTwin, (end) => isKept(seat, end), named)));
  }
  const body = yamlMap([
    yamlPair('points', yamlMap([...points].map(([name, at]) => yamlPair(name, at)))),
    ...pairsOf(asked, 'snap'),
    ...pairsOf(asked, 'density'),
    yamlPair('tubes', list),
  ]);
  const head = headWithout(root, ['frame']);
  const document = new Document(yamlMap([...head, yamlPair('frame', body)]), { schema: 'failsafe' });
  return document.toString({ lineWidth: 0 });
}

const SAME: Mm = 1e-6;

/** Whether a place is inside a tube or within a millimetre of it, between its two points. */
function holds(tube: Tube | undefined, { from, axis, length }: Seat, place: Vector): boolean {
  const { along, off } = byLine(from, axis, place);
  const reach = tube ? tubeFactsOf(tube.section).outline().reach + 1 : 0;
  const isBetween = along > -reach && along < length + reach;
  return isBetween && norm(off) < reach;
}

function ownTube(
  tube: Tube,
  seat: Seat,
  written: YAMLMap,
  isTwin: boolean,
  isKept: (end: EndName) => boolean,
  named: Naming,
): YAMLMap {
  const isCoped = ENDS.some((end) => isKept(end) && tube.ends[end]?.kind === 'coped');
  const after = named(written.get('after', true)).names;
  return yamlMap([
    yamlPair('name', tube.name),
    yamlPair('along', listOf(seat.along)),
    ...[...SIZE, ...(isCoped ? EDGE : []), 'allowance', 'note', 'through'].flatMap((key) =>
      pairsOf(written, key),
    ),
    ...(isTwin && written.has('face')
      ? [yamlPair('face', placeText(seat.spine, 'mm'))]
      : pairsOf(written, 'face')),
    ...(after.items.length > 0 ? [yamlPair('after', after)] : []),
    yamlPair('ends', inBraces(yamlMap(ENDS.flatMap((end) => endPair(end, written, isKept(end), named))))),
  ]);
}

/** An end as it was asked for, or plain where it is not at the one tube's points. */
function endPair(end: EndName, written: YAMLMap, isKept: boolean, named: Naming): Pair[] {
  const asked = written.getIn(['ends', end], true);
  if (!isKept || isScalar(asked)) return [yamlPair(end, 'plain')];
  if (!isMap(asked)) return [];
  const keys = asked.items.map((each): Pair => {
    const key = isScalar(each.key) ? String(each.key.value) : '';
    const own = named(each.value);
    if (key === 'onto') return yamlPair(key, own.names);
    if (key === 'inside') return yamlPair(key, own.names.items[0] ?? new Scalar(''));
    return key === 'flat' || key === 'seam' ? yamlPair(key, own.mirrored(key)) : each;
  });
  return [yamlPair(end, inBraces(yamlMap(keys)))];
}

/** What an original's key says of its mirror image: names, and ways and stations that change hands. */
type Naming = (node: unknown) => { readonly names: YAMLSeq<Scalar>; mirrored(key: 'flat' | 'seam'): Yaml };

/** Names are of tubes that are taken. */
function naming(isTwin: boolean, taken: ReadonlySet<string>, mirror: unknown): Naming {
  const axis = ['x', 'y', 'z'].findIndex((key) => isMap(mirror) && mirror.has(key));
  const otherSign = (text: string): string => (text.startsWith('-') ? text.slice(1) : `-${text}`);
  return (node) => {
    const texts = (isSeq(node) ? node.items : [node]).map((item) =>
      isScalar(item) ? String(item.value) : '',
    );
    const names = texts
      .map(plainName)
      .map((name) => (isTwin && taken.has(primed(name)) ? primed(name) : name));
    return {
      names: listOf(names.filter((name) => taken.has(name))),
      // A word for a way names an axis, whose plane a mirror leaves square to it.
      mirrored: (key) => {
        const [own = ''] = texts;
        if (isSeq(node))
          return listOf(texts.map((text, i) => (isTwin && i === axis ? otherSign(text) : text)));
        return new Scalar(isTwin && key === 'seam' ? otherSign(own) : own);
      },
    };
  };
}

function listOf(texts: readonly string[]): YAMLSeq<Scalar> {
  const list = new YAMLSeq<Scalar>();
  list.items = texts.map((text) => new Scalar(text));
  return inBraces(list);
}

/** A place in the unit of the file's bare numbers. */
function placeText(place: Vector, units: 'mm' | 'in'): YAMLSeq {
  return listOf(place.map((mm) => exactLength(mm, units).replace(/ \w+$/, '')));
}
