import {
  BESIDE,
  inTurn,
  labelOf,
  liftSteps,
  offLevel,
  type Side,
  standingAt,
  type Tried,
  waysAt,
  wordsBeside,
} from '../../draw/candidates.ts';
import type { Mark } from '../../draw/drawing.ts';
import { type Block, TEXT } from '../../draw/lettering.ts';
import { point } from '../../draw/path.ts';
import { type Candidate, drawTicks, type Placed, placeAll } from '../../draw/placer.ts';
import type { Said } from '../../measure/said.ts';
import type { Mm } from '../../measure/units.ts';
import type { Cope } from '../../saddle/cope.ts';
import type { Language } from '../../words/language.ts';
import { type Body, cutAt, offCut } from './body.ts';
import { type Flat, xAt } from './flat.ts';
import { gap } from './seam.ts';
import { sideNames, sidesOf } from './sides.ts';
import { ONE_PLACE, quarters } from './stations.ts';

/** A station that has a name: heel, toe, long point, throat; more than one where they fall together. */
export interface NamedPlace {
  readonly station: number;
  readonly names: readonly Said[];
}

/** Heel, toe, throat and long point of an end, those of more worth first; a union has no heel and no toe. */
export function namedPlaces(cope: Cope, words: Language): NamedPlace[] {
  const { throat, longPoint, joint, end } = cope;
  const { turn, girth } = joint.section;
  const found = sidesOf(cope);
  const names = sideNames(end.parts[0], words);
  const sides: [Said, number][] =
    found === undefined
      ? []
      : [
          [names.heel, found.heel],
          [names.toe, found.toe],
        ];
  const places: { station: number; names: Said[] }[] = [];
  for (const [name, station] of [
    ...sides,
    [words.leaf.throat, throat.station],
    [words.leaf.longPoint, longPoint.station],
  ] as const) {
    const same = places.find((other) => (gap(other.station, station, turn) * girth) / turn < ONE_PLACE);
    if (same) same.names.push(name);
    else places.push({ station, names: [name] });
  }
  return places;
}

/** Places so near to one another that there is no room for words between them, from left to right. */
type Cluster = [At, ...At[]];

/** What a place is called, and where it is across the leaf. */
interface At {
  readonly x: Mm;
  readonly names: readonly Said[];
}

const TOGETHER: Mm = 4;

function clustersOf(flat: Flat, places: readonly NamedPlace[]): Cluster[] {
  const inOrder = places
    .map(({ names, station }): At => ({ names, x: xAt(flat, station) }))
    .sort((a, b) => a.x - b.x);
  const clusters: Cluster[] = [];
  for (const at of inOrder) {
    const last = clusters.at(-1);
    if (last && at.x - (last.at(-1)?.x ?? 0) < TOGETHER) last.push(at);
    else clusters.push([at]);
  }
  return clusters;
}

function isOnGuide(flat: Flat, x: Mm): boolean {
  return quarters(flat.turn).some((quarter) => {
    const way = Math.abs(xAt(flat, quarter) - x);
    return Math.min(way, flat.width - way) < ONE_PLACE;
  });
}

/** Short marks at the places that lie on no guide. */
export function placeTicks(body: Body, places: readonly NamedPlace[]): Mark[] {
  const ticks = places
    .map(({ station }) => xAt(body.flat, station))
    .filter((x) => !isOnGuide(body.flat, x))
    .map((x) => {
      const cut = cutAt(body, x);
      return { from: point(x, cut), to: point(x, cut + body.flat.bodyWay * TICK) };
    });
  return drawTicks(body.field, ticks);
}

/**
 * The names at the cut, on the body's side of it: the heel first, in letters of the size `worth`, each of the others under it or at its
 * own place, set off where its line would lie hard by that of one of more worth. What found no room comes back in words that say where
 * it is. `lines` are drawn up from the cut already.
 */
