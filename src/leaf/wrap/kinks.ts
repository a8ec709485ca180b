import type { Mark, Point } from '../../draw/drawing.ts';
import { distance, point, type Segment } from '../../draw/path.ts';
import { drawTicks } from '../../draw/placer.ts';
import type { Mm } from '../../measure/units.ts';
import type { Curve } from '../../saddle/curve.ts';
import { bezier } from '../../saddle/fit-piece.ts';
import type { Line } from '../../saddle/line.ts';
import { faceOf } from '../../saddle/lines.ts';
import type { Body } from './body.ts';
import { type Flat, placesOn } from './flat.ts';

/** A place of the cut that is filed with care: there it goes over to another face of a header, leaves it, or turns. */
export interface Kink {
  readonly at: Point;
  /** Which way the cut runs there, between before and after. */
  readonly along: Point;
}

/** The kinks of a line from seam to seam, on the flat; one that lies on the seam itself is left out. */
export function kinksOf(flat: Flat, line: Line, curve: Curve): Kink[] {
  const pieces = curve.map(({ stations, setbacks }) => {
    const [from, c1, c2, to] = placesOn(flat, stations, setbacks);
    const face = faceOf(line(bezier(stations, 0.5)));
    const start = heading(from, distance(from, c1) > NO_WAY ? c1 : to);
    const end = heading(distance(c2, to) > NO_WAY ? c2 : from, to);
    return { face, from, start, end };
  });
  return pieces.flatMap((next, i) => {
    const before = pieces[i - 1];
    if (!before || (before.face === next.face && !turns(before.end, next.start))) return [];
    const along = point(before.end.x + next.start.x, before.end.y + next.start.y);
    return [{ at: next.from, along }];
  });
}

/** A handle of a piece shorter than this, mm, has no direction. */
const NO_WAY: Mm = 1e-9;

function heading(from: Point, to: Point): Point {
  const size = Math.max(distance(from, to), NO_WAY);
  return point((to.x - from.x) / size, (to.y - from.y) / size);
}

/** Whether a line turns by more than an eye takes for a smooth one. */
function turns(before: Point, after: Point): boolean {
  return before.x * after.x + before.y * after.y < Math.cos(SMOOTH);
}

const SMOOTH = (3 * Math.PI) / 180;

/**
 * A short tick from the cut into the body at each kink, where the leaf keeps it when its waste is cut off; left out where one
 * of the `marked` places across the leaf, a guide or the seam is too near to be told from it.
 */
export function kinkTicks({ flat, field }: Body, kinks: readonly Kink[], marked: readonly Mm[]): Mark[] {
  const taken = [0, flat.width, ...field.guides.map(({ x }) => x), ...marked];
  const ticks: Segment[] = [];
  for (const kink of kinks) {
    if (taken.some((x) => Math.abs(x - kink.at.x) < TOLD_APART)) continue;
    taken.push(kink.at.x);
    ticks.push(tickAt(flat, kink));
  }
  return drawTicks(field, ticks, true);
}

/** Marks nearer to one another than this are taken for one. */
const TOLD_APART: Mm = 1;

const TICK: Mm = 1.8;

function tickAt({ bodyWay, width }: Flat, { at, along }: Kink): Segment {
  const size = (bodyWay * TICK) / Math.max(Math.hypot(along.x, along.y), NO_WAY);
  const x = Math.min(Math.max(at.x - size * along.y, 0), width);
  return { from: at, to: point(x, at.y + size * along.x) };
}
