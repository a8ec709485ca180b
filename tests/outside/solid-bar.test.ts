import { expect, test } from 'vitest';
import { reportJob } from '../../src/index.ts';
import { readSample } from '../job/sample.ts';

// A solid bar has no inside: its wall is half its diameter, and the innermost line of that wall is the axis itself, which meets a
// round header of radius R at R / sin(theta) from the work point, wherever the station.
test('a wall of half the diameter is a solid bar', () => {
  const [tube] = reportJob(
    readSample(`copeleaf: 1
tube:
  od: 25mm
  wall: 12.5mm
  edge: square
  ends: { A: { onto: { od: 44.5mm }, angle: 60deg } }
`),
  );
  const end = tube?.ends.A;
  if (!end || end === 'plain') throw new Error('the end was asked to be coped');
  const { inside, square, outside } = end.cope;
  for (let i = 0; i < 24; i++) {
    const station = (i * Math.PI) / 12;
    const axis = 22.25 / Math.sin(Math.PI / 3);
    expect(inside?.(station).setback).toBeCloseTo(axis, 9);
    expect(square?.(station).setback).toBeGreaterThanOrEqual(Math.max(axis, outside(station).setback) - 1e-9);
  }
  // By the formula of a round header, over the whole disc of the bar.
  const setback = (rho: number, phi: number): number =>
    (rho * Math.cos(phi) * 0.5 + Math.sqrt(22.25 ** 2 - (rho * Math.sin(phi)) ** 2)) / Math.sin(Math.PI / 3);
  let most = 0;
  for (let i = 0; i < 720; i++) {
    const phi = (i * Math.PI) / 360;
    const along = Array.from({ length: 201 }, (_, j) => setback((12.5 * j) / 200, phi));
    most = Math.max(most, Math.max(...along) - setback(12.5, phi));
  }
  expect(end.standOff).toBeGreaterThanOrEqual(most - 1e-9);
  expect(end.standOff).toBeCloseTo(most, 3);
});

test.each([
  'section: { wide: 25mm, deep: 25mm, corner: 0 }',
  'section: { wide: 40mm, deep: 25mm, corner: 3mm }',
])('so it is of a rectangular one, %s', (section) => {
  for (const edge of ['bevel', 'square']) {
    const [tube] = reportJob(
      readSample(`copeleaf: 1
tube:
  ${section}
  wall: 12.5mm
  edge: ${edge}
  ends: { A: { onto: { od: 60mm }, angle: 50deg, clock: 20deg, offset: 4mm } }
`),
    );
    const end = tube?.ends.A;
    if (!end || end === 'plain') throw new Error('the end was asked to be coped');
    const { inside, square, cut, joint, touching } = end.cope;
    for (let i = 0; i < 97; i++) {
      const station = (i * joint.section.turn) / 97;
      for (const line of [inside, square, cut]) expect(line?.(station).setback).toBeTypeOf('number');
      expect(Number.isFinite(square?.(station).setback)).toBe(true);
      if (touching(station).contact) {
        expect(square?.(station).setback).toBeGreaterThanOrEqual(touching(station).setback - 1e-9);
      }
    }
    expect(Number.isFinite(end.gap.mm)).toBe(true);
  }
});
