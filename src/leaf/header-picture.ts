import type { BoxHeader, Header, Part, RoundHeader } from '../job/job.ts';
import { halfTowards } from '../job/shape.ts';
import type { Mm } from '../measure/units.ts';
import { exactCosine } from '../space/round.ts';
import { dot } from '../space/vector.ts';
import { bendLines } from './bend-picture.ts';
import type { Point } from './drawing.ts';
import { breakLine, crossAt, type Line, lineOf, type Outlines } from './picture.ts';
import type { Axes, Extent, View } from './view.ts';

export function extentOf({ onto, angle }: Part, reach: Mm): Extent {
  const half = halfTowards(onto);
  const size = sizeFor(onto, reach);
  const [sin, cos] = [Math.sin(angle.rad), exactCosine(angle.rad)];
  return {
    fore: Math.max((reach + half * cos) / sin, size) + 0.7 * size,
    aft: Math.max((reach - half * cos) / sin, size) + 0.7 * size,
  };
}

function sizeFor(onto: Header, reach: Mm): Mm {
  const half = halfTowards(onto);
  return half === 0 ? 0.8 * reach : half;
}

/** The outline of one header as it shows in a view. */
export function headerLines(part: Part, axes: Axes, view: View, reach: Mm): Outlines {
  const { onto } = part;
  const extent = extentOf(part, reach);
  switch (onto.kind) {
    case 'plate':
    case 'mitre':
      return plateLines(axes, view, extent, onto.kind === 'plate', sizeFor(onto, reach));
    case 'round':
    case 'box':
      return prismLines(onto, axes, view, extent);
    case 'bend':
      return bendLines(onto, axes, view, extent);
  }
}

/** Seen edge on a plate is a line, hatched on its far side; else the piece of it round the joint. */
function plateLines(axes: Axes, view: View, { fore, aft }: Extent, hatched: boolean, size: Mm): Outlines {
  const to = (q: Mm, off: Mm, side: Mm): Point => view.project(axes.at(q, off, side));
  if (Math.abs(dot(axes.toBody, view.toViewer)) > 0.1) {
    const [a, b] = [-1.5 * size, 1.5 * size];
    return {
      lines: [[to(-aft, 0, a), to(fore, 0, a), to(fore, 0, b), to(-aft, 0, b), to(-aft, 0, a)]],
      axes: [],
    };
  }
  const edgeOn = Math.abs(dot(axes.along, view.toViewer)) > 0.9;
  const [from, until] = edgeOn ? [-1.7 * size, 1.7 * size] : [-aft, fore];
  const at = (way: Mm, off: Mm): Point => (edgeOn ? to(0, off, way) : to(way, off, 0));
  const step = 0.16 * size;
  const count = hatched ? Math.floor((until - from) / step - 1) : 0;
  const strokes = Array.from({ length: count }, (_, i): Line => {
    const way = from + (i + 1.5) * step;
    return [at(way, 0), at(way - step, -step)];
  });
  return { lines: [[at(from, 0), at(until, 0)], ...strokes], axes: [] };
}

/** A straight header: its outline's outermost points drawn out along its axis; seen end on, the outline itself. */
function prismLines(onto: RoundHeader | BoxHeader, axes: Axes, view: View, { fore, aft }: Extent): Outlines {
  const ring = ringOf(onto);
  const to = (q: Mm, [off, side]: OffAxis): Point => view.project(axes.at(q, off, side));
  const half = Math.max(...ring.map(([off, side]) => Math.hypot(off, side)));
  const [from, until] = [to(-aft, [0, 0]), to(fore, [0, 0])];
  const long = Math.hypot(until.x - from.x, until.y - from.y);
  if (long < 0.2 * (fore + aft))
    return { lines: [lineOf(ring.map((r) => to(0, r)))], axes: crossAt(to(0, [0, 0]), 0.3 * half) };
  const across = (r: OffAxis): Mm => {
    const at = to(-aft, r);
    return ((at.y - from.y) * (until.x - from.x) - (at.x - from.x) * (until.y - from.y)) / long;
  };
  const byReach = ring.toSorted((a, b) => across(a) - across(b));
  const centre: OffAxis = [0, 0];
  const low = byReach[0] ?? centre;
  const high = byReach.at(-1) ?? centre;
  const inner =
    onto.kind === 'box'
      ? cornersOf(onto).filter((r) => isBetween(across(r), across(low), across(high)) && faces(axes, view, r))
      : [];
  const lines = [low, high, ...inner].map((r): Line => [to(-aft, r), to(fore, r)]);
  const ends = [-aft, fore].map((q) => breakLine(to(q, low), to(q, high)));
  return { lines: [...lines, ...ends], axes: [{ from, to: until }] };
}

function isBetween(value: Mm, low: Mm, high: Mm): boolean {
  const rim = 0.04 * (high - low);
  return value > low + rim && value < high - rim;
}

function faces(axes: Axes, { toViewer }: View, [off, side]: OffAxis): boolean {
  return off * dot(axes.toBody, toViewer) + side * dot(axes.beside, toViewer) > 0;
}

/** A point of a header's cross-section: off its axis towards the body, and beside it. */
export type OffAxis = readonly [off: Mm, beside: Mm];

function ringOf(onto: RoundHeader | BoxHeader): readonly OffAxis[] {
  if (onto.kind === 'round') return arcOf([0, 0], onto.od.mm / 2, 0, 2 * Math.PI, 48);
  const { corner, roll } = onto;
  const ring = coresOf(onto).flatMap((core, i) => {
    const from = roll.rad + (i * Math.PI) / 2;
    return arcOf(core, corner.mm, from, from + Math.PI / 2, 6);
  });
  return [...ring, ...ring.slice(0, 1)];
}

/** Where each corner of a box begins and ends, on its outside. */
export function cornerArcs(onto: BoxHeader): readonly (readonly [OffAxis, OffAxis])[] {
  return coresOf(onto).map((core, i) => {
    const from = onto.roll.rad + (i * Math.PI) / 2;
    const at = (turn: number): OffAxis => [
      core[0] + onto.corner.mm * Math.cos(turn),
      core[1] + onto.corner.mm * Math.sin(turn),
    ];
    return [at(from), at(from + Math.PI / 2)];
  });
}

/** The middles of a box's corners, on its outside. */
function cornersOf(onto: BoxHeader): readonly OffAxis[] {
  return coresOf(onto).flatMap((core, i) => {
    const middle = onto.roll.rad + ((i + 0.5) * Math.PI) / 2;
    return arcOf(core, onto.corner.mm, middle, middle, 0);
  });
}

/** Where a box's corners have their centres, beginning between its body's side and its w side. */
function coresOf({ wide, deep, corner, roll }: BoxHeader): readonly OffAxis[] {
  const [out, side] = [deep.mm / 2 - corner.mm, wide.mm / 2 - corner.mm];
  const [sin, cos] = [Math.sin(roll.rad), exactCosine(roll.rad)];
  const cores: readonly OffAxis[] = [
    [out, side],
    [-out, side],
    [-out, -side],
    [out, -side],
  ];
  return cores.map(([a, b]) => [a * cos - b * sin, a * sin + b * cos]);
}

function arcOf([off, side]: OffAxis, radius: Mm, from: number, to: number, steps: number): OffAxis[] {
  return Array.from({ length: steps + 1 }, (_, i) => {
    const t = steps === 0 ? from : from + ((to - from) * i) / steps;
    return [off + radius * Math.cos(t), side + radius * Math.sin(t)];
  });
}
