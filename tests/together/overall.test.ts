import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { standingFrame } from '../../src/together/frame-notes.ts';
import { overallOf } from '../../src/together/overall.ts';
import { solvePieces } from '../../src/together/pieces.ts';
import { solidsOf } from '../../src/together/solids.ts';
import { readText } from '../frame/read-lines.ts';

// As far as the solids of the tubes reach that `print --as stl` writes, whose outlines are followed at more places.
test.each([
  ['the rack', readFileSync(new URL('../../samples/kayak-rack.yaml', import.meta.url), 'utf8')],
  [
    'a box on its edge, leaning, on a round sill',
    `copeleaf: 1
units: mm
frame:
  tubes:
    - { name: sill, along: [[0, 0, 0], [0, 900, 0]], od: 48.3, wall: 2.6 }
    - { name: bow, along: [[0, 400, 0], [500, 650, 700]], section: { wide: 60, deep: 30, corner: 5 }, wall: 3, face: [1, 1, 0] }
`,
  ],
])('%s is as large over all as its solids', (_, text) => {
  const job = readText(text);
  const whole = standingFrame(job);
  const meshes = [...solidsOf(job, solvePieces(job))];
  const overall = overallOf(whole?.listed ?? []);
  for (const axis of [0, 1, 2] as const) {
    const places = meshes.flatMap((mesh) => mesh.filter((_, i) => i % 3 === axis));
    const wide =
      places.reduce((most, at) => Math.max(most, at)) - places.reduce((least, at) => Math.min(least, at));
    expect(Math.abs((overall[axis] ?? 0) - wide)).toBeLessThan(0.1);
  }
});
