import { plainNumbers } from '../job/plain-numbers.ts';
import { type Placing, solveHands, solveOpposite, solveTube, type TubeSolution } from '../saddle/solve.ts';
import { oncePerJob } from './once.ts';
import { type Laying, sameAs, stockKeysOf } from './same-piece.ts';

/** Every tube of a frame in its order, each as it stands. What has the same numbers, to 1e-9 mm and radians, is solved once. Throws `Refusal`. */
export const solveStanding = oncePerJob((job): readonly TubeSolution[] => {
  const solved = new Map<string, TubeSolution>();
  return solveHands(job, (tube) => {
    const key = plainNumbers(tube, 9);
    const same = solved.get(key);
    if (same) return { ...same, tube };
    const solution = solveTube(tube);
    solved.set(key, solution);
    return solution;
  });
});

interface Row {
  readonly first: TubeSolution;
  readonly places: Placing[];
  /** Its mirror image, once one is asked for, and the tubes that are that. */
  image?: TubeSolution;
  readonly images: Placing[];
}

/** The pieces of a job that is a frame. Throws `Refusal` as `solveStanding` does. */
export const piecesOfFrame = oncePerJob((job): readonly TubeSolution[] => rowsOf(solveStanding(job)));

/** The pieces of a frame: tubes that are the same solid are one row, and mirror images of a row are its opposite hand. */
export function rowsOf(standing: readonly TubeSolution[]): readonly TubeSolution[] {
  const rows: Row[] = [];
  const byStock = new Map<string, Row[]>();
  for (const [tube, solution] of standing.entries()) {
    const keys = stockKeysOf(solution);
    const alike = [...new Set(keys.flatMap((key) => byStock.get(key) ?? []))];
    if (alike.some((row) => joins(row, solution, tube))) continue;
    const row: Row = { first: solution, places: [placing(tube, STRAIGHT)], images: [] };
    rows.push(row);
    const [own = ''] = keys;
    byStock.set(own, [...(byStock.get(own) ?? []), row]);
  }
  return rows.flatMap(piecesOf);
}

const STRAIGHT: Laying = { turn: 0, swapped: false };

/** A station `s` of the piece lies on `s + turn` of the tube or, end for end, on `turn - s`. */
function placing(tube: number, { turn, swapped }: Laying): Placing {
  return { tube, spineAt: swapped ? turn : 0 - turn, swapped };
}

function joins(row: Row, solution: TubeSolution, tube: number): boolean {
  const laid = sameAs(row.first, solution);
  if (laid) return row.places.push(placing(tube, laid)) > 0;
  row.image ??= solveOpposite(row.first.tube);
  const mirrored = sameAs(row.image, solution);
  return mirrored !== undefined && row.images.push(placing(tube, mirrored)) > 0;
}

function piecesOf({ first, places, image, images }: Row): readonly TubeSolution[] {
  const many = (solution: TubeSolution, placed: readonly Placing[]): TubeSolution => ({
    ...solution,
    tube: {
      ...first.tube,
      ...solution.tube,
      pair: images.length > 0,
      copies: placed.length * first.tube.copies,
    },
    places: placed,
  });
  return image && images.length > 0 ? [many(first, places), many(image, images)] : [many(first, places)];
}
