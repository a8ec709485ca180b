import { isOntoBox, noFlat } from '../job/flat.ts';
import type { CopedEnd, End, Part } from '../job/job.ts';
import { prepare } from '../job/preparation.ts';
import { complain, type Desk } from '../job/text/desk.ts';
import { degrees, type Mm } from '../measure/units.ts';
import { crossProduct, dot, norm, squareTo, type Vector } from '../space/vector.ts';
import { asWritten } from '../words/said.ts';
import type { CutAsk, Named } from './asked.ts';
import { angleOf, lengthOf, type Meeting, meetingOf, partOfMeeting, stopOfMeeting } from './meeting.ts';
import { unknownName } from './names.ts';
import { type Node, nodeKey } from './nodes.ts';
import { isSameOutside } from './outside.ts';
import { pastOf } from './past.ts';
import { stationAngle } from './places.ts';
import { askedEnd, bodyOf, type Stood, type StoodEnd } from './stood.ts';
import { metOf } from './touching.ts';

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

interface Shop {
  readonly desk: Desk;
  readonly byName: ReadonlyMap<string, Stood>;
  readonly nodes: ReadonlyMap<string, Node>;
  readonly find: EndFinder;
}

/** A tube that an end may land on, and which of its ends stops it there. */
interface Candidate {
  readonly tube: Stood;
  readonly end?: 'A' | 'B';
  readonly near?: true;
}

function cutOf(shop: Shop, own: StoodEnd): CutEnd | undefined {
  const { desk, nodes } = shop;
  const { cut, inside: sleeve } = askedEnd(own);
  const node = nodes.get(nodeKey(own));
  const inside = sleeve && named(shop, sleeve);
  if (!node || (sleeve && !inside)) return undefined;
  const isPlain = cut.kind === 'plain' || inside || isSpliced(node, own);
  if (isPlain) return plain(own, node, inside);
  if (cut.kind === 'flat') return flat(shop, own, cut.way);
  if (cut.kind === 'onto') {
    const headers = cut.names.flatMap((name) => named(shop, name) ?? []);
    if (headers.length < cut.names.length) return undefined;
    if (headers.includes(own.tube))
      return complain(
        desk,
        cut.names[0]?.spot ?? askedEnd(own).spot,
        'onto',
        desk.words.job.frame.ontoItself,
      );
    const found = coped(
      shop,
      own,
      headers.map((tube) => stoppedAt(node, tube)),
    );
    return found === 'untouched' ? undefined : found;
  }
  const partner = partnerOf(node, own);
  if (partner) return mitred(shop, own, partner);
  if (cut.mitre) return complain(desk, askedEnd(own).spot, 'mitre', desk.words.job.frame.noMitre);
  const candidates = [...before(node, own), ...nearTo(shop, node, own)].filter(
    ({ tube }) => !isSleeveOn(own.tube, tube),
  );
  const found = candidates.length > 0 ? coped(shop, own, candidates) : undefined;
  return candidates.length === 0 || found === 'untouched' ? plain(own, node, undefined) : found;
}

function named({ desk, byName }: Shop, name: Named): Stood | undefined {
  return byName.get(name.name) ?? unknownName(desk, name, 'tube', byName.keys());
}

function isSpliced({ spliced }: Node, { tube, end }: StoodEnd): boolean {
  return spliced.some((each) => each.tube === tube && each.end === end);
}

/** Whether a tube sits inside this one, which does not land on it for that. */
function isSleeveOn({ name }: Stood, { asked }: Stood): boolean {
  return asked.ends.A.inside?.name === name || asked.ends.B.inside?.name === name;
}

/** A header that ends at the point counts only where it stands. */
function stoppedAt({ ending }: Node, tube: Stood): Candidate {
  const own = ending.find((each) => each.tube === tube);
  return own ? { tube, end: own.end } : { tube };
}

