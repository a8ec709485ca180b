import type { Point } from '../../draw/drawing.ts';
import type { Header, Part } from '../../job/job.ts';
import type { HeaderShape } from '../../job/kind.ts';
import { headerFactsOf } from '../../job/kinds.ts';
import type { Mm } from '../../measure/units.ts';
import type { OffAxis } from '../../space/outline.ts';
import { exactCosine } from '../../space/round.ts';
import { dot } from '../../space/vector.ts';
import { bendLines } from './bend-picture.ts';
import { breakLine, crossAt, lineOf, type Outlines, type PictureLine } from './picture.ts';
import type { Axes, Extent, View } from './view.ts';

export function headerExtent({ onto, angle }: Part, reach: Mm): Extent {
  const half = headerFactsOf(onto).towards;
  const size = sizeFor(onto, reach);
  const [sin, cos] = [Math.sin(angle.rad), exactCosine(angle.rad)];
  return {
    fore: Math.max((reach + half * cos) / sin, size) + 0.7 * size,
    aft: Math.max((reach - half * cos) / sin, size) + 0.7 * size,
  };
}

function sizeFor(onto: Header, reach: Mm): Mm {
  const half = headerFactsOf(onto).towards;
  return half === 0 ? 0.8 * reach : half;
}

/** The outline of one header as it shows in a view. */
export function headerLines(part: Part, axes: Axes, view: View, reach: Mm): Outlines {
  const { onto } = part;
  const extent = headerExtent(part, reach);
  const shape = headerFactsOf(onto).shape();
  switch (shape.kind) {
    case 'plane':
      return plateLines(axes, view, extent, shape.filled, sizeFor(onto, reach));
    case 'bar':
      return barLines(shape, axes, view, extent);
    case 'bent':
      return bendLines(shape.bend, axes, view, extent);
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
  const strokes = Array.from({ length: count }, (_, i): PictureLine => {
    const way = from + (i + 1.5) * step;
    return [at(way, 0), at(way - step, -step)];
  });
  return { lines: [[at(from, 0), at(until, 0)], ...strokes], axes: [] };
}

type Bar = HeaderShape & { readonly kind: 'bar' };

/** A straight header: its outline's outermost points drawn out along its axis; seen end on, the outline itself. */
function barLines({ ring, edges }: Bar, axes: Axes, view: View, { fore, aft }: Extent): Outlines {
  const to = (q: Mm, [off, side]: OffAxis): Point => view.project(axes.at(q, off, side));
  const half = Math.max(...ring.map(([off, side]) => Math.hypot(off, side)));
  const [from, until] = [to(-aft, [0, 0]), to(fore, [0, 0])];
  const long = Math.hypot(until.x - from.x, until.y - from.y);
  if (long < 0.2 * (fore + aft))
    return { lines: [lineOf(ring.map((r) => to(0, r)))], axes: crossAt(to(0, [0, 0]), 1.25 * half) };
  const across = (r: OffAxis): Mm => {
    const at = to(-aft, r);
    return ((at.y - from.y) * (until.x - from.x) - (at.x - from.x) * (until.y - from.y)) / long;
  };
  const byReach = ring.toSorted((a, b) => across(a) - across(b));
  const centre: OffAxis = [0, 0];
  const low = byReach[0] ?? centre;
  const high = byReach.at(-1) ?? centre;
  const inner = edges.filter((r) => isBetween(across(r), across(low), across(high)) && faces(axes, view, r));
  const lines = [low, high, ...inner].map((r): PictureLine => [to(-aft, r), to(fore, r)]);
  const ends = [-aft, fore].map((q) => breakLine(to(q, low), to(q, high)));
  const shape = [to(-aft, low), to(fore, low), to(fore, high), to(-aft, high)];
  return { lines: [...lines, ...ends], axes: [{ from, to: until }], shape };
}

function isBetween(value: Mm, low: Mm, high: Mm): boolean {
  const rim = 0.04 * (high - low);
  return value > low + rim && value < high - rim;
}

function faces(axes: Axes, { toViewer }: View, [off, side]: OffAxis): boolean {
  return off * dot(axes.toBody, toViewer) + side * dot(axes.beside, toViewer) > 0;
}
