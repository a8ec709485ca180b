/**
 * A number as PDF content writes it, to 4 decimals: content is in millimetres, so a tenth of a micrometre, never with an exponent.
 * Throws on what is no number: a viewer would drop the whole page for it.
 */
export function written(value: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`${value} cannot be drawn.`);
  // By whole numbers, which are spelled far faster than fractions.
  const steps = Math.round(Math.abs(value) * STEPS);
  const whole = Math.floor(steps / STEPS);
  const rest = steps - whole * STEPS;
  const sign = value < 0 && steps > 0 ? '-' : '';
  return rest === 0 ? `${sign}${whole}` : `${sign}${whole}.${decimalsOf(rest)}`;
}

const STEPS = 1e4;

function decimalsOf(rest: number): string {
  let digits = rest + STEPS;
  while (digits % 10 === 0) digits /= 10;
  return String(digits).slice(1);
}
