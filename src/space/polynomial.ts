/** The coefficients of a polynomial, the constant first. */
export type Polynomial = readonly number[];

/** The value of a polynomial at a place. */
export function polynomialAt(polynomial: Polynomial, place: number): number {
  let value = 0;
  for (let i = polynomial.length - 1; i >= 0; i--) value = value * place + (polynomial[i] ?? 0);
  return value;
}

/** Where between two places a polynomial passes through zero, in rising order: between its turning points, one by one. */
export function rootsBetween(polynomial: Polynomial, low: number, high: number): readonly number[] {
  if (polynomial.length < 2) return [];
  if (polynomial.length === 3) return rootsOfSquare(polynomial, low, high);
  const slope = slopeOf(polynomial);
  const turnings = rootsBetween(slope, low, high);
  const roots: number[] = [];
  let from = low;
  let atFrom = polynomialAt(polynomial, from);
  for (let i = 0; i <= turnings.length; i++) {
    const to = turnings[i] ?? high;
    const atTo = polynomialAt(polynomial, to);
    if (atFrom > 0 !== atTo > 0) roots.push(rootOf(polynomial, slope, from, to, atFrom > 0));
    from = to;
    atFrom = atTo;
  }
  return roots;
}

/** The same of a polynomial of the second degree, by the formula that loses no digits. */
function rootsOfSquare([c = 0, b = 0, a = 0]: Polynomial, low: number, high: number): readonly number[] {
  const under = b * b - 4 * a * c;
  if (!(under > 0)) return [];
  const half = -(b + (b < 0 ? -1 : 1) * Math.sqrt(under)) / 2;
  const [one, other] = [half / a, c / half];
  return (one < other ? [one, other] : [other, one]).filter((root) => root > low && root < high);
}

/** The only root between two places: by Newton's steps, and by halving where these leave what is left of the stretch. */
export function rootOf(
  polynomial: Polynomial,
  slope: Polynomial,
  from: number,
  to: number,
  falls: boolean,
): number {
  let low = from;
  let high = to;
  let place = (low + high) / 2;
  for (let i = 0; i < ENOUGH; i++) {
    const value = polynomialAt(polynomial, place);
    if (value > 0 === falls) low = place;
    else high = place;
    const next = place - value / polynomialAt(slope, place);
    const moved = next > low && next < high ? next : (low + high) / 2;
    if (Math.abs(moved - place) <= LAST_BITS * Math.abs(place) || moved === low || moved === high) {
      return moved;
    }
    place = moved;
  }
  return place;
}

/** How fast a polynomial rises, as a polynomial. */
export function slopeOf(polynomial: Polynomial): Polynomial {
  const slope: number[] = [];
  for (let i = 1; i < polynomial.length; i++) slope.push(i * (polynomial[i] ?? 0));
  return slope;
}

/** Halving alone comes to the last bit of a double well before. */
const ENOUGH = 200;
const LAST_BITS = 2e-16;
