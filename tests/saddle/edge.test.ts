import { expect, test } from 'vitest';
import { findEdge } from '../../src/saddle/edge.ts';
import type { Line } from '../../src/saddle/line.ts';

// Lines with an edge at a known station, to which the rule is one and after it another. A kink or a step of 5e-5 mm shows in
// no drawing.
const UNSEEN = 5e-5;

interface Made {
  readonly setback: (station: number) => number;
  readonly slope: (station: number) => number;
}

function partedAt(edge: number, before: Made, after: Made, missesAfter = false): Line {
  return (station) => {
    const isBefore = station < edge;
    const { setback, slope } = isBefore ? before : after;
    return {
      setback: setback(station),
      slope: slope(station),
      contact: isBefore || !missesAfter,
      part: 0,
      region: isBefore ? 0 : 1,
    };
  };
}

const LEVEL: Made = { setback: () => 12, slope: () => 0 };

/** A straight line through 12 mm at a station. */
function rising(through: number, rate: number): Made {
  return { setback: (station) => 12 + rate * (station - through), slope: () => rate };
}

const EDGES = [0.3141, 0.32, 0.33597];
const [LOW, HIGH] = [0.3, 0.34];

test.each(EDGES)('a kink at %d is found as nearly as a drawing shows it, and on its far side', (edge) => {
  for (const rate of [4, -40, 400]) {
    const found = findEdge(partedAt(edge, LEVEL, rising(edge, rate)), LOW, HIGH, 0);
    expect(found).toBeGreaterThanOrEqual(edge);
    expect(Math.abs(rate) * (found - edge)).toBeLessThan(UNSEEN);
    const other = findEdge(partedAt(edge, rising(edge, rate), LEVEL), LOW, HIGH, 0);
    expect(Math.abs(rate) * (other - edge)).toBeLessThan(UNSEEN);
    // One as steep before as after, in a valley or on a ridge.
    const ridge = findEdge(partedAt(edge, rising(edge, rate), rising(edge, -rate)), LOW, HIGH, 0);
    expect(2 * Math.abs(rate) * (ridge - edge)).toBeLessThan(2 * UNSEEN);
  }
});

test.each(EDGES)('a step at %d is found to 1e-13, however small it is and whichever way', (edge) => {
  for (const step of [1e-4, 3, -80]) {
    const far: Made = { setback: () => 12 + step, slope: () => 0 };
    const found = findEdge(partedAt(edge, LEVEL, far), LOW, HIGH, 0);
    expect(found).toBeGreaterThanOrEqual(edge);
    expect(found - edge).toBeLessThan(2e-13);
  }
});

test.each(EDGES)('where a line runs off as a square root, at %d, less than 1e-4 mm is left of it', (edge) => {
  const root: Made = {
    setback: (station) => 12 + 80 * Math.sqrt(Math.max(0, edge - station)),
    slope: (station) => -40 / Math.sqrt(Math.max(1e-300, edge - station)),
  };
  const found = findEdge(partedAt(edge, root, LEVEL, true), LOW, HIGH, 0);
  expect(found).toBeGreaterThanOrEqual(edge);
  expect(80 * Math.sqrt(found - edge)).toBeLessThan(1e-4);
});

test.each(EDGES)(
  'where a header is only just touched, at %d, the place where it ends is found to 1e-9',
  (edge) => {
    const found = findEdge(partedAt(edge, LEVEL, LEVEL, true), LOW, HIGH, 0);
    expect(found).toBeGreaterThanOrEqual(edge);
    expect(found - edge).toBeLessThan(1e-9);
  },
);
