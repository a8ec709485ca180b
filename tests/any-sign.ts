import fc from 'fast-check';

/** Halves of signs, which are no signs by themselves (Unicode, 3.8). */
const HALVES = { from: 0xd800, count: 0x800 };

/** Any sign of Unicode, as fast-check's `binary`, which first makes a table of all 1.1 million in a second or more. */
export const anySign = fc
  .integer({ min: 0, max: 0x10ffff - HALVES.count })
  .map((place) => String.fromCodePoint(place < HALVES.from ? place : place + HALVES.count), placeOf);

/** The way back: by it fast-check mixes in words that mean something to JavaScript, and makes a failure shorter. */
function placeOf(sign: unknown): number {
  if (typeof sign !== 'string' || Array.from(sign).length !== 1) throw new Error('not one sign');
  const place = sign.codePointAt(0) ?? 0;
  return place < HALVES.from ? place : place - HALVES.count;
}
