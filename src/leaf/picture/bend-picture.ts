import type { Point } from '../../draw/drawing.ts';
import { point } from '../../draw/path.ts';
import type { BendHeader } from '../../job/job.ts';
import type { Mm } from '../../measure/units.ts';
import { dot } from '../../space/vector.ts';
import { breakLine, crossAt, lineOf, type Outlines, type PictureLine } from './picture.ts';
import type { Axes, Extent, View } from './view.ts';

const STEPS = 32;

/** A bent tube. Its outline is always half its diameter from its centre line as that shows, for it is a row of balls. */
export function bendLines(onto: BendHeader, axes: Axes, view: View, extent: Extent): Outlines {
  const half = onto.od.mm / 2;
  if (Math.abs(dot(axes.along, view.toViewer)) > 0.9) return endOn(onto, axes, view, half);
  const middle = centreLine(onto, axes, view, extent);
  const side = (by: Mm): PictureLine => lineOf(middle.map((at, i) => besides(middle, at, i, by)));
  const [left, right] = [side(half), side(-half)];
  const ends = [0, STEPS].map((i) => breakLine(left[i] ?? left[0], right[i] ?? right[0]));
  const axis = middle.slice(1).map((to, i) => ({ from: middle[i] ?? to, to }));
  return {
    lines: [
      left,
      right,
      ...ends,
      ...axis.filter((_, i) => i % 4 < 2).map(({ from, to }): PictureLine => [from, to]),
    ],
    axes: [],
  };
}

/** The arc of the centre line, no further than a quarter each way. */
function centreLine({ radius, centre }: BendHeader, axes: Axes, view: View, { fore, aft }: Extent): Point[] {
  const turnOf = (way: Mm): number => Math.asin(Math.min(0.98, way / radius.mm));
  const [from, to] = [-turnOf(aft), turnOf(fore)];
  return Array.from({ length: STEPS + 1 }, (_, i) => {
    const turn = from + ((to - from) * i) / STEPS;
    const towards = radius.mm * (1 - Math.cos(turn));
    const along = radius.mm * Math.sin(turn);
    return view.project(axes.at(along, towards * Math.cos(centre.rad), towards * Math.sin(centre.rad)));
  });
}

function besides(line: readonly Point[], at: Point, i: number, by: Mm): Point {
  const before = line[i - 1] ?? at;
  const after = line[i + 1] ?? at;
  const [dx, dy] = [after.x - before.x, after.y - before.y];
  const size = Math.hypot(dx, dy) || 1;
  return point(at.x - (by * dy) / size, at.y + (by * dx) / size);
}

/** Seen along its tangent: the section at the work point, and the arcs that go off to the bend's centre. */
function endOn({ centre, radius }: BendHeader, axes: Axes, view: View, half: Mm): Outlines {
  const at = (out: Mm, across: Mm): Point => {
    const [sin, cos] = [Math.sin(centre.rad), Math.cos(centre.rad)];
    return view.project(axes.at(0, out * cos - across * sin, out * sin + across * cos));
  };
  const ring = Array.from({ length: 49 }, (_, i) => {
    const t = (i * Math.PI) / 24;
    return at(half * Math.cos(t), half * Math.sin(t));
  });
  const away = Math.min(2.2 * half, half + radius.mm);
  const sides = [half, -half].map((across): PictureLine => [at(0, across), at(away, across)]);
  return {
    lines: [lineOf(ring), ...sides, breakLine(at(away, half), at(away, -half))],
    axes: crossAt(at(0, 0), 0.3 * half),
  };
}
