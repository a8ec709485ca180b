import { describe, expect, test } from 'vitest';
import { howMany } from '../count.ts';
import { between, randomFrom, SEED } from '../outside/random-joints.ts';
import { type Ask, BEVEL, codesFor } from './ends-under-test.ts';

const JOINTS = howMany({ short: 20, deep: 100 });

/**
 * The thinnest that the wedge of a joint without offset is, in degrees, by a row of the dihedral's formula:
 * cos psi = cos(theta) cos(phi) sqrt(1 - q^2) - q sin(phi), q = r sin(phi) / R (derived by a second program; no
 * published formula found).
 */
function thinnest({ od, onto, angle }: Ask): number {
  const lean = Math.cos((angle * Math.PI) / 180);
  let thin = 180;
  for (let i = 0; i < 7200; i++) {
    const phi = (i * Math.PI) / 3600;
    const q = (od / onto) * Math.sin(phi);
    const cosine = lean * Math.cos(phi) * Math.sqrt(1 - q * q) - q * Math.sin(phi);
    thin = Math.min(thin, 180 - (Math.acos(cosine) * 180) / Math.PI);
  }
  return thin;
}

function drawn(random: () => number, share: number): Ask {
  const onto = between(random, 16, 240);
  return {
    onto,
    od: onto * share,
    wall: onto * share * between(random, 0.01, 0.3),
    angle: between(random, 30, 150),
    clock: between(random, -360, 360),
  };
}

describe(`a plain joint: bevel, no offset, header larger, angle over 30 (seed ${SEED})`, () => {
  // At 30 degrees the wedge falls to 15 degrees at 0.936 of the header's diameter, at 90 degrees at cos 15 = 0.966.
  test('has no warning up to 0.93 of the header', () => {
    const random = randomFrom(SEED + 4);
    for (let i = 0; i < JOINTS; i++) {
      const ask = drawn(random, between(random, 0.1, 0.93));
      expect(codesFor(ask, BEVEL, i % 2 === 0 ? 'A' : 'B'), JSON.stringify(ask)).toEqual([]);
    }
  });

  test('nearer to the header has a feather where the wedge is under 15 degrees, and nothing else', () => {
    const random = randomFrom(SEED + 5);
    const counts = { sound: 0, feather: 0 };
    for (let i = 0; i < JOINTS; i++) {
      const ask = drawn(random, between(random, 0.93, 1));
      const thin = thinnest(ask);
      if (Math.abs(thin - 15) < 1e-4) continue;
      const sound = thin > 15;
      counts[sound ? 'sound' : 'feather']++;
      expect(codesFor(ask), JSON.stringify(ask)).toEqual(sound ? [] : ['feather']);
    }
    expect(Math.min(counts.sound, counts.feather)).toBeGreaterThan(JOINTS / 10);
  });
});
