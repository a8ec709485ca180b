import { expect, test } from 'vitest';
import { dihedralAt } from '../../src/saddle/dihedral.ts';
import { jointUnderTest, tableJoint } from '../outside/joint-under-test.ts';

// Where the outside passes beside a round header, the header's nearest graze faces the tube's wall squarely: its normal is
// square to the tube's axis and to the plane of the two axes, on the side on which the wall passes. The angle between
// the two surfaces is then by hand a quarter turn and how far the tube's normal leans from the plane of the axes. The header
// of radius 20 stands 25 to the side and so reaches from 5 to 45: what lies below passes it on its near side.
test.each([
  { offset: 25, y: 3, side: -1 },
  { offset: 25, y: -10, side: -1 },
  { offset: 25, y: -28, side: -1 },
  { offset: -25, y: -3, side: 1 },
  { offset: -25, y: 10, side: 1 },
  // Of a header in the middle both sides show.
  { offset: 0, y: 25, side: 1 },
  { offset: 0, y: -25, side: -1 },
])('offset $offset, a wall line at $y passes the header on its side $side', ({ offset, y, side }) => {
  for (const clock of [0, 70]) {
    const joint = jointUnderTest(tableJoint(20, 30, 60, offset, clock));
    const sine = y / 30;
    for (const beside of [Math.asin(sine), Math.PI - Math.asin(sine)]) {
      const station = beside + (clock * Math.PI) / 180;
      expect(dihedralAt(joint, station)).toBeCloseTo(Math.acos(-side * sine), 9);
    }
  }
});
