import { rectangularSection } from '../../space/sections/rectangular.ts';
import type { RectangularSection } from '../job.ts';
import { readRectangle } from '../rectangle.ts';
import type { TubeFacts, TubeSize } from '../section.ts';
import type { Spot } from '../text/desk.ts';
import { fieldsOf } from '../text/fields.ts';
import { wallAt, withinTube } from '../wall.ts';

/** By its two sides and its corner, which may follow from the wall. */
export function readRectangularTube(spot: Spot, wallSpot: Spot | undefined): TubeSize {
  const wall = wallSpot && wallAt(wallSpot);
  const fields = fieldsOf(spot, 'section');
  const size = fields && readRectangle(fields, wall, 'tube');
  if (!size) return { section: undefined, wall: 'unclear' };
  const section: RectangularSection = { kind: 'rectangular', ...size };
  if (!wallSpot) return { section, wall: 'none' };
  const narrow = size.wide.mm < size.deep.mm ? size.wide : size.deep;
  return { section, wall: wall ? withinTube(wallSpot, wall, narrow) : 'unclear' };
}

export function rectangularTubeFacts(section: RectangularSection): TubeFacts {
  const { wide, deep, corner } = section;
  return {
    said: ({ tubes }) => tubes.rectangular(section),
    lengths: { wide, deep, corner },
    under: 'section',
    across: wide,
    turned: ({ tubes }) => tubes.turned,
    outline: () => rectangularSection({ wide: wide.mm, deep: deep.mm, corner: corner.mm }),
  };
}
