import type { EndName } from '../job/job.ts';
import { isSolid } from '../job/sections.ts';
import type { Mm } from '../measure/units.ts';
import { setbackAt } from '../space/landing.ts';
import { type Mesh, type MeshPlace, tubeOf } from '../space/mesh.ts';
import { placeWithin, wrapStation } from '../space/section.ts';
import { type Cope, curveOf, type EndSolution } from './cope.ts';
import { toCut } from './joint.ts';
import { wallLine } from './lines.ts';
import type { TubeSolution } from './solve.ts';

/** Points once round a tube, the first again at the end, in the tube's frame: the origin at end A's work point, z towards B. */
export type FaceRing = readonly MeshPlace[];

/** The rings of one end's cut face, from the tube's outside to the inside of its wall, or of what is filled to the axis. */
export interface EndFaces {
  readonly A: readonly [FaceRing, ...FaceRing[]];
  readonly B: readonly [FaceRing, ...FaceRing[]];
}

/** Both cut faces of a tube so long, at these stations. A bevelled face follows the header through the wall, a square one is square. */
export function endFaces(solution: TubeSolution, between: Mm, stations: readonly number[]): EndFaces {
  const ringsOf = (name: EndName): readonly [FaceRing, ...FaceRing[]] => {
    const z = (setback: Mm): Mm => (name === 'A' ? setback : between - setback);
    const [first, ...others] = layersOf(solution, solution.ends[name]);
    const ring = (layer: Layer): FaceRing =>
      stations.map((station) => {
        const { x, y, setback } = layer(station);
        return [x, y, z(setback)];
      });
    return [ring(first), ...others.map(ring)];
  };
  return { A: ringsOf('A'), B: ringsOf('B') };
}

/** The whole surface of a tube so long as a closed one, its triangles turned outwards: with its wall, or filled where it has none. */
export function tubeSurface(solution: TubeSolution, between: Mm): Mesh {
  const { A, B } = endFaces(solution, between, lookedAt(solution));
  const rings = [...[...A].reverse(), ...B];
  return tubeOf(isFilled(solution) ? rings : [...rings, ...rings.slice(0, 1)]);
}

function isFilled({ tube }: TubeSolution): boolean {
  return tube.wall === undefined || isSolid(tube);
}

/** One ring of a face, as a function from station to its place. */
type Layer = (station: number) => { readonly x: Mm; readonly y: Mm; readonly setback: Mm };

/** In how many steps a face goes through the wall, and to the axis. */
const THROUGH_WALL = 2;
const TO_AXIS = 8;

function layersOf(solution: TubeSolution, end: EndSolution | undefined): readonly [Layer, ...Layer[]] {
  const { section, tube } = solution;
  const cope = end?.kind === 'coped' ? end : undefined;
  const outside: Layer = (station) => {
    const { x, y } = section.at(station);
    return { x, y, setback: cope?.cut(station).setback ?? 0 };
  };
  if (isFilled(solution) || !tube.wall) {
    const landings = cope && toCut(cope.joint).landings;
    return [
      outside,
      ...parts(TO_AXIS).map(
        (part): Layer =>
          (station) => {
            const point = section.at(station);
            const [x, y] = [point.x * (1 - part), point.y * (1 - part)];
            return { x, y, setback: landings ? setbackAt(landings, x, y) : 0 };
          },
      ),
    ];
  }
  const wall = tube.wall.mm;
  const steps = cope?.end.preparation.edge === 'bevel' && cope.end.preparation.land ? 1 : THROUGH_WALL;
  return [
    outside,
    ...parts(steps).map(
      (part): Layer =>
        (station) => {
          const { x, y } = placeWithin(section.at(station), part * wall);
          return { x, y, setback: cope ? withinWall(cope, station, part * wall) : 0 };
        },
    ),
  ];
}

function parts(steps: number): readonly number[] {
  return Array.from({ length: steps }, (_, i) => (i + 1) / steps);
}

/** How deep the face is so far in the wall. */
function withinWall(cope: Cope, station: number, depth: Mm): Mm {
  if (cope.end.preparation.edge === 'square') return cope.cut(station).setback;
  return wallLine(toCut(cope.joint), depth)(station).setback;
}

const STEPS = 144;
/** Nearer to one another than this, round the outside, two stations are one. */
const APART: Mm = 0.01;

/** Equal stations and where the outline and the cuts bend or step, which they do from one side of a hair to the other. */
function lookedAt({ section, ends }: TubeSolution): readonly number[] {
  const { turn, girth } = section;
  const hair = (1.5 * APART * turn) / girth;
  const breaks = [ends.A, ends.B].flatMap((end) => (end?.kind === 'coped' ? breaksOf(end, hair) : []));
  const all = [
    ...Array.from({ length: STEPS }, (_, i) => (i * turn) / STEPS),
    ...section.corners.flatMap(({ from, to }) => [from, to]),
    ...breaks,
  ].map((station) => wrapStation(station, turn));
  const kept: number[] = [];
  for (const station of all.sort((a, b) => a - b)) {
    const last = kept.at(-1);
    const near = (APART * turn) / girth;
    if ((last === undefined || station - last > near) && turn - station > near) kept.push(station);
  }
  return [...kept, kept[0] ?? 0];
}

function breaksOf(cope: Cope, hair: number): readonly number[] {
  const { turn, girth } = cope.joint.section;
  const pieces = curveOf(cope, cope.cut, 0, girth / turn);
  return pieces.flatMap(({ stations: [from], setbacks: [setback] }, i) => {
    const before = pieces[i - 1]?.setbacks[3];
    const steps = before !== undefined && Math.abs(before - setback) > APART;
    return steps ? [from - hair, from + hair] : [from];
  });
}
