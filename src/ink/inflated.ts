import { Unzlib } from 'fflate';

/** How much may come of what is inflated: a few bytes can stand for any number. */
export interface Allowance {
  left: number;
}

/** So much is inflated at once: a thousand times as much at the most comes of it before the allowance is looked at. */
const SLICE = 1 << 10;

/**
 * What was deflated (RFC 1950), taken from the allowance as it comes. Throws as soon as nothing of that is left, and where the bytes are
 * damaged.
 */
export function inflated(bytes: Uint8Array, allowance: Allowance): Uint8Array {
  const parts: Uint8Array[] = [];
  const unzlib = new Unzlib((part) => {
    allowance.left -= part.length;
    if (allowance.left < 0) throw new RangeError('more comes of it than may');
    parts.push(part);
  });
  for (let at = 0; at < bytes.length; at += SLICE) {
    unzlib.push(bytes.subarray(at, at + SLICE), at + SLICE >= bytes.length);
  }
  const whole = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}
