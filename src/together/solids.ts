import type { EndName, Job } from '../job/job.ts';
import type { Mm } from '../measure/units.ts';
import type { TubeSolution } from '../saddle/solve.ts';
import { tubeSurface } from '../saddle/tube-surface.ts';
import type { Mesh, MeshPlace } from '../space/mesh.ts';
import { placeInSpace, standingsIn } from './in-space.ts';
import { solveStanding } from './rows.ts';

/** Between tubes that lie side by side. */
const BETWEEN: Mm = 20;

/**
 * The coped tubes as closed surfaces in mm, one after the other: those of a frame where they stand, of any other job one of each
 * piece side by side along x, each with end A's work point at z = 0 and end B above it.
 */
export function* solidsOf(job: Job, pieces: readonly TubeSolution[]): Generator<Mesh> {
  if (job.frame) {
    const asked = new Set(pieces.flatMap(({ places = [] }) => places.map(({ tube }) => tube)));
    for (const { tube, seat, solution } of standingsIn(job.frame, solveStanding(job))) {
      const from = seat.ends.A.workPoint;
      if (asked.has(tube))
        yield moved(tubeSurface(solution, lengthOf(solution)), (x, y, z) =>
          placeInSpace(seat, from + z, x, y),
        );
    }
    return;
  }
  let side: Mm = 0;
  for (const solution of pieces) {
    const { reach } = solution.section;
    const middle = side + reach;
    yield moved(tubeSurface(solution, lengthOf(solution)), (x, y, z) => [middle + x, y, z]);
    side += 2 * reach + BETWEEN;
  }
}

/** How much is shown of a tube whose length is not known, in reaches. */
const STUB = 12;

function lengthOf({ lengths, ends, section }: TubeSolution): Mm {
  const depth = (name: EndName): Mm => {
    const end = ends[name];
    return end?.kind === 'coped' ? Math.max(end.throat.setback, 0) : 0;
  };
  return lengths?.between ?? depth('A') + depth('B') + STUB * section.reach;
}

function moved(surface: Mesh, to: (x: Mm, y: Mm, z: Mm) => MeshPlace): Mesh {
  const all: number[] = [];
  for (let i = 0; i < surface.length; i += 3)
    all.push(...to(surface[i] ?? 0, surface[i + 1] ?? 0, surface[i + 2] ?? 0));
  return all;
}
