import { readGauge } from '../measure/gauge.ts';
import type { Length } from '../measure/units.ts';
import type { Wall } from './preparation.ts';
import { complain, type Desk, type Spot } from './text/desk.ts';
import { textOf } from './text/fields.ts';
import { otherReadings } from './text/usual.ts';
import { lengthAt, misread } from './text/values.ts';

/** The wall of a tube so wide where it is narrowest. */
export function readWall(desk: Desk, spot: Spot | undefined, narrow: Length | undefined): Wall {
  if (spot === undefined) return 'none';
  const wall = wallAt(desk, spot);
  return wall && narrow ? withinTube(desk, spot, wall, narrow) : 'unclear';
}

/** A wall by its thickness or its gauge. */
export function wallAt(desk: Desk, spot: Spot): Length | undefined {
  const text = textOf(desk, spot, desk.words.tubes.wall);
  if (text === undefined) return undefined;
  const gauge = readGauge(text, desk.bareUnit);
  if (gauge === undefined) return lengthAt(desk, spot, 'positive', 'wall');
  return gauge.ok ? gauge.value : misread(desk, spot, 'gauge', gauge.fault);
}

/** The wall, if a tube so wide where it is narrowest has room for it; of half that width it is a solid bar's. */
export function withinTube(desk: Desk, spot: Spot, wall: Length, narrow: Length): Wall {
  if (isThick(wall, narrow)) return thick(desk, spot, wall, narrow);
  if (wall.mm <= narrow.mm / 2 + 1e-9) return wall;
  complain(desk, spot, 'wall', desk.words.tubes.wallFills(narrow, desk.bareUnit));
  return 'unclear';
}

/** A bare wall of so much of the tube was mostly meant in another unit, or is of a header. */
const THICK = 0.35;

function isThick(wall: Length, narrow: Length): boolean {
  const half = narrow.mm / 2;
  return wall.bare === true && wall.mm >= THICK * narrow.mm && wall.mm < half - 1e-9;
}

function thick(desk: Desk, spot: Spot, wall: Length, narrow: Length): Wall {
  const gauge = readGauge(`${wall.wrote} BWG`, desk.bareUnit);
  const others = [...(gauge?.ok ? [gauge.value] : []), ...otherReadings(wall, 'wall')].filter(
    ({ mm }) => mm < THICK * narrow.mm,
  );
  complain(desk, spot, 'which-unit', desk.words.tubes.thickWall(wall, others, narrow));
  return 'unclear';
}
