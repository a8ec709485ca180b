import { expect, it } from 'vitest';
import { traceCurve } from '../../src/saddle/curve.ts';
import type { Line } from '../../src/saddle/line.ts';

// From 512 on, doubles stand 1.14e-13 apart: a search for an edge to 1e-13 has to stop at neighbours.
it('finds a step where stations are too large to be halved to 1e-13', () => {
  const step = 600.1234567;
  const line: Line = (station) => ({
    setback: station < step ? 0 : 5,
    slope: 0,
    contact: true,
    part: 0,
    region: station < step ? 0 : 1,
    depth: 0,
  });
  const curve = traceCurve(line, { from: 0, turn: 700, nodes: [], scale: 1 });
  const after = curve.find((piece) => piece.setbacks[0] === 5);
  expect(Math.abs((after?.stations[0] ?? 0) - step)).toBeLessThan(1e-9);
});
