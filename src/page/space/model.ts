import type { EndName } from '../../job/job.ts';
import type { Said } from '../../measure/said.ts';
import type { Mm } from '../../measure/units.ts';
import type { Cope, EndSolution } from '../../saddle/cope.ts';
import type { TubeSolution } from '../../saddle/solve.ts';
import { endFaces } from '../../saddle/tube-surface.ts';
import { type Mesh, type MeshPlace, meshStrip, tubeOf } from '../../space/mesh.ts';
import type { Language } from '../../words/language.ts';
import { asWritten } from '../../words/said.ts';
import { landingsOf } from './landings.ts';

/** What is shown in space, in the tube's frame: the origin at end A's work point, z towards B. Lengths in mm. */
export interface Model {
  readonly tube: readonly Mesh[];
  readonly waste: readonly Mesh[];
  readonly headers: readonly Mesh[];
  readonly cuts: readonly (readonly MeshPlace[])[];
  /** A narrow band along it. */
  readonly spine: Mesh;
  readonly words: readonly { readonly text: Said; readonly at: MeshPlace }[];
  /** How far it reaches from its middle, and where that is. */
  readonly middle: MeshPlace;
  readonly reach: Mm;
  /** The tube is shown shorter than it is, so that its ends are seen. */
  readonly short: boolean;
}

const STEPS = 144;
/** How much of a tube is shown between its throats, in reaches. */
const LONGEST = 12;
/** Half of the spine's breadth, as a part of the way round. */
const BAND = 0.006;

/** Makes the model of one tube. */
export function modelOf(solution: TubeSolution, words: Language): Model {
  const { ends, lengths, section } = solution;
  const { reach } = section;
  const depth = (end: EndSolution | undefined): Mm =>
    end?.kind === 'coped' ? Math.max(end.throat.setback, 0) : 0;
  const most = depth(ends.A) + depth(ends.B) + LONGEST * reach;
  const short = lengths === undefined || lengths.between > most;
  const between = Math.min(lengths?.between ?? most, most);
  const frame = (name: EndName): Frame => ({
    name,
    z: (setback) => (name === 'A' ? setback : between - setback),
  });
  const shape = shapeOf(solution, between);
  const coped = (['A', 'B'] as const).flatMap((name) => {
    const end = ends[name];
    return end?.kind === 'coped' ? [{ name, cope: end, frame: frame(name) }] : [];
  });
  const headers = coped.flatMap(({ cope, frame: at }) => landingsOf(cope, at.z));
  const low = ends.A?.kind === 'coped' ? -2 * reach : 0;
  const high = ends.B?.kind === 'coped' ? between + 2 * reach : between;
  return {
    tube: shape.tube,
    waste: coped.map(({ cope, frame: at }) => wasteOf(cope, at)),
    headers,
    cuts: coped.map(({ cope, frame: at }) =>
      stationsOf(cope.joint.section.turn).map((s) => onOutside(cope, s, at.z(cope.cut(s).setback))),
    ),
    spine: shape.spine,
    words: [
      ...coped.flatMap(({ name, cope, frame: at }) => wordsOf(name, cope, at, words)),
      { text: words.page.views.space.spine, at: shape.middle },
    ],
    middle: [0, 0, (low + high) / 2],
    reach: Math.max((high - low) / 2, 3 * reach),
    short,
  };
}

interface Frame {
  readonly name: EndName;
  /** From a setback of this end to z of the tube. */
  readonly z: (setback: Mm) => Mm;
}

function stationsOf(turn: number): readonly number[] {
  return Array.from({ length: STEPS + 1 }, (_, i) => (i * turn) / STEPS);
}

/** The wall between both cuts, its two faces among it, and the spine. */
function shapeOf(solution: TubeSolution, between: Mm): { tube: Mesh[]; spine: Mesh; middle: MeshPlace } {
  const { section, tube } = solution;
  const { A, B } = endFaces(solution, between, stationsOf(section.turn));
  const outside = meshStrip(A[0], B[0]);
  const [low, high] = [A[0][0]?.[2] ?? 0, B[0][0]?.[2] ?? between];
  const lifted = (station: number, z: Mm, lift: number): MeshPlace => {
    const { x, y, nx, ny } = section.at(station);
    return [x + lift * section.reach * nx, y + lift * section.reach * ny, z];
  };
  const along = (station: number): MeshPlace[] => [low, high].map((z) => lifted(station, z, 0.012));
  const spine = meshStrip(along((1 - BAND) * section.turn), along(BAND * section.turn));
  const middle = lifted(0, (low + high) / 2, 0.15);
  if (tube.wall === undefined) return { tube: [outside], spine, middle };
  const [deepA, deepB] = [A.at(-1) ?? A[0], B.at(-1) ?? B[0]];
  return { tube: [outside, meshStrip(deepA, deepB), tubeOf(A), tubeOf(B)], spine, middle };
}

/** What is cut off: the outside from the cut to where the tube reaches furthest, and a little more. */
function wasteOf(cope: Cope, { z }: Frame): Mesh {
  const stations = stationsOf(cope.joint.section.turn);
  const end = cope.longPoint.setback - 0.25 * cope.joint.section.reach;
  return meshStrip(
    stations.map((s) => onOutside(cope, s, z(cope.cut(s).setback))),
    stations.map((s) => onOutside(cope, s, z(end))),
  );
}

function onOutside({ joint }: Cope, station: number, z: Mm, away = 1): MeshPlace {
  const { x, y } = joint.section.at(station);
  return [x * away, y * away, z];
}

function wordsOf(
  name: EndName,
  cope: Cope,
  { z }: Frame,
  { page }: Language,
): { text: Said; at: MeshPlace }[] {
  const { waste, heel: atHeel } = page.views.space;
  const { section } = cope.joint;
  const opposite = section.towards(cope.end.parts[0].clock.rad + Math.PI);
  const heel = cope.heel === undefined ? undefined : section.towards(cope.heel);
  return [
    { text: asWritten(name), at: [0, 0, z(Math.min(cope.longPoint.setback, 0) - 1.2 * section.reach)] },
    { text: waste, at: onOutside(cope, opposite, z(cope.longPoint.setback - 0.2 * section.reach), 1.1) },
    ...(heel === undefined
      ? []
      : [{ text: atHeel, at: onOutside(cope, heel, z(cope.cut(heel).setback), 1.1) }]),
  ];
}
