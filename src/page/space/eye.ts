import type { MeshPlace } from '../../space/mesh.ts';
import { crossProduct, dot, plusTimes, unitOf, type Vector, wayTo } from '../../space/vector.ts';
import type { Model } from './model.ts';

/** From where a scene is seen, and how far round. Its matrices are sixteen numbers each, column by column. */
export interface Eye {
  /** Goes round the tube and up, in radians, never over its end. */
  readonly turn: (round: number, up: number) => void;
  readonly nearer: (factor: number) => void;
  /** Moves what is seen, in heights of the picture. */
  readonly shift: (right: number, down: number) => void;
  readonly lookFrom: (
    way: MeshPlace,
    model: Pick<Model, 'middle' | 'reach'>,
    at: 'whole' | 'A' | 'B',
  ) => void;
  /** From the tube's frame to the eye's own: x to the right, y up, z backwards. */
  readonly view: () => readonly number[];
  /** From the eye's own frame to the picture, which is so many times as wide as high. */
  readonly lens: (aspect: number) => readonly number[];
  /** Where a place comes to lie from the middle of the picture, in halves of its height. */
  readonly seenAt: (place: Vector) => readonly [right: number, up: number];
}

/** Half of the height that is seen at a distance of one: 28 degrees are seen in all. */
const HALF_SEEN = Math.tan((14 * Math.PI) / 180);

/** What is nearer or farther is not seen, in mm. */
const [NEAR, FAR] = [1, 1e5];

/** Straight from above no side of the picture is up. */
const LEAST = 1e-6;

/** Makes an eye; `onMove` follows each of its moves. */
export function eyeOf(onMove: () => void): Eye {
  let target: Vector = [0, 0, 0];
  let [round, fromTop, far] = [0, Math.PI / 2, 1];
  const stand = (): Stand => standOf(target, round, fromTop, far);
  return {
    turn(by, up) {
      round += by;
      fromTop = Math.min(Math.max(fromTop - up, LEAST), Math.PI - LEAST);
      onMove();
    },
    nearer(factor) {
      far /= factor;
      onMove();
    },
    shift(toRight, toBottom) {
      const height = 2 * far * HALF_SEEN;
      const { right, up } = stand();
      target = plusTimes(plusTimes(target, -toRight * height, right), toBottom * height, up);
      onMove();
    },
    lookFrom(way, { middle, reach }, at) {
      const off = at === 'whole' ? 0 : (at === 'B' ? 1 : -1) * reach * 0.75;
      const [x, y, z] = unitOf(way) ?? way;
      target = plusTimes(middle, off, [0, 0, 1]);
      [round, fromTop, far] = [Math.atan2(x, -y), Math.acos(z), (at === 'whole' ? 5.2 : 2.2) * reach];
      onMove();
    },
    view: () => viewFrom(stand()),
    lens: (aspect) => [
      ...[1 / (HALF_SEEN * aspect), 0, 0, 0],
      ...[0, 1 / HALF_SEEN, 0, 0],
      ...[0, 0, (FAR + NEAR) / (NEAR - FAR), -1],
      ...[0, 0, (2 * FAR * NEAR) / (NEAR - FAR), 0],
    ],
    seenAt(place) {
      const { right, up, back, at } = stand();
      const off = wayTo(at, place);
      const half = -dot(off, back) * HALF_SEEN;
      return [dot(off, right) / half, dot(off, up) / half];
    },
  };
}

/** Where an eye is, and its axes in the tube's frame. */
interface Stand {
  readonly right: Vector;
  readonly up: Vector;
  readonly back: Vector;
  readonly at: Vector;
}

function standOf(target: Vector, round: number, fromTop: number, far: number): Stand {
  const right: Vector = [Math.cos(round), Math.sin(round), 0];
  const out = Math.sin(fromTop);
  const back: Vector = [out * Math.sin(round), -out * Math.cos(round), Math.cos(fromTop)];
  return { right, up: crossProduct(back, right), back, at: plusTimes(target, far, back) };
}

function viewFrom({ right, up, back, at }: Stand): readonly number[] {
  const axes = [right, up, back];
  const columns = ([0, 1, 2] as const).map((i) => [...axes.map((axis) => axis[i]), 0]);
  return [...columns, [...axes.map((axis) => -dot(axis, at)), 1]].flat();
}
