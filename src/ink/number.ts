/**
 * A number as PDF content writes it, to 4 decimals: content is in millimetres, so a tenth of a micrometre, never with an exponent.
 * Throws on what is no number: a viewer would drop the whole page for it.
 */
export function written(value: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`${value} cannot be drawn.`);
  return String(Math.round(value * 1e4) / 1e4);
}
