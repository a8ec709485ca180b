import { describe, expect, test } from 'vitest';
import { type Eye, eyeOf } from '../../src/page/space/eye.ts';
import type { Vector } from '../../src/space/vector.ts';

const MODEL = { middle: [3, -4, 120], reach: 150 } as const;

function eyeOnModel(): Eye {
  const eye = eyeOf(() => {});
  eye.lookFrom([1, -0.9, 0.35], MODEL, 'whole');
  return eye;
}

/** The product of a matrix, column by column, and a place with a fourth number. */
function times(matrix: readonly number[], place: readonly number[]): number[] {
  return [0, 1, 2, 3].map((row) =>
    place.reduce((sum, value, column) => sum + (matrix[4 * column + row] ?? 0) * value, 0),
  );
}

describe('an eye', () => {
  test.each<Vector>([
    [0, 0, 0],
    [30, 10, 200],
    [-40, 25, -60],
  ])('sees a place where its matrices take it: %j', (...place) => {
    const eye = eyeOnModel();
    const [x = 0, y = 0, , w = 1] = times(eye.lens(1.5), times(eye.view(), [...place, 1]));
    const [right, up] = eye.seenAt(place);
    expect(x / w).toBeCloseTo(right / 1.5, 12);
    expect(y / w).toBeCloseTo(up, 12);
  });

  test('keeps what it looks at in the middle, from wherever', () => {
    const eye = eyeOnModel();
    for (const [round, up] of [
      [0.3, 0.2],
      [-2, 5],
      [1, -9],
    ] as const) {
      eye.turn(round, up);
      for (const off of eye.seenAt(MODEL.middle)) expect(off).toBeCloseTo(0, 9);
      // Never over the tube's end: end B stays above.
      expect(eye.seenAt([3, -4, 121])[1]).toBeGreaterThan(0);
    }
  });

  test('looked at from the side, what is to the right of the spine is to the right', () => {
    const eye = eyeOf(() => {});
    eye.lookFrom([1, 0, 0], MODEL, 'whole');
    const [right, up] = eye.seenAt([3, 1, 120]);
    expect(right).toBeGreaterThan(0);
    expect(up).toBeCloseTo(0, 9);
  });

  test('twice as near, sees twice as large', () => {
    const eye = eyeOf(() => {});
    eye.lookFrom([1, 0, 0], MODEL, 'whole');
    const [, before] = eye.seenAt([3, -4, 130]);
    eye.nearer(2);
    expect(eye.seenAt([3, -4, 130])[1]).toBeCloseTo(2 * before, 12);
  });

  test('moves what is in the middle as far as it is told', () => {
    const eye = eyeOnModel();
    eye.shift(0.25, -0.1);
    const [right, up] = eye.seenAt(MODEL.middle);
    expect(right).toBeCloseTo(0.5, 12);
    expect(up).toBeCloseTo(0.2, 12);
  });
});
