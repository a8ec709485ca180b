import { expect, test } from 'vitest';
import { stretchesOf } from '../../src/saddle/stretches.ts';
import { copeUnderTest } from '../outside/end-under-test.ts';

// R = 30, r = 15, and the header 15 + 5e-10 to the side: the wall's outermost lines pass it by up to 5e-10 mm, which counts
// as touching (1e-9 mm). They do so where r sin(phi) > R - e, and run along the trim plane there: a stretch of its own.
test('where the wall but touches its header is a stretch of its own', () => {
  const [R, r, e] = [30, 15, 15 + 5e-10];
  const cope = copeUnderTest({
    tube: { kind: 'round', radius: r },
    wall: 1,
    parts: [{ header: { kind: 'round', radius: R }, angle: Math.PI / 3, clock: 0, offset: -e, shift: 0 }],
  });
  const half = Math.acos((R - e) / r);
  const side = Math.PI / 2;
  const ends = stretchesOf(cope.joint, 0).map(({ to }) => to);
  for (const edge of [side - half, side + half]) {
    const nearest = Math.min(...ends.map((end) => Math.abs(end - edge)));
    expect(nearest).toBeLessThan(half / 1000);
  }
});
