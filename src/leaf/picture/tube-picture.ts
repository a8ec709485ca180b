import type { Point } from '../../draw/drawing.ts';
import type { Mm, Radians } from '../../measure/units.ts';
import type { Cope } from '../../saddle/cope.ts';
import { dot, type Vector } from '../../space/vector.ts';
import { breakLine, lineOf, type PictureLine } from './picture.ts';
import { turner, type View } from './view.ts';

/** What shows of the coped tube in a view. */
export interface TubeLines {
  /** The near half of the cut, from one side of the tube to the other. */
  readonly saddle: PictureLine;
  /** Its two sides, its near edges where it has corners, and where it is broken off. */
  readonly body: readonly PictureLine[];
  /** All that it hides. */
  readonly shape: readonly Point[];
}

/** Whether a point's place between two others, left and right, is off both by more than a hair's share. */
function isWithin({ x }: Point, left: Point, right: Point): boolean {
  const share = (x - left.x) / (right.x - left.x);
  return share > 0.1 && share < 0.9;
}

const STEPS = 240;

/** The tube from its cut to `body` mm of setback; the frame is that of the header with this clock. */
export function tubeLines({ joint, outside }: Cope, clock: Radians, view: View, body: Mm): TubeLines {
  const { section } = joint;
  const turned = turner(-clock);
  const normal = (station: number): Vector => {
    const { nx, ny } = section.at(station);
    return turned([nx, ny, 0]);
  };
  const place = (station: number, z: Mm): Point => {
    const { x, y } = section.at(station);
    return view.project(turned([x, y, z]));
  };
  const facing = (station: number): number => dot(normal(station), view.toViewer);
  const away = section.towards(clock + Math.atan2(view.toViewer[1], view.toViewer[0]) + Math.PI);
  const near = Array.from({ length: STEPS + 1 }, (_, i) => away + (i * section.turn) / STEPS).filter(
    (station) => facing(station) > 1e-9,
  );
  const [first, last] = [near[0] ?? away, near.at(-1) ?? away];
  const cut = (station: number): Point => place(station, outside(station).setback);
  const edges = section.corners
    .map(({ from, to }) => (from + to) / 2)
    .filter((station) => facing(station) > 0.2)
    .filter((station) => isWithin(place(station, body), place(first, body), place(last, body)));
  const side = (station: number): PictureLine => [cut(station), place(station, body)];
  const [left, right] = [place(first, body), place(last, body)];
  const saddle = near.map(cut);
  return {
    saddle: lineOf(saddle),
    body: [side(first), side(last), ...edges.map(side), breakLine(left, right)],
    shape: [...saddle, right, left],
  };
}