export function placeNames(
  body: Body,
  places: readonly NamedPlace[],
  worth: Mm,
  lines: readonly Mm[],
): Placed {
  const { heel } = sideNames(body.cope.end.parts[0], body.words);
  const others = (x: Mm): Mm[] =>
    places.map(({ station }) => xAt(body.flat, station)).filter((each) => each !== x);
  const worthier = (x: Mm): Mm[] => {
    const at = places.map(({ station }) => xAt(body.flat, station));
    return [...lines, ...body.field.guides.map((guide) => guide.x), ...at.slice(0, at.indexOf(x))];
  };
  const isOnLine = (x: Mm): boolean =>
    isOnGuide(body.flat, x) || lines.some((line) => Math.abs(line - x) < ONE_PLACE);
  const clusters = clustersOf(body.flat, places);
  const notes = clusters.flatMap((cluster) => {
    const [{ x: first }] = cluster;
    const following = clusters.some(([{ x }]) => x > first && x - first < NEAR);
    return namesIn(cluster, following);
  });
  const sized = notes.map((note) => ({ ...note, sizes: note.name === heel ? [worth, TEXT] : [TEXT] }));
  sized.sort((a, b) => Number(b.name === heel) - Number(a.name === heel));
  return placeAll(
    body.field,
    sized.map(({ name, x, sides, sizes }) => ({
      places: inTurn(sizes, (size) => {
        const block: Block = { fact: 'heel', lines: [name], size };
        const away = isOnLine(x) ? undefined : wayOff(x, worthier(x));
        const beside = besideCut(body, x, block, sides, isOnLine(x), others(x));
        return away ? inTurn([setOff(body, x, block, away), beside], (each) => each) : beside;
      }),
      otherwise: body.words.leaf.fromLeftEdge(name, x),
    })),
  );
}

interface Note {
  readonly name: Said;
  readonly x: Mm;
  /** On which sides of its line it may stand, the better first. */
  readonly sides: readonly Side[];
}

/**
 * Of places with no room between them the first is named to its left and the others to their right, each on a line of its own, so that no
 * name hangs on another's.
 */
function namesIn(cluster: Cluster, leftFirst: boolean): Note[] {
  return cluster.flatMap(({ x, names }, i) => {
    const left = cluster.length === 1 ? leftFirst : i === 0;
    return names.map((name): Note => ({ name, x, sides: left ? ['left', 'right'] : ['right', 'left'] }));
  });
}

/** Names further apart than this do not get in each other's way, mm. */
const NEAR: Mm = 18;

/** How far a mark of a place reaches into the body where its name stands elsewhere. */
const TICK: Mm = 1.4;

/** Where names stand off the cut, mm; nearer, where the line of another place is near too. */
const AT_CUT = waysAt(liftSteps(TICK + 0.4, 40, 1.2));
const NEAR_CUT = waysAt(liftSteps(TICK + 0.4, 14, 1.2));

/** Off the lines of `others` first, where these are near. Beside a line that is there already a name needs none of its own. */
function* besideCut(
  body: Body,
  x: Mm,
  block: Block,
  sides: readonly Side[],
  onLine: boolean,
  others: readonly Mm[],
): Iterable<Candidate> {
  const level = offCut(body, x);
  const foot = onLine ? undefined : point(x, level.y);
  const tried = wordsBeside(block, x, sides);
  const offOthers = (turn: 0 | 1): Tried => {
    const { label, lefts } = tried(turn);
    const isOver = (left: Mm) => (other: Mm) => other > left - BESIDE && other < left + label.width + BESIDE;
    return { label, lefts: lefts.filter((left) => !others.some(isOver(left))) };
  };
  if (offOthers(0).lefts.length < sides.length) yield* offLevel(level, NEAR_CUT, offOthers, foot);
  yield* offLevel(level, AT_CUT, tried, foot);
}

/** Two lines nearer to one another than this are taken for one at arm's length. */
const TOLD_APART: Mm = 3;

/** To which side of its place a name is set off whose line would lie too near to others; undefined where none is near, or on both sides. */
function wayOff(x: Mm, lines: readonly Mm[]): 1 | -1 | undefined {
  const near = lines.filter((line) => Math.abs(line - x) < TOLD_APART);
  if (near.length === 0) return undefined;
  if (near.every((line) => line < x)) return 1;
  return near.every((line) => line > x) ? -1 : undefined;
}

/** How far such a name stands aside, and how far off the cut. */
const ASIDE: Mm = 2.4;
const SET_OFF = waysAt(liftSteps(TICK + 1.6, 14, 0.8));

/** Places for a name to one side of its place: a line leads aslant to its near corner from the tick at the cut. */
function* setOff(body: Body, x: Mm, block: Block, away: 1 | -1): Iterable<Candidate> {
  const { y, up } = offCut(body, x);
  const foot = point(x, y + up * TICK);
  for (const { turn, lifts, overGuides } of SET_OFF) {
    const label = labelOf(block, turn);
    const left = away === 1 ? x + ASIDE : x - ASIDE - label.width;
    for (const lift of lifts) {
      const near = y + up * lift;
      const corner = point(x + away * (ASIDE - 0.5), near + up * 0.5);
      const bottom = up === 1 ? near : near - label.height;
      yield standingAt(label, left, bottom, overGuides, { from: foot, to: corner });
    }
  }
}
