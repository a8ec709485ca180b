import { expect, test } from 'vitest';
import { bentHeader } from '../../src/space/bend.ts';

// A bent tube of 20 mm, square to the coped one, bent through a radius of 70 about a centre to the side: seen along the coped
// tube its centre line is half a circle about (0, 70), and from both its ends runs straight on.
const bent = bentHeader({ tubeRadius: 20, bendRadius: 70, centre: Math.PI / 2 }, Math.PI / 2, 0);

test('a line along the coped tube goes in where the round of the tangent or of the arc has it, square to its wall', () => {
  const root = Math.sqrt(20 ** 2 - 12 ** 2);
  for (const [x, y, nx, ny] of [
    [82, 100, 0.6, 0],
    [-58, 100, 0.6, 0],
    [0, 12, 0, 0.6],
    [0, -12, 0, -0.6],
  ] as const) {
    const met = bent.enter(x, y);
    expect(Math.abs(met?.z ?? Number.NaN)).toBeCloseTo(root, 9);
    expect(met?.nx).toBeCloseTo(nx, 9);
    expect(met?.ny).toBeCloseTo(ny, 9);
    expect(Math.sign(met?.nz ?? 0)).toBe(Math.sign(met?.z ?? Number.NaN));
  }
});

test('its arc and its two tangents are three faces', () => {
  const faces = [bent.enter(0, 0), bent.enter(70, 100), bent.enter(-70, 100)].map((met) => met?.patch);
  expect(new Set(faces).size).toBe(3);
});

test('along it is measured on its centre line: a quarter of the circle, and what is beyond', () => {
  const quarter = (Math.PI / 2) * 70;
  expect(bent.develop(70, 70 + 30, 20).along).toBeCloseTo(quarter + 30, 9);
  expect(bent.develop(-70, 70 + 30, 20).along).toBeCloseTo(-quarter - 30, 9);
  expect(bent.develop(70 * Math.SQRT1_2, 70 - 70 * Math.SQRT1_2, 20).along).toBeCloseTo(quarter / 2, 9);
});
