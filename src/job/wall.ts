import { readGauge } from '../measure/gauge.ts';
import type { Length } from '../measure/units.ts';
import { lengthAsWritten, millimetres } from '../measure/write.ts';
import type { Wall } from './preparation.ts';
import { complain, type Desk, type Spot } from './text/desk.ts';
import { textOf } from './text/fields.ts';
import { lengthAt, misread } from './text/values.ts';

/** The wall of a tube so wide where it is narrowest. */
export function readWall(desk: Desk, spot: Spot | undefined, narrow: Length | undefined): Wall {
  if (spot === undefined) return 'none';
  const wall = wallAt(desk, spot);
  return wall && narrow ? withinTube(desk, spot, wall, narrow) : 'unclear';
}

/** A wall by its thickness or its gauge. */
export function wallAt(desk: Desk, spot: Spot): Length | undefined {
  const text = textOf(desk, spot, 'a length such as 2.4mm or .095in, or a gauge such as 16 BWG');
  if (text === undefined) return undefined;
  const gauge = readGauge(text, desk.bareUnit);
  if (gauge === undefined) return lengthAt(desk, spot, 'positive');
  return gauge.ok ? gauge.value : misread(desk, spot, 'gauge', gauge.fault);
}

/** The wall, if a tube so wide where it is narrowest has room for it. */
export function withinTube(desk: Desk, spot: Spot, wall: Length, narrow: Length): Wall {
  const radius = narrow.mm / 2;
  if (wall.mm < radius - 1e-9) return wall;
  const why = `the wall fills the tube: half of ${lengthAsWritten(narrow)} is ${millimetres(radius)} mm`;
  complain(desk, spot, 'wall', why, `a wall under ${millimetres(radius)} mm`);
  return 'unclear';
}
