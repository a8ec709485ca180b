import { boxRoundBoth, grown } from '../../draw/boxes.ts';
import type { Box } from '../../draw/drawing.ts';
import { boxOf, type Segment } from '../../draw/path.ts';
import type { Mm } from '../../measure/units.ts';
import type { Cope } from '../../saddle/cope.ts';
import { type Flat, height, xAt } from './flat.ts';
import { sidesOf } from './sides.ts';

/** Room round a place that matters, mm. */
const ROUND: Mm = 8;

/** Where the cut climbs more than this for one mm across, a seam that is taped askew shows most. */
const STEEP = 1.5;

/** Where a tile's seam should not run: long point, heel, toe, the spine's label, and where the cut is steep. */
export function keepWholeOf(flat: Flat, cope: Cope, base: Mm, cut: readonly Segment[]): Box[] {
  const sides = sidesOf(cope);
  const ends = [cope.longPoint.station, ...(sides ? [sides.heel, sides.toe] : [])];
  const points = ends.map((station) => around(flat, station, cope.cut(station).setback));
  return [...points, around(flat, 0, base), ...steepBoxes(cut)];
}

function around(flat: Flat, station: number, setback: Mm): Box {
  const [x, y] = [xAt(flat, station), height(flat, setback)];
  return grown({ left: x, right: x, bottom: y, top: y }, ROUND);
}

/** One box for each run of steep segments. */
function steepBoxes(cut: readonly Segment[]): Box[] {
  const boxes: Box[] = [];
  let run: Box | undefined;
  for (const segment of cut) {
    const { from, to } = segment;
    if (Math.abs(to.y - from.y) > STEEP * Math.abs(to.x - from.x)) {
      run = run ? boxRoundBoth(run, boxOf(segment)) : boxOf(segment);
    } else if (run) {
      boxes.push(run);
      run = undefined;
    }
  }
  return run ? [...boxes, run] : boxes;
}
