import type { Mm } from '../measure/units.ts';
import { writeAngle } from '../measure/write.ts';
import type { Cope } from '../saddle/cope.ts';
import { homeStation } from '../saddle/peaks.ts';
import { type Body, baseHeight } from './body.ts';
import type { Mark } from './drawing.ts';
import { across, type Flat, height } from './flat.ts';
import { type Block, extentOf, SMALL, TEXT } from './lettering.ts';
import { point, strokeOf } from './path.ts';
import { type Candidate, type Field, type Guide, openParts, place, wordsAt } from './placer.ts';
import { gap } from './seam.ts';

/** A station that has a name: heel, toe, long point, throat; more than one where they fall together. */
export interface NamedPlace {
  readonly station: number;
  readonly names: readonly string[];
}

/** Places nearer to one another than this on the paper are one, mm. */
const SAME: Mm = 0.3;

export function namedPlaces(cope: Cope): NamedPlace[] {
  const { turn, girth } = cope.joint.section;
  const all: [string, number][] = [
    ...(cope.heel === undefined
      ? []
      : ([
          ['heel', cope.heel],
          ['toe', homeStation(cope.heel + turn / 2, turn)],
        ] satisfies [string, number][])),
    ['throat', cope.throat.station],
    ['long point', cope.longPoint.station],
  ];
  const places: { station: number; names: string[] }[] = [];
  for (const [name, station] of all) {
    const same = places.find((other) => (gap(other.station, station, turn) * girth) / turn < SAME);
    if (same) same.names.push(name);
    else places.push({ station, names: [name] });
  }
  return places;
}

/** The spine and the other three quarter lines, as stations. */
export function quarters(turn: number): number[] {
  return [0, turn / 4, turn / 2, (3 * turn) / 4];
}

/** The quarter lines that do not lie on the seam, from the cut to the base edge. */
export function guidesOf(flat: Flat, cope: Cope, base: Mm): Guide[] {
  return quarters(flat.turn)
    .map((station) => ({ station, x: across(flat, station) }))
    .filter(({ x }) => x > SAME && x < flat.width - SAME)
    .map(({ station, x }) => {
      const ends = [height(flat, cope.cut(station).setback), height(flat, base)];
      return { x, bottom: Math.min(...ends), top: Math.max(...ends), firm: station === 0 };
    });
}

/** The guide lines, interrupted where words lie across them. Drawn when all words are placed. */
export function guideMarks(field: Field): Mark[] {
  return field.guides.flatMap((guide) => openParts(field, guide).map((part) => strokeOf('guide', part)));
}

/** Each quarter line's station beside it at the base edge; which could not be placed comes back by name. */
export function stationLabels(body: Body): { marks: Mark[]; left: string[] } {
  const marks: Mark[] = [];
  const left: string[] = [];
  for (const station of quarters(body.flat.turn)) {
    const text = station === 0 ? 'spine 0°' : writeAngle(station);
    const block = { lines: [text], size: station === 0 ? TEXT : SMALL };
    const found = place(body.field, besideAtBase(body, across(body.flat, station), block));
    if (found) marks.push(...found);
    else left.push(text);
  }
  return { marks, left };
}

function* besideAtBase(body: Body, x: Mm, block: Block): Iterable<Candidate> {
  const { width, height: high } = extentOf(block);
  const edge = baseHeight(body);
  const inward = -body.flat.bodyWay;
  for (const turn of [0, 1] as const) {
    const [w, h] = turn === 0 ? [width, high] : [high, width];
    for (let down = 0.9; down < 24; down += 1.5) {
      const bottom = inward === -1 ? edge - down - h : edge + down;
      yield wordsAt(block, x + BESIDE, bottom, turn);
      yield wordsAt(block, x - BESIDE - w, bottom, turn);
    }
  }
}

const BESIDE: Mm = 0.8;

/** The names of the places at the cut, on the body's side of it; which found no room come back. */
export function placeLabels(
  body: Body,
  places: readonly NamedPlace[],
): { marks: Mark[]; left: NamedPlace[] } {
  const marks: Mark[] = [];
  const left: NamedPlace[] = [];
  for (const named of places) {
    const x = across(body.flat, named.station);
    const onGuide = quarters(body.flat.turn).some(
      (quarter) => gap(quarter, named.station, body.flat.turn) * body.flat.scale < SAME,
    );
    const text = onGuide ? named.names.join(', ') : `${named.names.join(', ')} ${roundAngle(named.station)}`;
    const found = place(
      body.field,
      besideAtCut(body, named.station, x, { lines: [text], size: SMALL }, onGuide),
    );
    if (found) marks.push(...found);
    else left.push(named);
  }
  return { marks, left };
}

/** A station to a tenth of a degree: closer than anyone marks it. */
export function roundAngle(station: number): string {
  return writeAngle((Math.round((station * 1800) / Math.PI) * Math.PI) / 1800);
}

function* besideAtCut(
  body: Body,
  station: number,
  x: Mm,
  block: Block,
  onGuide: boolean,
): Iterable<Candidate> {
  const { flat, cope } = body;
  const { width, height: high } = extentOf(block);
  const cut = height(flat, cope.cut(station).setback);
  for (const turn of [0, 1] as const) {
    const [w, h] = turn === 0 ? [width, high] : [high, width];
    for (let lift = 1.2; lift < 26; lift += 1.2) {
      const bottom = flat.bodyWay === 1 ? cut + lift : cut - lift - h;
      const end = flat.bodyWay === 1 ? bottom + h : bottom;
      for (const left of [x + BESIDE, x - BESIDE - w]) {
        const words = wordsAt(block, left, bottom, turn);
        if (onGuide) {
          yield words;
          continue;
        }
        const leader: [ReturnType<typeof point>, ReturnType<typeof point>] = [point(x, cut), point(x, end)];
        yield {
          box: words.box,
          leader: { from: leader[0], to: leader[1] },
          draw: () => [strokeOf('guide', leader), ...words.draw()],
        };
      }
    }
  }
}
