/** An exact number, so that `1-1/2in` comes to 38.1 mm and not to its neighbour. */
export interface Fraction {
  readonly top: bigint;
  /** Greater than zero. */
  readonly bottom: bigint;
}

export function fraction(top: bigint, bottom = 1n): Fraction {
  return { top, bottom };
}

export function plus(a: Fraction, b: Fraction): Fraction {
  return { top: a.top * b.bottom + b.top * a.bottom, bottom: a.bottom * b.bottom };
}

export function times(a: Fraction, b: Fraction): Fraction {
  return { top: a.top * b.top, bottom: a.bottom * b.bottom };
}

/** The nearest number, correctly rounded while both halves of the reduced fraction are under 2^53. */
export function toNumber({ top, bottom }: Fraction): number {
  const shared = commonDivisor(top < 0n ? -top : top, bottom);
  return Number(top / shared) / Number(bottom / shared);
}

function commonDivisor(a: bigint, b: bigint): bigint {
  let [large, small] = [a, b];
  while (small !== 0n) [large, small] = [small, large % small];
  return large;
}
