import { expect, test } from 'vitest';
import { boxProfile } from '../../src/space/box.ts';

// The nearest point of a box's outline, looked for on the outline itself: faces and quarters of a circle, turned by its roll.
const SIZE = { wide: 60, deep: 40, corner: 6, roll: 0.4 };

function outline(): readonly (readonly [p: number, q: number])[] {
  const [a, b] = [SIZE.deep / 2 - SIZE.corner, SIZE.wide / 2 - SIZE.corner];
  const flat = Array.from({ length: 4000 }, (_, i) => {
    const turn = (i * 2 * Math.PI) / 4000;
    const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
    return [Math.sign(cos) * a + SIZE.corner * cos, Math.sign(sin) * b + SIZE.corner * sin] as const;
  });
  const faces = Array.from({ length: 4000 }, (_, i) => i / 4000).flatMap((share) => {
    const [along, across] = [(2 * share - 1) * b, (2 * share - 1) * a];
    const [p, q] = [SIZE.deep / 2, SIZE.wide / 2];
    return [
      [p, along],
      [-p, along],
      [across, q],
      [across, -q],
    ] as const;
  });
  const [cos, sin] = [Math.cos(SIZE.roll), Math.sin(SIZE.roll)];
  // Rolled, the body's side turns towards w: p to q.
  return [...flat, ...faces].map(([p, q]) => [p * cos - q * sin, p * sin + q * cos] as const);
}

test('how far a point is from a rolled box is how far it is from the nearest of its outline', () => {
  const { distance } = boxProfile(SIZE);
  const points = outline();
  for (const [p, q] of [
    [30, 5],
    [30, -5],
    [5, 45],
    [-5, 45],
    [28, 28],
    [28, -28],
    [-40, 3],
  ] as const) {
    const nearest = Math.min(...points.map(([a, b]) => Math.hypot(p - a, q - b)));
    expect(Math.abs(distance(p, q) - nearest), `${p}, ${q}`).toBeLessThan(0.01);
  }
  expect(distance(0, 0)).toBeCloseTo(-SIZE.deep / 2, 9);
});
