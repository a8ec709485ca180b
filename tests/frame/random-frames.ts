import fc from 'fast-check';
import type { Place } from './ray-march.ts';
import { crossOf, dotOf, minus, unitAlong } from './ray-march.ts';

/** One tube of a random frame, in mm, as a file would give it. */
export interface DrawnTube {
  readonly name: string;
  readonly from: Place;
  readonly to: Place;
  readonly od?: number;
  readonly box?: { readonly wide: number; readonly deep: number; readonly corner: number };
  readonly wall: number;
  /** The tubes that its end A is told to land on; without, that is found. */
  readonly onto?: readonly string[];
}

export interface DrawnFrame {
  readonly points: Readonly<Record<string, Place>>;
  readonly tubes: readonly DrawnTube[];
  readonly text: string;
}

const SIZES = [26.9, 31.75, 33.7, 38.1, 42.4, 48.3, 60.3];

const knots: fc.Arbitrary<readonly Knot[]> = fc
  .record({
    knots: fc.array(
      fc.record({
        ways: fc.array(
          fc.tuple(
            fc.integer({ min: -9999, max: 9999 }).map((n) => n / 1e4),
            fc.integer({ min: 0, max: 62831 }).map((n) => n / 1e4),
          ),
          { minLength: 9, maxLength: 9 },
        ),
        sizes: fc.array(fc.nat(SIZES.length), { minLength: 9, maxLength: 9 }),
        through: fc.boolean(),
        same: fc.boolean(),
      }),
      { minLength: 2, maxLength: 4, size: 'max' },
    ),
  })
  .map((drawn) => drawn.knots);

/** Tubes that come to a few points from all sides, none nearer than 35 degrees to another, some running through. */
export const drawnFrames: fc.Arbitrary<DrawnFrame> = knots.map((all) => frameOf(all, { most: 4 }));

/** The same with up to five at a point: the last of five is told to land on all others, and these, but the first, on that alone. */
export const fannedFrames: fc.Arbitrary<DrawnFrame> = knots.map((all) =>
  frameOf(all, { most: 5, onto: fannedOnto }),
);

function fannedOnto(i: number): readonly number[] | undefined {
  if (i === 0) return undefined;
  return i === 4 ? [0, 1, 2, 3] : [0];
}

type Knot = {
  readonly ways: readonly (readonly [number, number])[];
  readonly sizes: readonly number[];
  readonly through: boolean;
  readonly same: boolean;
};

interface Node {
  /** So many tubes at most. */
  readonly most: number;
  /** Which of the others the tube at this place of the node is told to land on. */
  readonly onto?: (i: number) => readonly number[] | undefined;
}

function frameOf(knots: readonly Knot[], { most, onto }: Node): DrawnFrame {
  const points: Record<string, Place> = {};
  const tubes: DrawnTube[] = [];
  knots.forEach((knot, k) => {
    const at: Place = [3000 * k, 411, 97];
    points[`p${k}`] = at;
    const ways: Place[] = [];
    for (const [height, turn] of knot.ways) {
      const flat = Math.sqrt(1 - height * height);
      const way: Place = [flat * Math.cos(turn), flat * Math.sin(turn), height];
      if (ways.length < most && ways.every((each) => Math.abs(dotOf(each, way)) < Math.cos(0.61)))
        ways.push(way);
    }
    ways.forEach((way, i) => {
      const size = SIZES[(knot.same ? knot.sizes[0] : knot.sizes[i]) ?? 0];
      const end: Place = [at[0] + 700 * way[0], at[1] + 700 * way[1], at[2] + 700 * way[2]];
      points[`p${k}-${i}`] = end;
      const through = knot.through && i === 0;
      const from: Place = through ? [at[0] - 600 * way[0], at[1] - 600 * way[1], at[2] - 600 * way[2]] : at;
      if (through) points[`p${k}-back`] = from;
      const shape = size === undefined ? { box: { wide: 50, deep: 30, corner: 5 } } : { od: size };
      const headers = onto?.(i)?.map((header) => `t${k}-${header}`);
      tubes.push({
        name: `t${k}-${i}`,
        from,
        to: end,
        ...shape,
        wall: 2.6,
        ...(headers && { onto: headers }),
      });
    });
  });
  return { points, tubes, text: textOf(points, tubes) };
}

export function textOf(points: DrawnFrame['points'], tubes: readonly DrawnTube[]): string {
  const names = new Map(Object.entries(points).map(([name, place]) => [place.join(), name]));
  const lines = tubes.map(({ name, from, to, od, box, wall, onto }) => {
    const size =
      od === undefined
        ? `section: { wide: ${box?.wide}, deep: ${box?.deep}, corner: ${box?.corner} }`
        : `od: ${od}`;
    const ends = onto ? `, ends: { A: { onto: [${onto.join(', ')}] } }` : '';
    return `    - { name: ${name}, along: [${names.get(from.join())}, ${names.get(to.join())}], ${size}, wall: ${wall}${ends} }`;
  });
  const places = Object.entries(points).map(
    ([name, place]) => `    ${name}: [${place.map((mm) => mm.toFixed(12)).join(', ')}]`,
  );
  return ['copeleaf: 1', 'units: mm', 'frame:', '  points:', ...places, '  tubes:', ...lines, ''].join('\n');
}

/** The way that a spine faces: up made square to the axis, or of a tube that stands plumb back. */
export function spineBy(from: Place, to: Place): Place {
  const axis = unitAlong(minus(to, from));
  const way: Place = Math.abs(axis[2]) > Math.cos((0.5 * Math.PI) / 180) ? [0, 1, 0] : [0, 0, 1];
  return unitAlong(crossOf(crossOf(axis, way), axis));
}