function before(node: Node, own: StoodEnd): readonly Candidate[] {
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
function nearTo({ nodes }: Shop, { around, point }: Node, own: StoodEnd): readonly Candidate[] {
  return around.flatMap((tube): Candidate[] => {
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

/** The least that two bodies make which are mitred without being asked. */
const SHARPEST = Math.cos(Math.PI / 3);

/** The end with which this one is mitred, if it is. */
function partnerOf({ passing, ending }: Node, own: StoodEnd): StoodEnd | undefined {
  const [first, second] = ending;
  if (!first || !second || passing.length > 0) return undefined;
  const isOwn = (end: StoodEnd): boolean => end.tube === own.tube && end.end === own.end;
  if (!isOwn(first) && !isOwn(second)) return undefined;
  const asks = [first, second].map((end) => askedEnd(end).cut);
  const found = asks.flatMap((cut) => (cut.kind === 'found' ? [cut.mitre] : []));
  if (found.length < 2 || found.includes(false)) return undefined;
  const told =
    first.tube.asked.through || second.tube.asked.after.some(({ name }) => name === first.tube.name);
  const isWide = dot(bodyOf(first), bodyOf(second)) <= SHARPEST + 1e-12;
  const isAsked = found.includes(true);
  if (!isSameOutside(first, second) || (!isAsked && (told || !isWide))) return undefined;
  return isOwn(first) ? second : first;
}

function mitred(shop: Shop, own: StoodEnd, other: StoodEnd): CutEnd | undefined {
  const [body, its] = [bodyOf(own), bodyOf(other)];
  const between = Math.atan2(norm(crossProduct(body, its)), dot(body, its));
  const u = squareTo(own.tube.axis, its) ?? own.tube.spine;
  const part: Part = {
    onto: { kind: 'mitre', turn: angleOf(Math.PI - between) },
    angle: angleOf(between / 2),
    clock: angleOf(clockTo(own, u)),
    offset: lengthOf(0, shop.desk.bareUnit),
    shift: lengthOf(0, shop.desk.bareUnit),
  };
  return endOf(shop, own, [part], [other.tube], 0);
}

/** A station in [0, 360); a hair below a whole turn is none. */
function clockTo({ tube }: StoodEnd, u: Vector): number {
  const turned = stationAngle(tube.axis, tube.spine, u);
  return turned < -1e-9 ? turned + 2 * Math.PI : Math.max(0, turned);
}

function flat(shop: Shop, own: StoodEnd, normal: Vector): CutEnd | undefined {
  const { desk } = shop;
  const body = bodyOf(own);
  const angle = Math.asin(Math.min(1, Math.abs(dot(normal, body))));
  if (angle < LEAST)
    return complain(
      desk,
      askedEnd(own).spot,
      'flat',
      desk.words.job.frame.flatAlong(asWritten(own.tube.name), degrees(angle), acrossAxis(body)),
    );
  // The plane's steepest line, towards the body.
  const steep = squareTo(normal, body);
  const u = steep && squareTo(own.tube.axis, steep);
  const part: Part = {
    onto: { kind: 'plate' },
    angle: angleOf(u ? angle : Math.PI / 2),
    clock: angleOf(u ? clockTo(own, u) : 0),
    offset: lengthOf(0, desk.bareUnit),
    shift: lengthOf(0, desk.bareUnit),
  };
  return endOf(shop, own, [part], [], 0);
}

/** The axis of space that a body nearly runs along, within 30 degrees, so that a plane square to it cuts the tube nearly square. */
function acrossAxis(body: Vector): 'x' | 'y' | 'z' | undefined {
  return (['x', 'y', 'z'] as const).find((_, i) => Math.abs(body[i] ?? 0) > Math.cos(Math.PI / 6));
}

function plain(own: StoodEnd, node: Node, inside: Stood | undefined): CutEnd {
  const { cut } = askedEnd(own);
  const told = cut.kind === 'plain' || cut.kind === 'found' ? cut.past?.mm : undefined;
  const spliced = isSpliced(node, own);
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

function coped(
  shop: Shop,
  own: StoodEnd,
  candidates: readonly Candidate[],
): CutEnd | 'untouched' | undefined {
  const { desk } = shop;
  const { cut: asks } = askedEnd(own);
  const isAsked = asks.kind === 'onto';
  const landed = candidates.flatMap((candidate) => {
    const meeting = meetingOf(own, candidate.tube);
    const part = meeting && partWith(shop, asks, meeting, candidate, true);
    return meeting && part ? [{ candidate, meeting, part }] : [];
  });
  const met = metOf(
    own.tube,
    landed.map(({ part }) => part),
  );
  const kept = landed.filter((_, i) => met[i]);
  const [first] = kept;
  if (!first) {
    if (!isAsked)
      return landed.length < candidates.length
        ? tooFlat(shop, own, candidates[0]?.tube ?? own.tube, 0)
        : 'untouched';
    return complain(
      desk,
      askedEnd(own).spot,
      'misses',
      desk.words.job.frame.missesAll(candidates.map(({ tube }) => asWritten(tube.name))),
    );
  }
  const narrow = kept.find(({ meeting }) => meeting.angle < LEAST);
  if (narrow && !isAsked) return tooFlat(shop, own, narrow.candidate.tube, narrow.meeting.angle);
  const near = kept.flatMap(({ candidate }) => (candidate.near ? [candidate.tube] : []));
  const headers = kept.map(({ candidate }) => candidate.tube);
  const alone = kept.length === 1 ? partWith(shop, asks, first.meeting, first.candidate, false) : undefined;
  const cut = alone
    ? endOf(shop, own, [alone], headers, first.meeting.shift)
    : endOf(
        shop,
        own,
        kept.map(({ part }) => part),
        headers,
        0,
      );
  return cut && { ...cut, near };
}

/** What lands at a lesser angle was mostly not meant to: common practice, no source. */
const LEAST = (15 * Math.PI) / 180 - 1e-9;

function tooFlat({ desk }: Shop, own: StoodEnd, header: Stood, angle: number): undefined {
  const { frame } = desk.words.job;
  const objection = frame.tooFlat(asWritten(own.tube.name), asWritten(header.name), degrees(angle));
  complain(desk, askedEnd(own).spot, 'angle', objection);
}

function partWith(
  shop: Shop,
  asks: CutAsk,
  meeting: Meeting,
  { tube, end }: Candidate,
  shifted: boolean,
): Part | undefined {
  const part = partOfMeeting(meeting, shifted, shop.desk.bareUnit);
  if (end === undefined) return part;
  const its = shop.find({ tube, end });
  const name = asks.kind === 'found' ? { name: tube.name } : {};
  return its && { ...part, stops: { ...stopOfMeeting(meeting, end, its), ...name } };
}

/** Along the axis from the first point: so far into the body from the end's own. */
function workPointAt({ tube, end }: StoodEnd, inwards: Mm): Mm {
  return end === 'A' ? inwards : tube.length - inwards;
}

function endOf(
  { desk }: Shop,
  own: StoodEnd,
  parts: readonly Part[],
  headers: readonly Stood[],
  inwards: Mm,
): CutEnd | undefined {
  const ask = askedEnd(own);
  const { asked } = own.tube;
  const { frame } = desk.words.job;
  if (ask.cut.kind === 'found' && ask.cut.past) return complain(desk, ask.spot, 'past', frame.noPast);
  const preparation = prepare(desk, ask.edges, asked.edges, asked.wall);
  const [first, ...others] = parts;
  if (!first || !preparation) return undefined;
  const onBox = isOntoBox(parts);
  if (ask.toFlat && !onBox) return noFlat(desk, ask.spot);
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
