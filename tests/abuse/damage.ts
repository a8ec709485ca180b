import { pick, whole } from '../cli/malformed-draw.ts';
import type { Random } from '../outside/random-joints.ts';

/** Bytes that mean something to a reader of YAML, JSON, PDF, base64 or deflate. */
const MEANING = [
  0x00, 0x0a, 0x0d, 0x1b, 0x20, 0x22, 0x23, 0x26, 0x28, 0x2a, 0x2c, 0x2d, 0x2f, 0x30, 0x39, 0x3a, 0x3c, 0x5b,
  0x5c, 0x7b, 0x7d, 0x7f, 0x80, 0xc0, 0xff,
];

const DAMAGES: readonly ((bytes: Buffer, random: Random) => Buffer)[] = [
  (bytes, random) => bytes.subarray(0, whole(random, 0, bytes.length)),
  (bytes, random) => bytes.subarray(whole(random, 0, bytes.length)),
  (bytes, random) => replaced(bytes, random, Buffer.of(pick(random, MEANING))),
  (bytes, random) => replaced(bytes, random, Buffer.of(whole(random, 0, 255))),
  (bytes, random) => replaced(bytes, random, some(bytes, random)),
  (bytes, random) => replaced(bytes, random, Buffer.alloc(whole(random, 1, 300), pick(random, MEANING))),
  (bytes, random) =>
    replaced(bytes, random, Buffer.from(pick(random, ['1e999', '-0', '99999999999999999999']))),
];

/** The same with something wrong at one to four places. */
export function damaged(bytes: Uint8Array, random: Random): Buffer {
  let worse = Buffer.from(bytes);
  for (let n = whole(random, 1, 4); n > 0; n--) worse = Buffer.from(pick(random, DAMAGES)(worse, random));
  return worse;
}

function replaced(bytes: Buffer, random: Random, put: Buffer): Buffer {
  const at = whole(random, 0, bytes.length);
  return Buffer.concat([bytes.subarray(0, at), put, bytes.subarray(at + whole(random, 0, 6))]);
}

function some(bytes: Buffer, random: Random): Buffer {
  const at = whole(random, 0, bytes.length);
  return bytes.subarray(at, at + whole(random, 1, 200));
}
