import { isScalar } from 'yaml';
import { readLength } from '../../measure/length.ts';
import type { Length } from '../../measure/units.ts';
import { roundSection } from '../../space/sections/round.ts';
import { diameterAt } from '../diameter.ts';
import type { RoundSection } from '../job.ts';
import { pipeAt } from '../pipe.ts';
import type { TubeFacts, TubeSize } from '../section.ts';
import { complain, type Spot } from '../text/desk.ts';
import { isUsual, unusual } from '../text/usual.ts';
import { readWall, withinTube } from '../wall.ts';

/** By its outside diameter. */
export function readRoundTube(spot: Spot, wall: Spot | undefined): TubeSize {
  if (wall && areSwapped(spot, wall)) {
    complain(spot, 'which-unit', spot.desk.words.tubes.swapped(written(spot), written(wall)));
    return { section: undefined, wall: 'unclear' };
  }
  const od = diameterAt(spot, 'tube');
  return { section: roundOf(od), wall: readWall(wall, od) };
}

/** By the name of its size, which may say the wall too. */
export function readPipeTube(spot: Spot, wall: Spot | undefined): TubeSize {
  const pipe = pipeAt(spot);
  const section = roundOf(pipe?.od);
  if (pipe?.wall === undefined) {
    const own = readWall(wall, pipe?.od);
    return { section, wall: pipe === undefined ? 'unclear' : own };
  }
  if (wall) {
    const { key, setting } = spot.desk.say;
    const objection = spot.desk.words.tubes.wallTwice(key('pipe'), pipe.wall, setting('pipe', pipe.od.wrote));
    complain(wall, 'wall-twice', objection);
    return { section, wall: 'unclear' };
  }
  return { section, wall: withinTube(spot, pipe.wall, pipe.od) };
}

/** Whether the diameter is a wall and the wall a diameter. */
function areSwapped(spot: Spot, wall: Spot): boolean {
  const [od, thick] = [spot, wall].map((each) => readLength(written(each), spot.desk.bareUnit));
  if (!od?.ok || !thick?.ok) return false;
  return unusual(od.value, 'tube') && isUsual(od.value.mm, 'wall') && isUsual(thick.value.mm, 'tube');
}

function written({ node }: Spot): string {
  return isScalar(node) ? String(node.value) : '';
}

function roundOf(od: Length | undefined): RoundSection | undefined {
  return od && { kind: 'round', od };
}

export function roundTubeFacts(section: RoundSection): TubeFacts {
  const { od } = section;
  return {
    said: ({ tubes }) => tubes.round(section),
    lengths: { od },
    across: od,
    radius: od.mm / 2,
    outline: () => roundSection(od.mm / 2),
  };
}
