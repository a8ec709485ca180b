import { liftSteps, offLevel, type Side, waysAt, wordsBeside } from '../../draw/candidates.ts';
import type { Mark } from '../../draw/drawing.ts';
import { type Block, SMALL } from '../../draw/lettering.ts';
import { point } from '../../draw/path.ts';
import { type Candidate, drawTicks, type Placed, placeAll } from '../../draw/placer.ts';
import type { Said } from '../../measure/said.ts';
import type { Mm } from '../../measure/units.ts';
import type { Cope } from '../../saddle/cope.ts';
import type { Language } from '../../words/language.ts';
import { joined } from '../../words/said.ts';
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

/** Heel, toe, throat and long point of an end; a union has no heel and no toe. */
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

/** Places so near to one another that there is no room for words between them. */
interface Cluster {
  /** What each is called, from left to right. */
  readonly texts: readonly [Said, ...Said[]];
  /** Where each is across the leaf. */
  readonly xs: readonly [Mm, ...Mm[]];
}

const TOGETHER: Mm = 4;

function clustersOf({ flat, words }: Body, places: readonly NamedPlace[]): Cluster[] {
  const inOrder = places.map((named) => ({ named, x: xAt(flat, named.station) })).sort((a, b) => a.x - b.x);
  const clusters: { named: [NamedPlace, ...NamedPlace[]]; xs: [Mm, ...Mm[]] }[] = [];
  for (const { named, x } of inOrder) {
    const last = clusters.at(-1);
    if (last && x - (last.xs.at(-1) ?? 0) < TOGETHER) {
      last.xs.push(x);
      last.named.push(named);
    } else {
      clusters.push({ named: [named], xs: [x] });
    }
  }
  return clusters.map(({ named, xs }) => {
    const plain = xs.length === 1 && isOnGuide(flat, xs[0]);
    const [first, ...others] = named;
    return {
      xs,
      texts: [nameAt(flat, first, plain, words), ...others.map((each) => nameAt(flat, each, plain, words))],
    };
  });
}

/** The names of a place, with its station unless a quarter line alone says it. */
function nameAt(
  { section }: Flat,
  { names, station }: NamedPlace,
  plain: boolean,
  { leaf, quantities }: Language,
): Said {
  if (plain) return leaf.named(names, undefined);
  // A station to a tenth of a degree: closer than anyone marks it.
  const at =
    section.stations === 'angles'
      ? quantities.angleToATenth(station)
      : quantities.station(station, section.stations);
  return leaf.named(names, at);
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

/** The names at the cut, on the body's side of it. What found no room comes back in words that say where it is. */
export function placeNames(body: Body, places: readonly NamedPlace[]): Placed {
  const clusters = clustersOf(body, places);
  const names = clusters.flatMap((cluster) => {
    const { xs } = cluster;
    const following = clusters.some((other) => other.xs[0] > xs[0] && other.xs[0] - xs[0] < NEAR);
    return namesIn(cluster, following);
  });
  return placeAll(
    body.field,
    names.map(({ text, x, sides }) => ({
      places: besideCut(body, x, { fact: 'heel', lines: [text], size: SMALL }, sides),
      otherwise: body.words.leaf.fromLeftEdge(text, x),
    })),
  );
}

/**
 * On which sides of its line each name may stand, the better first. Of places with no room between them the first is named to its left
 * and the last to its right, each on a line of its own, so that no name hangs on another's.
 */
function namesIn(
  { texts, xs }: Cluster,
  leftFirst: boolean,
): { text: Said; x: Mm; sides: readonly Side[] }[] {
  const [first, last] = [xs[0], xs.at(-1) ?? xs[0]];
  if (xs.length === 1)
    return [{ text: texts[0], x: first, sides: leftFirst ? ['left', 'right'] : ['right', 'left'] }];
  const after = joined(texts.slice(1), ', ');
  return [
    { text: texts[0], x: first, sides: ['left'] },
    { text: after, x: last, sides: ['right'] },
  ];
}

/** Names further apart than this do not get in each other's way, mm. */
const NEAR: Mm = 18;

/** How far a mark of a place reaches into the body where its name stands elsewhere. */
const TICK: Mm = 1.4;

/** Where names stand off the cut, mm. */
const AT_CUT = waysAt(liftSteps(TICK + 0.4, 26, 1.2));

/** Beside a guide line a name needs no line of its own. */
function besideCut(body: Body, x: Mm, block: Block, sides: readonly Side[]): Iterable<Candidate> {
  const level = offCut(body, x);
  const foot = isOnGuide(body.flat, x) ? undefined : point(x, level.y);
  return offLevel(level, AT_CUT, wordsBeside(block, x, sides), foot);
}
