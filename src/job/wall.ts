import { readGauge } from '../measure/gauge.ts';
import type { Length } from '../measure/units.ts';
import type { Wall } from './preparation.ts';
import { complain, type Spot } from './text/desk.ts';
import { textOf } from './text/fields.ts';
import { otherReadings } from './text/usual.ts';
import { lengthAt, misread } from './text/values.ts';

/** The wall of a tube so wide where it is narrowest. */
export function readWall(spot: Spot | undefined, narrow: Length | undefined): Wall {
  if (spot === undefined) return 'none';
  const wall = wallAt(spot);
  return wall && narrow ? withinTube(spot, wall, narrow) : 'unclear';
}

/** A wall by its thickness or its gauge. */
export function wallAt(spot: Spot): Length | undefined {
  const text = textOf(spot, spot.desk.words.tubes.wall);
  if (text === undefined) return undefined;
  const gauge = readGauge(text, spot.desk.bareUnit);
  if (gauge === undefined) return lengthAt(spot, 'positive', 'wall');
  return gauge.ok ? gauge.value : misread(spot, 'gauge', gauge.fault);
}

/** The wall, if a tube so wide where it is narrowest has room for it; of half that width it is a solid bar's. */
export function withinTube(spot: Spot, wall: Length, narrow: Length): Wall {
  if (isThick(wall, narrow)) return thick(spot, wall, narrow);
  if (wall.mm <= narrow.mm / 2 + 1e-9) return wall;
  complain(spot, 'wall', spot.desk.words.tubes.wallFills(narrow, spot.desk.bareUnit));
  return 'unclear';
}

/** A bare wall of so much of the tube was mostly meant in another unit, or is of a header. */
const THICK = 0.35;

function isThick(wall: Length, narrow: Length): boolean {
  const half = narrow.mm / 2;
  return wall.bare === true && wall.mm >= THICK * narrow.mm && wall.mm < half - 1e-9;
}

function thick(spot: Spot, wall: Length, narrow: Length): Wall {
  const gauge = readGauge(`${wall.wrote} BWG`, spot.desk.bareUnit);
  const others = [...(gauge?.ok ? [gauge.value] : []), ...otherReadings(wall, 'wall')].filter(
    ({ mm }) => mm < THICK * narrow.mm,
  );
  complain(spot, 'which-unit', spot.desk.words.tubes.thickWall(wall, others, narrow));
  return 'unclear';
}
