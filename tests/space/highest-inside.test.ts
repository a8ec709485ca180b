import { expect, test } from 'vitest';
import { topsThrough } from '../../src/space/highest-inside.ts';
import type { WallEntry } from '../../src/space/solid.ts';

/** Hills with tops at 0.3 and 0.55 and a dip at 0.42, on a way of 1 mm: how fast they rise, and the normal that says so. */
function hills(isMet: (share: number) => boolean) {
  const rise = (share: number): number => -(share - 0.3) * (share - 0.42) * (share - 0.55);
  return (share: number): WallEntry | undefined =>
    isMet(share) ? { z: 0, nx: -rise(share), ny: 0, nz: 1, patch: 0 } : undefined;
}

function isNear(places: readonly number[], place: number): boolean {
  return places.some((one) => Math.abs(one - place) < 1e-7);
}

// The dip is nearer to both tops than an eighth of the way, the space between two looks, which tells hills as near as that apart.
test('two tops further apart than an eighth of the way are both found, and no dip', () => {
  const tops = topsThrough(
    hills(() => true),
    1,
    0,
  );
  for (const top of [0.3, 0.55]) expect(isNear(tops, top)).toBe(true);
  expect(isNear(tops, 0.42)).toBe(false);
});

test('a top close beside where the surface ends is found, and both sides of that end', () => {
  const ends = [
    { isMet: (share: number) => share < 0.56, end: 0.56, top: 0.55 },
    { isMet: (share: number) => share > 0.29, end: 0.29, top: 0.3 },
  ];
  for (const { isMet, end, top } of ends) {
    const tops = topsThrough(hills(isMet), 1, 0);
    expect(isNear(tops, top)).toBe(true);
    const beside = tops.filter((place) => Math.abs(place - end) < 1e-7);
    expect(beside.map(isMet).sort()).toEqual([false, true]);
  }
});

test('where nothing is met there is no top', () => {
  expect(topsThrough(() => undefined, 1, 0)).toEqual([]);
});
